package fifthform.probe.find;

import com.fazecast.jSerialComm.SerialPort;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A serial port that the system lists, not opened.
 *
 * @param usb empty where it is no USB adapter
 * @param socket as {@link FoundPort#socket()}
 */
public record ListedPort(
        String name, String path, String description, Optional<UsbIdentity> usb, Optional<String> socket) {
    /** What the library says where the system knows nothing. */
    private static final String UNKNOWN = "Unknown";

    private static final String UNKNOWN_SOCKET = "0-0";

    public ListedPort {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(path, "path");
        Objects.requireNonNull(description, "description");
        Objects.requireNonNull(usb, "usb");
        Objects.requireNonNull(socket, "socket");
    }

    /** All of this computer. */
    public static List<ListedPort> all() {
        return Stream.of(SerialPort.getCommPorts()).map(ListedPort::of).toList();
    }

    private static ListedPort of(SerialPort port) {
        Optional<String> socket = told(port.getPortLocation()).filter(where -> !where.equals(UNKNOWN_SOCKET));
        return new ListedPort(
                port.getSystemPortName(), port.getSystemPortPath(), port.getPortDescription(), usb(port), socket);
    }

    private static Optional<UsbIdentity> usb(SerialPort port) {
        if (port.getVendorID() < 0 || port.getProductID() < 0) return Optional.empty();
        return Optional.of(new UsbIdentity(port.getVendorID(), port.getProductID(), told(port.getSerialNumber())));
    }

    private static Optional<String> told(String text) {
        return Optional.ofNullable(text).filter(words -> !words.isBlank() && !words.equals(UNKNOWN));
    }
}
