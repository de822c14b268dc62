package fifthform.probe.link;

import fifthform.curves.check.Parsed;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Objects;

/** Recorded bytes in place of a port; each opening begins at the tape's beginning. */
public final class TapeSource implements LinkSource {
    /** Files with this ending hold bytes with their times; see {@link ByteRecorder}. */
    public static final String BYTES_ENDING = ".bytes";

    /** A day at ten lines a second is about 20 MB; the whole is held in memory. */
    private static final long LARGEST_BYTES = 200L << 20;

    private final String place;
    private final Instant start;
    private final List<TapePiece> pieces;
    private final TapeLink.Between between;

    private TapeSource(String place, Instant start, List<TapePiece> pieces, TapeLink.Between between) {
        this.place = Objects.requireNonNull(place, "place");
        this.start = Objects.requireNonNull(start, "start");
        this.pieces = List.copyOf(pieces);
        this.between = between;
    }

    /**
     * Reads a file: bytes with their times if it ends in {@value #BYTES_ENDING}, else text, one line each
     * {@code interval}, the first at {@code start}.
     */
    public static Parsed<TapeSource> read(Path file, Instant start, Duration interval) {
        String place = file.toString();
        byte[] content;
        try {
            if (Files.exists(file) && !Files.isDirectory(file) && !isUsable(file)) {
                return Parsed.refused(
                        place,
                        "This is no file of recorded bytes: it is not a plain file, or larger than "
                                + (LARGEST_BYTES >> 20) + " MB. Nothing can be watched.",
                        "Name a file that was recorded with --bytes, or a text file of readings.");
            }
            content = Files.readAllBytes(file);
        } catch (NoSuchFileException e) {
            return Parsed.refused(place, "There is no such file. Nothing can be watched.", "Check the path.");
        } catch (IOException e) {
            String reason =
                    Files.isDirectory(file) ? "it is a folder" : e.getClass().getSimpleName();
            return Parsed.refused(
                    place,
                    "The file cannot be read (" + reason + "). Nothing can be watched.",
                    "Name a readable file.");
        }
        if (!place.endsWith(BYTES_ENDING)) return Parsed.accepted(lines(place, content, start, interval));
        return TapeText.parse(place, content)
                .fold(
                        pieces -> Parsed.accepted(new TapeSource(place, start, pieces, TapeLink.Between.SILENT)),
                        Parsed::refused);
    }

    private static boolean isUsable(Path file) throws IOException {
        return Files.isRegularFile(file) && Files.size(file) <= LARGEST_BYTES;
    }

    /** Text as lines, one each {@code interval}, each handed on with a line feed. */
    public static TapeSource lines(String place, byte[] text, Instant start, Duration interval) {
        if (interval.isNegative() || interval.isZero())
            throw new IllegalArgumentException("interval must be above zero, was " + interval);
        return new TapeSource(place, start, TapeText.lines(text, interval), TapeLink.Between.UNKNOWN);
    }

    @Override
    public String place() {
        return place;
    }

    @Override
    public ByteLink open() {
        return new TapeLink(place, start, pieces, between);
    }
}
