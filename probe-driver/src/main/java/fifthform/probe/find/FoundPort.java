package fifthform.probe.find;

import java.util.Objects;
import java.util.Optional;

/**
 * Something that the system lists and that a probe may be behind, and whether it can be used.
 *
 * @param name for {@code --probe}, for example {@code ttyUSB0}
 * @param description what the system calls it
 * @param kind what it is to the system
 * @param usb the adapter's identity, if it is plugged into USB
 * @param socket where it is plugged in, as the system counts hubs and sockets, for example {@code 1-4.2}; where that is
 *     known. The same adapter in the same socket keeps it, whatever name its port gets.
 * @param state whether it can be used
 * @param reason empty when it is ready: what is wrong and what that means
 * @param whatToDo empty when it is ready
 */
public record FoundPort(
        String name,
        String path,
        String description,
        Kind kind,
        Optional<UsbIdentity> usb,
        Optional<String> socket,
        State state,
        Optional<String> reason,
        Optional<String> whatToDo) {
    /** What a port is to the system. */
    public enum Kind {
        /** A serial port. */
        SERIAL,
        /** A directory in which the kernel shows a sensor. */
        KERNEL_SENSOR,
        /** A USB device of the class that keyboards and some instruments belong to; it has no serial port. */
        HID
    }

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
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(usb, "usb");
        Objects.requireNonNull(socket, "socket");
        Objects.requireNonNull(state, "state");
        if (reason.isPresent() == (state == State.READY))
            throw new IllegalArgumentException("reason must be given unless the port is ready, was " + reason);
        if (whatToDo.isPresent() != reason.isPresent())
            throw new IllegalArgumentException("whatToDo must be given with a reason, was " + whatToDo);
    }

    /** What {@link KnownAdapter#place()} keeps: the socket where it is known, since port names move about, else the path. */
    public String place() {
        return socket.map(FoundPort::placeOf).orElse(path);
    }

    static String placeOf(String socket) {
        return "socket " + socket;
    }
}
