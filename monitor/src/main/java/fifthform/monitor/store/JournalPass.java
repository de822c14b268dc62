package fifthform.monitor.store;

import fifthform.curves.check.Problem;
import fifthform.curves.input.Recorded;
import fifthform.curves.input.Sample;
import fifthform.curves.input.Tick;
import fifthform.curves.setup.ProbeId;
import fifthform.monitor.json.JsonObject;
import fifthform.monitor.json.UnreadableJson;
import fifthform.monitor.texts.FileText;
import java.io.IOException;
import java.io.InputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.zip.CRC32C;

/**
 * Goes through a session's file line by line without keeping it, from its beginning or from any line that was passed
 * before. Readings are taken from their bytes as they stand, so that a day of them passes in a second; all other lines
 * are read as {@link JournalReader} reads them, and the same is said of what is wrong.
 */
public final class JournalPass implements AutoCloseable {
    private static final int WHOLE_BYTES = 1 << 20;
    private static final int SHORT_BYTES = 1 << 16;
    private static final int LONGEST_BYTES = 4_000_000;

    /** What the present line is. */
    public enum Kind {
        /** A temperature: {@link #probe}, {@link #celsius}. */
        READING,
        /** Another input: {@link #recorded}. */
        INPUT,
        /** What the maker was told: {@link #told}. */
        TOLD,
        /** A remark of the program: {@link #note}. */
        NOTE,
        /** The closing line: {@link #summary}. */
        CLOSING
    }

    private final Path file;
    private final InputStream bytes;
    private final SessionTime time;
    private final InputCodec inputs;
    private final boolean whole;
    private final ReadingLine quick = new ReadingLine();
    private final CRC32C crc = new CRC32C();
    private final List<Problem> problems = new ArrayList<>();
    private final Set<String> unknownKinds = new TreeSet<>();

    private byte[] buffer;
    private int filled;
    private int next;
    /** Where the bytes begin that no check has vouched for and that are not summed up yet. */
    private int unsummed;

    private long bufferAt;
    private boolean ended;
    private int number;
    private int uncheckedLines;
    private int checkedTo;
    private int unknownLines;
    private long lastSequence;

    private Kind kind = Kind.NOTE;
    private long offset;
    private boolean isQuick;
    private long sequence;
    private long nanos;
    private Optional<Recorded> recorded = Optional.empty();
    private String told = "";
    private Optional<Entry.Note> note = Optional.empty();
    private Optional<JsonObject> summary = Optional.empty();

    private JournalPass(Path file, SessionHeader header, long from, boolean whole) throws IOException {
        this.file = file;
        this.whole = whole;
        FileChannel channel = FileChannel.open(file, StandardOpenOption.READ);
        channel.position(from);
        bytes = Channels.newInputStream(channel);
        time = new SessionTime(header.start());
        inputs = new InputCodec(header.start());
        buffer = new byte[whole ? WHOLE_BYTES : SHORT_BYTES];
        bufferAt = from;
    }

    /** Through the whole file; the header, which is known, is passed over. */
    public static JournalPass whole(Path file, SessionHeader header) throws IOException {
        return new JournalPass(file, header, 0, true);
    }

    /** From a line on that began at this {@link #offset}; nothing is said of what is wrong. */
    public static JournalPass from(Path file, SessionHeader header, long offset) throws IOException {
        return new JournalPass(file, header, offset, false);
    }

    /** Goes on to the next line that tells something; false at the end. */
    public boolean next() throws IOException {
        while (true) {
            int end = lineEnd();
            if (end < 0) return false;
            int begin = next;
            offset = bufferAt + begin;
            next = Math.min(end + 1, filled);
            number++;
            if (take(begin, end)) return true;
        }
    }

    public Kind kind() {
        return kind;
    }

    /** Where the present line begins in the file, bytes. */
    public long offset() {
        return offset;
    }

    /** The number of the input, or of the one that led to what was told. */
    public long sequence() {
        return sequence;
    }

    /** The input's time, ns since the session's start. */
    public long nanos() {
        return nanos;
    }

    /** Whose reading it is. */
    public ProbeId probe() {
        return isQuick ? quick.probe : sample().probe();
    }

    /** The reading as the wire said it, °C. */
    public double celsius() {
        return isQuick ? quick.celsius : sample().tipCelsius();
    }

    /** The input, of a reading too. */
    public Recorded recorded() {
        if (!isQuick) return recorded.orElseThrow();
        return new Recorded(
                sequence,
                new Sample(
                        time.start().plusNanos(nanos),
                        quick.probe,
                        quick.celsius,
                        quick.sigmaKelvin,
                        known(quick.junctionCelsius),
                        known(quick.emfMillivolts)));
    }

    /** What the maker was told, as its line. */
    public String told() {
        return told;
    }

    public Entry.Note note() {
        return note.orElseThrow();
    }

    /** What the session summed up when it was closed. */
    public JsonObject summary() {
        return summary.orElseThrow();
    }

    /** What is wrong with the lines so far; all of it once there is no next one. */
    public List<Problem> problems() {
        List<Problem> all = new ArrayList<>(problems);
        if (unknownLines > 0) all.add(JournalProblems.newerLines(file, unknownLines, unknownKinds));
        return all;
    }

    @Override
    public void close() throws IOException {
        bytes.close();
    }

    private Sample sample() {
        return (Sample) recorded.orElseThrow().input();
    }

    private static OptionalDouble known(double value) {
        return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    /** Where the line break of the next line is; -1 where there is no whole line any more. */
    private int lineEnd() throws IOException {
        int at = next;
        while (true) {
            for (; at < filled; at++) if (buffer[at] == '\n') return at;
            // A last line without its break may be whole all the same; if it is not, that is said.
            if (ended) return next < filled ? filled : -1;
            int before = next;
            more();
            at -= before - next;
        }
    }

    private void more() throws IOException {
        sum(next);
        System.arraycopy(buffer, next, buffer, 0, filled - next);
        bufferAt += next;
        filled -= next;
        next = 0;
        unsummed = 0;
        if (filled == buffer.length) {
            if (buffer.length >= LONGEST_BYTES) throw new IOException(FileText.A_LINE_IS_TOO_LONG.say());
            buffer = Arrays.copyOf(buffer, 2 * buffer.length);
        }
        int read = bytes.read(buffer, filled, buffer.length - filled);
        if (read < 0) ended = true;
        else filled += read;
    }

    /** Sums up the bytes before {@code to} that no check has vouched for. */
    private void sum(int to) {
        if (whole && to > unsummed) crc.update(buffer, unsummed, to - unsummed);
        unsummed = Math.max(unsummed, to);
    }

    private boolean take(int begin, int end) {
        isQuick = false;
        if (whole && number == 1) {
            uncheckedLines++;
            header(begin, end);
            return false;
        }
        if (quick.isSample(buffer, begin, end)) return quickly(Kind.READING);
        if (quick.isTick(buffer, begin, end)) {
            Recorded tick = new Recorded(quick.sequence, new Tick(time.start().plusNanos(quick.nanos)));
            recorded = Optional.of(tick);
            boolean taken = quickly(Kind.INPUT);
            isQuick = false;
            return taken;
        }
        if (quick.isCheck(buffer, begin, end)) {
            check(begin, quick.crc, quick.lines);
            return false;
        }
        return slowly(begin, end);
    }

    private boolean quickly(Kind what) {
        isQuick = true;
        kind = what;
        uncheckedLines++;
        sequence = quick.sequence;
        nanos = quick.nanos;
        follow();
        return true;
    }

    private void follow() {
        if (whole && sequence != lastSequence + 1)
            problems.add(JournalProblems.outOfOrder(line(), sequence, lastSequence));
        lastSequence = Math.max(lastSequence, sequence);
    }

    private String line() {
        return FileText.LINE_RAW_LINE.say(number);
    }

    private void header(int begin, int end) {
        try {
            long format = JsonObject.parse(text(begin, end)).whole("format");
            if (format > SessionHeader.FORMAT) problems.add(JournalProblems.newerFormat(format));
        } catch (UnreadableJson e) {
            problems.add(new Problem(
                    FileText.LINE_1.say(), e.getMessage() + ".", FileText.THE_SESSION_IS_READ_AS_WELL.say()));
        }
    }

    private String text(int begin, int end) {
        return new String(buffer, begin, end - begin, StandardCharsets.UTF_8);
    }

    private boolean slowly(int begin, int end) {
        try {
            JsonObject json = JsonObject.parse(text(begin, end));
            String letter = json.text(LineKind.KEY);
            Optional<LineKind> known = LineKind.of(letter);
            if (known.isPresent() && known.get() == LineKind.CHECK) {
                checkSlowly(json, begin);
                return false;
            }
            uncheckedLines++;
            if (known.isPresent()) return keep(known.get(), json, begin, end);
            unknownKinds.add(letter);
            unknownLines++;
            return false;
        } catch (UnreadableJson e) {
            uncheckedLines++;
            if (whole) problems.add(end == filled ? torn(begin, end) : JournalProblems.damaged(line(), e.getMessage()));
            return false;
        }
    }

    private Problem torn(int begin, int end) {
        return JournalProblems.torn(new RawLine(number, Arrays.copyOfRange(buffer, begin, end)));
    }

    private boolean keep(LineKind what, JsonObject json, int begin, int end) throws UnreadableJson {
        switch (what) {
            case SAMPLE, FAULT, TICK, ACTION, STORE_TROUBLE -> {
                Recorded read = inputs.read(what, json);
                recorded = Optional.of(read);
                kind = what == LineKind.SAMPLE ? Kind.READING : Kind.INPUT;
                sequence = read.sequence();
                nanos = Duration.between(time.start(), read.input().at()).toNanos();
                follow();
            }
            case EVENT -> {
                kind = Kind.TOLD;
                sequence = json.whole("s");
                told = text(begin, end);
            }
            case NOTE -> {
                kind = Kind.NOTE;
                Instant at = time.read(json);
                note = Optional.of(new Entry.Note(at, json.text("about"), json.text("text")));
            }
            case CLOSING -> {
                kind = Kind.CLOSING;
                summary = Optional.of(json.object("summary"));
                closingWall(json);
            }
            case HEADER, CHECK -> {
                if (whole) problems.add(JournalProblems.damaged(line(), FileText.A_SECOND_HEADER.say()));
                return false;
            }
        }
        return true;
    }

    /** The summary is kept where only the time of day cannot be read. */
    private void closingWall(JsonObject json) {
        try {
            readWall(json);
        } catch (UnreadableJson e) {
            uncheckedLines++;
            if (whole) problems.add(JournalProblems.damaged(line(), e.getMessage()));
        }
    }

    private void check(int begin, long told, long lines) {
        sum(begin);
        checked(told == crc.getValue() && lines == uncheckedLines);
    }

    /** In the reader's order: what does not agree is said even where the rest of the line cannot be read. */
    private void checkSlowly(JsonObject json, int begin) throws UnreadableJson {
        sum(begin);
        String sum = String.format("%08x", crc.getValue());
        checked(json.text("crc").equals(sum) && json.whole("lines") == uncheckedLines);
        try {
            readWall(json);
        } catch (UnreadableJson e) {
            unsummed = begin;
            throw e;
        }
    }

    private static void readWall(JsonObject json) throws UnreadableJson {
        try {
            Instant.parse(json.text("wall"));
        } catch (DateTimeException e) {
            throw new UnreadableJson(FileText.WALL_IS_NO_TIME_OF_DAY.say());
        }
    }

    private void checked(boolean agrees) {
        if (whole && !agrees) problems.add(JournalProblems.changed(checkedTo + 1, number - 1));
        unsummed = next;
        checkedTo = number;
        crc.reset();
        uncheckedLines = 0;
    }
}
