package fifthform.monitor.app;

import fifthform.curves.input.MakerAction.PhaseConfirmed;
import fifthform.curves.recipe.Phase;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.Bowl;
import fifthform.curves.setup.Origin;
import fifthform.curves.setup.Setup;
import fifthform.monitor.catalogue.KnownRecipe;
import fifthform.monitor.catalogue.Recipes;
import fifthform.monitor.intake.SessionClock;
import fifthform.monitor.model.ClosingLine;
import fifthform.monitor.session.SessionLoop;
import fifthform.monitor.session.SessionSnapshot;
import fifthform.monitor.settings.Folders;
import fifthform.monitor.settings.Settings;
import fifthform.monitor.settings.SettingsFile;
import fifthform.monitor.settings.Units;
import fifthform.monitor.store.JournalWriter;
import fifthform.monitor.store.Session;
import fifthform.monitor.store.SessionFiles;
import fifthform.monitor.store.SessionHeader;
import fifthform.monitor.store.StoreException;
import fifthform.monitor.view.Theme;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
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
@Command(
        name = "watch",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "Watches a batch live, says what to do, and records everything.",
        footer = {
            "",
            "Examples:",
            "  fifthform watch --probe practice",
            "  fifthform watch --probe /dev/ttyUSB0 --chocolate milk --bowl steel --amount 800"
        })
final class WatchCommand implements Callable<Integer> {
    @Mixin
    private CommonOptions common;

    @Option(names = "--probe", paramLabel = "PORT", description = "port, practice, practice:SCENARIO or file:PATH")
    private String probe;

    @Option(names = "--talk", paramLabel = "ID", description = "how the adapter talks; otherwise found out")
    private String talk;

    @Option(names = "--bath-probe", paramLabel = "PORT", description = "port of a probe in the bath")
    private String bathProbe;

    @Option(names = "--room-probe", paramLabel = "PORT", description = "port of a probe for the room")
    private String roomProbe;

    @Option(names = "--chocolate", paramLabel = "ID", description = "recipe's id or file; see: fifthform recipes")
    private String chocolate;

    @Option(names = "--bowl", paramLabel = "ID", description = "your name for the bowl, for example steel or big-glass")
    private String bowl;

    @Option(names = "--amount", paramLabel = "GRAMS", description = "chocolate in the bowl, 10 to 20000 g")
    private Double amountGrams;

    @Option(names = "--bath", paramLabel = "CELSIUS", description = "planned temperature of the warm bath, °C")
    private Double bathCelsius;

    @Option(names = "--join", paramLabel = "PHASE", description = "begin in the middle: cool, seed, rewarm or work")
    private String join;

    @Option(names = "--screen", description = "window, terminal, lines or none; otherwise the best there is")
    private ScreenChoice screen;

    @Option(names = "--speed", paramLabel = "N|max", description = "practice and file only: 1 to 60 times life")
    private String speed;

    @Option(
            names = "--interval",
            paramLabel = "SECONDS",
            defaultValue = "1",
            description = "between lines of a text file")
    private double intervalSeconds;

    @Option(names = "--record", paramLabel = "DIR", description = "keep sessions here instead of in the data folder")
    private Path record;

    @Option(names = "--bytes", description = "keep the raw bytes beside the session")
    private boolean bytes;

    @Option(names = "--go-on", description = "go on with the batch that was cut off, if it was within two hours")
    private boolean goOn;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Refusal, InterruptedException {
        Folders folders = record == null ? common.folders() : common.folders().withSessions(record);
        SettingsFile settingsFile = new SettingsFile(folders.settingsFile());
        SettingsFile.Loaded loaded = settingsFile.load();
        loaded.problems().forEach(p -> err().println(p));
        Settings settings = loaded.settings();
        SessionFiles sessions = new SessionFiles(folders.sessions());
        Optional<Session> cutOff = new CutOff(sessions, err()).find(goOn);
        ProbeChoice choice = choose(settings, cutOff);
        List<Recipe> recipes = Recipes.load(folders.recipes()).known().stream()
                .map(KnownRecipe::recipe)
                .toList();
        Setup setup = cutOff.isPresent() ? cutOff.get().header().setup() : setup(choice, settings, folders);
        Theme theme = settings.theme() == Settings.Theme.DARK ? Theme.DARK : Theme.BRIGHT;
        Units units = common.units().orElse(settings.units());
        Exit exit = watch(choice, setup, sessions, cutOff, recipes, new Screens(out(), err(), theme), units);
        remember(settingsFile, settings, choice, setup);
        return exit.code();
    }

    private ProbeChoice choose(Settings settings, Optional<Session> cutOff) throws Refusal {
        Optional<String> wanted = Optional.ofNullable(probe)
                .or(() -> cutOff.map(s -> s.header().setup().bowlProbe().place()));
        WatchSpeed wish = speed == null ? WatchSpeed.USUAL : WatchSpeed.parse(speed);
        if (!(intervalSeconds > 0 && intervalSeconds <= 3600)) {
            throw new Refusal(
                    Exit.NOT_UNDERSTOOD,
                    "--interval was " + intervalSeconds + ". Nothing was done. Give seconds above 0.");
        }
        Duration interval = Duration.ofNanos(Math.round(intervalSeconds * 1e9));
        return new ProbeChooser(
                        Optional.ofNullable(talk),
                        wish,
                        interval,
                        Optional.ofNullable(bathProbe),
                        Optional.ofNullable(roomProbe))
                .choose(wanted, settings.lastProbe());
    }

    private Setup setup(ProbeChoice choice, Settings settings, Folders folders) throws Refusal {
        boolean practice = choice.origin() == Origin.SIMULATED;
        String usual = practice ? "dark" : settings.lastChocolate().orElse("dark");
        String id = chocolate != null ? chocolate : choice.chocolate().orElse(usual);
        Recipe recipe = Chocolates.find(id, folders, err());
        OptionalDouble amount = optional(amountGrams, 10, 20_000, "--amount", "grams");
        Bowl named = Setups.bowl(bowl == null ? Bowl.ANY.id() : bowl, amount);
        OptionalDouble bath = optional(bathCelsius, 20, 99, "--bath", "°C");
        return new Setup(
                recipe,
                choice.bowl().orElse(named),
                choice.probes(),
                Setup.USUAL_REACTION,
                bath.isPresent() ? bath : choice.bathCelsius(),
                choice.roomCelsius(),
                choice.origin());
    }

    private static OptionalDouble optional(Double value, double low, double high, String option, String unit)
            throws Refusal {
        if (value == null) return OptionalDouble.empty();
        if (value >= low && value <= high) return OptionalDouble.of(value);
        throw new Refusal(
                Exit.NOT_UNDERSTOOD,
                option + " was " + value + ". Nothing was done. Give " + Math.round(low) + " to " + Math.round(high)
                        + " " + unit + ".");
    }

    private Exit watch(
            ProbeChoice choice,
            Setup setup,
            SessionFiles sessions,
            Optional<Session> cutOff,
            List<Recipe> recipes,
            Screens screens,
            Units units)
            throws Refusal, InterruptedException {
        Instant now = Instant.now().truncatedTo(ChronoUnit.MICROS);
        SessionClock clock = new SessionClock(now, choice.usualSpeed(), System::nanoTime);
        ZoneOffset zone = ZoneId.systemDefault().getRules().getOffset(now);
        long taken = cutOff.map(s -> s.nextSequence() - 1).orElse(0L);
        Watching watching = new Watching(setup, clock, choice, taken, units, zone);
        Instant start = cutOff.map(s -> s.header().start()).orElse(now);
        Notices.show(watching, setup);
        try (StayAwake awake = StayAwake.begin()) {
            if (!awake.isHeld() && setup.origin() == Origin.REAL) {
                err().println("This computer may go to sleep during the batch. Set it to stay awake.");
            }
            JournalWriter journal = journal(setup, sessions, cutOff, start, zone, watching);
            SessionLoop loop = watching.loop(start, journal);
            cutOff.ifPresent(s -> loop.catchUp(s.inputs().toList()));
            joined(watching, clock);
            RawBytes raw = RawBytes.beside(journal.file(), start, bytes, err());
            // Getting ready took a moment; bytes that carry their own time begin at the session's start, not before it.
            if (choice.origin() == Origin.SIMULATED || choice instanceof TapeProbe) clock.set(now);
            StopSignal signal = StopSignal.listen(watching::stop);
            try {
                SessionSnapshot last =
                        watching.run(loop, journal, screens, Optional.ofNullable(screen), recipes, raw::tap);
                raw.close();
                out().println(ClosingLine.of(last.setup(), last.tally(), units));
                out().println("Kept in " + journal.file());
            } finally {
                signal.ended();
            }
            return Exit.DONE;
        } catch (StoreException e) {
            throw new Refusal(Exit.FILE, e.getMessage());
        }
    }

    private JournalWriter journal(
            Setup setup,
            SessionFiles sessions,
            Optional<Session> cutOff,
            Instant start,
            ZoneOffset zone,
            Watching watching)
            throws StoreException {
        InstantSource wall = InstantSource.system();
        if (cutOff.isPresent()) return JournalWriter.resume(cutOff.get(), wall, watching::storeTrouble);
        Path file = sessions.reserve(start, zone, setup.recipe().id());
        SessionHeader header =
                new SessionHeader(Version.number(), Version.commit(), SessionFiles.name(file), start, zone, setup);
        return JournalWriter.create(file, header, wall, watching::storeTrouble);
    }

    /** Chocolate that is already melted, or further: said once, as a key would say it. */
    private void joined(Watching watching, SessionClock clock) throws Refusal {
        if (join == null) return;
        Phase phase = Phase.fromWord(join)
                .orElseThrow(() -> new Refusal(
                        Exit.NOT_UNDERSTOOD,
                        "--join was " + join + ". Nothing was done. Say melt, cool, seed, rewarm, work or rest."));
        watching.put(new PhaseConfirmed(clock.instant(), phase));
    }

    private void remember(SettingsFile file, Settings settings, ProbeChoice choice, Setup setup) {
        if (choice.origin() == Origin.SIMULATED || !(choice instanceof PortProbe)) return;
        Settings next = settings.withLastProbe(
                        setup.bowlProbe().place(), setup.bowlProbe().talk())
                .withLastChocolate(setup.recipe().id());
        try {
            file.save(next);
        } catch (IOException e) {
            err().println("The settings could not be saved: " + e.getMessage() + ". The session is kept all the same.");
        }
    }

    private PrintWriter out() {
        return spec.commandLine().getOut();
    }

    private PrintWriter err() {
        return spec.commandLine().getErr();
    }
}
