package fifthform.monitor.app;

import fifthform.curves.setting.SetInput;
import fifthform.curves.setting.StoreEvent;
import fifthform.curves.setting.StoreWatch;
import fifthform.monitor.adapters.Adapters;
import fifthform.monitor.bars.StoreLog;
import fifthform.monitor.bars.StoreWords;
import fifthform.monitor.settings.Settings;
import fifthform.monitor.settings.SettingsFile;
import fifthform.monitor.settings.Units;
import fifthform.monitor.store.JournalReader;
import fifthform.simulator.device.QuietPlace;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Bars are kept. */
@Command(
        name = "store",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = {
            "Watches the place where bars are kept, for weeks: a minute a line, warnings before 24 °C and on swings.",
            "It may be ended with Ctrl-C and begun again as often as you like; the log goes on."
        },
        footer = {
            "",
            "Examples:",
            "  monitor/run store --probe practice:summer",
            "  monitor/run store last --probe /dev/ttyUSB0 --place cellar",
            "  monitor/run store last --show",
            "  monitor/run store last --best-before 2026-09-01"
        })
final class StoreCommand implements Callable<Integer> {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);
    private static final double PRACTICE_SPEED = 7200;
    private static final int LONGEST_NOTE = 200;
    private static final List<QuietPlace.Place> PRACTICE =
            List.of(QuietPlace.Place.CUPBOARD, QuietPlace.Place.SUMMER, QuietPlace.Place.FRIDGE);

    @Mixin
    private CommonOptions common;

    @Mixin
    private CheckSensorOptions sensors;

    @Mixin
    private CheckLineOptions line;

    @Parameters(
            paramLabel = "SESSION",
            arity = "0..1",
            defaultValue = SessionNames.LAST,
            description = "the batch whose bars these are, or a log of a store; otherwise the newest batch")
    private String name;

    @Option(
            names = "--probe",
            paramLabel = "PORT",
            description = "watch with this probe; or practice, practice:PLACE, file:PATH")
    private String probe;

    @Option(names = "--place", paramLabel = "NAME", defaultValue = "store", description = "your name for the place")
    private String place;

    @Option(names = "--show", description = "go through the log once more: what was told, and hours above each limit")
    private boolean show;

    @Option(names = "--best-before", paramLabel = "TEXT", description = "your own note of how long they are good for")
    private String bestBefore;

    @Option(names = "--speed", paramLabel = "max", description = "practice only: max does not wait")
    private String speed;

    @Option(names = "--quiet", description = "no sounds")
    private boolean quiet;

    @Option(names = "--json", description = "answer as JSON lines; what to do is said on standard error")
    private boolean json;

    @Spec
    private CommandSpec spec;

    private volatile boolean stopped;
    private boolean live;

    @Override
    public Integer call() throws Refusal, InterruptedException {
        SettingsFile.Loaded settings = new SettingsFile(common.folders().settingsFile()).load();
        settings.problems().forEach(err()::println);
        StoreWords words =
                new StoreWords(common.units().orElse(settings.settings().units()));
        if (bestBefore != null) return note().code();
        if (show || probe == null) return show(words).code();
        return watch(words, settings.settings()).code();
    }

    private Exit note() throws Refusal {
        if (bestBefore.length() > LONGEST_NOTE)
            throw new Refusal(
                    Exit.NOT_UNDERSTOOD,
                    "--best-before is too long. Nothing was kept. Use " + LONGEST_NOTE + " characters.");
        StoreLog log = log();
        try {
            log.bestBefore(Instant.now(), bestBefore.strip());
        } catch (IOException e) {
            throw notWritten(log, e);
        }
        if (json) out().println("{\"kept\":true}");
        else out().println("Kept: best before " + bestBefore.strip() + ". " + KeepNotices.bestBefore());
        return Exit.DONE;
    }

    private Exit show(StoreWords words) throws Refusal {
        boolean isLog = name.endsWith(StoreLog.ENDING);
        if (isLog && !Files.isRegularFile(Path.of(name)))
            throw new Refusal(Exit.FILE, "There is no log " + name + ". Nothing was done. Check the name.");
        StoreLog log = isLog ? StoreLog.of(Path.of(name)) : log();
        StoreLog.Loaded loaded = log.load();
        loaded.problems().forEach(err()::println);
        for (StoreEvent event : loaded.events()) {
            if (json) out().println(StoreLog.line(event).end());
            else out().println(clock(event.at()) + "  " + words.of(event));
        }
        if (json) out().println(StoreLog.line(loaded.watch().record()).end());
        else words.of(loaded.watch().record()).forEach(out()::println);
        if (!json)
            loaded.bestBefore().ifPresent(b -> out().println("Best before " + b + ". " + KeepNotices.bestBefore()));
        boolean empty = loaded.watch().record().isEmpty() && loaded.bestBefore().isEmpty();
        if (empty && !json) out().println("Watch it: monitor/run store " + name + " --probe PORT");
        return loaded.problems().isEmpty() ? Exit.DONE : Exit.ANSWER_IS_NO;
    }

    private Exit watch(StoreWords words, Settings choices) throws Refusal, InterruptedException {
        PrintWriter to = json ? err() : out();
        Units units = common.units().orElse(choices.units());
        CheckSubject subject = subject(to);
        KeepNotices.storing().forEach(to::println);
        boolean real = subject.kind() == CheckSubject.Kind.REAL;
        Optional<StoreLog> log = real ? Optional.of(log()) : Optional.empty();
        // What the log holds is gone on from, so that hours and swings are of all that was watched.
        StoreWatch watch = log.map(l -> l.load().watch()).orElse(StoreWatch.START);
        StopSignal signal = StopSignal.listen(() -> stopped = true);
        Exit exit = Exit.FAULT;
        try (QuietEar ear = QuietEar.open(subject, "Nothing was watched.");
                WarnSound sound = WarnSound.of(!quiet && real, choices.volume())) {
            if (log.isPresent()) {
                log.get().begin(Instant.now(), place, subject.place());
                to.println("Kept minute by minute in " + log.get().path() + ". Ctrl-C ends it.");
            }
            while (!stopped) {
                Optional<List<SetInput>> heard = ear.listen();
                if (heard.isEmpty()) break;
                for (SetInput input : heard.get()) {
                    if (input instanceof SetInput.Reading r && Screens.hasTerminal()) now(to, units, r);
                    watch = told(watch.next(input), words, log, to, sound);
                }
            }
            watch = told(watch.end(), words, log, to, sound);
            newLine(to);
            words.of(watch.record()).forEach(to::println);
            if (json) out().println(StoreLog.line(watch.record()).end());
            if (!real) to.println("Nothing is kept: this was no probe of yours.");
            exit = Exit.DONE;
        } catch (IOException e) {
            throw notWritten(log.orElseThrow(), e);
        } finally {
            signal.ended(exit);
        }
        return exit;
    }

    private void now(PrintWriter to, Units units, SetInput.Reading reading) {
        to.print("\r  " + clock(reading.at()) + "  " + units.withUnit(reading.celsius()) + "   ");
        to.flush();
        live = true;
    }

    private void newLine(PrintWriter to) {
        if (live) to.println();
        live = false;
    }

    private StoreWatch told(
            StoreWatch.Step step, StoreWords words, Optional<StoreLog> log, PrintWriter to, WarnSound sound)
            throws IOException {
        if (step.minute().isPresent()) {
            if (log.isPresent()) log.get().minute(step.minute().get());
            if (json) out().println(StoreLog.line(step.minute().get()).end());
        }
        for (StoreEvent event : step.events()) {
            newLine(to);
            to.println(clock(event.at()) + "  " + words.of(event));
            if (json) out().println(StoreLog.line(event).end());
            if (log.isPresent()) log.get().told(event);
            if (event.kind().isWarning()) sound.warn();
        }
        return step.after();
    }

    private StoreLog log() throws Refusal {
        Path file = SessionNames.find(name, common.folders());
        String session =
                Answers.orRefuse(JournalReader.readHeader(file), Exit.FILE).session();
        return StoreLog.beside(file, session);
    }

    private CheckSubject subject(PrintWriter to) throws Refusal, InterruptedException {
        if (ProbeChooser.isPractice(probe)) {
            boolean waits = Screens.hasTerminal() && speed == null;
            CheckSubject practice =
                    QuietSubjects.practice(probe, PRACTICE, waits ? Optional.of(PRACTICE_SPEED) : Optional.empty());
            to.println("Practice: an invented place and probe; nothing is kept.");
            return practice;
        }
        Adapters.Loaded loaded = new Adapters(common.folders().probes()).load();
        loaded.problems().forEach(err()::println);
        return line.subjects(loaded, sensors, CheckDesk.Manner.IN_LINES, err()).first(probe);
    }

    private static Refusal notWritten(StoreLog log, IOException e) {
        return new Refusal(
                Exit.FILE,
                log.path() + " cannot be written (" + e.getMessage()
                        + "). What was kept before stands. Make room, or check that you may write there.");
    }

    private static String clock(Instant at) {
        return CLOCK.format(at.atZone(ZoneId.systemDefault()));
    }

    private PrintWriter out() {
        return spec.commandLine().getOut();
    }

    private PrintWriter err() {
        return spec.commandLine().getErr();
    }
}
