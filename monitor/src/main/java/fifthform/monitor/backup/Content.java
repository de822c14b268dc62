package fifthform.monitor.backup;

import fifthform.monitor.json.JsonLine;
import fifthform.monitor.json.JsonObject;
import fifthform.monitor.json.UnreadableJson;
import java.nio.file.Path;
import java.util.Optional;

/**
 * One file of a backup, as its list of contents has it.
 *
 * @param name its place in the archive, parts between slashes
 * @param bytes its length
 * @param sha256 its sum, FIPS 180-4, as 64 hexadecimal digits
 */
record Content(String name, long bytes, String sha256) {
    /** Settings stand by themselves. */
    static final String SETTINGS = "settings.json";

    String line() {
        return new JsonLine()
                .text("file", name)
                .whole("bytes", bytes)
                .text("sha256", sha256)
                .end();
    }

    static Content read(String line) throws UnreadableJson {
        JsonObject json = JsonObject.parse(line);
        return new Content(json.text("file"), json.whole("bytes"), json.text("sha256"));
    }

    /** Which shelf it belongs on; empty for settings, and for what no backup of ours holds. */
    Optional<Shelf> shelf() {
        int slash = name.indexOf('/');
        return slash < 0 ? Optional.empty() : Shelf.named(name.substring(0, slash));
    }

    /**
     * Its place below a folder.
     *
     * @return empty where the name would lead out of the folder, or is none that a backup of ours has
     */
    Optional<Path> below(Path folder) {
        String rest = name.substring(name.indexOf('/') + 1);
        boolean odd = rest.isEmpty()
                || rest.contains("\\")
                || rest.contains(":")
                || rest.codePoints().anyMatch(Character::isISOControl);
        if (odd) return Optional.empty();
        Path place = folder.resolve(rest).normalize();
        boolean inside = place.startsWith(folder.normalize()) && !place.equals(folder.normalize());
        return inside && !rest.startsWith("/") ? Optional.of(place) : Optional.empty();
    }
}
