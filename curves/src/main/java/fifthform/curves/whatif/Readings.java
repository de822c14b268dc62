package fifthform.curves.whatif;

import java.time.Instant;
import java.util.Arrays;

/** Temperatures in the order of their times, packed: a day of them must cost next to nothing. */
final class Readings {
    private static final int FIRST_ROOM = 256;

    private long[] millis;
    private float[] celsius;
    private int size;

    Readings() {
        this(new long[FIRST_ROOM], new float[FIRST_ROOM], 0);
    }

    private Readings(long[] millis, float[] celsius, int size) {
        this.millis = millis;
        this.celsius = celsius;
        this.size = size;
    }

    void add(Instant at, double reading) {
        if (size == millis.length) {
            millis = Arrays.copyOf(millis, 2 * size);
            celsius = Arrays.copyOf(celsius, 2 * size);
        }
        millis[size] = at.toEpochMilli();
        celsius[size++] = (float) reading;
    }

    /** These as they are now; later ones do not appear in it. */
    Readings copy() {
        return new Readings(Arrays.copyOf(millis, size), Arrays.copyOf(celsius, size), size);
    }

    int size() {
        return size;
    }

    /** When the reading of this place came, seconds after {@code zero}. */
    double seconds(int index, Instant zero) {
        return (millis[index] - zero.toEpochMilli()) / 1000.0;
    }

    double celsius(int index) {
        return celsius[index];
    }

    /** The first reading not before this time; {@link #size()} where there is none. */
    int from(Instant at) {
        int found = Arrays.binarySearch(millis, 0, size, at.toEpochMilli());
        return found >= 0 ? found : -found - 1;
    }

    boolean isNewer(Instant at, long byMillis) {
        return size == 0 || at.toEpochMilli() - millis[size - 1] >= byMillis;
    }

    Instant last() {
        return Instant.ofEpochMilli(millis[size - 1]);
    }
}
