package fifthform.curves.check;

import java.util.Objects;

/**
 * Something a person gave us that cannot be used as it is.
 *
 * @param where where it stands, for example {@code "line 7"} or {@code "--amount"}
 * @param what what is not acceptable about it
 * @param whatToDo what to change
 */
public record Problem(String where, String what, String whatToDo) {
    public Problem {
        Objects.requireNonNull(where, "where");
        Objects.requireNonNull(what, "what");
        Objects.requireNonNull(whatToDo, "whatToDo");
    }

    @Override
    public String toString() {
        return where + ": " + what + " " + whatToDo;
    }
}
