package fifthform.monitor.app;

import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.Setup;
import fifthform.monitor.catalogue.KnownRecipe;
import fifthform.monitor.catalogue.Recipes;
import fifthform.monitor.practice.DebriefText;
import fifthform.monitor.practice.PracticePace;
import fifthform.monitor.settings.Units;
import fifthform.monitor.store.SessionFiles;
import fifthform.monitor.texts.CommandText;
import fifthform.simulator.scenario.Scenario;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** A simulated bowl in the maker's own hands. */
@Command(name = "train", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class PracticeTrainCommand implements Callable<Integer> {
    private static final double FASTEST = 10;

    @Parameters(paramLabel = "SCENARIO")
    private String scenario;

    @Option(names = "--speed", paramLabel = "N", defaultValue = "6")
    private String speed;

    @Option(names = "--screen")
    private ScreenChoice screen;

    @Mixin
    private LiftOption lift;

    @ParentCommand
    private PracticeCommand practice;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Refusal, InterruptedException {
        Scenario trained = PracticeCommand.named(scenario);
        double times = speed();
        mustHaveKeys();
        Choices choices = Choices.load(practice.folders(), err());
        Units units = practice.common().units(choices.settings());
        TrainingProbe probe =
                new TrainingProbe(trained, practice.recipe(trained), times, PracticePace.AtCues.WAIT_FOR_HANDS);
        train(
                probe,
                units,
                choices,
                new Screens(out(), err(), choices.theme(), choices.settings().motion()));
        return Exit.DONE.code();
    }

    /** The whole training on this screen, and its debrief in words. */
    void train(TrainingProbe probe, Units units, Choices choices, Showing screens)
            throws Refusal, InterruptedException {
        Recipes recipes = Recipes.load(practice.folders().recipes());
        List<Recipe> known = recipes.known().stream().map(KnownRecipe::recipe).toList();
        LiveBatch.Plan plan = new LiveBatch.Plan(setup(probe), probe, Optional.empty(), Optional.empty(), false);
        new LiveBatch(plan, new SessionFiles(practice.folders().sessions()), units, choices, out(), err())
                .watch(screens, Optional.ofNullable(screen), known, LiveBatch.Around.NOTHING);
        probe.debrief().ifPresent(debrief -> {
            out().println();
            new DebriefText(debrief, units).lines().forEach(out()::println);
        });
    }

    private Setup setup(TrainingProbe probe) throws Refusal {
        return new Setup(
                probe.recipe(),
                probe.bowl().orElseThrow(),
                probe.probes(),
                Setup.USUAL_REACTION,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                probe.origin(),
                lift.or(probe.approach()),
                OptionalDouble.empty(),
                probe.beginning(),
                probe.holding());
    }

    /** Lines have no keys, and a bowl in nobody's hands only gets hot. */
    private void mustHaveKeys() throws Refusal {
        ScreenChoice choice = screen == null ? Screens.best() : screen;
        if (choice == ScreenChoice.WINDOW || choice == ScreenChoice.TERMINAL) return;
        throw new Refusal(Exit.NOT_UNDERSTOOD, CommandText.TRAINING_NEEDS_KEYS_AND_THERE.say(choice));
    }

    private double speed() throws Refusal {
        double times = WatchSpeed.parse(speed).factor().orElse(1);
        if (times <= FASTEST) return times;
        throw new Refusal(Exit.NOT_UNDERSTOOD, CommandText.SPEED_WAS_NOTHING_WAS_DONE.say(speed, Math.round(FASTEST)));
    }

    private PrintWriter out() {
        return spec.commandLine().getOut();
    }

    private PrintWriter err() {
        return spec.commandLine().getErr();
    }
}
