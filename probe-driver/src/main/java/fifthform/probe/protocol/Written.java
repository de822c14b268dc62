package fifthform.probe.protocol;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number as an adapter wrote it: its digits tell the resolution, and whether it may have lost its front.
 *
 * @param value the number, finite
 * @param step what one unit of the last written digit is worth
 * @param wholeDigits digits before the point
 * @param form sign, point and exponent as written, so that two numbers can be told to be written alike
 */
record Written(double value, double step, int wholeDigits, String form) {
    /** No adapter prints more; longer runs of digits are noise. */
    private static final int LONGEST = 24;

    private static final Pattern NUMBER = Pattern.compile("([+-]?)(\\d*)(\\.?)(\\d*)(?:[eE]([+-]?\\d{1,3}))?");

    static Optional<Written> of(String text) {
        Matcher m = NUMBER.matcher(text);
        if (text.length() > LONGEST || !m.matches()) return Optional.empty();
        boolean pointWithoutDigits = !m.group(3).isEmpty() && m.group(4).isEmpty();
        if (m.group(2).length() + m.group(4).length() == 0 || pointWithoutDigits) return Optional.empty();
        double value = Double.parseDouble(text);
        int exponent = m.group(5) == null ? 0 : Integer.parseInt(m.group(5));
        double step = Math.pow(10, exponent - m.group(4).length());
        if (!Double.isFinite(value) || !Double.isFinite(step)) return Optional.empty();
        String form = m.group(1) + (m.group(2).isEmpty() ? "" : "0") + m.group(3) + (m.group(5) == null ? "" : "e");
        return Optional.of(new Written(value, step, m.group(2).length(), form));
    }

    /** Written without a point and without an exponent. */
    boolean isWhole() {
        return !form.contains(".") && !form.contains("e");
    }

    /**
     * Zeros before a number without a point, as codes have them: {@code 0320}, and {@code 01E5}, which only looks like a
     * number with an exponent.
     */
    boolean isPadded() {
        if (form.contains(".")) return false;
        double digits = Math.rint(Math.abs(value) / step);
        boolean zeroWithExponent = form.contains("e") && value == 0;
        return zeroWithExponent || wholeDigits > 1 && digits < Math.pow(10, wholeDigits - 1);
    }

    /**
     * Whether this number, which may have lost its front, is the same quantity as the next one, which is whole: written
     * alike, and nearer to it than a quarter of what the next digit to the left would be worth. A number that lost its
     * front is wrong by at least that digit: {@code 1.25} of {@code 31.25} by 30.
     */
    boolean continuedBy(Written next) {
        return form.equals(next.form) && Math.abs(next.value - value) <= Math.pow(10, wholeDigits) / 4;
    }
}
