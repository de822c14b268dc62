package fifthform.probe.protocol;

import java.nio.charset.StandardCharsets;
import java.util.regex.Pattern;

/**
 * Bytes of one line as text that the grammar can read. The only letters outside ASCII that adapters send stand for degrees,
 * in whatever encoding their maker had; a line is never refused for its degree sign.
 */
final class WireText {
    /** UTF-8 read as Latin-1, Latin-1 itself, the code of character displays (0xDF), code page 437 (0xF8). */
    private static final Pattern DEGREE =
            Pattern.compile("\u00C2[\u00B0\u00BA]|\u00EF\u00BF\u00BD|[\u00B0\u00BA\u00DF\u00F8](?=\\s?[CFK]|\\s*$)");

    /** Digits and one comma, where that comma can only be a decimal one. */
    private static final Pattern COMMA_NUMBER = Pattern.compile("(?<![\\d.,])(\\d+),(\\d+)(?![\\d.,])");

    private static final Pattern POINT_BESIDE_DIGIT = Pattern.compile("\\.\\d");
    private static final Pattern COMMA_BETWEEN_DIGITS = Pattern.compile("(?<=\\d),(?=\\d)");

    private WireText() {}

    static String of(byte[] bytes, int count) {
        String latin = new String(bytes, 0, count, StandardCharsets.ISO_8859_1)
                .replace("\u00E2\u0084\u0083", "°C") // U+2103
                .replace("\u00E2\u0084\u0089", "°F") // U+2109
                .replace("\u00E2\u0088\u0092", "-"); // U+2212, the minus of typesetters
        return decimalPoints(DEGREE.matcher(latin).replaceAll("°").strip());
    }

    /**
     * A comma is a decimal comma where no point is one, and either it is the only comma between digits or something else
     * (a semicolon, white space, a label) keeps the numbers apart.
     */
    private static String decimalPoints(String text) {
        if (POINT_BESIDE_DIGIT.matcher(text).find() || text.startsWith("{")) return text;
        long commas = COMMA_BETWEEN_DIGITS.matcher(text).results().count();
        long commaNumbers = COMMA_NUMBER.matcher(text).results().count();
        return commas == commaNumbers ? COMMA_NUMBER.matcher(text).replaceAll("$1.$2") : text;
    }
}
