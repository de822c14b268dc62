package fifthform.monitor.app;

import fifthform.curves.check.Nearest;
import fifthform.curves.proof.Circumstances;
import fifthform.curves.proof.CurvePoint;
import fifthform.curves.proof.Fitness;
import fifthform.curves.proof.Measure;
import fifthform.curves.proof.Proof;
import fifthform.curves.proof.Smear;
import fifthform.curves.proof.TemperClass;
import fifthform.curves.proof.Unfit;
import fifthform.curves.proof.Verdict;
import fifthform.monitor.adapters.Adapters;
import fifthform.monitor.json.JsonLine;
import fifthform.monitor.proofs.Cups;
import fifthform.monitor.proofs.KeptCup;
import fifthform.monitor.proofs.ProofFile;
import fifthform.monitor.proofs.ProofHead;
import fifthform.monitor.settings.Settings;
import fifthform.monitor.settings.SettingsFile;
import fifthform.probe.link.LinkException;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import java.util.function.Function;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** Is this bowl in temper? */
@Command(
        name = "prove",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        subcommands = {ProveListCommand.class, ProveMarkCommand.class},
        description = "Proves the temper on a sample: how it cools in ice water, or how a smear of it sets.",
        footer = {
            "",
            "Examples:",
            "  monitor/run prove --probe practice",
            "  monitor/run prove --probe practice:under --speed max",
            "  monitor/run prove --probe /dev/ttyUSB0 --cup foil --calibrate",
            "  monitor/run prove --probe /dev/ttyUSB0 --cup foil",
            "  monitor/run prove --curve sample.csv --cup foil --bath 0.2",
            "  monitor/run prove --smear --minutes 4 --look glossy --room 20",
            "  monitor/run prove mark last good"
        })
final class ProveCommand implements Callable<Integer> {
    private static final double LONGEST_SMEAR_MINUTES = 120;

    @Mixin
    private CommonOptions common;

    @Mixin
    private CheckSensorOptions sensors;

    @Option(
            names = "--probe",
            paramLabel = "PORT",
            description = "port, or port@channel; practice, practice:BOWL or file:PATH; otherwise the one used before")
    private String probe;

    @Mixin
    private CheckLineOptions line;

    @Option(names = "--speed", paramLabel = "N|max", description = "practice only: 1 to 60 times life; otherwise 10")
    private String speed;

    @Option(
            names = "--chocolate",
            paramLabel = "ID",
            description = "recipe's id or file; otherwise that of the running session, else the last")
    private String chocolate;

    @Option(names = "--cup", paramLabel = "NAME", description = "your name for the cup; otherwise cup")
    private String cup;

    @Option(names = "--grams", paramLabel = "GRAMS", description = "how much a sample is, 4 to 30 g; otherwise 12")
    private Double grams;

    @Option(
            names = "--bath",
            paramLabel = "CELSIUS",
            description = "what the probe read in the ice water; then it is not measured first")
    private Double bath;

    @Option(
            names = "--session",
            paramLabel = "NAME",
            description = "the session it belongs to; last, or none; otherwise one of the last two hours")
    private String session;

    @Option(names = "--calibrate", description = "cool melted chocolate, to learn how this cup cools; do it twice")
    private boolean calibrate;

    @Option(names = "--curve", paramLabel = "FILE", description = "judge a recorded curve: a table or a .proof.jsonl")
    private Path curve;

    @Option(names = "--smear", description = "time a thin film instead: no probe is needed")
    private boolean smear;

    @Option(names = "--minutes", paramLabel = "N", description = "smear: it was timed before, so many minutes")
    private Double minutes;

    @Option(names = "--look", paramLabel = "LOOK", description = "smear: glossy, streaks, matt or wet-middle")
    private String look;

    @Option(names = "--room", paramLabel = "CELSIUS", description = "smear: temperature of the room")
    private Double room;

    @Option(
            names = "--json",
            scope = ScopeType.INHERIT,
            description = "answer as JSON lines; what to do is said on standard error")
    private boolean json;

    @Spec
    private CommandSpec spec;

    private CheckDesk desk;
    private Cups cups;
    private Cups.Loaded known;
    private Settings choices;

    @Override
    public Integer call() throws Refusal, InterruptedException {
        long ways = Stream.of(calibrate, curve != null, smear).filter(w -> w).count();
        if (ways > 1)
            throw new Refusal(
                    Exit.NOT_UNDERSTOOD,
                    "--calibrate, --curve and --smear are three things. Nothing was done. Give one of them.");
        SettingsFile.Loaded settings = new SettingsFile(common.folders().settingsFile()).load();
        settings.problems().forEach(err()::println);
        choices = settings.settings();
        cups = cups();
        known = cups.load();
        known.problems().forEach(err()::println);
        PrintWriter to = json ? err() : out();
        var units = common.units().orElse(choices.units());
        desk = Screens.hasTerminal() ? CheckDesk.terminal(to, System.in, units) : CheckDesk.lines(to, units);
        try {
            if (curve != null) return judgeFile().code();
            return (smear ? smear() : cool()).code();
        } catch (IOException e) {
            throw new Refusal(
                    Exit.FILE,
                    "The proof cannot be written (" + e.getMessage()
                            + "). What was read before is kept. Make room, or name another folder with --data, and repeat.");
        }
    }

    /** Where cups are kept. */
    Cups cups() {
        return new Cups(common.folders().cups());
    }

    boolean wantsJson() {
        return json;
    }

    // A guided cooling.

    private Exit cool() throws Refusal, InterruptedException, IOException {
        Adapters adapters = new Adapters(common.folders().probes());
        Adapters.Loaded loaded = adapters.load();
        loaded.problems().forEach(err()::println);
        String name = probe != null ? probe : ProbeChooser.bowl(loaded, choices.lastProbe());
        ProofSubject subject = subject(name, loaded);
        boolean real = subject.probe().kind() == CheckSubject.Kind.REAL;
        ProofPlace place = place(real);
        ProofHead.Kind kind = calibrate ? ProofHead.Kind.MELTED : ProofHead.Kind.SAMPLE;
        welcome(subject, place);
        Circumstances around = calibrate ? Circumstances.ofMelted() : Circumstances.ofSample(place.recipe());
        String start = desk.celsius(around.start().lowCelsius()) + " to "
                + desk.celsius(around.start().highCelsius());
        List<String> notices = calibrate
                ? ProofNotices.melted(desk.celsius(33) + " to " + desk.celsius(35))
                : ProofNotices.sample(desk.celsius(place.recipe().work().range().lowCelsius()) + " to "
                        + desk.celsius(place.recipe().work().range().highCelsius()));
        ProofRun.Cooled cooled;
        Path folder = real ? common.folders().sessions() : Files.createTempDirectory("fifthform");
        try (ProofFile record = ProofFile.begin(folder, head(kind, place, origin(subject)));
                CheckEar ear = open(subject.probe())) {
            Runnable take = calibrate ? subject.takeMelted() : subject.takeSample();
            cooled = new ProofRun(desk, subject, record, soFar(place, around))
                    .cool(ear, notices, take, around, saidBath());
            Exit exit = ended(cooled.proof().readings(), cooled.around(), place, real, record);
            if (real) desk.say("Recorded in " + record.file());
            else
                desk.say("Nothing is kept: this was "
                        + (origin(subject).equals("simulated") ? "practice" : "a recording")
                        + ". With your own: monitor/run prove --probe PORT");
            return exit;
        } finally {
            if (!real) deleted(folder);
        }
    }

    /** The maker's bowl waits: what the bend says, or what spoils it, is told before the sample is cold. */
    private Function<Proof, Optional<String>> soFar(ProofPlace place, Circumstances around) {
        if (calibrate) return proof -> Optional.empty();
        Measure measure = place.cup().measure(place.fat(), 0);
        Circumstances with = place.cup().traits().map(around::withCup).orElse(around);
        return proof -> {
            List<Unfit> unfit = Fitness.of(proof.curve(), with).stream()
                    .filter(u -> u != Unfit.TOO_SHORT)
                    .toList();
            if (!unfit.isEmpty()) return Optional.of(unfit.get(0).words());
            return proof.course()
                    .map(course -> Verdict.of(course, measure))
                    .map(v -> v.temper().words()
                            + v.bend()
                                    .map(b -> ", bent at " + ProofReport.bend(b, desk))
                                    .orElse("")
                            + ". Leave it in to be sure: a later, stronger bend overrules this one.");
        };
    }

    private static void deleted(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) Files.delete(file);
        }
        Files.delete(folder);
    }

    private Exit ended(
            List<CurvePoint> readings, Circumstances around, ProofPlace place, boolean keep, ProofFile record)
            throws Refusal, IOException {
        ProofJudge judge = new ProofJudge(desk);
        ProofAnswer answer =
                calibrate ? judge.calibrated(readings, around, place) : judge.judged(readings, around, place);
        JsonLine line = new JsonLine().text("k", "z");
        answer.tell(line);
        record.line(line);
        if (keep) {
            Instant now = Instant.now();
            boolean changes = answer.isOne() || place.cup().grams().isPresent();
            KeptCup after = changes
                    ? cups.change(
                            place.cup(), cup -> answer.keep(place.weighed(cup), record.name(), place.session(), now))
                    : place.cup();
            if (calibrate && answer.run().isPresent()) judge.tellTwoRuns(after);
        }
        if (json) {
            JsonLine told = new JsonLine()
                    .text("proof", record.name())
                    .text("chocolate", place.recipe().id());
            place.session().ifPresent(s -> told.text("session", s));
            answer.tell(told);
            out().println(told.end());
        }
        return answer.exit();
    }

    // A recorded curve.

    private Exit judgeFile() throws Refusal, IOException {
        if (!Files.isRegularFile(curve))
            throw new Refusal(
                    Exit.FILE, "There is no file " + curve + ". Nothing was judged. Check the name and try again.");
        return curve.toString().endsWith(ProofFile.ENDING) ? judgeRecording() : judgeTable();
    }

    /** A recording of ours knows its chocolate, its cup and its bath. */
    private Exit judgeRecording() throws Refusal {
        ProofFile.Recorded recorded = recorded();
        ProofHead head = recorded.head();
        if (head.kind() == ProofHead.Kind.SMEAR)
            throw new Refusal(
                    Exit.NOT_UNDERSTOOD,
                    curve + " is a smear and has no curve. Nothing was judged. Its result stands in its last line.");
        if (recorded.lost() > 0) err().println(recorded.lost() + " lines of it are damaged and left out.");
        if (chocolate == null) chocolate = head.chocolate();
        if (cup == null) cup = head.cup().orElse(null);
        ProofPlace place = place(false);
        boolean melted = head.kind() == ProofHead.Kind.MELTED;
        Circumstances around = melted ? Circumstances.ofMelted() : Circumstances.ofSample(place.recipe());
        if (recorded.bathCelsius().isPresent())
            around = around.withBath(recorded.bathCelsius().getAsDouble());
        if (recorded.iceLeft().isPresent())
            around = around.withIceLeft(recorded.iceLeft().get());
        around = introduced(place, around);
        ProofJudge judge = new ProofJudge(desk);
        return told(
                melted
                        ? judge.calibrated(recorded.readings(), around, place)
                        : judge.judged(recorded.readings(), around, place),
                place);
    }

    private Exit judgeTable() throws Refusal {
        ProofPlace place = place(false);
        ProofTable table = ProofTable.read(curve, err());
        Circumstances around = Circumstances.ofSample(place.recipe());
        if (table.bathCelsius().isPresent())
            around = around.withBath(table.bathCelsius().getAsDouble());
        around = introduced(place, around);
        ProofJudge judge = new ProofJudge(desk);
        return told(
                table.spoilt().isPresent()
                        ? judge.refused(table.spoilt().get())
                        : judge.judged(table.points(), around, place),
                place);
    }

    private Circumstances introduced(ProofPlace place, Circumstances around) throws Refusal {
        Circumstances with = bath == null ? around : around.withBath(saidBath().getAsDouble());
        desk.say("Proof of temper · " + curve.getFileName() + " · "
                + place.recipe().name() + " · " + words(place.cup()));
        if (with.bathCelsius().isEmpty())
            desk.say("  Its bath was not measured and is taken as " + desk.celsius(0)
                    + ". A warm one is then not noticed; say it with --bath.");
        return with;
    }

    private Exit told(ProofAnswer answer, ProofPlace place) {
        if (json) {
            JsonLine line = new JsonLine()
                    .text("proof", String.valueOf(curve.getFileName()))
                    .text("chocolate", place.recipe().id());
            answer.tell(line);
            out().println(line.end());
        }
        return answer.exit();
    }

    private ProofFile.Recorded recorded() throws Refusal {
        try {
            return Answers.orRefuse(ProofFile.read(curve), Exit.FILE);
        } catch (IOException e) {
            throw new Refusal(
                    Exit.FILE,
                    curve + " cannot be read (" + e.getMessage()
                            + "). Nothing was judged. Check the name and try again.");
        }
    }

    // A smear.

    private Exit smear() throws Refusal, InterruptedException, IOException {
        ProofPlace place = place(true);
        OptionalDouble roomCelsius = within(room, 5, 40, "--room", "°C");
        boolean set = true;
        double took;
        if (minutes != null)
            took = within(minutes, 0, LONGEST_SMEAR_MINUTES, "--minutes", "minutes")
                    .getAsDouble();
        else {
            desk.say("Smear test · " + place.recipe().name());
            ProofNotices.smear().forEach(line -> desk.say("  " + line));
            SmearWatch.Timed timed = new SmearWatch(desk).time();
            took = timed.minutes();
            set = timed.isSet();
        }
        Smear film = new Smear(took, set, look(set), roomCelsius);
        TemperClass temper = film.temper();
        desk.say("");
        desk.say("Result: " + temper.words().toUpperCase(Locale.ROOT) + " by the smear"
                + (roomCelsius.isPresent() ? "" : ", at a room of 20 °C or less"));
        desk.say("  " + (set ? "Set after " : "Not set after ") + ProofReport.minutes(60 * took) + ", "
                + film.look().word().replace('-', ' ') + ".");
        if (roomCelsius.orElse(0) > Smear.WARM_ROOM_CELSIUS)
            desk.say("  The room is warm: above " + desk.celsius(Smear.WARM_ROOM_CELSIUS)
                    + " even good temper sets slowly, so this says little.");
        desk.say("  " + ProofReport.todo(temper));
        desk.say(
                "  Look at it again after 15 minutes: streaks may show late. A smear is a rough test; the cooling curve says more.");
        try (ProofFile record =
                ProofFile.begin(common.folders().sessions(), head(ProofHead.Kind.SMEAR, place, "real"))) {
            JsonLine line = smeared(new JsonLine().text("k", "z"), film);
            record.line(line);
            desk.say("Recorded in " + record.file());
            if (json)
                out().println(smeared(new JsonLine().text("proof", record.name()), film)
                        .end());
        }
        return temper == TemperClass.IN_TEMPER ? Exit.DONE : Exit.ANSWER_IS_NO;
    }

    private static JsonLine smeared(JsonLine line, Smear film) {
        return line.text("result", film.temper().word())
                .number("minutes", film.minutes(), 2)
                .raw("set", String.valueOf(film.isSet()))
                .text("look", film.look().word())
                .number("room_c", film.roomCelsius());
    }

    private Smear.Look look(boolean set) throws Refusal {
        Optional<String> said = Optional.ofNullable(look);
        if (said.isEmpty() && !set) return Smear.Look.WET_MIDDLE;
        if (said.isEmpty())
            said = desk.ask("How does it look? g glossy, s streaks, m matt or pasty, w wet in the middle; then Enter.");
        List<String> words =
                Stream.of(Smear.Look.values()).map(Smear.Look::word).toList();
        if (said.isPresent())
            for (Smear.Look each : Smear.Look.values())
                if (!said.get().isEmpty() && each.word().startsWith(said.get())) return each;
        String near = said.flatMap(s -> Nearest.to(s, words))
                .map(n -> "Did you mean " + n + "? ")
                .orElse("");
        throw new Refusal(
                Exit.NOT_UNDERSTOOD,
                "How the film looks is not known. Nothing was kept. " + near + "Say --look " + String.join(", ", words)
                        + (minutes == null ? "; and --minutes, how long it took." : "."));
    }

    // What is needed for all of them.

    private ProofPlace place(boolean mayBelong) throws Refusal {
        ProofPlace.Said said = new ProofPlace.Said(
                Optional.ofNullable(chocolate),
                Optional.ofNullable(cup),
                Optional.ofNullable(grams),
                Optional.ofNullable(session));
        return ProofPlace.of(said, common.folders(), choices, known, mayBelong, err());
    }

    private ProofHead head(ProofHead.Kind kind, ProofPlace place, String origin) {
        Instant now = Instant.now();
        return new ProofHead(
                ProofFile.name(
                        now,
                        ZoneId.systemDefault().getRules().getOffset(now),
                        place.recipe().id()),
                now,
                kind,
                origin,
                place.recipe().id(),
                place.fat().fatFraction(),
                place.fat().milkFatInFatFraction(),
                kind == ProofHead.Kind.SMEAR
                        ? Optional.empty()
                        : Optional.of(place.cup().cup()),
                place.session());
    }

    private static String origin(ProofSubject subject) {
        return switch (subject.probe().kind()) {
            case REAL -> "real";
            case RECORDED -> "recorded";
            case PRACTICE -> "simulated";
        };
    }

    private void welcome(ProofSubject subject, ProofPlace place) {
        String what = calibrate ? "Calibration of a cup" : "Proof of temper";
        desk.say(
                subject.probe().kind() == CheckSubject.Kind.PRACTICE
                        ? what + " · practice: an invented bowl, cup and probe; nothing is kept"
                        : what + " · " + subject.probe().place() + " · "
                                + place.recipe().name() + " · " + words(place.cup()));
        place.session().ifPresent(s -> desk.say("It belongs to the session " + s + "."));
    }

    private static String words(KeptCup cup) {
        int good = cup.goodBends().size();
        return "cup \"" + cup.cup() + "\", " + (cup.traits().isPresent() ? "calibrated" : "not calibrated") + ", "
                + good + (good == 1 ? " good curve" : " good curves");
    }

    private ProofSubject subject(String name, Adapters.Loaded loaded) throws Refusal, InterruptedException {
        WatchSpeed wish = speed == null ? WatchSpeed.USUAL : WatchSpeed.parse(speed);
        if (ProbeChooser.isPractice(name)) return ProofSubject.practice(name, desk.manner(), wish);
        return ProofSubject.of(
                line.subjects(loaded, sensors, desk.manner(), err()).first(name));
    }

    private static CheckEar open(CheckSubject subject) throws Refusal {
        try {
            return CheckEar.open(subject);
        } catch (LinkException e) {
            throw new Refusal(Exit.NO_PROBE, e.getMessage() + " Nothing was proved. " + e.whatToDo());
        }
    }

    private OptionalDouble saidBath() throws Refusal {
        return within(bath, -5, 30, "--bath", "°C");
    }

    private static OptionalDouble within(Double value, double low, double high, String option, String unit)
            throws Refusal {
        if (value == null) return OptionalDouble.empty();
        if (value >= low && value <= high) return OptionalDouble.of(value);
        throw new Refusal(
                Exit.NOT_UNDERSTOOD,
                option + " was " + value + ". Nothing was done. Give " + low + " to " + high + " " + unit + ".");
    }

    private PrintWriter out() {
        return spec.commandLine().getOut();
    }

    private PrintWriter err() {
        return spec.commandLine().getErr();
    }
}
