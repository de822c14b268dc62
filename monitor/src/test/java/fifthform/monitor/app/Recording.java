package fifthform.monitor.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;

import fifthform.curves.input.Input;
import fifthform.curves.input.Recorded;
import fifthform.curves.input.Sample;
import fifthform.monitor.store.Entry;
import fifthform.monitor.store.JournalReader;
import fifthform.monitor.store.Session;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

/** What a session file tells a test. */
record Recording(Session session) {
    static Recording of(Path file) {
        return new Recording(JournalReader.read(file).fold(session -> session, problems -> fail(problems.toString())));
    }

    /** Every reading of the bowl, in hundredths of a degree. */
    List<Integer> hundredths() {
        return session.inputs()
                .map(Recorded::input)
                .filter(Sample.class::isInstance)
                .map(input -> (int) Math.round(100 * ((Sample) input).tipCelsius()))
                .toList();
    }

    static List<Integer> range(int from, int to) {
        return IntStream.rangeClosed(from, to).boxed().toList();
    }

    boolean was(String event) {
        return session.told().map(Entry.Told::json).anyMatch(line -> line.contains("\"" + event + "\""));
    }

    List<Entry.Note> notes(String about) {
        return session.entries().stream()
                .filter(Entry.Note.class::isInstance)
                .map(Entry.Note.class::cast)
                .filter(note -> note.about().equals(about))
                .toList();
    }

    List<Input> inputs() {
        return session.inputs().map(Recorded::input).toList();
    }

    void hasUnbrokenNumbers() {
        List<Long> numbers = session.inputs().map(Recorded::sequence).toList();
        assertEquals(LongStream.rangeClosed(1, numbers.size()).boxed().toList(), numbers);
    }
}
