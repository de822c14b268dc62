package fifthform.simulator.device;

import java.util.Locale;
import java.util.Optional;

/** What can be wrong with an adapter. */
public enum Trouble {
    /** Out of its socket: the port is gone. */
    UNPLUGGED,
    /** The thermocouple's wire is broken; the adapter says so. */
    OPEN_CIRCUIT,
    /** The port is there and nothing comes. */
    SILENT,
    /** Lines that mean nothing, as from a wrong speed or a loose contact. */
    GARBAGE;

    /** The name in files: {@code open-circuit}, … */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The trouble with this {@link #word()}, if there is one. */
    public static Optional<Trouble> fromWord(String word) {
        for (Trouble trouble : values()) if (trouble.word().equals(word)) return Optional.of(trouble);
        return Optional.empty();
    }
}
