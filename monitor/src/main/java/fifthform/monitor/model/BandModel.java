package fifthform.monitor.model;

import fifthform.curves.alarm.AlarmState;
import fifthform.curves.alarm.Priority;
import fifthform.curves.alarm.Standing;
import fifthform.curves.cue.CueId;
import fifthform.curves.cue.OpenCue;
import fifthform.curves.engine.State;
import fifthform.curves.engine.Tracks;
import fifthform.curves.estimate.Estimate;
import fifthform.curves.input.AlarmId;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.input.ProbeFault;
import fifthform.curves.input.ProbeFault.Cause;
import fifthform.curves.recipe.Phase;
import fifthform.curves.setup.BowlMaterial;
import fifthform.curves.setup.Role;
import fifthform.curves.setup.Setup;
import fifthform.curves.signal.Doubt;
import fifthform.curves.situation.Reason;
import fifthform.curves.situation.Reason.Figure;
import fifthform.curves.situation.Reason.Rule;
import fifthform.monitor.model.WatchPicture.AlarmRow;
import fifthform.monitor.model.WatchPicture.Band;
import fifthform.monitor.model.WatchPicture.Direction;
import fifthform.monitor.model.WatchPicture.Tone;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.CueText;
import fifthform.monitor.texts.LiveText;
import fifthform.monitor.texts.WatchText;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Supplier;

/** What to do now: the worst alarm, else the cue that is due, else what goes on quietly. */
final class BandModel {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    /** Steps that stand for minutes are part of the quiet screen; the others are due now. */
    private static final List<CueId> LOUDEST_FIRST = List.of(
            CueId.LIFT_NOW,
            CueId.OFF_NOW,
            CueId.STOP_COOLING,
            CueId.MELT_FIRST,
            CueId.MELTED,
            CueId.SEED_NOW,
            CueId.SEED_OUT,
            CueId.CRYSTALS_ENOUGH,
            CueId.WARM_UP,
            CueId.WEAK_BATH,
            CueId.PUT_BACK,
            CueId.GET_READY,
            CueId.THICKENS_SOON,
            CueId.TOUCH_OF_WARMTH,
            CueId.TOUCH_OF_WARM_AIR,
            CueId.BOX_WARMER,
            CueId.BOX_COOLER,
            CueId.HOLD_OVER,
            CueId.KEEP_FLUID,
            CueId.IN_RANGE,
            CueId.WIPE_AND_STIR);

    /** Steps that warm the chocolate. */
    private static final List<CueId> WARMING = List.of(
            CueId.CRYSTALS_ENOUGH,
            CueId.WARM_UP,
            CueId.PUT_BACK,
            CueId.TOUCH_OF_WARMTH,
            CueId.TOUCH_OF_WARM_AIR,
            CueId.BOX_WARMER);

    private final Setup setup;
    private final State state;
    private final Phrases phrases;
    private final Units units;
    private final ZoneId zone;
    private final CalmModel calm;

    BandModel(Setup setup, State state, Phrases phrases, Look look) {
        this.setup = setup;
        this.state = state;
        this.phrases = phrases;
        this.units = look.units();
        this.zone = look.zone();
        this.calm = new CalmModel(setup, state, phrases, units);
    }

    Band band() {
        return fromLoudest(this::alarm, this::cue, calm::band);
    }

    /** Why the band says so, in sentences with figures. */
    List<String> why() {
        return fromLoudest(
                id -> meltedOut(id)
                        .map(MeltedOut::why)
                        .or(() -> state.alarms().of(id).reason().map(r -> ReasonWords.of(asItIsNow(r), units)))
                        .orElse(List.of()),
                id -> Pouring.isInVain(id, state, setup.recipe())
                        ? calm.why()
                        : ReasonWords.of(due(id).reason(), units),
                calm::why);
    }

    /** An alarm keeps the figures of the last moment that was past its limit; within its deadband they are not of now. */
    private Reason asItIsNow(Reason reason) {
        OptionalDouble then = reason.figure(Figure.CHOCOLATE_C);
        OptionalDouble limit = reason.figure(Figure.LIMIT_C);
        Optional<Estimate> now = state.estimate().filter(Estimate::isUsable);
        if (reason.rule() != Rule.PAST_A_LIMIT || then.isEmpty() || limit.isEmpty() || now.isEmpty()) return reason;
        double past = now.get().chocolateCelsius() - limit.getAsDouble();
        return reason.with(Figure.CHOCOLATE_C, now.get().chocolateCelsius())
                .with(Figure.RATE_K_PER_MIN, now.get().rateKelvinPerMinute())
                .with(Figure.PAST_LIMIT_K, then.getAsDouble() >= limit.getAsDouble() ? past : -past);
    }

    private Optional<MeltedOut> meltedOut(AlarmId id) {
        return MeltedOut.of(id, state, setup.recipe(), phrases, units);
    }

    private <T> T fromLoudest(Function<AlarmId, T> alarm, Function<CueId, T> cue, Supplier<T> nothing) {
        // A passed alarm waits in the strip to be seen; what is to be done now is something else by now.
        Optional<AlarmId> worst = alarmsWorstFirst().stream()
                .filter(id -> !hasPassed(id) && !isAnswered(id))
                .findFirst();
        if (worst.isPresent() && state.alarms().of(worst.get()).priority() != Priority.ADVISE)
            return alarm.apply(worst.get());
        Optional<CueId> due =
                LOUDEST_FIRST.stream().filter(state.cues()::isOpen).findFirst();
        if (due.isPresent()) return cue.apply(due.get());
        return worst.map(alarm).orElseGet(nothing);
    }

    /** What is too cold is best answered by the warmth that is due: the step says how much. */
    private boolean isAnswered(AlarmId id) {
        return id == AlarmId.OVER_COOLED && WARMING.stream().anyMatch(state.cues()::isOpen);
    }

    /** All alarms that stand or are set aside, for the strip. */
    List<AlarmRow> rows() {
        List<AlarmRow> rows =
                new ArrayList<>(alarmsWorstFirst().stream().map(this::row).toList());
        for (AlarmId id : AlarmId.values())
            if (state.alarms().of(id).state() instanceof AlarmState.Shelved shelved) rows.add(aside(id, shelved));
        return List.copyOf(rows);
    }

    private List<AlarmId> alarmsWorstFirst() {
        Comparator<AlarmId> unseenFirst = Comparator.comparing(id -> !isNew(id));
        Comparator<AlarmId> worstFirst = Comparator.comparing(
                        (AlarmId id) -> state.alarms().of(id).priority())
                .reversed();
        // Past the limit "soon" is no longer true, though the warning before it still stands.
        Comparator<AlarmId> pastTheLimitFirst = Comparator.comparing(id -> id != AlarmId.MELT_OUT);
        Comparator<AlarmId> passedLast = Comparator.comparing(this::hasPassed);
        return state.alarms().standing().stream()
                .sorted(passedLast
                        .thenComparing(worstFirst)
                        .thenComparing(unseenFirst)
                        .thenComparing(pastTheLimitFirst))
                .toList();
    }

    private Band alarm(AlarmId id) {
        Standing standing = state.alarms().of(id);
        return new Band(
                tone(standing.priority()), direction(id), headline(id, standing), detail(id, standing), isNew(id));
    }

    private AlarmRow row(AlarmId id) {
        Standing standing = state.alarms().of(id);
        return new AlarmRow(tone(standing.priority()), direction(id), words(id, standing), word(standing.state()));
    }

    /** What it is and what to do; once it is over, what it was, and no order any more. */
    private String words(AlarmId id, Standing standing) {
        if (standing.state() instanceof AlarmState.ReturnedUnacknowledged passed)
            return phrases.passed(id, CLOCK.format(passed.returned().atZone(zone)));
        String what = meltedOut(id).map(MeltedOut::peak).orElseGet(() -> detail(id, standing));
        return headline(id, standing) + " · " + what;
    }

    /** Without a symbol, and with the time until it comes back by itself. */
    private AlarmRow aside(AlarmId id, AlarmState.Shelved shelved) {
        String left = Spans.words(Duration.between(state.at(), shelved.until()));
        return new AlarmRow(
                Tone.CALM, Direction.NONE, headline(id, state.alarms().of(id)), LiveText.ASIDE_LEFT.say(left));
    }

    /** An alarm in a few words; those about the probe say what is wrong with it. */
    String headline(AlarmId id, Standing standing) {
        Optional<String> ofProbe =
                doubt(id).map(ProbePhrases::headline).or(() -> fault(id).map(ProbePhrases::headline));
        return id == AlarmId.NOT_RECORDING
                ? phrases.storeHeadline(state.storeTrouble())
                : ofProbe.or(() -> asThingsStand(id))
                        .or(() -> meltedOut(id).map(MeltedOut::headline))
                        .orElseGet(() -> phrases.headline(id, standing.figureCelsius()));
    }

    /** What is done already, is past, or would be in vain needs another word. */
    private Optional<String> asThingsStand(AlarmId id) {
        Place place = state.batch().place();
        if (id == AlarmId.OVER_COOLED && place == Place.TABLE) return Optional.of(phrases.tooColdOffTheWater());
        if (id == AlarmId.BATH_HOT && place != Place.BATH) return Optional.of(CueText.BATH_TOO_HOT_COOL_IT.say());
        if (id == AlarmId.NEAR_MELT_OUT && state.alarms().standing().contains(AlarmId.MELT_OUT))
            return Optional.of(CueText.NEAR_MELT_OUT_COOL_NOW.say());
        return isWarmthInVain(id) ? Optional.of(phrases.tooFew()) : Optional.empty();
    }

    private boolean isWarmthInVain(AlarmId id) {
        return id == AlarmId.TOO_COOL && Pouring.isTooFew(state, setup.recipe());
    }

    private String detail(AlarmId id, Standing standing) {
        Optional<String> ofProbe = doubt(id)
                .map(doubt -> ProbePhrases.detail(doubt, phrases.keys()))
                .or(() -> fault(id).map(ProbePhrases::detail));
        return id == AlarmId.NOT_RECORDING
                ? phrases.storeDetail(state.storeTrouble())
                : ofProbe.or(() -> meltedOut(id).map(MeltedOut::detail))
                        .or(() -> isWarmthInVain(id) ? Optional.of(phrases.calmAside(Phase.COOL)) : Optional.empty())
                        .or(() ->
                                isAboutNow(id) ? chocolate().map(now -> phrases.detailNow(id, now)) : Optional.empty())
                        .orElseGet(() -> phrases.detail(id, standing.figureCelsius()));
    }

    /** Their figure is the chocolate itself: what the numeral says must not be called past, nor another figure stand beside it. */
    private static boolean isAboutNow(AlarmId id) {
        return switch (id) {
            case OVER_RANGE, NEAR_MELT_OUT, MELT_OUT, TOO_COOL, MELT_TOO_HOT -> true;
            case HEADING_OVER,
                    HEADING_UNDER,
                    OVER_COOLED,
                    BATH_HOT,
                    PROBE_FAULT,
                    NO_READING,
                    READING_DOUBTFUL,
                    PROBE_OUT,
                    NOT_RECORDING -> false;
        };
    }

    private Optional<Double> chocolate() {
        return state.estimate().filter(Estimate::isUsable).map(Estimate::chocolateCelsius);
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
        if (alarm instanceof AlarmState.Unacknowledged) return WatchText.NEW.say();
        if (alarm instanceof AlarmState.ReturnedUnacknowledged) return WatchText.PASSED.say();
        return WatchText.KNOWN.say();
    }

    private Band cue(CueId id) {
        OpenCue open = due(id);
        if (Pouring.isInVain(id, state, setup.recipe()))
            return new Band(Tone.CUE, Direction.NONE, phrases.tooFew(), phrases.calmAside(Phase.COOL), false);
        String headline = phrases.headline(id, open, state.batch().phase());
        return new Band(Tone.CUE, Direction.NONE, headline, aside(id, open), false);
    }

    /** The step with its reason as it is to be told: a stay in cold water has its seconds only as its figure. */
    private OpenCue due(CueId id) {
        OpenCue open = state.cues().open().get(id);
        Reason reason = open.reason();
        if (id == CueId.PUT_BACK && open.figure().isPresent())
            reason = reason.with(Figure.DIP_S, open.figure().getAsDouble());
        return new OpenCue(open.since(), open.figure(), reason);
    }

    /** The caution comes at the moment at which the hands are about to do it. */
    private String aside(CueId id, OpenCue open) {
        Standing bath = state.alarms().of(AlarmId.BATH_HOT);
        if (WARMING.contains(id) && bath.state().isStanding()) return detail(AlarmId.BATH_HOT, bath);
        BowlMaterial bowl = setup.bowl().material();
        boolean mayCrack = bowl == BowlMaterial.GLASS || bowl == BowlMaterial.UNKNOWN;
        return id == CueId.MELTED && mayCrack ? phrases.glassCaution() : phrases.aside(id, open);
    }

    private boolean isNew(AlarmId id) {
        return state.alarms().of(id).state().isNew();
    }

    private boolean hasPassed(AlarmId id) {
        return state.alarms().of(id).state() instanceof AlarmState.ReturnedUnacknowledged;
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
