package fifthform.monitor.start;

import java.util.Objects;

/**
 * A port behind which the bowl's probe may be.
 *
 * @param port as {@code --probe} takes it
 * @param words what the system calls it, and whether it was used before
 * @param check when it was checked last and how far it can be trusted
 * @param trusted whether it has been checked
 */
public record SeenProbe(String port, String words, String check, boolean trusted) {
    public SeenProbe {
        Objects.requireNonNull(port, "port");
        Objects.requireNonNull(words, "words");
        Objects.requireNonNull(check, "check");
    }
}
