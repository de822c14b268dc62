package fifthform.monitor.notebook;

import fifthform.curves.check.Problem;
import fifthform.curves.input.Input;
import fifthform.curves.input.Recorded;
import fifthform.curves.input.Sample;
import fifthform.curves.recipe.Phase;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.review.Verdict;
import fifthform.curves.setup.Beginning;
import fifthform.curves.setup.ProbeSetup;
import fifthform.curves.setup.Setup;
import fifthform.monitor.analyse.Analysis;
import fifthform.monitor.analyse.BatchFigures;
import fifthform.monitor.json.JsonObject;
import fifthform.monitor.json.UnreadableJson;
import fifthform.monitor.looks.KeptLook;
import fifthform.monitor.looks.LookFile;
import fifthform.monitor.store.Entry;
import fifthform.monitor.store.JournalReader;
import fifthform.monitor.store.Session;
import fifthform.monitor.store.SessionFiles;
import fifthform.monitor.store.SessionHeader;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * Makes a row of a session file. The closing figures stand in the file of a batch that ended in good order; one that was
 * cut off goes through the engine once more.
 */
final class BatchReader {
    /** Points of the curve in a row. */
    static final int SMALL = 60;

    /** Points of a curve that is looked at. */
    static final int LARGE = 480;

    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("yyyy-MM-dd-HHmmss", Locale.ROOT);
    private static final int STAMP_LENGTH = 17;

    private BatchReader() {}

    /** The row of this file; never fails, but says what cannot be read. */
    static BatchRow read(Path file) {
        return JournalReader.read(file).fold(BatchReader::row, problems -> unreadable(file, problems));
    }

    /** A curve fine enough to be looked at; empty where the session cannot be read. */
    static SmallCurve curve(Path file) {
        return JournalReader.read(file)
                .fold(session -> curve(session, summary(session), LARGE), problems -> SmallCurve.EMPTY);
    }

    /** The session's name as its header has it, since looks are kept by that; the file may have been renamed. */
    static String session(Path file) {
        return JournalReader.readHeader(file).fold(SessionHeader::session, problems -> SessionFiles.name(file));
    }

    /** What the file's name alone tells. */
    static BatchRow unread(Path file) {
        return bare(file, Condition.UNREAD, "", List.of());
    }

    private static BatchRow unreadable(Path file, List<Problem> problems) {
        String said = problems.stream().map(p -> p.what() + " " + p.whatToDo()).collect(Collectors.joining(" "));
        String name = SessionFiles.name(file);
        return bare(file, Condition.UNREADABLE, said, looks(file, name));
    }

    private static BatchRow bare(Path file, Condition condition, String trouble, List<KeptLook> looks) {
        String name = SessionFiles.name(file);
        Instant start = Instant.EPOCH;
        ZoneOffset zone = ZoneOffset.UTC;
        String chocolate = "";
        try {
            LocalDateTime when = LocalDateTime.parse(name.substring(0, Math.min(STAMP_LENGTH, name.length())), STAMP);
            zone = ZoneId.systemDefault().getRules().getOffset(when);
            start = when.toInstant(zone);
            if (name.length() > STAMP_LENGTH) chocolate = name.substring(STAMP_LENGTH + 1);
        } catch (DateTimeParseException e) {
            // The maker gave it a name of their own; it stands at the end of the list.
        }
        return new BatchRow(
                file,
                name,
                start,
                zone,
                chocolate,
                chocolate,
                "",
                OptionalDouble.empty(),
                BatchKind.REAL,
                Beginning.WHOLE,
                Optional.empty(),
                Duration.ZERO,
                start,
                Figures.NONE,
                Targets.UNKNOWN,
                condition,
                trouble,
                looks,
                SmallCurve.EMPTY);
    }

    private static List<KeptLook> looks(Path file, String session) {
        return LookFile.beside(file, session).load().looks();
    }

    private static BatchRow row(Session session) {
        Path file = session.file();
        Setup setup = session.header().setup();
        Recipe recipe = setup.recipe();
        LookFile.Loaded looks =
                LookFile.beside(file, session.header().session()).load();
        List<Problem> problems = new ArrayList<>(session.problems());
        problems.addAll(looks.problems());
        Optional<JsonObject> summary = summary(session);
        return new BatchRow(
                file,
                SessionFiles.name(file),
                session.header().start(),
                session.header().zone(),
                recipe.id(),
                recipe.name(),
                setup.bowl().id(),
                setup.bowl().amountGrams(),
                BatchKind.of(setup),
                setup.beginning(),
                setup.holding(),
                Duration.between(session.header().start(), session.lastAt()),
                session.lastWall(),
                summary.map(BatchReader::figures).orElse(Figures.NONE),
                Targets.of(recipe),
                condition(session, problems),
                said(problems),
                looks.looks(),
                curve(session, summary, SMALL));
    }

    private static Condition condition(Session session, List<Problem> problems) {
        if (!session.isClosed() && SessionFiles.isHeld(session.file())) return Condition.GOING_ON;
        if (!problems.isEmpty()) return Condition.IN_PART;
        return session.isClosed() ? Condition.WHOLE : Condition.CUT_OFF;
    }

    private static String said(List<Problem> problems) {
        if (problems.isEmpty()) return "";
        String more = problems.size() == 1 ? "" : " (+" + (problems.size() - 1) + ")";
        return problems.get(0) + more;
    }

    /** As the session's last line has it, else as the engine says now. */
    private static Optional<JsonObject> summary(Session session) {
        Optional<JsonObject> closing = session.entries().stream()
                .filter(Entry.Closing.class::isInstance)
                .map(entry -> ((Entry.Closing) entry).summary())
                .reduce((before, last) -> last)
                .filter(summary -> summary.has("phases"));
        return closing.or(() -> reckoned(session));
    }

    private static Optional<JsonObject> reckoned(Session session) {
        Setup setup = session.header().setup();
        Instant start = session.header().start();
        Analysis analysis = new Analysis(session.header().session(), setup, start);
        try {
            session.inputs().map(Recorded::input).forEach(analysis::take);
            Setup inForce = analysis.state().setupInForce(setup);
            return Optional.of(JsonObject.parse(
                    BatchFigures.of(inForce, analysis.tally(), start).end()));
        } catch (UnreadableJson | IllegalArgumentException e) {
            // A damaged session may hold what no engine ever took; its row stands without figures.
            return Optional.empty();
        }
    }

    private static Figures figures(JsonObject summary) {
        try {
            return new Figures(
                    summary.optionalNumber("highest_work_c"),
                    summary.optionalNumber("lowest_cool_c"),
                    Duration.ofMillis(Math.round(
                            1000 * summary.optionalNumber("over_range_s").orElse(0))),
                    summary.choice("verdict", Verdict.values(), Verdict::word),
                    summary.optionalText("crystals"),
                    summary.has("seed_lost"));
        } catch (UnreadableJson e) {
            return Figures.NONE;
        }
    }

    private static SmallCurve curve(Session session, Optional<JsonObject> summary, int points) {
        Instant start = session.header().start();
        ProbeSetup bowl = session.header().setup().bowlProbe();
        List<Sample> samples = session.inputs()
                .map(Recorded::input)
                .filter(input ->
                        input instanceof Sample sample && sample.probe().equals(bowl.id()))
                .map(Sample.class::cast)
                .toList();
        if (samples.isEmpty()) return SmallCurve.EMPTY;
        double whole = Math.max(1, seconds(start, samples.get(samples.size() - 1)));
        double step = whole / points;
        double[] sums = new double[points];
        int[] counts = new int[points];
        double[] cool = summary.map(BatchReader::firstCool).orElse(new double[] {Double.NaN, Double.NaN});
        double coldest = Double.POSITIVE_INFINITY;
        OptionalDouble trough = OptionalDouble.empty();
        for (Sample sample : samples) {
            double at = seconds(start, sample);
            double celsius =
                    bowl.correction().apply(sample.linearised(bowl.sensor()).tipCelsius());
            int place = (int) Math.max(0, Math.min(points - 1, Math.floor(at / step)));
            sums[place] += celsius;
            counts[place]++;
            if (at >= cool[0] && at <= cool[1] && celsius < coldest) {
                coldest = celsius;
                trough = OptionalDouble.of(at);
            }
        }
        double[] means = new double[points];
        for (int i = 0; i < points; i++) means[i] = counts[i] == 0 ? Double.NaN : sums[i] / counts[i];
        return SmallCurve.of(step, means, trough);
    }

    /** From when to when it was cooled the first time, s since the start; NaN where it was not. */
    private static double[] firstCool(JsonObject summary) {
        double[] span = {Double.NaN, Double.NaN};
        try {
            for (JsonObject phase : summary.objects("phases")) {
                String name = phase.text("name");
                boolean cools = name.equals(Phase.COOL.word()) || name.equals(Phase.SEED.word());
                if (cools && Double.isNaN(span[0])) span[0] = phase.number("from_s");
                if (cools) span[1] = phase.number("to_s");
                else if (!Double.isNaN(span[0])) break;
            }
        } catch (UnreadableJson e) {
            return new double[] {Double.NaN, Double.NaN};
        }
        return span;
    }

    private static double seconds(Instant start, Input input) {
        return Duration.between(start, input.at()).toNanos() / 1e9;
    }
}
