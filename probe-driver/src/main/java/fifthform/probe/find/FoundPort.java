package fifthform.probe.find;

import java.util.Objects;
import java.util.Optional;

/**
 * A port that the system lists, and whether a probe may be behind it.
 *
 * @param name for {@code --probe}, for example {@code ttyUSB0}
 * @param description what the system calls it
 * @param usb the adapter's identity, if it is plugged into USB
 * @param state whether it can be used
 * @param reason empty when it is ready: what is wrong and what that means
 * @param whatToDo empty when it is ready
 */
public record FoundPort(
        String name,
        String path,
        String description,
        Optional<UsbIdentity> usb,
        State state,
        Optional<String> reason,
        Optional<String> whatToDo) {
    /** Whether a port can be used. */
    public enum State {
        /** It can be opened and read. */
        READY,
        /** It is listed, but no device shows itself behind it. */
        NO_DEVICE,
        /** It is there, but something keeps us from opening it. */
        BLOCKED
    }

    public FoundPort {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(path, "path");
        Objects.requireNonNull(description, "description");
        Objects.requireNonNull(usb, "usb");
        Objects.requireNonNull(state, "state");
        if (reason.isPresent() == (state == State.READY))
            throw new IllegalArgumentException("reason must be given unless the port is ready, was " + reason);
        if (whatToDo.isPresent() != reason.isPresent())
            throw new IllegalArgumentException("whatToDo must be given with a reason, was " + whatToDo);
    }
}
