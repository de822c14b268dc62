package fifthform.curves.check;

import java.util.List;
import java.util.Objects;
import java.util.function.Function;

/** The outcome of reading something a person wrote: a value, or every problem found, never half of each. */
public sealed interface Parsed<T> {
    /** Calls the function that fits; both must be given, so no caller can forget the refusal. */
    <R> R fold(Function<? super T, ? extends R> accepted, Function<? super List<Problem>, ? extends R> refused);

    static <T> Parsed<T> accepted(T value) {
        return new Accepted<>(value);
    }

    static <T> Parsed<T> refused(List<Problem> problems) {
        return new Refused<>(problems);
    }

    static <T> Parsed<T> refused(String where, String what, String whatToDo) {
        return new Refused<>(List.of(new Problem(where, what, whatToDo)));
    }

    /** What was read. */
    record Accepted<T>(T value) implements Parsed<T> {
        public Accepted {
            Objects.requireNonNull(value, "value");
        }

        @Override
        public <R> R fold(
                Function<? super T, ? extends R> accepted, Function<? super List<Problem>, ? extends R> refused) {
            return accepted.apply(value);
        }
    }

    /** Why it could not be read; at least one problem. */
    record Refused<T>(List<Problem> problems) implements Parsed<T> {
        public Refused {
            problems = List.copyOf(problems);
            if (problems.isEmpty()) throw new IllegalArgumentException("problems must not be empty");
        }

        @Override
        public <R> R fold(
                Function<? super T, ? extends R> accepted, Function<? super List<Problem>, ? extends R> refused) {
            return refused.apply(problems);
        }
    }
}
