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
     * Every serial port, USB adapters first, then sensors that the kernel shows as directories, then devices that are
     * neither, which cannot be used and say why. Each serial port is opened for about 200 ms, which restarts some boards.
     *
     * @param clock dates what is heard meanwhile, which is thrown away
     */
    public static List<FoundPort> list(InstantSource clock) throws InterruptedException {
        Path sys = Path.of("/sys");
        return from(List.of(new SerialPorts(clock), new KernelSensors(sys), new HidDevices(sys, Path.of("/dev"))));
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
     * What is kept as the place of the adapter on a port, as {@link FoundPort#place()}; opens nothing.
     *
     * @param port as {@code --probe} names it
     */
    public static String place(String port) {
        return ListedPort.named(port)
                .flatMap(ListedPort::socket)
                .map(FoundPort::placeOf)
                .orElse(port);
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
