package fifthform.probe.find;

import fifthform.probe.ProbeProtocol;
import java.util.Objects;

/**
 * How well one protocol understood what a port said.
 *
 * @param goodSignals temperatures and faults understood, 0 or more
 * @param unreadableBytes bytes that meant nothing to it, 0 or more
 */
public record Heard(ProbeProtocol protocol, int goodSignals, int unreadableBytes) {
    /** Fewer could be chance: noise can look like one number, hardly like three. */
    public static final int ENOUGH_SIGNALS = 3;

    public Heard {
        Objects.requireNonNull(protocol, "protocol");
        if (goodSignals < 0) throw new IllegalArgumentException("goodSignals must be 0 or more, was " + goodSignals);
        if (unreadableBytes < 0)
            throw new IllegalArgumentException("unreadableBytes must be 0 or more, was " + unreadableBytes);
    }

    /** Whether this may be taken for the way the adapter talks. */
    public boolean isConvincing() {
        return goodSignals >= ENOUGH_SIGNALS;
    }
}
