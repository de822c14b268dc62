package fifthform.probe.protocol;

/**
 * A frame as hexadecimal digits in a line of text: {@code 01F81870}, {@code 0x01F8 1870}, {@code 01 f8 18 70}, behind
 * nothing or behind a label of up to {@value #MOST_WORDS} words that no one can take for digits, such as
 * {@code T1: 0x01F81870}. All of the line must fit.
 */
final class HexFrame {
    /** The line holds no frame. */
    static final long NONE = -1;

    private static final int MOST_WORDS = 3;

    private final int digits;
    private int labelEnd;

    /** @param frameBytes bytes of a frame, 1 to 7 */
    HexFrame(int frameBytes) {
        this.digits = 2 * frameBytes;
    }

    /** The frame in {@code line[from]} to {@code line[to − 1]}, or {@link #NONE}. */
    long read(byte[] line, int from, int to) {
        int at = skipBetween(line, from, to);
        int begin = at;
        for (int words = 0; words < MOST_WORDS && at < to && isWord(line, at, to); words++)
            at = skipBetween(line, wordEnd(line, at, to), to);
        labelEnd = at;
        if (at > begin && !isBetween(line[at - 1])) return NONE;
        return frame(line, at, to);
    }

    /** Where the label of the line that was read last ends. */
    int labelEnd() {
        return labelEnd;
    }

    private long frame(byte[] line, int from, int to) {
        long frame = 0;
        int count = 0;
        int at = from;
        while (at < to) {
            int end = wordEnd(line, at, to);
            if (end - at > 2 && line[at] == '0' && (line[at + 1] | 0x20) == 'x') at += 2;
            if ((end - at) % 2 != 0) return NONE;
            for (; at < end; at++) {
                int digit = Character.digit(line[at], 16);
                if (digit < 0 || ++count > digits) return NONE;
                frame = frame << 4 | digit;
            }
            at = skipBetween(line, at, to);
        }
        return count == digits ? frame : NONE;
    }

    /** Begins with a letter, and has something in it that is no hexadecimal digit. */
    private static boolean isWord(byte[] line, int from, int to) {
        boolean letter = (line[from] | 0x20) >= 'a' && (line[from] | 0x20) <= 'z';
        boolean plain = true;
        boolean digitsOnly = true;
        for (int i = from; i < wordEnd(line, from, to); i++) {
            plain &= line[i] > ' ' && line[i] < 0x7F;
            digitsOnly &= Character.digit(line[i], 16) >= 0;
        }
        return letter && plain && !digitsOnly;
    }

    private static int wordEnd(byte[] line, int from, int to) {
        int at = from;
        while (at < to && !isBetween(line[at])) at++;
        return at;
    }

    private static int skipBetween(byte[] line, int from, int to) {
        int at = from;
        while (at < to && isBetween(line[at])) at++;
        return at;
    }

    private static boolean isBetween(byte b) {
        return b == ' ' || b == '\t' || b == ':' || b == '=' || b == ',' || b == ';';
    }
}
