package fifthform.probe.find;

import fifthform.probe.link.KernelFiles;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** Thermometers that the Linux kernel shows as directories and that can be a probe. */
public final class KernelSensors implements PortFinder {
    private final Path sys;

    /** @param sys usually {@code /sys} */
    public KernelSensors(Path sys) {
        this.sys = Objects.requireNonNull(sys, "sys");
    }

    @Override
    public List<FoundPort> find() {
        return KernelFiles.found(sys).stream().map(KernelSensors::port).toList();
    }

    private static FoundPort port(KernelFiles.Found sensor) {
        return new FoundPort(
                sensor.directory().getFileName().toString(),
                sensor.directory().toString(),
                sensor.name(),
                FoundPort.Kind.KERNEL_SENSOR,
                Optional.empty(),
                Optional.empty(),
                FoundPort.State.READY,
                Optional.empty(),
                Optional.empty());
    }
}
