package fifthform.probe.link;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * The files of one directory that tell a temperature, of the kernel's IIO and hwmon classes (sources:
 * Documentation/ABI/testing/sysfs-bus-iio, Documentation/hwmon/sysfs-interface.rst).
 */
final class KernelFileSet {
    private static final Pattern VALUE =
            Pattern.compile("in_temp\\d{0,2}(?:_ambient|_object)?_(?:raw|input)|temp\\d{1,2}_input");
    private static final Pattern BESIDES = Pattern.compile(
            "in_temp\\d{0,2}(?:_ambient|_object)?_(?:scale|offset|label)|in_temp\\d{0,2}_thermocouple_type|temp\\d{1,2}_(?:label|fault)");

    /** No file of these classes is longer; a label of one has a few words. */
    private static final int LONGEST = 64;

    private final Path directory;

    KernelFileSet(Path directory) {
        this.directory = directory;
    }

    /** Names of the files that are there, in the order of the alphabet; empty if none tells a temperature. */
    List<String> names() throws IOException {
        List<String> names = new ArrayList<>();
        boolean told = false;
        try (DirectoryStream<Path> files = Files.newDirectoryStream(directory)) {
            for (Path file : files) {
                String name = file.getFileName().toString();
                boolean value = VALUE.matcher(name).matches();
                told |= value;
                if (value || BESIDES.matcher(name).matches()) names.add(name);
            }
        } catch (NotDirectoryException e) {
            throw new NoSuchFileException(directory.toString());
        }
        names.sort(null);
        return told ? names : List.of();
    }

    /** What the device calls itself; {@code ?} where it does not. */
    String deviceName() {
        String name = content("name");
        return name.startsWith("!") || name.isEmpty() ? "?" : name;
    }

    /**
     * The content of a file, without blanks around it, those within as {@code %20}. What cannot be read, which for a
     * file of the kernel passes (the bus is busy, a converter reports a fault), is {@code !} and the reason.
     */
    String content(String name) {
        try {
            byte[] bytes = Files.readAllBytes(directory.resolve(name));
            return escaped(new String(bytes, StandardCharsets.UTF_8).strip());
        } catch (NoSuchFileException e) {
            return "!gone";
        } catch (IOException e) {
            String reason = e.getMessage() == null ? "" : e.getMessage();
            return "!" + escaped(reason.substring(reason.lastIndexOf(':') + 1).strip());
        }
    }

    private static String escaped(String text) {
        StringBuilder escaped = new StringBuilder();
        for (int i = 0; i < Math.min(LONGEST, text.length()); i++) {
            char c = text.charAt(i);
            if (c <= ' ' || c == '%' || c == '=' || c == 0x7F) escaped.append(String.format("%%%02X", (int) c));
            else escaped.append(c);
        }
        return escaped.toString();
    }
}
