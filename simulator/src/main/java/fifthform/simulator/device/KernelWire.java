package fifthform.simulator.device;

import java.util.SplittableRandom;

/**
 * One round of the files that a driver of the kernel's hwmon class makes: thousandths of a degree, and a file that tells of
 * a fault. Source: the kernel's Documentation/hwmon/sysfs-interface.rst. It comes from a directory, never through a port.
 */
final class KernelWire implements Wire {
    private final double resolutionKelvin;

    KernelWire(double resolutionKelvin) {
        this.resolutionKelvin = resolutionKelvin;
    }

    @Override
    public Said measured(double tipCelsius) {
        long thousandths =
                Math.round(Steps.nearest(tipCelsius, resolutionKelvin).doubleValue() * 1000);
        return Said.number(round(thousandths, 0), thousandths / 1000.0);
    }

    private static byte[] round(long thousandths, int fault) {
        return Said.ascii("name=practice temp1_fault=" + fault + " temp1_input=" + thousandths + "\n");
    }

    @Override
    public Said openCircuit() {
        return Said.noNumber(round(0, 1));
    }

    @Override
    public Said dead() {
        return Said.noNumber(round(0, 0));
    }

    @Override
    public byte[] garbage(SplittableRandom random) {
        return Garbage.line(random);
    }
}
