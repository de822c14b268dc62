package fifthform.probe.link;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.InstantSource;
import java.util.List;
import java.util.Objects;

/**
 * A thermometer that the Linux kernel itself knows: a directory such as {@code /sys/class/hwmon/hwmon3} or
 * {@code /sys/bus/iio/devices/iio:device0}. Its files are read once an interval, and one round becomes one line of
 * {@code name=value} pairs, so that recorded bytes are what the kernel said.
 */
public final class KernelFilesSource implements LinkSource {
    private final Path directory;
    private final Duration interval;
    private final InstantSource clock;

    /**
     * @param interval between rounds, above zero
     * @param clock stamps what was read
     */
    public KernelFilesSource(Path directory, Duration interval, InstantSource clock) {
        this.directory = Objects.requireNonNull(directory, "directory");
        this.interval = Objects.requireNonNull(interval, "interval");
        this.clock = Objects.requireNonNull(clock, "clock");
        if (interval.isNegative() || interval.isZero())
            throw new IllegalArgumentException("interval must be above zero, was " + interval);
    }

    @Override
    public String place() {
        return directory.toString();
    }

    @Override
    public ByteLink open() throws LinkException {
        KernelFileSet files = new KernelFileSet(directory);
        return new KernelFilesLink(directory, files, names(directory, files), interval, clock);
    }

    /** The names of the files to be read. */
    static List<String> names(Path directory, KernelFileSet files) throws LinkException {
        String place = directory.toString();
        try {
            List<String> names = files.names();
            if (names.isEmpty())
                throw new LinkException(
                        place,
                        "There is no file with a temperature in " + place + ".",
                        "Name a directory of the kernel's classes hwmon or iio, for example /sys/class/hwmon/hwmon3.");
            return names;
        } catch (AccessDeniedException e) {
            throw new LinkException(
                    place, "The directory " + place + " may not be read.", "Give yourself the right to read it.");
        } catch (IOException e) {
            throw gone(place);
        }
    }

    static LinkException gone(String place) {
        return new LinkException(
                place,
                "The directory " + place
                        + " is not there: the thermometer is unplugged, or the kernel numbers it anew.",
                "Plug it in again, or look under which number it is now with: monitor/run ports");
    }
}
