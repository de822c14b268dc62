package fifthform.probe.find;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What one protocol made of what it heard. Bytes before its first reading are not counted: a link opens in the middle of
 * a line, and boards greet.
 *
 * @param readings temperatures, 0 or more
 * @param faults open circuits, shorts and numbers that no kitchen has, 0 or more
 * @param bytes heard since the first reading or fault, or since the beginning where there was none
 * @param unreadableBytes those of them that meant nothing
 * @param jumps steps between readings that no chocolate and no thermocouple makes
 * @param smoothRun the longest run of readings of one channel with neither a jump nor an unreadable byte between
 * @param channels the channels that gave readings, lowest first
 */
public record Evidence(
        int readings,
        int faults,
        long bytes,
        long unreadableBytes,
        int jumps,
        int smoothRun,
        List<ChannelHeard> channels) {
    /** Noise can look like one number, hardly like three that follow each other smoothly. */
    public static final int ENOUGH_READINGS = 3;

    /**
     * On a bad cable every third line can be spoiled. What is required beside it, readings in a row with nothing unreadable
     * between, keeps other languages out.
     */
    private static final double LEAST_EXPLAINED = 0.55;

    private static final double MOST_JUMPS = 0.3;

    /** Where noise breaks every run of three, two in a row do if each channel has more readings than enough and none jumps. */
    private static final int PAIR = 2;

    public Evidence {
        channels = List.copyOf(channels);
    }

    /** Share of the bytes that meant something, 0 to 1. */
    public double explainedFraction() {
        return bytes == 0 ? 0 : 1 - (double) unreadableBytes / bytes;
    }

    /** Whether this alone would do; a rival can still contradict it. */
    public boolean isConvincing() {
        return rejection().isEmpty();
    }

    /** Why it would not do, in words; empty if it does. */
    public Optional<String> rejection() {
        if (readings == 0 && faults > 0)
            return why(
                    "it understands " + faults + " faults but no temperature, as when no thermocouple is plugged in");
        if (readings == 0) return why(bytes == 0 ? "nothing came" : "it understands none of " + bytes + " bytes");
        if (explainedFraction() < LEAST_EXPLAINED)
            return why(
                    String.format(Locale.ROOT, "it understands %.0f %% of the bytes only", 100 * explainedFraction()));
        if (jumps > MOST_JUMPS * readings) return why("its readings jump as no temperature does");
        boolean pairOfMany = smoothRun >= PAIR && readings > ENOUGH_READINGS * channels.size() && jumps == 0;
        if (smoothRun < ENOUGH_READINGS && !pairOfMany)
            return why(readings + (readings == 1 ? " reading is" : " readings are") + " too few, or broken by noise");
        return Optional.empty();
    }

    private static Optional<String> why(String words) {
        return Optional.of(words);
    }

    /**
     * How sure, 0 to 1; our own figure, no probability: the share of bytes explained, less for jumps, and less a doubt that
     * halves with each reading in a row.
     */
    double confidence() {
        double smooth = 1 - Math.min(1, (double) jumps / Math.max(1, readings));
        return explainedFraction() * smooth * (1 - Math.pow(0.5, smoothRun));
    }
}
