package fifthform.probe.find;

import com.fazecast.jSerialComm.SerialPort;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
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

    /** The port that {@code --probe} names; a link to a port counts as the port. */
    static Optional<ListedPort> named(String name) {
        return all().stream()
                .filter(port -> name.equals(port.name()) || name.equals(port.path()) || isSameFile(name, port.path()))
                .findFirst();
    }

    private static boolean isSameFile(String port, String path) {
        try {
            return Files.isSameFile(Path.of(port), Path.of(path));
        } catch (IOException | InvalidPathException e) {
            return false;
        }
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
