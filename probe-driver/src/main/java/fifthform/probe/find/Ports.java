package fifthform.probe.find;

import java.nio.file.Path;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Everything on this computer that a probe may be behind. */
public final class Ports {
    private Ports() {}

    /**
     * Every serial port, USB adapters first, then devices that are no serial ports, which cannot be used and say why. Each
     * serial port is opened for about 200 ms, which restarts some boards.
     *
     * @param clock dates what is heard meanwhile, which is thrown away
     */
    public static List<FoundPort> list(InstantSource clock) throws InterruptedException {
        return list(clock, List.of());
    }

    /** The same, and what other finders find, for example sensors that the kernel shows as directories. */
    public static List<FoundPort> list(InstantSource clock, List<PortFinder> more) throws InterruptedException {
        List<PortFinder> finders = new ArrayList<>(List.of(new SerialPorts(clock)));
        finders.addAll(more);
        finders.add(new HidDevices(Path.of("/sys"), Path.of("/dev")));
        return from(finders);
    }

    static List<FoundPort> from(List<PortFinder> finders) throws InterruptedException {
        List<FoundPort> found = new ArrayList<>();
        for (PortFinder finder : finders) found.addAll(finder.find());
        found.sort(Comparator.comparing(FoundPort::kind)
                .thenComparing(port -> port.usb().isEmpty())
                .thenComparing(FoundPort::name));
        return List.copyOf(found);
    }

    /**
     * What the adapter on a port says of itself; opens nothing. Empty where it is no USB adapter or no such port is listed.
     *
     * @param port as {@code --probe} names it; a link to a port counts as the port
     */
    public static Optional<UsbIdentity> identity(String port) {
        return ListedPort.named(port).flatMap(ListedPort::usb);
    }
}
