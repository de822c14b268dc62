package fifthform.curves.engine;

import fifthform.curves.alarm.AlarmBank;
import fifthform.curves.cue.CueBoard;
import fifthform.curves.estimate.Estimate;
import fifthform.curves.forecast.Coasting;
import fifthform.curves.forecast.Forecast;
import fifthform.curves.input.StoreTrouble;
import fifthform.curves.phase.Batch;
import fifthform.curves.setup.Setup;
import fifthform.curves.signal.Window;
import fifthform.curves.situation.ProbePlace;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/**
 * All that the engine knows after some inputs.
 *
 * @param inputs how many inputs it has taken; the sequence number of the last
 * @param started when the session started
 * @param at the time of the last input; never goes back
 * @param changedSetup the set-up in force where it is no longer the header's
 * @param tracks what is known of each probe
 * @param window the recent curve of the chocolate
 * @param estimate where the chocolate is; empty before the first reading
 * @param batch phase and place
 * @param coasting what is known of the bowl's coast
 * @param forecast where it is going; empty where no good reading says
 * @param alarms all alarms
 * @param cues the steps that are due
 * @param probe whether the bowl's probe is in the chocolate
 * @param storeTrouble what the journal last complained of, while it does
 * @param undoable what the maker's last act changed
 */
public record State(
        long inputs,
        Instant started,
        Instant at,
        Optional<Setup> changedSetup,
        Tracks tracks,
        Window window,
        Optional<Estimate> estimate,
        Batch batch,
        Coasting coasting,
        Optional<Forecast> forecast,
        AlarmBank alarms,
        CueBoard cues,
        ProbePlace probe,
        Optional<StoreTrouble.What> storeTrouble,
        Optional<Undoable> undoable) {
    public State {
        Objects.requireNonNull(started, "started");
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(changedSetup, "changedSetup");
        Objects.requireNonNull(tracks, "tracks");
        Objects.requireNonNull(window, "window");
        Objects.requireNonNull(estimate, "estimate");
        Objects.requireNonNull(batch, "batch");
        Objects.requireNonNull(coasting, "coasting");
        Objects.requireNonNull(forecast, "forecast");
        Objects.requireNonNull(alarms, "alarms");
        Objects.requireNonNull(cues, "cues");
        Objects.requireNonNull(probe, "probe");
        Objects.requireNonNull(storeTrouble, "storeTrouble");
        Objects.requireNonNull(undoable, "undoable");
    }

    /** The set-up in force: the header's, unless the maker has changed it since. */
    public Setup setupInForce(Setup header) {
        return changedSetup.orElse(header);
    }
}
