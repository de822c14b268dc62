package fifthform.curves.review;

import fifthform.curves.alarm.AlarmConditions;
import fifthform.curves.engine.Event;
import fifthform.curves.engine.State;
import fifthform.curves.engine.Step;
import fifthform.curves.estimate.Estimate;
import fifthform.curves.input.AlarmId;
import fifthform.curves.input.Input;
import fifthform.curves.recipe.Phase;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.Setup;
import fifthform.curves.situation.ProbePlace;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;

/** One step as the looks for causes see it. Lives within one {@link Causes#with}. */
final class Glimpse {
    /** Between two readings no more than this counts as spent like the second of them. */
    private static final Duration LONGEST_STEP = Duration.ofSeconds(5);

    final Setup setup;
    final State before;
    final State after;
    final Step step;
    final Input input;
    final Instant now;
    final Phase phase;
    final Phase phaseBefore;

    /** A new reading that could be trusted, °C. */
    final OptionalDouble celsius;

    /** Time since the reading before it, at most some seconds. */
    final Duration passed;

    Glimpse(Setup setup, State before, Input input, Step step) {
        this.setup = setup;
        this.before = before;
        this.after = step.after();
        this.step = step;
        this.input = input;
        now = after.at();
        phase = after.batch().phase();
        phaseBefore = before.batch().phase();
        Optional<Estimate> news = after.estimate()
                .filter(Estimate::isUsable)
                .filter(e -> after.probe() == ProbePlace.IN_THE_CHOCOLATE)
                .filter(e ->
                        before.estimate().filter(b -> b.at().equals(e.at())).isEmpty());
        celsius = news.map(e -> OptionalDouble.of(e.chocolateCelsius())).orElse(OptionalDouble.empty());
        Duration since = before.estimate()
                .flatMap(b -> news.map(n -> Duration.between(b.at(), n.at())))
                .orElse(Duration.ZERO);
        passed = since.compareTo(LONGEST_STEP) > 0 ? LONGEST_STEP : since;
    }

    Recipe recipe() {
        return setup.recipe();
    }

    boolean entered(Phase which) {
        return phase == which && phaseBefore != which;
    }

    /** Whether crystals are being made. */
    static boolean isCool(Phase phase) {
        return phase == Phase.COOL || phase == Phase.SEED;
    }

    static boolean isHot(Phase phase) {
        return phase == Phase.REWARM || phase == Phase.WORK;
    }

    boolean raised(AlarmId alarm) {
        for (Event event : step.events()) {
            if (event instanceof Event.AlarmRaised raised && raised.alarm() == alarm) return true;
        }
        return false;
    }

    boolean cleared(AlarmId alarm) {
        for (Event event : step.events()) {
            if (event instanceof Event.AlarmCleared cleared && cleared.alarm() == alarm) return true;
        }
        return false;
    }

    /** Below this it is cooled too deep, as the alarm has it, °C. */
    double tooDeepCelsius() {
        return recipe().cool().range().lowCelsius() - AlarmConditions.OVER_COOLED_KELVIN;
    }
}
