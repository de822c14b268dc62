package fifthform.curves.input;

import fifthform.curves.setup.ProbeId;
import java.time.Instant;
import java.util.Locale;
import java.util.Objects;

/** The probe or its adapter could not give a temperature. */
public record ProbeFault(Instant at, ProbeId probe, Cause cause) implements Input {
    /** Why there is no temperature. */
    public enum Cause {
        /** The thermocouple's circuit is open: wire broken or plug out. */
        OPEN_CIRCUIT,
        /** The thermocouple touches ground or supply. */
        SHORT_CIRCUIT,
        /** A number that no kitchen has. */
        OUT_OF_RANGE,
        /** Bytes came that mean nothing. */
        GARBLED,
        /** The port is open and nothing comes. */
        SILENT,
        /** The port is gone. */
        UNPLUGGED,
        /** Far more comes than a probe can mean; only the newest readings are taken. */
        FLOODED;

        /** Whether the adapter itself says that the thermocouple is at fault, not the way to it. */
        public boolean isOfTheWire() {
            return this == OPEN_CIRCUIT || this == SHORT_CIRCUIT || this == OUT_OF_RANGE;
        }

        /** The word in files: {@code open-circuit}, … */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    public ProbeFault {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(probe, "probe");
        Objects.requireNonNull(cause, "cause");
    }

    @Override
    public <R> R fold(Cases<R> cases) {
        return cases.fault(this);
    }
}
