package fifthform.curves.situation;

import fifthform.curves.crystal.Temper;
import fifthform.curves.estimate.Estimate;
import fifthform.curves.forecast.Coasting;
import fifthform.curves.forecast.Forecast;
import fifthform.curves.input.StoreTrouble;
import fifthform.curves.phase.Batch;
import fifthform.curves.phase.PlaceOdds;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.Setup;
import fifthform.curves.signal.Track;
import fifthform.curves.signal.Window;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/**
 * Everything known at one moment.
 *
 * @param setup the set-up in force
 * @param now the moment
 * @param bowl the bowl's probe
 * @param bath the bath's probe, where there is one
 * @param probe whether the bowl's probe is in the chocolate
 * @param estimate where the chocolate is; empty before the first reading
 * @param window the recent curve
 * @param batch phase and place
 * @param odds where the trained network has the bowl
 * @param opinion how hot it thinks that the bowl can become; empty where it has not spoken
 * @param coasting what is known of the bowl's coast
 * @param forecast where it is going; empty where no good reading says
 * @param crystals what the temperature did to the crystals; empty for chocolate that the model does not hold for
 * @param liftDueSince since when the maker has been told to lift
 * @param storeTrouble what the journal last complained of, while it does
 */
public record Situation(
        Setup setup,
        Instant now,
        Track bowl,
        Optional<Track> bath,
        ProbePlace probe,
        Optional<Estimate> estimate,
        Window window,
        Batch batch,
        PlaceOdds odds,
        Optional<Opinion> opinion,
        Coasting coasting,
        Optional<Forecast> forecast,
        Optional<Temper> crystals,
        Optional<Instant> liftDueSince,
        Optional<StoreTrouble.What> storeTrouble) {
    public Situation {
        Objects.requireNonNull(setup, "setup");
        Objects.requireNonNull(now, "now");
        Objects.requireNonNull(bowl, "bowl");
        Objects.requireNonNull(bath, "bath");
        Objects.requireNonNull(probe, "probe");
        Objects.requireNonNull(estimate, "estimate");
        Objects.requireNonNull(window, "window");
        Objects.requireNonNull(batch, "batch");
        Objects.requireNonNull(odds, "odds");
        Objects.requireNonNull(opinion, "opinion");
        Objects.requireNonNull(coasting, "coasting");
        Objects.requireNonNull(forecast, "forecast");
        Objects.requireNonNull(crystals, "crystals");
        Objects.requireNonNull(liftDueSince, "liftDueSince");
        Objects.requireNonNull(storeTrouble, "storeTrouble");
    }

    public Recipe recipe() {
        return setup.recipe();
    }

    /** From a cue to the hands' act: the set-up's figure, or what the answers of this session have made of it. */
    public Duration reaction() {
        return setup.reactionTime();
    }

    /** The estimate where it speaks of the chocolate now; temperature alarms and cues rest on nothing else. */
    public Optional<Estimate> trusted() {
        return probe == ProbePlace.OUT ? Optional.empty() : estimate.filter(Estimate::isUsable);
    }

    /**
     * Whether the network is sure that the chocolate does not come to this limit, and the readings have not been above it
     * for so long: a tip that leans on a warm wall reads more than the chocolate has, but only as long as hands hold it there.
     */
    public boolean isContested(double limitCelsius, Duration atMost) {
        boolean denied = opinion.filter(o -> o.highestCelsius() < limitCelsius).isPresent();
        return denied && window.coolestThroughout(now.minus(atMost)).orElse(0) < limitCelsius;
    }
}
