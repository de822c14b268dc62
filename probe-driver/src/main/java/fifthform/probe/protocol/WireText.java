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

    /** A unit in brackets, behind a label or a number: {@code Temp (°C): 31.25}. */
    private static final Pattern UNIT_IN_BRACKETS = Pattern.compile("[(\\[]\\s*(?:°|deg)?\\s?([CFKcfk])\\s*[)\\]]");

    /** The same temperature again in another unit: {@code 31.25 C (88.25 F)}. */
    private static final Pattern VALUE_IN_BRACKETS =
            Pattern.compile("\\(\\s*([+-]?\\d+(?:[.,]\\d+)?\\s*°?\\s?[CFKcfk])\\s*\\)");

    /** What those write for a degree sign who have none. */
    private static final Pattern MARK_FOR_DEGREE = Pattern.compile("(?<=\\d)(\\s?)[*'](?=[CF]\\b)");

    /** What a comma between digits can be. */
    enum Comma {
        MAY_BE_DECIMAL,
        /** A header has shown that commas keep columns apart. */
        SEPARATES
    }

    private WireText() {}

    /** Digits stay what and in which order they are: {@link QuickLine} counts on it. */
    static String of(byte[] bytes, int from, int to, Comma comma) {
        String latin = new String(bytes, from, to - from, StandardCharsets.ISO_8859_1)
                .replace("\u00E2\u0084\u0083", "°C") // U+2103
                .replace("\u00E2\u0084\u0089", "°F") // U+2109
                .replace("\u00E2\u0088\u0092", "-"); // U+2212, the minus of typesetters
        String text = DEGREE.matcher(latin).replaceAll("°").strip();
        if (!text.startsWith("{")) text = withoutMarks(text);
        return comma == Comma.SEPARATES ? text : decimalPoints(text);
    }

    private static String withoutMarks(String text) {
        boolean brackets = text.indexOf('(') >= 0 || text.indexOf('[') >= 0;
        String plain = brackets
                ? VALUE_IN_BRACKETS
                        .matcher(UNIT_IN_BRACKETS.matcher(text).replaceAll(" $1"))
                        .replaceAll("; $1")
                : text;
        return MARK_FOR_DEGREE.matcher(plain).replaceAll("$1°");
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
