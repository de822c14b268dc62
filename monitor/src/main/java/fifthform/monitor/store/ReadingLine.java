package fifthform.monitor.store;

import fifthform.curves.input.Sample;
import fifthform.curves.setup.ProbeId;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The lines there are most of, readings, ticks and checks, read from their bytes in the one shape in which the program
 * writes them. What looks otherwise is not taken.
 */
final class ReadingLine {
    private static final byte[] SAMPLE = bytes("{\"k\":\"r\",\"s\":");
    private static final byte[] TICK = bytes("{\"k\":\"t\",\"s\":");
    private static final byte[] CHECK = bytes("{\"k\":\"c\",\"crc\":\"");
    private static final byte[] TIME = bytes(",\"t\":");
    private static final byte[] PROBE = bytes(",\"p\":\"");
    private static final byte[] CELSIUS = bytes("\",\"c\":");
    private static final byte[] SIGMA = bytes(",\"u\":");
    private static final byte[] JUNCTION = bytes(",\"j\":");
    private static final byte[] EMF = bytes(",\"mv\":");
    private static final byte[] LINES = bytes("\",\"lines\":");

    private static final byte[] WALL = bytes(",\"wall\":\"");
    private static final String WALL_SHAPE = "0000-00-00T00:00:00";
    private static final int[] DAYS = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};

    private final PlainNumber number = new PlainNumber();
    private final List<ProbeId> probes = new ArrayList<>();
    private final List<byte[]> names = new ArrayList<>();

    private byte[] text = new byte[0];
    private int end;

    long sequence;
    long nanos;
    ProbeId probe;
    double celsius;
    double sigmaKelvin;
    /** NaN where the line tells none. */
    double junctionCelsius;

    double emfMillivolts;
    long crc;
    long lines;

    boolean isSample(byte[] bytes, int from, int to) {
        int at = begun(bytes, from, to, SAMPLE);
        at = time(at);
        at = past(PROBE, at);
        if (at < 0) return false;
        int quote = at;
        while (quote < end && text[quote] != '"' && text[quote] != '\\') quote++;
        if (quote == end || text[quote] == '\\' || quote == at) return false;
        if (!isName(at, quote)) return false;
        probe = probe(at, quote);
        at = number(past(CELSIUS, quote));
        if (at < 0) return false;
        celsius = number.value();
        at = number(past(SIGMA, at));
        if (at < 0) return false;
        sigmaKelvin = number.value();
        junctionCelsius = Double.NaN;
        emfMillivolts = Double.NaN;
        if (past(JUNCTION, at) > 0) {
            at = number(past(JUNCTION, at));
            if (at < 0) return false;
            junctionCelsius = number.value();
        }
        if (past(EMF, at) > 0) {
            at = number(past(EMF, at));
            if (at < 0) return false;
            emfMillivolts = number.value();
        }
        return isEnd(at) && sequence > 0 && isPossible();
    }

    /** What a reading may be; the constructor of {@link Sample} has the last word. */
    private boolean isPossible() {
        return sigmaKelvin > 0
                && sigmaKelvin <= 20
                && celsius >= Sample.LOWEST_CELSIUS
                && celsius <= Sample.HIGHEST_CELSIUS;
    }

    boolean isTick(byte[] bytes, int from, int to) {
        return isEnd(time(begun(bytes, from, to, TICK)));
    }

    boolean isCheck(byte[] bytes, int from, int to) {
        int at = past(CHECK, take(bytes, from, to));
        if (at < 0 || at + 8 > end) return false;
        crc = 0;
        for (int i = 0; i < 8; i++) {
            int digit = Character.digit(text[at + i], 16);
            if (digit < 0 || (text[at + i] >= 'A' && text[at + i] <= 'F')) return false;
            crc = 16 * crc + digit;
        }
        at = number(past(LINES, at + 8));
        if (at < 0 || !number.isWhole()) return false;
        lines = number.whole();
        return isWall(past(WALL, at));
    }

    /** A time of day as an instant is written; an unusual one is left to the grammar. */
    private boolean isWall(int at) {
        if (at < 0 || at + WALL_SHAPE.length() > end) return false;
        for (int i = 0; i < WALL_SHAPE.length(); i++) {
            int wanted = WALL_SHAPE.charAt(i);
            int is = text[at + i];
            if (wanted == '0' ? !isDigit(is) : is != wanted) return false;
        }
        int month = two(at + 5);
        boolean possible = month >= 1
                && month <= 12
                && two(at + 8) >= 1
                && two(at + 8) <= DAYS[month - 1]
                && two(at + 11) < 24
                && two(at + 14) < 60
                && two(at + 17) < 60;
        int next = at + WALL_SHAPE.length();
        if (next < end && text[next] == '.') {
            int first = next + 1;
            next = first;
            while (next < end && isDigit(text[next])) next++;
            possible &= next > first && next - first <= 9;
        }
        return possible && next + 3 == end && text[next] == 'Z' && text[next + 1] == '"' && text[next + 2] == '}';
    }

    private static boolean isDigit(int c) {
        return c >= '0' && c <= '9';
    }

    private int two(int at) {
        return 10 * (text[at] - '0') + text[at + 1] - '0';
    }

    private int take(byte[] bytes, int from, int to) {
        text = bytes;
        end = to;
        return from;
    }

    /** Past the beginning and the sequence number. */
    private int begun(byte[] bytes, int from, int to, byte[] beginning) {
        int at = number(past(beginning, take(bytes, from, to)));
        if (at < 0 || !number.isWhole()) return -1;
        sequence = number.whole();
        return at;
    }

    private int time(int from) {
        int at = number(past(TIME, from));
        if (at < 0 || !number.hasNanos()) return -1;
        nanos = number.nanos();
        return at;
    }

    private int number(int at) {
        return at < 0 ? -1 : number.read(text, at, end);
    }

    private boolean isEnd(int at) {
        return at >= 0 && at == end - 1 && text[at] == '}';
    }

    /** Where {@code what} ends if it stands at {@code at}; else -1. */
    private int past(byte[] what, int at) {
        if (at < 0 || at + what.length > end) return -1;
        for (int i = 0; i < what.length; i++) if (text[at + i] != what[i]) return -1;
        return at + what.length;
    }

    /** As {@link ProbeId} wants it. */
    private boolean isName(int from, int to) {
        for (int i = from; i < to; i++) {
            int c = text[i];
            boolean fits = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || (c == '-' && i > from);
            if (!fits) return false;
        }
        return true;
    }

    private ProbeId probe(int from, int to) {
        for (int i = 0; i < names.size(); i++) if (is(names.get(i), from, to)) return probes.get(i);
        byte[] name = Arrays.copyOfRange(text, from, to);
        names.add(name);
        probes.add(new ProbeId(new String(name, StandardCharsets.UTF_8)));
        return probes.get(probes.size() - 1);
    }

    private boolean is(byte[] name, int from, int to) {
        if (name.length != to - from) return false;
        for (int i = 0; i < name.length; i++) if (text[from + i] != name[i]) return false;
        return true;
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }
}
