package fifthform.monitor.replay;

import fifthform.curves.check.Parsed;
import fifthform.curves.check.Problem;
import fifthform.curves.engine.Event;
import fifthform.curves.input.Input;
import fifthform.curves.input.MakerAction;
import fifthform.curves.setup.ProbeId;
import fifthform.curves.setup.Setup;
import fifthform.monitor.json.UnreadableJson;
import fifthform.monitor.store.Entry;
import fifthform.monitor.store.EventCodec;
import fifthform.monitor.store.JournalPass;
import fifthform.monitor.store.JournalReader;
import fifthform.monitor.store.SessionHeader;
import fifthform.monitor.texts.ReplayText;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a session's file tells by itself, without the engine: every reading, what the maker did and what was told then. A
 * day at ten readings a second is read in about a second, so the screen stands before anything is computed.
 */
public final class Recording {
    /** An event as it was told, and its line, to be compared with what is computed now. */
    public record Told(Event event, String line) {}

    private final Path file;
    private final SessionHeader header;
    private final Map<ProbeId, Readings> readings = new LinkedHashMap<>();
    private final List<MakerAction> did = new ArrayList<>();
    private final List<Told> told = new ArrayList<>();
    private final List<String> toldLines = new ArrayList<>();
    private final List<Entry.Note> notes = new ArrayList<>();
    private List<Problem> problems = List.of();
    private long endNanos;
    private long inputs;
    private long lastSequence;
    private boolean closed;
    private int untold;

    private Recording(Path file, SessionHeader header) {
        this.file = file;
        this.header = header;
        readings.put(header.setup().bowlProbe().id(), new Readings());
    }

    /** The session in this file, or why nothing of it can be used. */
    public static Parsed<Recording> read(Path file) {
        return JournalReader.readHeader(file).fold(header -> read(file, header), Parsed::refused);
    }

    private static Parsed<Recording> read(Path file, SessionHeader header) {
        Recording recording = new Recording(file, header);
        try (JournalPass pass = JournalPass.whole(file, header)) {
            recording.take(pass);
        } catch (IOException e) {
            return Parsed.refused(
                    file.toString(),
                    ReplayText.THE_FILE_CANNOT_BE_READ_NO.say(e.getMessage()),
                    ReplayText.CHECK_THE_PATH_AND_THAT_YOU.say());
        }
        return Parsed.accepted(recording);
    }

    private void take(JournalPass pass) throws IOException {
        EventCodec codec = new EventCodec(header.start());
        Readings bowl = bowl();
        ProbeId bowlProbe = header.setup().bowlProbe().id();
        while (pass.next()) {
            switch (pass.kind()) {
                case READING -> {
                    ProbeId probe = pass.probe();
                    Readings of =
                            probe.equals(bowlProbe) ? bowl : readings.computeIfAbsent(probe, name -> new Readings());
                    of.add(pass.nanos(), pass.celsius());
                    count(pass);
                }
                case INPUT -> {
                    Input input = pass.recorded().input();
                    if (input instanceof MakerAction action) did.add(action);
                    count(pass);
                }
                case TOLD -> tell(codec, pass.told());
                case NOTE -> notes.add(pass.note());
                case CLOSING -> closed = true;
            }
        }
        readings.values().forEach(Readings::close);
        problems = pass.problems();
    }

    private void count(JournalPass pass) {
        inputs++;
        endNanos = Math.max(endNanos, pass.nanos());
        lastSequence = Math.max(lastSequence, pass.sequence());
    }

    /** What a newer program told is compared by its line, and otherwise passed over. */
    private void tell(EventCodec codec, String line) {
        toldLines.add(line);
        try {
            told.add(new Told(codec.read(line), line));
        } catch (UnreadableJson newer) {
            untold++;
        }
    }

    /** How many things were told that only a newer program understands. */
    public int notUnderstood() {
        return untold;
    }

    public Path file() {
        return file;
    }

    public SessionHeader header() {
        return header;
    }

    /** The set-up at the start. */
    public Setup setup() {
        return header.setup();
    }

    public Instant start() {
        return header.start();
    }

    /** The readings of the chocolate. */
    public Readings bowl() {
        return readings.get(header.setup().bowlProbe().id());
    }

    /** The readings of every probe, the chocolate's first. */
    public Map<ProbeId, Readings> readings() {
        return readings;
    }

    /** What the maker did, in order. */
    public List<MakerAction> did() {
        return List.copyOf(did);
    }

    /** What was told then, in order, as far as this program understands it. */
    public List<Told> told() {
        return List.copyOf(told);
    }

    /** The lines of all that was told then. */
    public List<String> toldLines() {
        return List.copyOf(toldLines);
    }

    /** Remarks of the program. */
    public List<Entry.Note> notes() {
        return List.copyOf(notes);
    }

    /** What had to be left out or cannot be vouched for. */
    public List<Problem> problems() {
        return problems;
    }

    /** Time of the last input, ns since the start. */
    public long endNanos() {
        return endNanos;
    }

    /** How many inputs there are. */
    public long inputs() {
        return inputs;
    }

    /** The highest number of an input. */
    public long lastSequence() {
        return lastSequence;
    }

    /** Whether it was ended in an orderly way. */
    public boolean isClosed() {
        return closed;
    }

    /** A moment as ns since the start. */
    public long nanos(Instant at) {
        return Duration.between(header.start(), at).toNanos();
    }

    /** The moment so many ns after the start. */
    public Instant at(long nanos) {
        return header.start().plusNanos(nanos);
    }
}
