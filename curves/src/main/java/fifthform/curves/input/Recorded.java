package fifthform.curves.input;

import java.util.Objects;

/**
 * An input and its place in the order in which the engine takes them; what a journal line holds.
 *
 * @param sequence 1 for a session's first input, then one more each
 * @param input the input
 */
public record Recorded(long sequence, Input input) {
    public Recorded {
        if (sequence < 1) throw new IllegalArgumentException("sequence must be 1 or more, was " + sequence);
        Objects.requireNonNull(input, "input");
    }
}
