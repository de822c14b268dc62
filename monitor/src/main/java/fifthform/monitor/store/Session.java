package fifthform.monitor.store;

import fifthform.curves.check.Problem;
import fifthform.curves.input.Recorded;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * A recorded session, as much of it as can be read.
 *
 * @param file where it is kept
 * @param header its first line
 * @param entries what it tells, in order
 * @param lastWall time of day when it was last written to, as far as it tells; its start where it does not
 * @param problems what had to be left out or cannot be vouched for, and why
 */
public record Session(Path file, SessionHeader header, List<Entry> entries, Instant lastWall, List<Problem> problems) {
    public Session {
        Objects.requireNonNull(file, "file");
        Objects.requireNonNull(header, "header");
        entries = List.copyOf(entries);
        Objects.requireNonNull(lastWall, "lastWall");
        problems = List.copyOf(problems);
    }

    /** The inputs in the order in which the engine took them. */
    public Stream<Recorded> inputs() {
        return entries.stream().flatMap(entry -> entry.input().stream());
    }

    /** What the maker was told. */
    public Stream<Entry.Told> told() {
        return entries.stream().filter(Entry.Told.class::isInstance).map(Entry.Told.class::cast);
    }

    /** Whether it was ended in an orderly way. */
    public boolean isClosed() {
        return entries.stream().anyMatch(Entry.Closing.class::isInstance);
    }

    /** The time of its last input; its start where it has none. */
    public Instant lastAt() {
        return inputs().map(recorded -> recorded.input().at()).reduce(header.start(), (before, at) -> at);
    }

    /** The number that the next input gets when the session goes on. */
    public long nextSequence() {
        return 1 + inputs().mapToLong(Recorded::sequence).max().orElse(0);
    }
}
