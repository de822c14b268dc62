package fifthform.monitor.store;

/**
 * A number as the journal writes it, read from bytes without making an object: an optional minus, digits, and digits
 * after a point. One that is written otherwise, or has more digits than a {@code double} holds exactly, is not taken;
 * the JSON reader then has the word.
 */
final class PlainNumber {
    /** Up to here whole numbers, and these powers of ten, are exact, so that one division rounds as the text would. */
    private static final int MOST_DIGITS = 15;

    private static final long[] TENS = new long[19];
    private static final double[] EXACT_TENS = new double[MOST_DIGITS + 1];

    static {
        TENS[0] = 1;
        for (int i = 1; i < TENS.length; i++) TENS[i] = 10 * TENS[i - 1];
        for (int i = 0; i < EXACT_TENS.length; i++) EXACT_TENS[i] = TENS[i];
    }

    private long digits;
    private int count;
    private int places;
    private boolean negative;

    /** Reads from {@code at} on; returns where it ends, or -1 where this is no such number. */
    int read(byte[] text, int at, int end) {
        int i = at;
        digits = 0;
        count = 0;
        places = 0;
        negative = i < end && text[i] == '-';
        if (negative) i++;
        int begin = i;
        boolean point = false;
        for (; i < end; i++) {
            int c = text[i];
            if (c >= '0' && c <= '9') {
                digits = 10 * digits + (c - '0');
                if (digits > 0) count++;
                if (point) places++;
                if (count > MOST_DIGITS || places > MOST_DIGITS) return -1;
            } else if (c == '.' && !point && i > begin) {
                point = true;
            } else {
                break;
            }
        }
        if (i == begin || text[i - 1] == '.') return -1;
        boolean plain = text[begin] != '0' || i == begin + 1 || text[begin + 1] == '.';
        return plain ? i : -1;
    }

    /** The nearest {@code double}, as {@link Double#parseDouble} gives it. */
    double value() {
        double size = digits / EXACT_TENS[places];
        return negative ? -size : size;
    }

    /** Whether this is a whole number. */
    boolean isWhole() {
        return places == 0;
    }

    long whole() {
        return negative ? -digits : digits;
    }

    /** As a decimal fraction with nine places, in units of the last; only where {@link #hasNanos}. */
    long nanos() {
        long scaled = digits * TENS[9 - places];
        return negative ? -scaled : scaled;
    }

    boolean hasNanos() {
        return places <= 9 && digits <= Long.MAX_VALUE / TENS[9 - places];
    }
}
