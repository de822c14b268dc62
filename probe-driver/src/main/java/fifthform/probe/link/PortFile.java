package fifthform.probe.link;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Optional;

/**
 * What the file system knows about a port before it is opened; the library itself cannot tell why it refuses. Where ports
 * are not files (Windows) nothing is known and the library's answer has to do.
 *
 * @param device the device itself, links followed; empty where ports are not files or there is none
 */
record PortFile(String port, Path named, Optional<Path> device) {
    private static final Path DEVICES = Path.of("/dev");

    /** {@code EACCES} and {@code EBUSY} of Linux and macOS ({@code errno.h}). */
    private static final int ACCESS_DENIED = 13;

    private static final int BUSY = 16;

    static PortFile of(String port) {
        Path named = port.contains("/") ? Path.of(port) : DEVICES.resolve(port);
        try {
            return new PortFile(port, named, Optional.of(named.toRealPath()));
        } catch (IOException missing) {
            return new PortFile(port, named, Optional.empty());
        }
    }

    /** What would make opening useless or harmful. */
    Optional<LinkException> obstacle() {
        if (!Files.isDirectory(DEVICES)) return Optional.empty();
        if (device.isEmpty()) return Optional.of(PortTrouble.missing(port));
        Path path = device.get();
        if (Files.isRegularFile(path) || Files.isDirectory(path)) return Optional.of(PortTrouble.notSerial(port));
        if (!Files.isReadable(path) || !Files.isWritable(path))
            return Optional.of(PortTrouble.forbidden(port, group(path)));
        // Two readers of one port each get half of the bytes, and half a number is a wrong number.
        return isTerminal()
                ? PortHolders.otherThanUs(path).map(holder -> PortTrouble.held(port, holder))
                : Optional.empty();
    }

    /** Why the library could not open what showed no obstacle. */
    LinkException refusal(int errorCode) {
        if (device.isPresent() && !isTerminal()) return PortTrouble.notSerial(port);
        if (device.filter(PortHolders::isHeldByUs).isPresent()) return PortTrouble.heldByUs(port);
        Optional<String> holder = device.flatMap(PortHolders::otherThanUs);
        if (holder.isPresent()) return PortTrouble.held(port, holder.get());
        if (errorCode == ACCESS_DENIED)
            return PortTrouble.forbidden(port, device.map(PortFile::group).orElse("dialout"));
        return errorCode == BUSY ? PortTrouble.held(port, "not known which") : PortTrouble.refused(port, errorCode);
    }

    /** By its name: serial ports of Linux, macOS and the BSDs, and pseudo-terminals, whose names are numbers. */
    private boolean isTerminal() {
        return device.map(path -> path.getFileName().toString())
                .filter(name -> name.matches("tty.+|cu\\..+|cua.+|rfcomm.+|\\d+"))
                .isPresent();
    }

    /** The group that may use the port: {@code dialout} on Debian and its kin, {@code uucp} on others. */
    private static String group(Path device) {
        try {
            String group = Files.getAttribute(device, "posix:group", LinkOption.NOFOLLOW_LINKS)
                    .toString();
            return group.equals("root") ? "dialout" : group;
        } catch (IOException | UnsupportedOperationException unknown) {
            return "dialout";
        }
    }
}
