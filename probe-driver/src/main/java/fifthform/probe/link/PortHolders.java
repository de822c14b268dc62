package fifthform.probe.link;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Which process has a device open, as far as {@code /proc} lets us see: all of our own user's processes, and everybody's if
 * we are root. Elsewhere than on Linux nobody is ever found.
 */
final class PortHolders {
    private static final Path PROCESSES = Path.of("/proc");

    private PortHolders() {}

    static Optional<String> otherThanUs(Path device) {
        String ourselves = Long.toString(ProcessHandle.current().pid());
        try (DirectoryStream<Path> processes = Files.newDirectoryStream(PROCESSES, "[0-9]*")) {
            for (Path process : processes) {
                boolean other = !process.getFileName().toString().equals(ourselves);
                if (other && holds(process, device)) return Optional.of(name(process));
            }
        } catch (IOException noProcesses) {
            return Optional.empty();
        }
        return Optional.empty();
    }

    /** Whether this program has it open already. */
    static boolean isHeldByUs(Path device) {
        return openFiles(PROCESSES.resolve("self")).contains(device);
    }

    private static boolean holds(Path process, Path device) {
        List<Path> open = openFiles(process);
        // Who made a pseudo-terminal keeps both of its ends open; that is the device itself, not a rival.
        boolean madeIt = device.startsWith("/dev/pts") && open.stream().anyMatch(PortHolders::isMaster);
        return !madeIt && open.contains(device);
    }

    private static boolean isMaster(Path file) {
        return file.endsWith("ptmx");
    }

    private static List<Path> openFiles(Path process) {
        List<Path> files = new ArrayList<>();
        try (DirectoryStream<Path> descriptors = Files.newDirectoryStream(process.resolve("fd"))) {
            for (Path descriptor : descriptors) files.add(Files.readSymbolicLink(descriptor));
        } catch (IOException | DirectoryIteratorException notOursOrGone) {
            return files;
        }
        return files;
    }

    private static String name(Path process) {
        String pid = process.getFileName().toString();
        try {
            return Files.readString(process.resolve("comm")).strip() + ", process " + pid;
        } catch (IOException gone) {
            return "process " + pid;
        }
    }
}
