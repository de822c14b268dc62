package fifthform.probe.find;

import fifthform.probe.LineSettings;
import fifthform.probe.link.SerialSource;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;

/** Serial ports, each opened for about 200 ms, which restarts some boards. */
final class SerialPorts implements PortFinder {
    private static final LineSettings ANY_SPEED = new LineSettings(9600);

    private final InstantSource clock;

    SerialPorts(InstantSource clock) {
        this.clock = clock;
    }

    @Override
    public List<FoundPort> find() throws InterruptedException {
        List<FoundPort> found = new ArrayList<>();
        for (ListedPort port : ListedPort.all()) {
            PortCheck check = PortCheck.of(new SerialSource(port.path(), ANY_SPEED, clock), port.usb());
            found.add(new FoundPort(
                    port.name(),
                    port.path(),
                    port.description(),
                    FoundPort.Kind.SERIAL,
                    port.usb(),
                    port.socket(),
                    check.state(),
                    check.reason(),
                    check.whatToDo()));
        }
        return List.copyOf(found);
    }
}
