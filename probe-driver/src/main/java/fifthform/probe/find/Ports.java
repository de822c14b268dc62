package fifthform.probe.find;

import com.fazecast.jSerialComm.SerialPort;
import fifthform.probe.LineSettings;
import fifthform.probe.link.SerialSource;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The serial ports of this computer. */
public final class Ports {
    private static final LineSettings ANY_SPEED = new LineSettings(9600);
    /** What the library says where the system knows nothing. */
    private static final String UNKNOWN = "Unknown";

    private Ports() {}

    /**
     * Every port that the system lists, USB adapters first. Each is opened for about 200 ms, which restarts some boards.
     *
     * @param clock dates what is heard meanwhile, which is thrown away
     */
    public static List<FoundPort> list(InstantSource clock) throws InterruptedException {
        List<FoundPort> found = new ArrayList<>();
        for (SerialPort port : SerialPort.getCommPorts()) {
            Optional<UsbIdentity> usb = usb(port);
            PortCheck check = PortCheck.of(new SerialSource(port.getSystemPortPath(), ANY_SPEED, clock), usb);
            found.add(new FoundPort(
                    port.getSystemPortName(),
                    port.getSystemPortPath(),
                    port.getPortDescription(),
                    usb,
                    check.state(),
                    check.reason(),
                    check.whatToDo()));
        }
        found.sort(
                Comparator.comparing((FoundPort port) -> port.usb().isEmpty()).thenComparing(FoundPort::name));
        return List.copyOf(found);
    }

    private static Optional<UsbIdentity> usb(SerialPort port) {
        if (port.getVendorID() < 0 || port.getProductID() < 0) return Optional.empty();
        Optional<String> serial =
                Optional.ofNullable(port.getSerialNumber()).filter(text -> !text.isBlank() && !text.equals(UNKNOWN));
        return Optional.of(new UsbIdentity(port.getVendorID(), port.getProductID(), serial));
    }
}
