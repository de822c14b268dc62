package fifthform.monitor.app;

import fifthform.curves.recipe.Phase;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.Origin;
import fifthform.curves.setup.ProbeSetup;
import fifthform.curves.setup.Setup;
import fifthform.curves.signal.Judgement;
import fifthform.curves.signal.Lag;
import fifthform.monitor.adapters.Adapters;
import fifthform.monitor.bowls.Bowls;
import fifthform.monitor.catalogue.KnownRecipe;
import fifthform.monitor.catalogue.Recipes;
import fifthform.monitor.json.Decimal;
import fifthform.monitor.session.SessionSnapshot;
import fifthform.monitor.settings.Folders;
import fifthform.monitor.settings.Settings;
import fifthform.monitor.settings.SettingsFile;
import fifthform.monitor.settings.Units;
import fifthform.monitor.store.Session;
import fifthform.monitor.store.SessionFiles;
import fifthform.monitor.texts.LiveText;
import fifthform.monitor.view.FxStart;
import fifthform.monitor.view.WatchWindow.Windows;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The main job. */
@Command(name = "watch", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class WatchCommand implements Callable<Integer> {
    @Mixin
    private CommonOptions common;

    @Mixin
    private ProbeOptions probes;

    @Mixin
    private BatchOptions batch;

    @Option(names = "--screen")
    private ScreenChoice screen;

    @Option(names = "--record", paramLabel = "DIR")
    private Path record;

    @Option(names = "--far")
    private boolean far;

    @Option(names = "--bytes")
    private boolean bytes;

    @Option(names = "--go-on")
    private boolean goOn;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Refusal, InterruptedException {
        if (Optional.ofNullable(screen).orElseGet(Screens::best) == ScreenChoice.WINDOW) FxStart.warmUp();
        Choices choices = Choices.load(common.folders(), err());
        Settings settings = choices.settings();
        Folders folders = record == null ? common.folders() : common.folders().withSessions(record);
        SettingsFile settingsFile = new SettingsFile(folders.settingsFile());
        Units units = common.units().orElse(settings.units());
        Optional<Phase> join = batch.joining();
        SessionFiles sessions = new SessionFiles(folders.sessions());
        BowlMemory bowlMemory = new BowlMemory(new Bowls(folders.bowls()), units);
        Optional<Session> cutOff = new CutOff(sessions, bowlMemory, err()).find(goOn);
        Bowls.Loaded bowls = new Bowls(folders.bowls()).load();
        bowls.problems().forEach(err()::println);
        Adapters adapters = new Adapters(folders.probes());
        Adapters.Loaded known = adapters.load();
        known.problems().forEach(err()::println);
        ProbeChoice choice = probes.choose(settings, known, cutOff, err());
        if (cutOff.isPresent()) CutOff.mustFit(cutOff.get(), choice);
        Setup setup = cutOff.isPresent()
                ? cutOff.get().header().setup()
                : batch.setup(choice, settings, folders, bowls, units, err());
        List<Recipe> recipes = Recipes.load(folders.recipes()).known().stream()
                .map(KnownRecipe::recipe)
                .toList();
        LiveBatch.Around around = new LiveBatch.Around() {
            @Override
            public void begun() {
                remember(settingsFile, adapters, choice, setup);
            }

            @Override
            public void ended(SessionSnapshot last, String session) {
                rememberLag(adapters, choice, last);
                bowlMemory.learn(setup, last.state(), session).ifPresent(out()::println);
            }
        };
        BowlWords.begins(setup.bowl(), bowls, units)
                .filter(line -> setup.origin() == Origin.REAL)
                .ifPresent(err()::println);
        new LiveBatch(new LiveBatch.Plan(setup, choice, cutOff, join, bytes), sessions, units, choices, out(), err())
                .watch(
                        new Screens(
                                out(),
                                err(),
                                choices.theme(),
                                settings.motion(),
                                far ? Windows.withFar(settings.sizes()) : Windows.ONE),
                        Optional.ofNullable(screen),
                        recipes,
                        around);
        return Exit.DONE.code();
    }

    /** The next start needs no options: the same port and chocolate. */
    private void remember(SettingsFile file, Adapters adapters, ProbeChoice choice, Setup setup) {
        if (!(choice instanceof PortProbe real)) return;
        ProbeSetup probe = setup.bowlProbe();
        try {
            new AdapterMemory(adapters).remember(real);
            file.change(now -> now.withLastProbe(probe.place())
                    .withLastChocolate(setup.recipe().id()));
        } catch (IOException e) {
            err().println(LiveText.PORT_ADAPTER_AND_CHOCOLATE.say(e.getMessage()));
        }
    }

    /** The tip is the same in the next batch; its lag need not be guessed until it is dipped. */
    private void rememberLag(Adapters adapters, ProbeChoice choice, SessionSnapshot last) {
        Optional<Lag> lag =
                last.state().tracks().judgementOf(last.setup().bowlProbe().id()).flatMap(Judgement::lag);
        if (!(choice instanceof PortProbe real) || lag.isEmpty()) return;
        try {
            new AdapterMemory(adapters)
                    .remember(real, OptionalDouble.of(Decimal.rounded(lag.get().seconds())));
        } catch (IOException e) {
            err().println(LiveText.THE_LAG_OF_THE_PROBES_TIP.say(e.getMessage()));
        }
    }

    private PrintWriter out() {
        return spec.commandLine().getOut();
    }

    private PrintWriter err() {
        return spec.commandLine().getErr();
    }
}
