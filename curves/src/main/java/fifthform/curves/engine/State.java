package fifthform.curves.engine;

import fifthform.curves.alarm.AlarmBank;
import fifthform.curves.crystal.Temper;
import fifthform.curves.cue.CueBoard;
import fifthform.curves.estimate.Estimate;
import fifthform.curves.forecast.Calibration;
import fifthform.curves.forecast.Coasting;
import fifthform.curves.forecast.Forecast;
import fifthform.curves.forecast.Hindsight;
import fifthform.curves.input.MakerAction.SampleProved;
import fifthform.curves.input.StoreTrouble;
import fifthform.curves.network.Insight;
import fifthform.curves.phase.Batch;
import fifthform.curves.setup.Setup;
import fifthform.curves.signal.Window;
import fifthform.curves.situation.ProbePlace;
import fifthform.curves.thermocouple.Budget;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * All that the engine knows after some inputs.
 *
 * @param inputs how many inputs it has taken; the sequence number of the last
 * @param started when the session started
 * @param at the time of the last input; never goes back
 * @param told what the maker and the journal have said
 * @param tracks what is known of each probe
 * @param window the recent curve of the chocolate
 * @param estimate where the chocolate is; empty before the first reading
 * @param insight what the network makes of it; has heard nothing where there is no network
 * @param batch phase and place
 * @param coasting what is known of the bowl's coast
 * @param calibration how wide the network's bands must be in this kitchen
 * @param forecast where it is going; empty where no good reading says
 * @param hindsight how the forecasts so far came out
 * @param crystals what the temperature did to the crystals; empty for chocolate that the model does not hold for
 * @param alarms all alarms
 * @param cues the steps that are due
 */
public record State(
        long inputs,
        Instant started,
        Instant at,
        Told told,
        Tracks tracks,
        Window window,
        Optional<Estimate> estimate,
        Insight insight,
        Batch batch,
        Coasting coasting,
        Calibration calibration,
        Optional<Forecast> forecast,
        Hindsight hindsight,
        Optional<Temper> crystals,
        AlarmBank alarms,
        CueBoard cues) {
    public State {
        Objects.requireNonNull(started, "started");
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(told, "told");
        Objects.requireNonNull(tracks, "tracks");
        Objects.requireNonNull(window, "window");
        Objects.requireNonNull(estimate, "estimate");
        Objects.requireNonNull(insight, "insight");
        Objects.requireNonNull(batch, "batch");
        Objects.requireNonNull(coasting, "coasting");
        Objects.requireNonNull(calibration, "calibration");
        Objects.requireNonNull(forecast, "forecast");
        Objects.requireNonNull(hindsight, "hindsight");
        Objects.requireNonNull(crystals, "crystals");
        Objects.requireNonNull(alarms, "alarms");
        Objects.requireNonNull(cues, "cues");
    }

    /** The set-up in force: the header's, unless the maker has changed it since. */
    public Setup setupInForce(Setup header) {
        return told.changedSetup().orElse(header);
    }

    /** How far the bowl's last reading can be trusted, part by part; empty before the first. */
    public Optional<Budget> budget(Setup header) {
        return tracks.budget(setupInForce(header).bowlProbe());
    }

    /** Whether the bowl's probe is in the chocolate, as far as the maker said. */
    public ProbePlace probe() {
        return told.probe();
    }

    /** Since when the bowl's probe is out of the chocolate, while it is. */
    public Optional<Instant> probeOutSince() {
        return told.outSince();
    }

    /** What other thermometers said, newest first. */
    public List<OtherReading> otherReadings() {
        return told.others();
    }

    /** The last sample that was said to be proved. */
    public Optional<SampleProved> proved() {
        return told.proved();
    }

    /** What the journal last complained of, while it does. */
    public Optional<StoreTrouble.What> storeTrouble() {
        return told.storeTrouble();
    }

    /** What the maker's last act changed, and could be taken back. */
    public Optional<Undoable> undoable() {
        return told.undoable();
    }

    /** One more input; time never goes back: a late one counts as of the moment the engine learns of it. */
    State heard(Instant inputAt) {
        Instant now = inputAt.isBefore(at) ? at : inputAt;
        return new State(
                inputs + 1,
                started,
                now,
                told,
                tracks,
                window,
                estimate,
                insight,
                batch,
                coasting,
                calibration,
                forecast,
                hindsight,
                crystals,
                alarms,
                cues);
    }

    State withTold(Told other) {
        return with(other, tracks, batch, coasting, crystals, alarms, cues);
    }

    State withTracks(Tracks other) {
        return with(told, other, batch, coasting, crystals, alarms, cues);
    }

    State withBatch(Batch other) {
        return with(told, tracks, other, coasting, crystals, alarms, cues);
    }

    State withCoasting(Coasting other) {
        return with(told, tracks, batch, other, crystals, alarms, cues);
    }

    State withCrystals(Optional<Temper> other) {
        return with(told, tracks, batch, coasting, other, alarms, cues);
    }

    State withAlarms(AlarmBank other) {
        return with(told, tracks, batch, coasting, crystals, other, cues);
    }

    State withCues(CueBoard other) {
        return with(told, tracks, batch, coasting, crystals, alarms, other);
    }

    /** What an input can say by itself; the rest is concluded by the engine. */
    private State with(
            Told otherTold,
            Tracks otherTracks,
            Batch otherBatch,
            Coasting otherCoasting,
            Optional<Temper> otherCrystals,
            AlarmBank otherAlarms,
            CueBoard otherCues) {
        return new State(
                inputs,
                started,
                at,
                otherTold,
                otherTracks,
                window,
                estimate,
                insight,
                otherBatch,
                otherCoasting,
                calibration,
                forecast,
                hindsight,
                otherCrystals,
                otherAlarms,
                otherCues);
    }
}
