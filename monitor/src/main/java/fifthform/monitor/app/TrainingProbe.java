package fifthform.monitor.app;

import fifthform.curves.input.Input;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.Approach;
import fifthform.curves.setup.Beginning;
import fifthform.curves.setup.Bowl;
import fifthform.curves.setup.Holding;
import fifthform.curves.setup.Origin;
import fifthform.curves.setup.ProbeSetup;
import fifthform.monitor.intake.SessionClock;
import fifthform.monitor.practice.Debrief;
import fifthform.monitor.practice.OwnHands;
import fifthform.monitor.practice.PracticePace;
import fifthform.monitor.practice.Training;
import fifthform.simulator.device.RunningKitchen;
import fifthform.simulator.scenario.Scenario;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;

/** A simulated bowl in the hands of whoever sits at the keys, through real bytes. */
final class TrainingProbe implements ProbeChoice {
    private final Scenario scenario;
    private final Recipe recipe;
    private final double speed;
    private final PracticePace.AtCues atCues;
    private final AtomicReference<Optional<Training>> training = new AtomicReference<>(Optional.empty());

    TrainingProbe(Scenario scenario, Recipe recipe, double speed, PracticePace.AtCues atCues) {
        this.scenario = Objects.requireNonNull(scenario, "scenario");
        this.recipe = Objects.requireNonNull(recipe, "recipe");
        this.speed = speed;
        this.atCues = Objects.requireNonNull(atCues, "atCues");
    }

    @Override
    public Origin origin() {
        return Origin.SIMULATED;
    }

    @Override
    public List<ProbeSetup> probes() {
        return PracticeProbe.probes(scenario);
    }

    @Override
    public Approach approach() {
        return scenario.habits().plan().approach();
    }

    @Override
    public Beginning beginning() {
        return scenario.habits().plan().beginning();
    }

    @Override
    public Optional<Holding> holding() {
        return scenario.habits().plan().holding();
    }

    @Override
    public Optional<Bowl> bowl() {
        return Optional.of(scenario.bowl());
    }

    @Override
    public Optional<String> chocolate() {
        return Optional.of(scenario.chocolate());
    }

    @Override
    public String notice() {
        return Notices.ofTraining();
    }

    @Override
    public double usualSpeed() {
        return speed;
    }

    @Override
    public Wiring wire(SessionClock clock, Consumer<Input> hands) throws Refusal {
        OwnHands own = OwnHands.of(scenario.habits().plan());
        RunningKitchen kitchen = scenario.startWith(own, clock.instant());
        Training begun = new Training(kitchen, own, recipe, beginning(), holding());
        training.set(Optional.of(begun));
        PracticePace pace = new PracticePace(clock, speed, atCues);
        return PracticeProbe.wired(scenario, kitchen, clock, List.of(begun, pace), PracticeProbe.speed(pace))
                .trained(begun);
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
