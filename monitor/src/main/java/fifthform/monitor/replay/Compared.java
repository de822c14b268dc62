package fifthform.monitor.replay;

import java.util.Objects;

/**
 * One line of what was told then beside what is computed now.
 *
 * @param label what it is about
 * @param then what was told then, or recorded
 * @param now what is computed now
 * @param agreement whether the two are the same thing said
 */
public record Compared(String label, String then, String now, Agreement agreement) {
    /** How then and now stand to each other. */
    public enum Agreement {
        SAME,
        DIFFERS,
        /** The one is a reading and the other an estimate, or one of them is not known: nothing is claimed. */
        NOT_COMPARED
    }

    public Compared {
        Objects.requireNonNull(label, "label");
        Objects.requireNonNull(then, "then");
        Objects.requireNonNull(now, "now");
        Objects.requireNonNull(agreement, "agreement");
    }
}
