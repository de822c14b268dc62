package fifthform.monitor.model;

import fifthform.curves.alarm.AlarmState;
import fifthform.curves.alarm.Priority;
import fifthform.curves.alarm.Standing;
import fifthform.curves.cue.CueId;
import fifthform.curves.cue.OpenCue;
import fifthform.curves.engine.State;
import fifthform.curves.engine.Tracks;
import fifthform.curves.forecast.Forecast;
import fifthform.curves.input.AlarmId;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.input.ProbeFault;
import fifthform.curves.input.ProbeFault.Cause;
import fifthform.curves.recipe.Phase;
import fifthform.curves.setup.BowlMaterial;
import fifthform.curves.setup.Role;
import fifthform.curves.signal.Doubt;
import fifthform.curves.situation.ProbePlace;
import fifthform.monitor.model.WatchPicture.AlarmRow;
import fifthform.monitor.model.WatchPicture.Band;
import fifthform.monitor.model.WatchPicture.Direction;
import fifthform.monitor.model.WatchPicture.Tone;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What to do now: the worst alarm, else the cue that is due, else what goes on quietly. */
final class BandModel {
    private final State state;
    private final Phrases phrases;
    private final BowlMaterial bowl;

    BandModel(State state, Phrases phrases, BowlMaterial bowl) {
        this.bowl = bowl;
        this.state = state;
        this.phrases = phrases;
    }

    Band band() {
        // A passed alarm waits in the strip to be seen; what is to be done now is something else by now.
        Optional<AlarmId> worst =
                alarmsWorstFirst().stream().filter(id -> !hasPassed(id)).findFirst();
        if (worst.isPresent() && state.alarms().of(worst.get()).priority() != Priority.ADVISE)
            return alarm(worst.get());
        Optional<Band> cue = cue();
        if (cue.isPresent()) return cue.get();
        return worst.map(this::alarm).orElseGet(this::calm);
    }

    /** All alarms that stand or are set aside, for the strip. */
    List<AlarmRow> rows() {
        return alarmsWorstFirst().stream().map(this::row).toList();
    }

    private List<AlarmId> alarmsWorstFirst() {
        Comparator<AlarmId> unseenFirst = Comparator.comparing(id -> !isNew(id));
        Comparator<AlarmId> worstFirst = Comparator.comparing(
                        (AlarmId id) -> state.alarms().of(id).priority())
                .reversed();
        Comparator<AlarmId> passedLast = Comparator.comparing(this::hasPassed);
        return state.alarms().standing().stream()
                .sorted(passedLast.thenComparing(worstFirst).thenComparing(unseenFirst))
                .toList();
    }

    private Band alarm(AlarmId id) {
        Standing standing = state.alarms().of(id);
        return new Band(
                tone(standing.priority()), direction(id), headline(id, standing), detail(id, standing), isNew(id));
    }

    private AlarmRow row(AlarmId id) {
        Standing standing = state.alarms().of(id);
        return new AlarmRow(
                tone(standing.priority()),
                direction(id),
                headline(id, standing) + " · " + detail(id, standing),
                word(standing.state()));
    }

    /** An alarm in a few words; those about the probe say what is wrong with it. */
    String headline(AlarmId id, Standing standing) {
        Optional<String> ofProbe =
                doubt(id).map(ProbePhrases::headline).or(() -> fault(id).map(ProbePhrases::headline));
        return id == AlarmId.NOT_RECORDING
                ? phrases.storeHeadline(state.storeTrouble())
                : ofProbe.orElseGet(() -> phrases.headline(id, standing.figureCelsius()));
    }

    private String detail(AlarmId id, Standing standing) {
        Optional<String> ofProbe =
                doubt(id).map(ProbePhrases::detail).or(() -> fault(id).map(ProbePhrases::detail));
        return id == AlarmId.NOT_RECORDING
                ? phrases.storeDetail(state.storeTrouble())
                : ofProbe.orElseGet(() -> phrases.detail(id, standing.figureCelsius()));
    }

    /** What the bowl's reading is in doubt of, also for a while after, so that the words do not change in between. */
    private Optional<Doubt> doubt(AlarmId id) {
        return id == AlarmId.READING_DOUBTFUL
                ? bowlEntry().flatMap(entry -> entry.judgement().lastDoubt())
                : Optional.empty();
    }

    /** Why the bowl's probe gives no temperature, as its adapter said last. */
    private Optional<Cause> fault(AlarmId id) {
        Optional<ProbeFault> last =
                bowlEntry().flatMap(entry -> entry.judgement().lastFault());
        if (id == AlarmId.PROBE_FAULT) return last.map(ProbeFault::cause).filter(Cause::isOfTheWire);
        if (id != AlarmId.NO_READING) return Optional.empty();
        Instant lastGood = bowlEntry().map(entry -> entry.track().lastGood()).orElse(Instant.MIN);
        return last.filter(fault -> fault.at().isAfter(lastGood)).map(ProbeFault::cause);
    }

    private Optional<Tracks.Entry> bowlEntry() {
        return state.tracks().entries().stream()
                .filter(entry -> entry.role() == Role.BOWL)
                .findFirst();
    }

    private static String word(AlarmState alarm) {
        if (alarm instanceof AlarmState.Unacknowledged) return "new";
        if (alarm instanceof AlarmState.ReturnedUnacknowledged) return "passed";
        return "known";
    }

    /** Steps that stand for minutes are part of the quiet screen; the others are due now. */
    private Optional<Band> cue() {
        Map<CueId, OpenCue> open = state.cues().open();
        for (CueId id : List.of(
                CueId.LIFT_NOW,
                CueId.OFF_NOW,
                CueId.STOP_COOLING,
                CueId.MELTED,
                CueId.SEED_NOW,
                CueId.CRYSTALS_ENOUGH,
                CueId.WEAK_BATH,
                CueId.PUT_BACK,
                CueId.GET_READY,
                CueId.THICKENS_SOON,
                CueId.TOUCH_OF_WARMTH,
                CueId.IN_RANGE,
                CueId.WIPE_AND_STIR)) {
            if (open.containsKey(id)) {
                String headline = phrases.headline(id, open.get(id), phase());
                return Optional.of(new Band(Tone.CUE, Direction.NONE, headline, aside(id, open.get(id)), false));
            }
        }
        return Optional.empty();
    }

    /** The caution comes at the moment at which the hands are about to do it. */
    private String aside(CueId id, OpenCue open) {
        boolean mayCrack = bowl == BowlMaterial.GLASS || bowl == BowlMaterial.UNKNOWN;
        return id == CueId.MELTED && mayCrack ? phrases.glassCaution() : phrases.aside(id, open);
    }

    private Band calm() {
        if (state.probe() == ProbePlace.OUT) {
            String since = state.probeOutSince()
                    .map(out -> "for " + Spans.words(Duration.between(out, state.at())) + " · ")
                    .orElse("");
            return new Band(
                    Tone.CALM, Direction.NONE, "Probe is out: nothing is watched", since + "P puts it back", false);
        }
        if (state.estimate().isEmpty()) {
            return new Band(Tone.CALM, Direction.NONE, "Waiting for the first reading", "", false);
        }
        OpenCue stir = state.cues().open().get(CueId.STIR_ON);
        String headline = stir == null ? phrases.calm(phase()) : phrases.headline(CueId.STIR_ON, stir, phase());
        String aside = stir == null
                ? soon().or(this::held).orElse(phrases.calmAside(phase()))
                : phrases.aside(CueId.STIR_ON, stir);
        return new Band(Tone.CALM, Direction.NONE, headline, aside, false);
    }

    /** How much of the melt's hold is behind. */
    private Optional<String> held() {
        Duration dwell = state.batch().progress().dwell();
        return phase() == Phase.MELT && !dwell.isZero() ? Optional.of(phrases.held(dwell)) : Optional.empty();
    }

    private Optional<String> soon() {
        Place place = state.batch().place();
        boolean waiting = (phase() == Phase.COOL && place == Place.COLD_WATER)
                || (phase() == Phase.REWARM && place == Place.BATH);
        return state.forecast()
                .filter(f -> waiting)
                .flatMap((Forecast f) -> f.secondsToLift(state.at()))
                .filter(s -> s > 0 && s < Duration.ofMinutes(20).toSeconds())
                .map(s -> (phase() == Phase.COOL ? "out in about " : "lift in about ") + Spans.about(s));
    }

    private boolean isNew(AlarmId id) {
        return state.alarms().of(id).state().isNew();
    }

    private boolean hasPassed(AlarmId id) {
        return state.alarms().of(id).state() instanceof AlarmState.ReturnedUnacknowledged;
    }

    private Phase phase() {
        return state.batch().phase();
    }

    private static Tone tone(Priority priority) {
        return switch (priority) {
            case URGENT -> Tone.URGENT;
            case PROMPT -> Tone.PROMPT;
            case ADVISE -> Tone.ADVISE;
        };
    }

    private static Direction direction(AlarmId id) {
        return switch (Sides.of(id)) {
            case TOO_HOT -> Direction.UP;
            case TOO_COLD -> Direction.DOWN;
            case NEITHER -> Direction.NONE;
        };
    }
}
