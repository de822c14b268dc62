package fifthform.monitor.model;

import fifthform.curves.cue.Held;
import fifthform.curves.engine.State;
import fifthform.curves.estimate.Estimate;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.Holding;
import fifthform.curves.setup.Setup;
import fifthform.monitor.texts.HoldText;
import fifthform.monitor.texts.InWords;
import java.time.Duration;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** A planned hold on Watch: how long so far, until when, how much of it in range, how long it still pours. */
public final class HoldLine {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    /** So far under the range it is too thick to pour; as the cue about it has it. */
    private static final double TOO_THICK_KELVIN = 0.5;

    private static final double FALLING_KELVIN_PER_MINUTE = 0.05;
    private static final double LONGEST_MINUTES = 60;

    private final Setup setup;
    private final State state;

    HoldLine(Setup setup, State state) {
        this.setup = setup;
        this.state = state;
    }

    /** Empty where nothing is planned, or the range is not reached. */
    Optional<String> line(ZoneId zone) {
        Held held = state.cues().held();
        if (setup.holding().isEmpty() || held.since().isEmpty()) return Optional.empty();
        Holding plan = setup.holding().get();
        Duration so = held.time(state.at());
        String line = HoldText.HELD_SO_FAR.say(
                Spans.minutes(so),
                Spans.minutes(plan.time()),
                CLOCK.format(held.since().get().plus(plan.time()).atZone(zone)),
                percent(held));
        OptionalDouble left = minutesToPour();
        return Optional.of(
                left.isPresent()
                        ? line + " · " + HoldText.CAN_BE_POURED.say(Math.max(1, Math.round(left.getAsDouble())))
                        : line);
    }

    /** How long it can still be poured if no warmth comes, min; empty where it does not cool, or stays longer than an hour. */
    OptionalDouble minutesToPour() {
        Optional<Estimate> estimate = state.estimate().filter(Estimate::isUsable);
        Recipe recipe = setup.recipe();
        return estimate.filter(e -> e.rateKelvinPerMinute() < -FALLING_KELVIN_PER_MINUTE)
                .map(e -> (e.chocolateCelsius() - recipe.work().range().lowCelsius() + TOO_THICK_KELVIN)
                        / -e.rateKelvinPerMinute())
                .filter(left -> left > 0 && left < LONGEST_MINUTES)
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }

    /** For the end of a session; empty where nothing was held. */
    public static Optional<String> closing(Setup setup, State last) {
        Held held = last.cues().held();
        if (setup.holding().isEmpty()) return Optional.empty();
        if (held.since().isEmpty()) return Optional.of(HoldText.HOLD_NOT_BEGUN.say());
        return Optional.of(HoldText.HELD_IN_THE_END.say(
                Spans.words(held.time(last.at())),
                Spans.words(setup.holding().get().time()),
                InWords.of(setup.holding().get().warmth()),
                percent(held)));
    }

    private static String percent(Held held) {
        return Long.toString(Math.round(100 * held.insideFraction()));
    }
}
