package fifthform.probe.link;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * Thermometers that the Linux kernel knows and that can be a probe. A computer has many of its own, for its processor, its
 * disks and its boards; none of them must ever be taken for chocolate. So only what can hardly be one of those is offered:
 *
 * <ul>
 *   <li>of IIO a device that tells a thermocouple's type, or that has a tip and its ambient, or is a known converter;
 *   <li>of hwmon the names of probes on a wire.
 * </ul>
 *
 * Any other directory can be used where the maker names it.
 */
public final class KernelFiles {
    /** Names that drivers of thermocouple converters give (the kernel's drivers/iio/temperature, from memory). */
    private static final Set<String> CONVERTERS =
            Set.of("max6675", "max31855", "max31856", "mcp9600", "mcp9601", "ltc2983", "ltc2984", "ltc2986");

    /** A thermometer on the 1-Wire bus (the kernel's drivers/w1/slaves/w1_therm.c). */
    private static final Set<String> PROBES_ON_A_WIRE = Set.of("w1_slave_temp");

    /**
     * One directory that can be a probe.
     *
     * @param directory for {@link KernelFilesSource}
     * @param name what the device calls itself
     */
    public record Found(Path directory, String name) {
        public Found {
            Objects.requireNonNull(directory, "directory");
            Objects.requireNonNull(name, "name");
        }
    }

    private KernelFiles() {}

    /** @param sys usually {@code /sys}; need not be there */
    public static List<Found> found(Path sys) {
        List<Found> found = new ArrayList<>();
        for (Path directory : entries(sys.resolve("bus/iio/devices"), "iio:device*"))
            if (isConverter(directory)) found.add(described(directory));
        for (Path directory : entries(sys.resolve("class/hwmon"), "hwmon*"))
            if (PROBES_ON_A_WIRE.contains(described(directory).name())) found.add(described(directory));
        return List.copyOf(found);
    }

    private static boolean isConverter(Path directory) {
        boolean tip = has(directory, "in_temp_raw") || has(directory, "in_temp_input");
        boolean junction = has(directory, "in_temp_ambient_raw") || has(directory, "in_temp_ambient_input");
        String name = described(directory).name();
        boolean known = CONVERTERS.stream().anyMatch(name::startsWith);
        return tip && (junction || known || has(directory, "in_temp_thermocouple_type"));
    }

    private static boolean has(Path directory, String file) {
        return Files.exists(directory.resolve(file));
    }

    private static Found described(Path directory) {
        return new Found(directory, new KernelFileSet(directory).deviceName());
    }

    private static List<Path> entries(Path parent, String pattern) {
        List<Path> entries = new ArrayList<>();
        try (DirectoryStream<Path> directories = Files.newDirectoryStream(parent, pattern)) {
            directories.forEach(entries::add);
        } catch (IOException noSuchClass) {
            return List.of(); // another system, or a kernel without this class
        }
        entries.sort(null);
        return entries;
    }
}
