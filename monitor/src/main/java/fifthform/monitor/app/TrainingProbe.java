package fifthform.monitor.app;

import fifthform.curves.input.Input;
import fifthform.curves.recipe.Recipe;
import fifthform.monitor.intake.SessionClock;
import fifthform.monitor.practice.Debrief;
import fifthform.monitor.practice.OwnHands;
import fifthform.monitor.practice.PracticePace;
import fifthform.monitor.practice.Training;
import fifthform.simulator.device.RunningKitchen;
import fifthform.simulator.scenario.Scenario;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;

/** A simulated bowl in the hands of whoever sits at the keys, through real bytes. */
final class TrainingProbe extends KitchenProbe {
    private final Recipe recipe;
    private final AtomicReference<Optional<Training>> training = new AtomicReference<>(Optional.empty());

    TrainingProbe(Scenario scenario, Recipe recipe, double speed, PracticePace.AtCues atCues) {
        super(scenario, speed, atCues);
        this.recipe = Objects.requireNonNull(recipe, "recipe");
    }

    @Override
    public String notice() {
        return Notices.ofTraining();
    }

    @Override
    public Wiring wire(SessionClock clock, Consumer<Input> hands) throws Refusal {
        OwnHands own = OwnHands.of(scenario().habits().plan());
        RunningKitchen kitchen = scenario().startWith(own, clock.instant());
        Training begun = new Training(kitchen, own, recipe, beginning(), holding());
        training.set(Optional.of(begun));
        return wired(kitchen, clock, begun).trained(begun);
    }

    /** By which it is judged. */
    Recipe recipe() {
        return recipe;
    }

    /** How it went; empty where it never began. */
    Optional<Debrief> debrief() {
        return training.get().map(Training::debrief);
    }
}
