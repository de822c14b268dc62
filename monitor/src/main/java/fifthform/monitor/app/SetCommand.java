package fifthform.monitor.app;

import fifthform.curves.setting.Condensation;
import fifthform.curves.setting.CoolingPlace;
import fifthform.curves.setting.SetEvent;
import fifthform.curves.setting.SetInput;
import fifthform.curves.setting.SetPlan;
import fifthform.curves.setting.SetTime;
import fifthform.curves.setting.SettingWatch;
import fifthform.monitor.bars.SetLog;
import fifthform.monitor.bars.SetWords;
import fifthform.monitor.model.Spans;
import fifthform.monitor.settings.Settings;
import fifthform.monitor.settings.Units;
import fifthform.monitor.store.JournalReader;
import fifthform.monitor.texts.BarsText;
import fifthform.simulator.device.QuietPlace;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Bars set in their moulds. */
@Command(name = "set", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class SetCommand implements Callable<Integer> {
    private static final Duration EVERY = Duration.ofSeconds(5);
    private static final double PRACTICE_SPEED = 60;

    private static final List<QuietPlace.Place> PRACTICE = List.of(
            QuietPlace.Place.FRIDGE, QuietPlace.Place.COOL, QuietPlace.Place.WARM_ROOM, QuietPlace.Place.FREEZER);

    @Mixin
    private CommonOptions common;

    @Mixin
    private QuietOptions listening;

    @Parameters(paramLabel = "SESSION", arity = "0..1", defaultValue = SessionNames.LAST)
    private String name;

    @Option(names = "--place", paramLabel = "WHERE", defaultValue = "cool")
    private String place;

    @Option(names = "--there", paramLabel = "CELSIUS")
    private Double there;

    @Option(names = "--room", paramLabel = "CELSIUS")
    private Double room;

    @Option(names = "--humidity", paramLabel = "PERCENT")
    private Double humidity;

    @Option(names = "--thickness", paramLabel = "MM", defaultValue = "8")
    private double millimetres;

    @Option(names = "--moving")
    private boolean moving;

    @Option(names = "--speed", paramLabel = "N")
    private String speed;

    private volatile boolean stopped;

    @Override
    public Integer call() throws Refusal, InterruptedException {
        SetPlan plan = plan();
        Settings settings = common.settings();
        Units units = common.units(settings);
        CheckDesk desk = CheckDesk.here(listening.wantsJson() ? common.err() : common.out(), units);
        SetWords words = new SetWords(units);
        Optional<CheckSubject> chosen = listening.hasProbe() ? Optional.of(subject(desk)) : Optional.empty();
        words.plan(plan).forEach(desk::say);
        if (chosen.isEmpty()) {
            desk.say(BarsText.WITH_A_PROBE_BESIDE_THE_MOULDS.say());
            return Exit.DONE.code();
        }
        KeepNotices.setting().forEach(desk::say);
        CheckSubject subject = chosen.get();
        Optional<SetLog> log = subject.kind() == CheckSubject.Kind.REAL ? log(desk) : Optional.empty();
        boolean sounds = listening.mayBeHeard() && desk.manner() == CheckDesk.Manner.AT_A_TERMINAL;
        StopSignal signal = StopSignal.listen(() -> stopped = true);
        Exit exit = Exit.FAULT;
        try (QuietEar ear = QuietEar.open(subject, BarsText.NOTHING_WAS_WATCHED.say());
                WarnSound sound = WarnSound.of(sounds, settings.volume())) {
            exit = watch(plan, ear, desk, words, log, sound);
        } catch (IOException e) {
            throw new Refusal(Exit.FILE, BarsText.THE_LOG_OF_THE_SETTING_CANNOT.say(e.getMessage()));
        } finally {
            signal.ended(exit);
        }
        return exit.code();
    }

    private Exit watch(
            SetPlan plan, QuietEar ear, CheckDesk desk, SetWords words, Optional<SetLog> log, WarnSound sound)
            throws InterruptedException, IOException {
        SettingWatch watch = SettingWatch.of(plan);
        if (log.isPresent()) log.get().begin(Instant.now(), plan, air());
        Optional<Instant> kept = Optional.empty();
        Optional<Instant> first = Optional.empty();
        Instant at = Instant.now();
        while (!watch.isOver() && !stopped) {
            Optional<List<SetInput>> heard = ear.listen();
            if (heard.isEmpty()) break;
            for (SetInput input : heard.get()) {
                at = input.at();
                if (first.isEmpty()) first = Optional.of(at);
                Duration into = Duration.between(first.get(), at);
                boolean due = kept.isEmpty() || Duration.between(kept.get(), at).compareTo(EVERY) >= 0;
                if (input instanceof SetInput.Reading reading) {
                    desk.value(at, after(into, desk.celsius(reading.celsius())));
                    if (due && log.isPresent()) {
                        log.get().input(input);
                        kept = Optional.of(at);
                    }
                }
                watch = taken(watch, input, into, desk, words, log, sound);
            }
            if (desk.entered()) {
                boolean pulls = watch.said().contains(SetEvent.Kind.PULLS_AWAY);
                SetInput said = new SetInput.Said(at, pulls ? SetInput.Act.TAKEN_OUT : SetInput.Act.PULLS_AWAY);
                if (log.isPresent()) log.get().input(said);
                watch = taken(watch, said, Duration.between(first.orElse(at), at), desk, words, log, sound);
            }
        }
        if (log.isPresent()) desk.say(BarsText.RECORDED_IN.say(log.get().path()));
        return Exit.DONE;
    }

    private SettingWatch taken(
            SettingWatch watch,
            SetInput input,
            Duration into,
            CheckDesk desk,
            SetWords words,
            Optional<SetLog> log,
            WarnSound sound)
            throws IOException {
        SettingWatch.Step step = watch.next(input);
        for (SetEvent event : step.events()) {
            desk.say(after(into, words.of(event, watch.plan())));
            if (listening.wantsJson()) common.out().println(SetLog.line(event).end());
            if (log.isPresent()) log.get().told(event);
            switch (event.kind()) {
                case TOO_WARM, TOO_COLD, TOO_FAST, SILENT -> sound.warn();
                case LOOK, COME_OUT, KEEP_CLOSED, MAYBE_WET, MAY_OPEN -> sound.cue();
                case BEGUN, PULLS_AWAY, READS_AGAIN -> {
                    // Nothing to do about it.
                }
            }
        }
        return step.after();
    }

    /** With how long the bars have been in: nobody stands beside them, and the figures of the plan are times too. */
    private static String after(Duration into, String words) {
        return Spans.words(into) + "  " + words;
    }

    private Optional<SetLog> log(CheckDesk desk) throws Refusal {
        boolean none = name.equals(SessionNames.LAST) && !hasSession();
        if (none) {
            desk.say(BarsText.THERE_IS_NO_SESSION_TO_KEEP.say());
            return Optional.empty();
        }
        Path file = SessionNames.find(name, common.folders());
        String session =
                Answers.orRefuse(JournalReader.readHeader(file), Exit.FILE).session();
        desk.say(BarsText.IT_IS_KEPT_BESIDE_THE_SESSION.say(session));
        return Optional.of(SetLog.beside(file, session));
    }

    private boolean hasSession() {
        try {
            SessionNames.find(name, common.folders());
            return true;
        } catch (Refusal noneYet) {
            return false;
        }
    }

    private CheckSubject subject(CheckDesk desk) throws Refusal, InterruptedException {
        if (!listening.isPractice()) return listening.real(common.folders(), desk.manner(), common.err());
        boolean inHurry = desk.manner() != CheckDesk.Manner.AT_A_TERMINAL;
        WatchSpeed wish = speed == null ? WatchSpeed.USUAL : WatchSpeed.parse(speed);
        Optional<Double> factor = inHurry || wish.asFastAsPossible()
                ? Optional.empty()
                : Optional.of(wish.factor().orElse(PRACTICE_SPEED));
        return listening.practice(PRACTICE, factor, desk::say);
    }

    private SetTime.Air air() {
        return moving ? SetTime.Air.MOVING : SetTime.Air.STILL;
    }

    private SetPlan plan() throws Refusal {
        CoolingPlace where = OneOf.named("--place", place, List.of(CoolingPlace.values()), CoolingPlace::word);
        Within.number(millimetres, 1, 100, "--thickness", "mm");
        OptionalDouble placeCelsius = Within.optional(there, -30, 40, "--there", "°C");
        Within.optional(room, 0, 45, "--room", "°C");
        Within.optional(humidity, 1, 100, "--humidity", "%");
        if ((room == null) != (humidity == null))
            throw new Refusal(Exit.NOT_UNDERSTOOD, BarsText.ROOM_AND_HUMIDITY_MAKE_THE_DEW.say());
        Optional<Condensation> air = room == null ? Optional.empty() : Optional.of(Condensation.in(room, humidity));
        return SetPlan.of(where, placeCelsius, air(), millimetres, air);
    }
}
