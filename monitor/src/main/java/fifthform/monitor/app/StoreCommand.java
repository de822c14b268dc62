package fifthform.monitor.app;

import fifthform.curves.setting.SetInput;
import fifthform.curves.setting.StoreEvent;
import fifthform.curves.setting.StoreWatch;
import fifthform.monitor.bars.StoreLog;
import fifthform.monitor.bars.StoreWords;
import fifthform.monitor.settings.Settings;
import fifthform.monitor.settings.Units;
import fifthform.monitor.store.JournalReader;
import fifthform.monitor.texts.BarsText;
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
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Bars are kept. */
@Command(name = "store", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class StoreCommand implements Callable<Integer> {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);
    private static final double PRACTICE_SPEED = 7200;
    private static final int LONGEST_NOTE = 200;
    private static final List<QuietPlace.Place> PRACTICE =
            List.of(QuietPlace.Place.CUPBOARD, QuietPlace.Place.SUMMER, QuietPlace.Place.FRIDGE);

    @Mixin
    private CommonOptions common;

    @Mixin
    private QuietOptions listening;

    @Parameters(paramLabel = "SESSION", arity = "0..1", defaultValue = SessionNames.LAST)
    private String name;

    @Option(names = "--place", paramLabel = "NAME", defaultValue = "store")
    private String place;

    @Option(names = "--show")
    private boolean show;

    @Option(names = "--best-before", paramLabel = "TEXT")
    private String bestBefore;

    @Option(names = "--speed", paramLabel = "max")
    private String speed;

    private volatile boolean stopped;
    private boolean live;

    @Override
    public Integer call() throws Refusal, InterruptedException {
        Settings settings = common.settings();
        StoreWords words = new StoreWords(common.units(settings));
        if (speed != null) OneOf.named("--speed", speed, List.of("max"), word -> word);
        if (bestBefore != null) return note().code();
        if (show || !listening.hasProbe()) return show(words).code();
        return watch(words, settings).code();
    }

    private Exit note() throws Refusal {
        if (bestBefore.length() > LONGEST_NOTE)
            throw new Refusal(Exit.NOT_UNDERSTOOD, BarsText.BEST_BEFORE_IS_TOO_LONG.say(LONGEST_NOTE));
        StoreLog log = log();
        try {
            log.bestBefore(Instant.now(), bestBefore.strip());
        } catch (IOException e) {
            throw notWritten(log, e);
        }
        if (listening.wantsJson()) common.out().println("{\"kept\":true}");
        else common.out().println(BarsText.KEPT_BEST_BEFORE.say(bestBefore.strip(), KeepNotices.bestBefore()));
        return Exit.DONE;
    }

    private Exit show(StoreWords words) throws Refusal {
        boolean isLog = name.endsWith(StoreLog.ENDING);
        if (isLog && !Files.isRegularFile(Path.of(name)))
            throw new Refusal(Exit.FILE, BarsText.THERE_IS_NO_LOG_NOTHING_WAS.say(name));
        StoreLog log = isLog ? StoreLog.of(Path.of(name)) : log();
        StoreLog.Loaded loaded = log.load();
        loaded.problems().forEach(common.err()::println);
        for (StoreEvent event : loaded.events()) {
            if (listening.wantsJson()) common.out().println(StoreLog.line(event).end());
            else common.out().println(clock(event.at()) + "  " + words.of(event));
        }
        if (listening.wantsJson())
            common.out().println(StoreLog.line(loaded.watch().record()).end());
        else words.of(loaded.watch().record()).forEach(common.out()::println);
        if (!listening.wantsJson())
            loaded.bestBefore()
                    .ifPresent(b -> common.out().println(BarsText.BEST_BEFORE.say(b, KeepNotices.bestBefore())));
        boolean empty = loaded.watch().record().isEmpty() && loaded.bestBefore().isEmpty();
        if (empty && !listening.wantsJson()) common.out().println(BarsText.WATCH_IT_MONITOR_RUN_STORE.say(name));
        return loaded.problems().isEmpty() ? Exit.DONE : Exit.ANSWER_IS_NO;
    }

    private Exit watch(StoreWords words, Settings choices) throws Refusal, InterruptedException {
        PrintWriter to = listening.wantsJson() ? common.err() : common.out();
        Units units = common.units(choices);
        CheckSubject subject = subject(to);
        KeepNotices.storing().forEach(to::println);
        boolean real = subject.kind() == CheckSubject.Kind.REAL;
        Optional<StoreLog> log = real ? Optional.of(log()) : Optional.empty();
        // What the log holds is gone on from, so that hours and swings are of all that was watched.
        StoreWatch watch = log.map(l -> l.load().watch()).orElse(StoreWatch.START);
        StopSignal signal = StopSignal.listen(() -> stopped = true);
        Exit exit = Exit.FAULT;
        try (QuietEar ear = QuietEar.open(subject, BarsText.NOTHING_WAS_WATCHED.say());
                WarnSound sound = WarnSound.of(listening.mayBeHeard() && real, choices.volume())) {
            if (log.isPresent()) {
                log.get().begin(Instant.now(), place, subject.place());
                to.println(BarsText.KEPT_MINUTE_BY_MINUTE_IN_CTRL.say(log.get().path()));
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
            if (listening.wantsJson())
                common.out().println(StoreLog.line(watch.record()).end());
            if (!real) to.println(BarsText.NOTHING_IS_KEPT_THIS_WAS_NO.say());
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
            if (listening.wantsJson())
                common.out().println(StoreLog.line(step.minute().get()).end());
        }
        for (StoreEvent event : step.events()) {
            newLine(to);
            to.println(clock(event.at()) + "  " + words.of(event));
            if (listening.wantsJson()) common.out().println(StoreLog.line(event).end());
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
        if (!listening.isPractice()) return listening.real(common.folders(), CheckDesk.Manner.IN_LINES, common.err());
        boolean waits = Screens.hasTerminal() && speed == null;
        return listening.practice(PRACTICE, waits ? Optional.of(PRACTICE_SPEED) : Optional.empty(), to::println);
    }

    private static Refusal notWritten(StoreLog log, IOException e) {
        return new Refusal(Exit.FILE, BarsText.CANNOT_BE_WRITTEN_WHAT_WAS.say(log.path(), e.getMessage()));
    }

    private static String clock(Instant at) {
        return CLOCK.format(at.atZone(ZoneId.systemDefault()));
    }
}
