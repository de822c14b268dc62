package fifthform.monitor.model;

import fifthform.curves.cue.Countdown;
import fifthform.curves.cue.CueId;
import fifthform.curves.cue.CueRules;
import fifthform.curves.cue.Dip;
import fifthform.curves.cue.Dip.Stage;
import fifthform.curves.cue.OpenCue;
import fifthform.curves.engine.State;
import fifthform.curves.forecast.Forecast;
import fifthform.curves.forecast.Outlook;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.phase.Evidence;
import fifthform.curves.recipe.CelsiusRange;
import fifthform.curves.recipe.Phase;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.Approach;
import fifthform.curves.setup.Setup;
import fifthform.curves.situation.ProbePlace;
import fifthform.curves.situation.Reason.Figure;
import fifthform.monitor.model.WatchPicture.Band;
import fifthform.monitor.model.WatchPicture.Direction;
import fifthform.monitor.model.WatchPicture.Tone;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.WatchText;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What stands in the band while nothing is due: what goes on, how long still, and how unsure that is. */
final class CalmModel {
    /** A sum so near the recipe's time is told as that, s. */
    private static final double SAME_HOLD_SECONDS = 30;

    private static final Duration SOON = Duration.ofMinutes(20);

    private final Setup setup;
    private final State state;
    private final Phrases phrases;
    private final Units units;

    CalmModel(Setup setup, State state, Phrases phrases, Units units) {
        this.setup = setup;
        this.state = state;
        this.phrases = phrases;
        this.units = units;
    }

    Band band() {
        if (state.probe() == ProbePlace.OUT) {
            String since = state.probeOutSince()
                    .map(out -> WatchText.FOR.say(Spans.words(Duration.between(out, state.at()))))
                    .orElse("");
            return calm(
                    WatchText.PROBE_IS_OUT_NOTHING_IS.say(),
                    since + phrases.keys().fill(WatchText.PROBE_OUT_PUTS_IT_BACK.say()));
        }
        if (state.estimate().isEmpty()) return calm(WatchText.WAITING_FOR_THE_FIRST_READING.say(), "");
        Optional<OpenCue> stir = stir();
        if (stir.isPresent())
            return calm(phrases.headline(CueId.STIR_ON, stir.get(), phase()), phrases.aside(CueId.STIR_ON, stir.get()));
        return dipping().or(this::unsure).or(this::looking).orElseGet(this::going);
    }

    private static Band calm(String headline, String aside) {
        return new Band(Tone.CALM, Direction.NONE, headline, aside, false);
    }

    /** Somebody counts the seconds of a dip: the screen counts along where it was told when they began. */
    private Optional<Band> dipping() {
        return counted().map(dip -> {
            String headline =
                    isTold() ? WatchText.OFF_IN_ABOUT.say(Spans.about(left(dip))) : WatchText.OVER_THE_BATH_COUNT.say();
            return calm(headline, WatchText.OF_OVER_THE_BATH.say(Spans.about(dip.seconds())));
        });
    }

    private Optional<Dip> counted() {
        return state.cues().dips().dip().filter(dip -> dip.stage() == Stage.OVER_BATH && isCounted(dip));
    }

    private String counting(Dip dip) {
        String asked = Spans.about(dip.seconds());
        return isTold()
                ? WatchText.A_DIP_IS_BEING_COUNTED_OFF.say(Spans.about(left(dip)), asked)
                : WatchText.A_DIP_OF_ABOUT_GOES_ON.say(asked);
    }

    private static boolean isCounted(Dip dip) {
        return dip.since().isAfter(dip.askedAt());
    }

    private boolean isTold() {
        return state.batch().contact().evidence() == Evidence.TOLD;
    }

    private double left(Dip dip) {
        return Math.max(0, dip.seconds() - seconds(dip.since(), state.at()));
    }

    private static double seconds(Instant from, Instant to) {
        return Duration.between(from, to).toMillis() / 1000.0;
    }

    /** The honest word where one lift would be a gamble. */
    private Optional<Band> unsure() {
        // On its first way up chocolate in temper stays on until told, see the cue that put it there.
        boolean firstWarming = setup.beginning().isInTemper()
                && state.cues().dips().begunAt().isEmpty()
                && state.cues().done().liftedAt().isEmpty();
        return turnIfLifted()
                .filter(turn -> !firstWarming && isWide(setup, turn))
                .map(turn -> calm(WatchText.UNSURE_SHORT_DIPS_LIFT_AT_THE.say(), WatchText.TURNS_AT.say(band(turn))));
    }

    /** Off the bath after a dip: what comes of it is still under way. */
    private Optional<Band> looking() {
        return state.forecast()
                .filter(f -> Ahead.isLooking(state))
                .map(f -> calm(
                        WatchText.STIR_AND_LOOK_WHERE_IT_TURNS.say(),
                        WatchText.ABOUT.say(units.withUnit(f.ifLifted().celsius()))));
    }

    private Band going() {
        if (Pouring.isTooFew(state, setup.recipe())) return calm(phrases.tooFew(), phrases.calmAside(Phase.COOL));
        if (phase() == Phase.WORK)
            return calm(Pouring.isProved(state) ? phrases.pour() : phrases.calm(Phase.WORK), leftToPour());
        return calm(
                phrases.calm(phase()), soon().or(this::held).orElseGet(() -> phrases.calmAside(Ahead.aimedFor(state))));
    }

    private String leftToPour() {
        OptionalDouble minutes = new HoldLine(setup, state).minutesToPour();
        return minutes.isPresent()
                ? WatchText.ABOUT_MIN_LEFT_TO_POUR.say(Math.max(1, Math.round(minutes.getAsDouble())))
                : phrases.calmAside(Phase.WORK);
    }

    /** Whether a turning point is too unsure for one lift, where the maker lets the program choose. */
    static boolean isWide(Setup setup, Outlook turn) {
        return setup.approach() == Approach.TOUCHES_WHERE_UNSURE
                && turn.upperCelsius() - turn.lowerCelsius() > CueRules.UNSURE_KELVIN;
    }

    /** For example {@code 31.1 to 33.2 °C}. */
    private String band(Outlook turn) {
        return WatchText.FROM_TO.say(units.oneDecimal(turn.lowerCelsius()), units.withUnit(turn.upperCelsius()));
    }

    /** Over the bath on the way up, the turning point that a lift would lead to. */
    private Optional<Outlook> turnIfLifted() {
        boolean warming = state.batch().place() == Place.BATH && (phase() == Phase.REWARM || phase() == Phase.WORK);
        return warming ? state.forecast().map(Forecast::ifLifted) : Optional.empty();
    }

    /** How much of the melt's hold is behind. */
    private Optional<String> held() {
        Duration dwell = state.batch().progress().dwell();
        return phase() == Phase.MELT && !dwell.isZero() ? Optional.of(phrases.held(dwell)) : Optional.empty();
    }

    /** Until the maker is told, so that it goes over into the countdown without a jump. */
    private Optional<String> soon() {
        double reaction = setup.reactionTime().toMillis() / 1000.0;
        Optional<Double> held = state.cues().lift().countdown().map(Countdown::seconds);
        return secondsToLift()
                .map(s -> held.orElse(s - reaction))
                .filter(s -> s > 0 && s < SOON.toSeconds())
                .map(s -> (phase() == Phase.COOL ? WatchText.OUT_IN_ABOUT.say() : WatchText.LIFT_IN_ABOUT.say())
                        + Spans.about(s));
    }

    private Optional<Double> secondsToLift() {
        Place place = state.batch().place();
        boolean waiting = (phase() == Phase.COOL && place == Place.COLD_WATER)
                || (phase() == Phase.REWARM && place == Place.BATH);
        return Ahead.course(state).filter(f -> waiting).flatMap(f -> f.secondsToLift(state.at()));
    }

    /** What is waited for, where nothing is due. */
    List<String> why() {
        if (state.estimate().isEmpty()) return List.of();
        if (state.probe() == ProbePlace.OUT) return List.of(WatchText.THE_PROBE_WAS_SAID_TO_BE.say());
        List<String> said = new ArrayList<>();
        Optional<Dip> counted = counted();
        if (stir().isPresent()) return stirring(stir().get());
        if (counted.isPresent()) said.add(counting(counted.get()));
        else if (phase() != Phase.WORK && !Pouring.isTooFew(state, setup.recipe()))
            said.add(WatchText.NOTHING_IS_DUE_YET.say());
        waiting(said);
        return said;
    }

    /** What is held and what is still to be held, with their sum where that is not the recipe's time. */
    private List<String> stirring(OpenCue stir) {
        Recipe recipe = setup.recipe();
        List<String> said = new ArrayList<>(ReasonWords.of(stir.reason(), units));
        String range = phrases.range(recipe.cool().range());
        double rule = recipe.cool().dwell().toSeconds();
        double all = stir.reason().figure(Figure.HELD_S).orElse(0)
                + 60 * stir.figure().orElse(0);
        WatchText takes = Math.abs(all - rule) <= SAME_HOLD_SECONDS
                ? WatchText.CRYSTALS_TAKE_AT
                : all > rule ? WatchText.CRYSTALS_TAKE_LONGER : WatchText.CRYSTALS_TAKE_LESS;
        said.add(takes.say(Spans.words(recipe.cool().dwell()), range, Spans.about(all)));
        return said;
    }

    private void waiting(List<String> said) {
        Recipe recipe = setup.recipe();
        switch (phase()) {
            case MELT ->
                said.add(WatchText.IT_IS_TO_BE_HELD_AT.say(
                        units.withUnit(recipe.melt().range().lowCelsius()),
                        Spans.words(recipe.melt().dwell()),
                        Spans.words(state.batch().progress().dwell())));
            case COOL ->
                turn(said, WatchText.OUT_OF_THE_WATER.say(), recipe.cool().range());
            case SEED, REWARM, WORK -> turn(said, WatchText.LIFTED.say(), LadderModel.band(recipe, state));
            case REST -> said.add(WatchText.THE_BATCH_IS_DONE.say());
        }
    }

    private void turn(List<String> said, String act, CelsiusRange range) {
        state.cues()
                .dips()
                .dip()
                .filter(dip -> dip.stage() == Stage.LOOKING)
                .ifPresent(dip -> said.add(WatchText.THE_DIP_LASTED_ABOUT_WHERE_IT.say(Spans.about(dip.seconds()))));
        boolean wet = state.batch().place() != Place.TABLE;
        Ahead.turn(state)
                .ifPresent(turn -> said.add(WatchText.TURNS_ABOUT_BAND.say(
                        wet ? WatchText.NOW_IT_TURNS.say(act) : WatchText.IT_TURNS.say(),
                        units.withUnit(turn.celsius()),
                        band(turn))));
        said.add(WatchText.RANGE.say(phrases.range(range)));
        turnIfLifted()
                .filter(turn -> isWide(setup, turn))
                .ifPresent(turn -> said.add(WatchText.THE_BAND_IS_WIDE_TOO_UNSURE.say(
                        units.difference(turn.upperCelsius() - turn.lowerCelsius()))));
        double coast = state.coasting().coast().seconds();
        double spread = state.coasting().coast().logSpread();
        int lifts = state.coasting().coast().liftsSeen();
        String from = lifts == 0 ? WatchText.NO_LIFT_SEEN_YET_AS_A.say() : "";
        said.add(WatchText.THIS_BOWLS_COAST.say(
                from, CoastWords.withBand(coast, spread, units), lifts == 0 ? "" : ", " + CoastWords.from(lifts)));
    }

    private Optional<OpenCue> stir() {
        return Optional.ofNullable(state.cues().open().get(CueId.STIR_ON));
    }

    private Phase phase() {
        return state.batch().phase();
    }
}
