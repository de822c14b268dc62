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
import fifthform.monitor.model.WatchPicture.Band;
import fifthform.monitor.model.WatchPicture.Direction;
import fifthform.monitor.model.WatchPicture.Tone;
import fifthform.monitor.settings.Units;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What stands in the band while nothing is due: what goes on, how long still, and how unsure that is. */
final class CalmModel {
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
                    .map(out -> "for " + Spans.words(Duration.between(out, state.at())) + " · ")
                    .orElse("");
            return calm(
                    "Probe is out: nothing is watched", since + phrases.keys().fill("{probe-out} puts it back"));
        }
        if (state.estimate().isEmpty()) return calm("Waiting for the first reading", "");
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
            String headline = isTold() ? "Off in about " + Spans.about(left(dip)) : "Over the bath: count";
            return calm(headline, "of " + Spans.about(dip.seconds()) + " over the bath");
        });
    }

    private Optional<Dip> counted() {
        return state.cues().dips().dip().filter(dip -> dip.stage() == Stage.OVER_BATH && isCounted(dip));
    }

    private String counting(Dip dip) {
        String asked = Spans.about(dip.seconds());
        return isTold()
                ? "A dip is being counted: off in about " + Spans.about(left(dip)) + ", of " + asked + "."
                : "A dip of about " + asked + " goes on: count them, then off; no key said when it began.";
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
                .map(turn -> calm("Unsure: short dips, lift at the first rise", "turns at " + band(turn)));
    }

    /** Off the bath after a dip: what comes of it is still under way. */
    private Optional<Band> looking() {
        boolean dipped = state.cues()
                .dips()
                .dip()
                .filter(dip -> dip.stage() == Stage.LOOKING)
                .isPresent();
        return state.forecast()
                .filter(f -> dipped)
                .map(f -> calm(
                        "Stir, and look where it turns",
                        "about " + units.withUnit(f.ifLifted().celsius())));
    }

    private Band going() {
        return calm(phrases.calm(phase()), soon().or(this::held).orElseGet(() -> phrases.calmAside(phase())));
    }

    /** Whether a turning point is too unsure for one lift, where the maker lets the program choose. */
    static boolean isWide(Setup setup, Outlook turn) {
        return setup.approach() == Approach.TOUCHES_WHERE_UNSURE
                && turn.upperCelsius() - turn.lowerCelsius() > CueRules.UNSURE_KELVIN;
    }

    /** For example {@code 31.1 to 33.2 °C}. */
    private String band(Outlook turn) {
        return units.oneDecimal(turn.lowerCelsius()) + " to " + units.withUnit(turn.upperCelsius());
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
                .map(s -> (phase() == Phase.COOL ? "out in about " : "lift in about ") + Spans.about(s));
    }

    private Optional<Double> secondsToLift() {
        Place place = state.batch().place();
        boolean waiting = (phase() == Phase.COOL && place == Place.COLD_WATER)
                || (phase() == Phase.REWARM && place == Place.BATH);
        return state.forecast().filter(f -> waiting).flatMap(f -> f.secondsToLift(state.at()));
    }

    /** What is waited for, where nothing is due. */
    List<String> why() {
        if (state.estimate().isEmpty()) return List.of();
        if (state.probe() == ProbePlace.OUT) return List.of("The probe was said to be out, so nothing is watched.");
        List<String> said = new ArrayList<>();
        Optional<Dip> counted = counted();
        said.add(counted.map(this::counting).orElse("Nothing is due yet."));
        stir().ifPresentOrElse(stir -> stirring(stir, said), () -> waiting(said));
        return said;
    }

    private void stirring(OpenCue stir, List<String> said) {
        Recipe recipe = setup.recipe();
        said.addAll(ReasonWords.of(stir.reason(), units));
        said.add("Crystals take " + Spans.words(recipe.cool().dwell()) + " at "
                + phrases.range(recipe.cool().range()) + ".");
    }

    private void waiting(List<String> said) {
        Recipe recipe = setup.recipe();
        switch (phase()) {
            case MELT ->
                said.add("It is to be held at "
                        + units.withUnit(recipe.melt().range().lowCelsius())
                        + " or more for " + Spans.words(recipe.melt().dwell()) + "; so far "
                        + Spans.words(state.batch().progress().dwell()) + ".");
            case COOL -> turn(said, "Out of the water", recipe.cool().range());
            case SEED ->
                turn(
                        said,
                        "Lifted",
                        isOnTheWayUp() ? recipe.work().range() : recipe.cool().range());
            case REWARM, WORK -> turn(said, "Lifted", recipe.work().range());
            case REST -> said.add("The batch is done.");
        }
    }

    private boolean isOnTheWayUp() {
        return state.cues().dips().begunAt().isPresent();
    }

    private void turn(List<String> said, String act, CelsiusRange range) {
        state.cues()
                .dips()
                .dip()
                .filter(dip -> dip.stage() == Stage.LOOKING)
                .ifPresent(dip -> said.add("The dip lasted about " + Spans.about(dip.seconds())
                        + "; where it turns shows what a second over this bath gives."));
        boolean wet = state.batch().place() != Place.TABLE;
        boolean coasts = wet || state.coasting().lift().isPresent();
        state.forecast()
                .filter(f -> coasts)
                .ifPresent(f -> said.add((wet ? act + " now it turns" : "It turns") + " at about "
                        + units.withUnit(f.ifLifted().celsius()) + ", band " + band(f.ifLifted()) + "."));
        said.add("Range " + phrases.range(range) + ".");
        turnIfLifted()
                .filter(turn -> isWide(setup, turn))
                .ifPresent(turn -> said.add("The band is "
                        + units.difference(turn.upperCelsius() - turn.lowerCelsius())
                        + " wide, too unsure for one lift: short dips, and look where each turns."));
        double coast = state.coasting().coast().seconds();
        double spread = state.coasting().coast().logSpread();
        int lifts = state.coasting().coast().liftsSeen();
        String from = lifts == 0 ? "no lift seen yet, as a guess " : "";
        said.add("This bowl's coast: " + from + CoastWords.withBand(coast, spread, units)
                + (lifts == 0 ? "" : ", " + CoastWords.from(lifts)) + ".");
    }

    private Optional<OpenCue> stir() {
        return Optional.ofNullable(state.cues().open().get(CueId.STIR_ON));
    }

    private Phase phase() {
        return state.batch().phase();
    }
}
