package fifthform.probe.find;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Properties;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * USB devices of the class of keyboards and mice that are neither: some thermometers are built so. They have no serial
 * port and none of them can be read, but whoever has one wants to know that it was seen. Linux only; elsewhere none is
 * found.
 *
 * <p>The kernel shows them as {@code class/hidraw/hidrawN/device}, with {@code HID_ID=bus:vendor:product} in hexadecimal,
 * {@code HID_NAME} and {@code HID_UNIQ}, the serial number, in {@code uevent} (Linux, {@code drivers/hid/hid-core.c}; from
 * memory).
 */
final class HidDevices implements PortFinder {
    private static final String REASON =
            "It is a USB device without a serial port (class HID, to which keyboards belong), and every maker of such"
                    + " thermometers has a language of its own. No reading can be taken.";
    private static final String WHAT_TO_DO =
            "Use an adapter that shows itself as a serial port, for example ttyUSB0, ttyACM0 or COM3.";

    private static final Pattern ID = Pattern.compile("([0-9A-Fa-f]{4}):([0-9A-Fa-f]{8}):([0-9A-Fa-f]{8})");
    private static final int USB_BUS = 3;

    /** Usage page 1, usage 2 and 6: mouse and keyboard (USB HID Usage Tables, generic desktop page). */
    private static final List<String> OF_HANDS = List.of("\u0005\u0001\u0009\u0002", "\u0005\u0001\u0009\u0006");

    private final Path classFolder;
    private final Path devices;

    HidDevices(Path sys, Path devices) {
        this.classFolder = sys.resolve("class/hidraw");
        this.devices = devices;
    }

    @Override
    public List<FoundPort> find() {
        List<FoundPort> found = new ArrayList<>();
        try (DirectoryStream<Path> entries = Files.newDirectoryStream(classFolder, "hidraw*")) {
            for (Path entry : entries) device(entry).ifPresent(found::add);
        } catch (IOException | DirectoryIteratorException notLinux) {
            return List.copyOf(found);
        }
        return List.copyOf(found);
    }

    private Optional<FoundPort> device(Path entry) {
        Path device = entry.resolve("device");
        Properties told = new Properties();
        for (String line : text(device.resolve("uevent")).split("\n")) {
            int equals = line.indexOf('=');
            if (equals > 0)
                told.setProperty(
                        line.substring(0, equals), line.substring(equals + 1).strip());
        }
        String name = told.getProperty("HID_NAME", "");
        if (name.isEmpty() || isForHands(device, name)) return Optional.empty();
        String node = entry.getFileName().toString();
        return Optional.of(new FoundPort(
                node,
                devices.resolve(node).toString(),
                name,
                FoundPort.Kind.HID,
                usb(told),
                Optional.empty(),
                FoundPort.State.BLOCKED,
                Optional.of(REASON),
                Optional.of(WHAT_TO_DO)));
    }

    private static Optional<UsbIdentity> usb(Properties told) {
        Matcher id = ID.matcher(told.getProperty("HID_ID", ""));
        if (!id.matches() || Integer.parseInt(id.group(1), 16) != USB_BUS) return Optional.empty();
        long vendor = Long.parseLong(id.group(2), 16);
        long product = Long.parseLong(id.group(3), 16);
        if (vendor > 0xFFFF || product > 0xFFFF) return Optional.empty();
        Optional<String> serial = Optional.of(told.getProperty("HID_UNIQ", "")).filter(words -> !words.isBlank());
        return Optional.of(new UsbIdentity((int) vendor, (int) product, serial));
    }

    /** A keyboard, a mouse, or whatever else the system takes input from. */
    private static boolean isForHands(Path device, String name) {
        String lower = name.toLowerCase(Locale.ROOT);
        String descriptor = text(device.resolve("report_descriptor"));
        return Files.isDirectory(device.resolve("input"))
                || lower.contains("keyboard")
                || lower.contains("mouse")
                || OF_HANDS.stream().anyMatch(descriptor::startsWith);
    }

    private static String text(Path file) {
        try {
            return Files.readString(file, StandardCharsets.ISO_8859_1);
        } catch (IOException notThere) {
            return "";
        }
    }
}
