package fifthform.simulator.device;

import java.util.Locale;
import java.util.Optional;

/** What can be wrong with an adapter. */
public enum Trouble {
    /** Out of its socket: the port is gone. */
    UNPLUGGED,
    /** The thermocouple's wire is broken; the adapter says so, if it can. */
    OPEN_CIRCUIT,
    /** The port is there and nothing comes; a question finds no answer. */
    SILENT,
    /** Lines that mean nothing, as from a wrong speed or a loose contact. */
    GARBAGE,
    /** The thermocouple touches ground or supply, and the adapter is one that notices. */
    SHORT_CIRCUIT,
    /** Behind the adapter nothing answers any more: zeros for ever. */
    DEAD_LINE,
    /** The same number for ever: the adapter's program hangs and its output goes on. */
    STUCK,
    /** One reading in four is far off, as from a loose plug beside a motor. */
    SPIKES,
    /** Four readings in five do not come. */
    DROP_OUTS,
    /** Every second reading, on average, breaks off in its middle, its end included, as from a supply that fails. */
    HALF_LINES,
    /** Far more comes than anybody can mean, unasked. */
    FLOOD,
    /** Answers come spoiled, and their check sum says so. */
    WRONG_CRC;

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
