package fifthform.probe.link;

import fifthform.curves.check.Parsed;
import fifthform.curves.check.Problem;
import java.io.ByteArrayOutputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Recorded bytes as text: lines {@code seconds hex}, for example {@code 0.250 33312e32350a}; {@code #} begins a remark. */
final class TapeText {
    private static final Pattern LINE = Pattern.compile("(\\d{1,9}(?:\\.\\d{1,9})?)\\s+((?:[0-9a-fA-F]{2})+)");
    private static final String FORM =
            "Write lines of seconds and bytes in hexadecimal, for example: 0.250 33312e32350a";
    /** More than these say nothing new about a file of the wrong kind. */
    private static final int MOST_PROBLEMS = 10;

    private TapeText() {}

    static Parsed<List<TapePiece>> parse(String place, byte[] content) {
        List<TapePiece> pieces = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        Duration before = Duration.ZERO;
        int number = 0;
        for (String raw : new String(content, StandardCharsets.ISO_8859_1).split("\\R", -1)) {
            number++;
            String line = raw.replaceFirst("#.*", "").strip();
            if (line.isEmpty() || problems.size() == MOST_PROBLEMS) continue;
            String where = place + " line " + number;
            Matcher m = LINE.matcher(line);
            if (!m.matches()) {
                problems.add(new Problem(where, "This is not a time with bytes: " + shortened(line) + ".", FORM));
                continue;
            }
            Duration after = Duration.ofNanos(
                    new BigDecimal(m.group(1)).movePointRight(9).longValueExact());
            if (after.compareTo(before) < 0)
                problems.add(new Problem(where, "The time goes back.", "Sort the lines by their time."));
            pieces.add(new TapePiece(after, HexFormat.of().parseHex(m.group(2))));
            before = after;
        }
        if (pieces.isEmpty() && problems.isEmpty())
            return Parsed.refused(place, "The file holds no bytes. Nothing can be watched.", FORM);
        return problems.isEmpty() ? Parsed.accepted(pieces) : Parsed.refused(problems);
    }

    /** Each line with a line feed, whatever ended it in the file; so the last one counts even without an end. */
    static List<TapePiece> lines(byte[] text, Duration interval) {
        List<TapePiece> pieces = new ArrayList<>();
        ByteArrayOutputStream line = new ByteArrayOutputStream();
        for (int i = 0; i < text.length; i++) {
            boolean secondOfPair = text[i] == '\n' && i > 0 && text[i - 1] == '\r';
            if (secondOfPair) continue;
            boolean end = text[i] == '\n' || text[i] == '\r';
            if (!end) line.write(text[i]);
            if (end || i == text.length - 1) {
                line.write('\n');
                pieces.add(new TapePiece(interval.multipliedBy(pieces.size()), line.toByteArray()));
                line.reset();
            }
        }
        return pieces;
    }

    private static String shortened(String line) {
        return line.length() <= 40 ? line : line.substring(0, 40) + "…";
    }
}
