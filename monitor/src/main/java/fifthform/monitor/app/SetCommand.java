package fifthform.monitor.app;

import fifthform.curves.setting.Condensation;
import fifthform.curves.setting.CoolingPlace;
import fifthform.curves.setting.SetEvent;
import fifthform.curves.setting.SetInput;
import fifthform.curves.setting.SetPlan;
import fifthform.curves.setting.SetTime;
import fifthform.curves.setting.SettingWatch;
import fifthform.monitor.adapters.Adapters;
import fifthform.monitor.bars.SetLog;
import fifthform.monitor.bars.SetWords;
import fifthform.monitor.settings.SettingsFile;
import fifthform.monitor.settings.Units;
import fifthform.monitor.store.JournalReader;
import fifthform.simulator.device.QuietPlace;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Bars set in their moulds. */
@Command(
        name = "set",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = {
            "Leads through the setting of bars: where, how long, when to look, and when they may be opened.",
            "With a probe beside the moulds it watches, and keeps what it read beside the session."
        },
        footer = {
            "",
            "Examples:",
            "  monitor/run set --place fridge --room 22 --humidity 55",
            "  monitor/run set --place fridge --room 22 --humidity 55 --probe practice",
            "  monitor/run set last --place cool --there 14 --thickness 8 --probe /dev/ttyUSB0"
        })
final class SetCommand implements Callable<Integer> {
    private static final Duration EVERY = Duration.ofSeconds(5);
    private static final double PRACTICE_SPEED = 60;

    private static final List<QuietPlace.Place> PRACTICE = List.of(
            QuietPlace.Place.FRIDGE, QuietPlace.Place.COOL, QuietPlace.Place.WARM_ROOM, QuietPlace.Place.FREEZER);

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
            description = "the batch in the moulds; otherwise the newest")
    private String name;

    @Option(
            names = "--place",
            paramLabel = "WHERE",
            defaultValue = "cool",
            description = "room (18 to 20 °C), cool (12 to 16 °C), fridge (8 to 12 °C); default cool")
    private String place;

    @Option(names = "--there", paramLabel = "CELSIUS", description = "how warm it is there")
    private Double there;

    @Option(names = "--room", paramLabel = "CELSIUS", description = "how warm the room is that they come out into")
    private Double room;

    @Option(names = "--humidity", paramLabel = "PERCENT", description = "relative humidity of that room")
    private Double humidity;

    @Option(
            names = "--thickness",
            paramLabel = "MM",
            defaultValue = "8",
            description = "how thick the bars are; default 8")
    private double millimetres;

    @Option(names = "--moving", description = "the air there moves")
    private boolean moving;

    @Option(
            names = "--probe",
            paramLabel = "PORT",
            description = "watch with this probe; or practice, practice:PLACE, file:PATH")
    private String probe;

    @Option(names = "--speed", paramLabel = "N", description = "practice only, 1 to 60 or max; default 60")
    private String speed;

    @Option(names = "--quiet", description = "no sounds")
    private boolean quiet;

    @Option(names = "--json", description = "answer as JSON lines; what to do is said on standard error")
    private boolean json;

    @Spec
    private CommandSpec spec;

    private volatile boolean stopped;

    @Override
    public Integer call() throws Refusal, InterruptedException {
        SetPlan plan = plan();
        SettingsFile.Loaded settings = new SettingsFile(common.folders().settingsFile()).load();
        settings.problems().forEach(err()::println);
        Units units = common.units().orElse(settings.settings().units());
        PrintWriter to = json ? err() : out();
        CheckDesk desk = Screens.hasTerminal() ? CheckDesk.terminal(to, System.in, units) : CheckDesk.lines(to, units);
        SetWords words = new SetWords(units);
        Optional<CheckSubject> chosen = probe == null ? Optional.empty() : Optional.of(subject(desk));
        words.plan(plan).forEach(desk::say);
        if (chosen.isEmpty()) {
            desk.say("With a probe beside the moulds it watches and tells: add --probe PORT, or try --probe practice");
            return Exit.DONE.code();
        }
        KeepNotices.setting().forEach(desk::say);
        CheckSubject subject = chosen.get();
        Optional<SetLog> log = subject.kind() == CheckSubject.Kind.REAL ? log(desk) : Optional.empty();
        boolean sounds = !quiet && desk.manner() == CheckDesk.Manner.AT_A_TERMINAL;
        StopSignal signal = StopSignal.listen(() -> stopped = true);
        Exit exit = Exit.FAULT;
        try (QuietEar ear = QuietEar.open(subject, "Nothing was watched.");
                WarnSound sound = WarnSound.of(sounds, settings.settings().volume())) {
            exit = watch(plan, ear, desk, words, log, sound);
        } catch (IOException e) {
            throw new Refusal(
                    Exit.FILE,
                    "The log of the setting cannot be written (" + e.getMessage()
                            + "). What was read before is kept. Make room, or name another folder with --data.");
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
        Instant at = Instant.now();
        while (!watch.isOver() && !stopped) {
            Optional<List<SetInput>> heard = ear.listen();
            if (heard.isEmpty()) break;
            for (SetInput input : heard.get()) {
                at = input.at();
                boolean due = kept.isEmpty() || Duration.between(kept.get(), at).compareTo(EVERY) >= 0;
                if (input instanceof SetInput.Reading reading) {
                    desk.value(at, desk.celsius(reading.celsius()));
                    if (due && log.isPresent()) {
                        log.get().input(input);
                        kept = Optional.of(at);
                    }
                }
                watch = taken(watch, input, desk, words, log, sound);
            }
            if (desk.entered()) {
                boolean pulls = watch.said().contains(SetEvent.Kind.PULLS_AWAY);
                SetInput said = new SetInput.Said(at, pulls ? SetInput.Act.TAKEN_OUT : SetInput.Act.PULLS_AWAY);
                if (log.isPresent()) log.get().input(said);
                watch = taken(watch, said, desk, words, log, sound);
            }
        }
        if (log.isPresent()) desk.say("Recorded in " + log.get().path());
        return Exit.DONE;
    }

    private SettingWatch taken(
            SettingWatch watch, SetInput input, CheckDesk desk, SetWords words, Optional<SetLog> log, WarnSound sound)
            throws IOException {
        SettingWatch.Step step = watch.next(input);
        for (SetEvent event : step.events()) {
            desk.say(words.of(event, watch.plan()));
            if (json) out().println(SetLog.line(event).end());
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

    private Optional<SetLog> log(CheckDesk desk) throws Refusal {
        boolean none = name.equals(SessionNames.LAST) && !hasSession();
        if (none) {
            desk.say("There is no session to keep it with: it is watched, and nothing is recorded.");
            return Optional.empty();
        }
        Path file = SessionNames.find(name, common.folders());
        String session =
                Answers.orRefuse(JournalReader.readHeader(file), Exit.FILE).session();
        desk.say("It is kept beside the session " + session + ".");
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
        if (ProbeChooser.isPractice(probe)) {
            boolean inHurry = desk.manner() != CheckDesk.Manner.AT_A_TERMINAL;
            WatchSpeed wish = speed == null ? WatchSpeed.USUAL : WatchSpeed.parse(speed);
            Optional<Double> factor = inHurry || wish.asFastAsPossible()
                    ? Optional.empty()
                    : Optional.of(wish.factor().orElse(PRACTICE_SPEED));
            CheckSubject practice = QuietSubjects.practice(probe, PRACTICE, factor);
            desk.say("Practice: an invented place and probe; nothing is kept.");
            return practice;
        }
        Adapters.Loaded loaded = new Adapters(common.folders().probes()).load();
        loaded.problems().forEach(err()::println);
        return line.subjects(loaded, sensors, desk.manner(), err()).first(probe);
    }

    private SetTime.Air air() {
        return moving ? SetTime.Air.MOVING : SetTime.Air.STILL;
    }

    private SetPlan plan() throws Refusal {
        CoolingPlace where = where();
        within(millimetres, 1, 100, "--thickness", "mm");
        if (there != null) within(there, -30, 40, "--there", "°C");
        if (room != null) within(room, 0, 45, "--room", "°C");
        if (humidity != null) within(humidity, 1, 100, "--humidity", "%");
        if ((room == null) != (humidity == null))
            throw new Refusal(
                    Exit.NOT_UNDERSTOOD,
                    "--room and --humidity make the dew point together. Nothing was done. Say both, or neither.");
        Optional<Condensation> air = room == null ? Optional.empty() : Optional.of(Condensation.in(room, humidity));
        return SetPlan.of(
                where, there == null ? OptionalDouble.empty() : OptionalDouble.of(there), air(), millimetres, air);
    }

    private CoolingPlace where() throws Refusal {
        for (CoolingPlace each : CoolingPlace.values())
            if (each.word().equals(place.strip().toLowerCase(Locale.ROOT))) return each;
        throw new Refusal(
                Exit.NOT_UNDERSTOOD,
                "--place was \"" + place + "\". Nothing was done. Say one of: room, cool, fridge.");
    }

    private static void within(double value, double low, double high, String option, String unit) throws Refusal {
        if (value >= low && value <= high) return;
        throw new Refusal(
                Exit.NOT_UNDERSTOOD,
                option + " was " + Units.format("%.1f", value) + ". Nothing was done. Give " + Units.format("%.0f", low)
                        + " to " + Units.format("%.0f", high) + " " + unit + ".");
    }

    private PrintWriter out() {
        return spec.commandLine().getOut();
    }

    private PrintWriter err() {
        return spec.commandLine().getErr();
    }
}
