package fifthform.monitor.app;

import fifthform.curves.recipe.Phase;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.Bowl;
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
import fifthform.monitor.practice.DebriefText;
import fifthform.monitor.practice.PracticePace.AtCues;
import fifthform.monitor.session.SessionSnapshot;
import fifthform.monitor.settings.Folders;
import fifthform.monitor.settings.LastStart;
import fifthform.monitor.settings.Settings;
import fifthform.monitor.settings.SettingsFile;
import fifthform.monitor.settings.Units;
import fifthform.monitor.start.StartChoice;
import fifthform.monitor.start.StartChoice.Way;
import fifthform.monitor.store.Session;
import fifthform.monitor.store.SessionFiles;
import fifthform.monitor.texts.CommandText;
import fifthform.monitor.texts.LiveText;
import fifthform.monitor.view.FxStart;
import fifthform.monitor.view.WatchWindow.Windows;
import fifthform.simulator.scenario.Scenario;
import fifthform.simulator.scenario.Scenarios;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.Charset;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

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

    @Option(names = "--as-last")
    private boolean asLast;

    /** How fast practice in the maker's own hands runs, and whether it waits for them. */
    private static final double HANDS_SPEED = 6;

    private boolean begun;
    private Optional<Scenario> trained = Optional.empty();

    @Override
    public Integer call() throws Refusal, InterruptedException {
        ScreenChoice on = Optional.ofNullable(screen).orElseGet(Screens::best);
        if (on == ScreenChoice.WINDOW) FxStart.warmUp();
        Choices choices = Choices.load(common.folders(), common.err());
        boolean untold = !asLast && !goOn && probes.isUntold() && batch.isUntold();
        if (asLast) take(Starting.asLast(choices));
        else if (untold && on == ScreenChoice.WINDOW) return fromThePage(choices);
        else if (untold && on == ScreenChoice.TERMINAL && Screens.hasTerminal()) ask(choices);
        watch(choices);
        return Exit.DONE.code();
    }

    private int fromThePage(Choices choices) throws Refusal, InterruptedException {
        Optional<String> refused = starting(choices).onThePage(new Starting.Begin() {
            @Override
            public void watch(StartChoice choice) throws Refusal, InterruptedException {
                take(choice);
                WatchCommand.this.watch(choices);
            }

            @Override
            public boolean hasBegun() {
                return begun;
            }
        });
        if (refused.isPresent()) {
            common.err().println(CommandText.NO_WINDOW_GOING_ON_WITHOUT_IT.say(refused.get()));
            screen = Screens.hasTerminal() ? ScreenChoice.TERMINAL : ScreenChoice.LINES;
            if (screen == ScreenChoice.TERMINAL) ask(choices);
            watch(choices);
        }
        return Exit.DONE.code();
    }

    private void ask(Choices choices) throws Refusal {
        PlanQuestions questions = new PlanQuestions(
                new BufferedReader(new InputStreamReader(System.in, Charset.defaultCharset())), common.out());
        take(starting(choices).asked(new StartQuestions(questions, common.out())));
    }

    private Starting starting(Choices choices) throws Refusal {
        Units units = common.units(choices.settings());
        SessionFiles sessions = new SessionFiles(folders().sessions());
        CutOff cutOff = new CutOff(sessions, new BowlMemory(new Bowls(folders().bowls()), units), common.err());
        return new Starting(folders(), choices, units, cutOff.offered());
    }

    private Folders folders() {
        return record == null ? common.folders() : common.folders().withSessions(record);
    }

    /** As if it had been said on the command line. */
    private void take(StartChoice choice) throws Refusal {
        goOn = choice.way() == Way.GO_ON;
        trained = Optional.empty();
        probes.take(choice.port());
        batch.take(Optional.empty(), Optional.empty(), OptionalDouble.empty());
        switch (choice.way()) {
            case PROBE, AS_LAST -> batch.take(Optional.of(choice.chocolate()), choice.bowl(), choice.grams());
            case GO_ON -> {}
            case PRACTICE -> probes.take(Optional.of(ProbeChooser.PRACTICE + ":" + invented(choice.chocolate())));
            case OWN_HANDS -> trained = Optional.of(PracticeCommand.named(invented(choice.chocolate())));
        }
    }

    /** The invented batch of this chocolate, where there is one of the same name. */
    private static String invented(String chocolate) {
        return Scenarios.builtIn().find(chocolate).fold(Scenario::id, problems -> Scenarios.FIRST);
    }

    private ProbeChoice probe(Settings settings, Adapters.Loaded known, Optional<Session> cutOff)
            throws Refusal, InterruptedException {
        if (trained.isEmpty()) return probes.choose(settings, known, cutOff, common.err());
        Scenario scenario = trained.get();
        Recipe recipe = Chocolates.find(scenario.chocolate(), common.folders(), common.err());
        WatchSpeed speed = probes.speed();
        return new TrainingProbe(
                scenario,
                recipe,
                speed.factor().orElse(HANDS_SPEED),
                speed.asFastAsPossible() ? AtCues.GO_ON : AtCues.WAIT_FOR_HANDS);
    }

    private void watch(Choices choices) throws Refusal, InterruptedException {
        begun = false;
        Settings settings = choices.settings();
        Folders folders = folders();
        SettingsFile settingsFile = new SettingsFile(folders.settingsFile());
        Units units = common.units(settings);
        Optional<Phase> join = batch.joining();
        SessionFiles sessions = new SessionFiles(folders.sessions());
        BowlMemory bowlMemory = new BowlMemory(new Bowls(folders.bowls()), units);
        Optional<Session> cutOff = new CutOff(sessions, bowlMemory, common.err()).find(goOn);
        Bowls.Loaded bowls = new Bowls(folders.bowls()).load();
        bowls.problems().forEach(common.err()::println);
        Adapters adapters = new Adapters(folders.probes());
        Adapters.Loaded known = adapters.load();
        known.problems().forEach(common.err()::println);
        ProbeChoice choice = probe(settings, known, cutOff);
        if (cutOff.isPresent()) CutOff.mustFit(cutOff.get(), choice);
        Setup setup = cutOff.isPresent()
                ? cutOff.get().header().setup()
                : batch.setup(choice, settings, folders, bowls, units, common.err());
        List<Recipe> recipes = Recipes.load(folders.recipes()).known().stream()
                .map(KnownRecipe::recipe)
                .toList();
        LiveBatch.Around around = new LiveBatch.Around() {
            @Override
            public void begun() {
                begun = true;
                remember(settingsFile, adapters, choice, setup);
            }

            @Override
            public void ended(SessionSnapshot last, String session) {
                rememberLag(adapters, choice, last);
                bowlMemory.learn(setup, last.state(), session).ifPresent(common.out()::println);
            }
        };
        BowlWords.begins(setup.bowl(), bowls, units)
                .filter(line -> setup.origin() == Origin.REAL)
                .ifPresent(common.err()::println);
        new LiveBatch(
                        new LiveBatch.Plan(setup, choice, cutOff, join, bytes),
                        sessions,
                        units,
                        choices,
                        common.out(),
                        common.err())
                .watch(
                        new Screens(
                                common.out(),
                                common.err(),
                                choices.theme(),
                                settings.motion(),
                                far ? Windows.withFar(settings.sizes()) : Windows.ONE),
                        Optional.ofNullable(screen),
                        recipes,
                        around);
        if (choice instanceof TrainingProbe training)
            training.debrief().ifPresent(debrief -> {
                common.out().println();
                new DebriefText(debrief, units).lines().forEach(common.out()::println);
            });
    }

    /** The next start needs no options: the same port and chocolate. */
    private void remember(SettingsFile file, Adapters adapters, ProbeChoice choice, Setup setup) {
        if (!(choice instanceof PortProbe real)) return;
        ProbeSetup probe = setup.bowlProbe();
        try {
            new AdapterMemory(adapters).remember(real);
            Optional<String> bowl = Optional.of(setup.bowl().id()).filter(id -> !id.equals(Bowl.ANY.id()));
            file.change(now -> now.withLast(new LastStart(
                    Optional.of(probe.place()),
                    Optional.of(setup.recipe().id()),
                    bowl,
                    setup.bowl().amountGrams())));
        } catch (IOException e) {
            common.err().println(LiveText.PORT_ADAPTER_AND_CHOCOLATE.say(e.getMessage()));
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
            common.err().println(LiveText.THE_LAG_OF_THE_PROBES_TIP.say(e.getMessage()));
        }
    }
}
