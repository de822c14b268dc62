package fifthform.curves.engine;

import fifthform.curves.alarm.AlarmBank;
import fifthform.curves.alarm.AlarmConditions;
import fifthform.curves.crystal.Temper;
import fifthform.curves.cue.CueBoard;
import fifthform.curves.cue.CueId;
import fifthform.curves.cue.CueRules;
import fifthform.curves.estimate.Estimate;
import fifthform.curves.forecast.Calibration;
import fifthform.curves.forecast.Coasting;
import fifthform.curves.forecast.Forecast;
import fifthform.curves.forecast.Forecasts;
import fifthform.curves.forecast.Hindsight;
import fifthform.curves.forecast.Saying;
import fifthform.curves.input.Input;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.network.Insight;
import fifthform.curves.network.Network;
import fifthform.curves.phase.Batch;
import fifthform.curves.phase.PlaceOdds;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.ProbeSetup;
import fifthform.curves.setup.Role;
import fifthform.curves.setup.Setup;
import fifthform.curves.signal.Track;
import fifthform.curves.signal.Window;
import fifthform.curves.signal.Window.Point;
import fifthform.curves.situation.Opinion;
import fifthform.curves.situation.ProbePlace;
import fifthform.curves.situation.Situation;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The whole monitor as one pure function. Live, replay, analysis and simulation all call {@link #step}; the same
 * set-up and inputs give the same states and events, to the bit, on every machine.
 */
public final class Engine {
    private Engine() {}

    /** The state before the first input. */
    public static State start(Setup setup, Instant start) {
        return new State(
                0,
                start,
                start,
                Told.NOTHING,
                Tracks.silentSince(setup, start),
                Window.EMPTY,
                Optional.empty(),
                Insight.START,
                Batch.atStart(setup.beginning(), start),
                Coasting.atStart(setup),
                Calibration.USUAL,
                Optional.empty(),
                Hindsight.NONE,
                Temper.atStart(setup),
                AlarmBank.quiet(),
                CueBoard.empty());
    }

    /**
     * What one input leads to.
     *
     * @param setup the set-up in the session's header; changes to it are inputs
     * @param before the state so far
     * @param input what happened; a time before the state's own counts as the state's own
     */
    public static Step step(Setup setup, State before, Input input) {
        return step(Optional.of(Network.packed()), setup, before, input);
    }

    /** As {@link #step(Setup, State, Input)} with another network, or none. */
    static Step step(Optional<Network> network, Setup setup, State before, Input input) {
        State told = input.fold(new Telling(setup, before.heard(input.at())));
        State after = look(new Hearing(network), told.setupInForce(setup), before, told);
        return new Step(after, Changes.between(before, after));
    }

    /** Estimate, phase, forecast, alarms, cues: everything that follows from what has been told. */
    private static State look(Hearing hearing, Setup setup, State before, State told) {
        Instant now = told.at();
        ProbeSetup probe = told.tracks().asMeasured(setup.bowlProbe());
        Track bowl = told.tracks().of(probe.id()).orElseGet(() -> Track.silentSince(told.started()));
        Optional<Estimate> estimate = Estimate.of(bowl, probe, now);
        Optional<Estimate> trusted =
                told.probe() == ProbePlace.OUT ? Optional.empty() : estimate.filter(Estimate::isUsable);
        boolean news = trusted.isPresent()
                && before.estimate()
                        .filter(e -> e.at().equals(trusted.get().at()))
                        .isEmpty();
        Window window = news ? told.window().with(pointOf(trusted.get())) : told.window();
        Duration passed = news ? sinceLast(before, now) : Duration.ZERO;
        Insight insight = hearing.after(before, told, setup, news ? Optional.of(bowl) : Optional.empty());
        PlaceOdds odds = insight.guess()
                .map(g -> new PlaceOdds(g.bathFraction(), g.tableFraction(), g.coldWaterFraction()))
                .orElse(PlaceOdds.SILENT);
        Batch followed =
                news ? told.batch().followed(setup.recipe(), trusted.get(), window, odds, now, passed) : told.batch();
        Optional<Track> bath = told.tracks().of(setup, Role.BATH);
        OptionalDouble waterCelsius = waterCelsius(setup.recipe(), followed.place(), bath, now);
        Coasting coasting = trusted.map(e -> told.coasting()
                        .followed(
                                setup,
                                before.batch().contact(),
                                followed.contact(),
                                e,
                                window,
                                waterCelsius,
                                now,
                                passed))
                .orElse(told.coasting());
        Batch batch = Hands.measured(setup, before, followed, coasting);
        Setup known = setup.withReactionTime(batch.reaction().time(setup.reactionTime()));
        Optional<Saying> said = insight.guess()
                .map(guess ->
                        new Saying(guess, told.started(), told.calibration().factor()));
        Optional<Forecast> forecast =
                trusted.map(e -> Forecasts.make(known, batch, coasting, e, waterCelsius, said, now)
                        .after(before.hindsight()));
        Calibration calibration = told.calibration().followed(told.coasting(), coasting, batch, said);
        Hindsight hindsight = news && forecast.isPresent()
                ? before.hindsight().with(trusted.get(), batch.contact(), forecast.get())
                : before.hindsight();
        // A chocolate that turns out to be another one is judged by that one's fat from now on.
        Optional<Temper> crystals = told.crystals()
                .flatMap(c -> c.of(setup))
                .map(c -> c.followed(
                        setup,
                        before.batch(),
                        batch,
                        coasting,
                        news ? trusted : Optional.empty(),
                        window,
                        waterCelsius,
                        now,
                        passed));
        Situation situation = new Situation(
                known,
                now,
                bowl,
                bath,
                told.probe(),
                estimate,
                window,
                batch,
                odds,
                said.map(s -> new Opinion(s.highestCelsius())),
                coasting,
                forecast,
                crystals,
                before.cues().openSince(CueId.LIFT_NOW),
                told.storeTrouble());
        AlarmConditions conditions = new AlarmConditions(situation);
        return new State(
                told.inputs(),
                told.started(),
                now,
                told.told(),
                told.tracks(),
                window,
                estimate,
                insight,
                batch,
                coasting,
                calibration,
                forecast,
                hindsight,
                crystals,
                told.alarms().next(conditions::of, batch.phase(), now),
                CueRules.next(situation, told.cues()));
    }

    private static Point pointOf(Estimate estimate) {
        return new Point(estimate.at(), estimate.chocolateCelsius(), estimate.rateKelvinPerMinute());
    }

    private static Duration sinceLast(State before, Instant now) {
        return before.estimate().map(e -> Duration.between(e.at(), now)).orElse(Duration.ZERO);
    }

    /** What a probe in the water reads that the bowl is in or over. */
    private static OptionalDouble waterCelsius(Recipe recipe, Place place, Optional<Track> bath, Instant now) {
        OptionalDouble read =
                bath.filter(b -> b.isTrustedAt(now)).map(Track::lastCelsius).orElse(OptionalDouble.empty());
        // Cooling water is colder than where it cools to: what is warmer is the warm bath, made ready beside it.
        boolean ofAnother = place == Place.COLD_WATER
                && read.isPresent()
                && read.getAsDouble() >= recipe.cool().range().lowCelsius();
        return ofAnother ? OptionalDouble.empty() : read;
    }
}
