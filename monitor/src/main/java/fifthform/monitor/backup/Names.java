package fifthform.monitor.backup;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/** Which places are taken, on a disk that tells small and capital letters apart as on one that does not. */
final class Names {
    /** Each folder's files, by their names as such a disk sees them. */
    private final Map<Path, Map<String, String>> folders = new HashMap<>();

    /**
     * Whether another file has this place's name but for small and capital letters, here or before it in the archive. If
     * not, the place is taken from now on.
     *
     * @throws IOException the folder cannot be listed
     */
    boolean hasTwin(Path place) throws IOException {
        Path folder = place.toAbsolutePath().getParent();
        Map<String, String> there = folders.get(folder);
        if (there == null) folders.put(folder, there = listed(folder));
        String name = String.valueOf(place.getFileName());
        String before = there.putIfAbsent(alike(name), name);
        return before != null && !before.equals(name);
    }

    private static Map<String, String> listed(Path folder) throws IOException {
        Map<String, String> names = new HashMap<>();
        if (!Files.isDirectory(folder)) return names;
        try (Stream<Path> files = Files.list(folder)) {
            files.map(file -> String.valueOf(file.getFileName())).forEach(name -> names.put(alike(name), name));
        }
        return names;
    }

    private static String alike(String name) {
        return Normalizer.normalize(name, Normalizer.Form.NFC)
                .toUpperCase(Locale.ROOT)
                .toLowerCase(Locale.ROOT);
    }
}
