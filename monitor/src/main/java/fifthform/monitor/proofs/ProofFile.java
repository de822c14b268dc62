package fifthform.monitor.proofs;

import fifthform.curves.check.Parsed;
import fifthform.curves.proof.CurvePoint;
import fifthform.monitor.json.JsonLine;
import fifthform.monitor.json.JsonObject;
import fifthform.monitor.json.UnreadableJson;
import fifthform.monitor.texts.ProofText;
import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * The recording of one proof, beside the sessions: JSON lines, a head {@code h}, one {@code r} a reading, the answers
 * {@code b} (bath) and {@code i} (ice left), and the result {@code z}. Each line is written when it comes, so that what was
 * read before a cut is there. For one thread.
 */
public final class ProofFile implements AutoCloseable {
    /** Ending of these files. */
    public static final String ENDING = ".proof.jsonl";

    private static final long FORMAT = 1;
    private static final DateTimeFormatter NAME = DateTimeFormatter.ofPattern("yyyy-MM-dd-HHmmss", Locale.ROOT);

    private final Path file;
    private final BufferedWriter out;

    private ProofFile(Path file, BufferedWriter out) {
        this.file = file;
        this.out = out;
    }

    /** A name for a recording that begins now. */
    public static String name(Instant start, ZoneOffset zone, String chocolate) {
        return NAME.format(start.atOffset(zone)) + "-" + chocolate;
    }

    /**
     * Begins a recording; where its name is taken, {@code -2} and so on is added.
     *
     * @throws IOException it cannot be made
     */
    public static ProofFile begin(Path folder, ProofHead head) throws IOException {
        Objects.requireNonNull(head, "head");
        Files.createDirectories(folder);
        for (int number = 1; ; number++) {
            String name = number == 1 ? head.name() : head.name() + "-" + number;
            Path file = folder.resolve(name + ENDING);
            try {
                BufferedWriter out =
                        Files.newBufferedWriter(file, StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW);
                ProofFile begun = new ProofFile(file, out);
                begun.line(head(head, name));
                return begun;
            } catch (FileAlreadyExistsException taken) {
                // The next number.
            }
        }
    }

    private static JsonLine head(ProofHead head, String name) {
        JsonLine line = new JsonLine()
                .text("k", "h")
                .whole("format", FORMAT)
                .text("proof", name)
                .text("kind", head.kind().word())
                .text("start", head.start().toString())
                .text("origin", head.origin())
                .text("chocolate", head.chocolate())
                .number("fat", head.fatFraction(), 4)
                .number("milk_fat", head.milkFatFraction(), 4);
        head.cup().ifPresent(cup -> line.text("cup", cup));
        head.session().ifPresent(session -> line.text("session", session));
        return line;
    }

    /** Name of the recording. */
    public String name() {
        return nameOf(file);
    }

    public Path file() {
        return file;
    }

    /** One reading, corrected. */
    public void reading(CurvePoint point) throws IOException {
        line(new JsonLine().text("k", "r").number("t", point.seconds(), 3).number("c", point.celsius(), 4));
    }

    /** What the probe read in the ice water. */
    public void bath(double celsius) throws IOException {
        line(new JsonLine().text("k", "b").number("c", celsius, 3));
    }

    /** Whether there was ice left. */
    public void iceLeft(boolean left) throws IOException {
        line(new JsonLine().text("k", "i").raw("left", String.valueOf(left)));
    }

    /** Any other line, as the result. */
    public void line(JsonLine line) throws IOException {
        out.write(line.end());
        out.write('\n');
        out.flush();
    }

    @Override
    public void close() throws IOException {
        out.close();
    }

    /**
     * The recordings of a folder, in the order of their names, which is that of time.
     *
     * @throws IOException the folder cannot be listed
     */
    public static List<Path> all(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(ENDING))
                    .filter(Files::isRegularFile)
                    .sorted()
                    .toList();
        }
    }

    /** The name that belongs to a file. */
    public static String nameOf(Path file) {
        String name = String.valueOf(file.getFileName());
        return name.endsWith(ENDING) ? name.substring(0, name.length() - ENDING.length()) : name;
    }

    /**
     * A recording that was read.
     *
     * @param head its first line
     * @param readings in the order of the file
     * @param bathCelsius what the probe read in the ice water
     * @param iceLeft whether there was ice left
     * @param result its last line {@code z}, what came of it; none where it was cut off
     * @param lost lines that could not be read
     */
    public record Recorded(
            ProofHead head,
            List<CurvePoint> readings,
            OptionalDouble bathCelsius,
            Optional<Boolean> iceLeft,
            Optional<JsonObject> result,
            int lost) {
        public Recorded {
            readings = List.copyOf(readings);
        }
    }

    /** Reads a recording; a torn or damaged line costs itself only. */
    public static Parsed<Recorded> read(Path file) throws IOException {
        // A byte that is no UTF-8 costs its line and not the file.
        List<String> lines = new String(Files.readAllBytes(file), StandardCharsets.UTF_8)
                .lines()
                .filter(line -> !line.isBlank())
                .toList();
        if (lines.isEmpty())
            return Parsed.refused(
                    file.toString(),
                    ProofText.IT_IS_EMPTY_SO_NOTHING_IS.say(),
                    ProofText.GIVE_A_RECORDING_OR_A_TABLE.say(ENDING));
        List<CurvePoint> readings = new ArrayList<>();
        OptionalDouble bath = OptionalDouble.empty();
        Optional<Boolean> ice = Optional.empty();
        Optional<JsonObject> result = Optional.empty();
        int lost = 0;
        try {
            ProofHead head = head(JsonObject.parse(lines.get(0)));
            for (String text : lines.subList(1, lines.size())) {
                try {
                    JsonObject line = JsonObject.parse(text);
                    switch (line.text("k")) {
                        case "r" -> readings.add(new CurvePoint(line.number("t"), line.number("c")));
                        case "b" -> bath = OptionalDouble.of(line.number("c"));
                        case "i" -> ice = Optional.of(text.contains("true"));
                        case "z" -> result = Optional.of(line);
                        default -> {}
                    }
                } catch (UnreadableJson | IllegalArgumentException e) {
                    lost++;
                }
            }
            return Parsed.accepted(new Recorded(head, readings, bath, ice, result, lost));
        } catch (UnreadableJson | IllegalArgumentException | DateTimeException e) {
            return Parsed.refused(
                    file.toString(),
                    ProofText.ITS_FIRST_LINE_CANNOT_BE.say(e.getMessage()),
                    ProofText.GIVE_A_RECORDING_OR_A_TABLE.say(ENDING));
        }
    }

    private static ProofHead head(JsonObject line) throws UnreadableJson {
        if (line.whole("format") != FORMAT) throw new UnreadableJson(ProofText.IT_IS_OF_A_NEWER_PROGRAM.say());
        return new ProofHead(
                line.text("proof"),
                Instant.parse(line.text("start")),
                line.choice("kind", ProofHead.Kind.values(), ProofHead.Kind::word),
                line.text("origin"),
                line.text("chocolate"),
                line.number("fat"),
                line.number("milk_fat"),
                line.optionalText("cup"),
                line.optionalText("session"));
    }
}
