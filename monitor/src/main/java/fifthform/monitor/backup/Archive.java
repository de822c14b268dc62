package fifthform.monitor.backup;

import fifthform.monitor.json.JsonObject;
import fifthform.monitor.json.UnreadableJson;
import fifthform.monitor.texts.FileText;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/** A backup that is read. Nothing in it is believed before its sum agrees. */
final class Archive implements AutoCloseable {
    /** A list longer than this is none that we wrote. */
    private static final int LONGEST_LIST = 64 << 20;

    /** A day at ten readings a second is 75 MB. */
    private static final long LONGEST_FILE = 1L << 30;

    private final ZipFile zip;
    private final List<Content> contents;

    private Archive(ZipFile zip, List<Content> contents) {
        this.zip = zip;
        this.contents = List.copyOf(contents);
    }

    /** @throws IOException it is no backup, a damaged one, or one of a newer program; the message says which */
    static Archive open(Path file) throws IOException {
        ZipFile zip;
        try {
            zip = new ZipFile(file.toFile(), StandardCharsets.UTF_8);
        } catch (java.util.zip.ZipException e) {
            throw new IOException(FileText.IT_IS_NO_BACKUP_OR_DAMAGED.say(), e);
        }
        try {
            return new Archive(zip, list(zip));
        } catch (IOException | RuntimeException e) {
            zip.close();
            throw e;
        }
    }

    List<Content> contents() {
        return contents;
    }

    /** Names of what is in it and not in its list of contents: nobody vouches for that. */
    List<String> unlisted() {
        Set<String> listed = new HashSet<>(Set.of(Backup.CONTENTS));
        contents.forEach(content -> listed.add(content.name()));
        return zip.stream()
                .filter(entry -> !entry.isDirectory() && !listed.contains(entry.getName()))
                .map(ZipEntry::getName)
                .toList();
    }

    private static List<Content> list(ZipFile zip) throws IOException {
        ZipEntry entry = zip.getEntry(Backup.CONTENTS);
        if (entry == null) throw new IOException(FileText.IT_HAS_NO_LIST_OF_CONTENTS.say());
        byte[] bytes = read(zip, entry, LONGEST_LIST);
        try {
            List<String> lines =
                    new String(bytes, StandardCharsets.UTF_8).lines().toList();
            JsonObject head = JsonObject.parse(lines.isEmpty() ? "" : lines.get(0));
            if (head.whole("format") != Backup.FORMAT) throw new IOException(FileText.A_NEWER_PROGRAM_WROTE_IT.say());
            List<Content> contents = new ArrayList<>();
            for (String line : lines.subList(1, lines.size())) contents.add(Content.read(line));
            if (contents.size() != head.whole("files")) throw new IOException(FileText.ITS_LIST_IS_CUT_OFF.say());
            return contents;
        } catch (UnreadableJson e) {
            throw new IOException(FileText.ITS_LIST_CANNOT_BE_READ.say(), e);
        }
    }

    /** The bytes of one file. @throws IOException they are not there, or are not those that were put in */
    byte[] bytes(Content content) throws IOException {
        ZipEntry entry = zip.getEntry(content.name());
        if (entry == null) throw new IOException(FileText.IS_MISSING_IN_IT.say(content.name()));
        if (content.bytes() > LONGEST_FILE || content.bytes() < 0)
            throw new IOException(FileText.IS_SAID_TO_BE_TOO_LONG.say(content.name()));
        byte[] bytes = read(zip, entry, (int) content.bytes());
        if (bytes.length != content.bytes() || !Sums.of(bytes).equals(content.sha256()))
            throw new IOException(FileText.IN_IT_IS_DAMAGED.say(content.name()));
        return bytes;
    }

    /** Never more than was promised, whatever the packed bytes would swell to. */
    private static byte[] read(ZipFile zip, ZipEntry entry, int most) throws IOException {
        try (InputStream in = zip.getInputStream(entry)) {
            byte[] bytes = in.readNBytes(most);
            if (in.read() >= 0) throw new IOException(FileText.IN_IT_IS_LONGER.say(entry.getName()));
            return bytes;
        } catch (java.util.zip.ZipException e) {
            throw new IOException(FileText.IN_IT_IS_DAMAGED.say(entry.getName()), e);
        }
    }

    @Override
    public void close() throws IOException {
        zip.close();
    }
}
