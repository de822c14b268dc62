package fifthform.probe.find;

import fifthform.probe.link.Arrival;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/**
 * What garbled bytes tell about the speed at which they were sent.
 *
 * <p>A receiver that is r times too fast sees each bit r times, so the ones and zeros of a byte come in runs that begin and
 * end r apart. Few of the 256 bytes look like that, and different r make different ones likely ({@link SampledBits}). A
 * receiver that is too slow skips bits, and anything can come out. So only a receiver that is too fast learns the speed; one
 * that is too slow learns just that.
 */
final class Garbling {
    /** More bytes say nothing new. */
    private static final int MOST_KEPT = 64;

    /** By the ratio of the speeds; the same for ever, and slow to find. */
    private static final Map<Double, SampledBits> SAMPLED = new ConcurrentHashMap<>();

    private static final double TEXT_FRACTION = 0.8;

    private final int receiverBaud;
    private final List<Integer> firsts = new ArrayList<>();
    private final List<Integer> followers = new ArrayList<>();
    private long heard;
    private long printable;
    private long lineEnds;
    /** Or the first silence, before which nothing is known. */
    private Optional<Instant> lastByte = Optional.empty();

    Garbling(int receiverBaud) {
        this.receiverBaud = receiverBaud;
    }

    void hear(Arrival arrival) {
        Instant at = arrival.at();
        // After a pause the next start bit is a real one.
        boolean afterPause = lastByte.filter(last -> Duration.between(last, at).compareTo(Bursts.PAUSE) >= 0)
                .isPresent();
        byte[] bytes = arrival.bytes();
        for (byte b : bytes) {
            heard++;
            if (b == '\r' || b == '\n') lineEnds++;
            else if (b >= ' ' && b <= '~' || b == '\t') printable++;
        }
        for (int i = 0; i < bytes.length && size() < MOST_KEPT; i++)
            (i == 0 && afterPause ? firsts : followers).add(bytes[i] & 0xFF);
        if (!arrival.isSilence() || lastByte.isEmpty()) lastByte = Optional.of(at);
    }

    /**
     * How much more likely these bytes are if they were sent at {@code baud} than if they were any bytes, as a natural
     * logarithm; 0 for speeds at which any byte can come out.
     */
    double evidenceFor(int baud) {
        double ratio = (double) receiverBaud / baud;
        if (ratio < SampledBits.LOWEST_RATIO) return 0;
        SampledBits sampled = SAMPLED.computeIfAbsent(ratio, SampledBits::new);
        return firsts.stream().mapToDouble(sampled::afterPause).sum()
                + followers.stream().mapToDouble(sampled::amidst).sum();
    }

    /** Bytes kept. */
    int size() {
        return firsts.size() + followers.size();
    }

    /** All the same byte: a line held at one level, or one bit sampled over and over. */
    boolean isMonotonous() {
        return all().distinct().count() == 1;
    }

    /** Whether all of it looks like lines of text: nearly all printable, and a line end at least every second time. */
    boolean looksLikeLines(int bursts) {
        return printable + lineEnds >= TEXT_FRACTION * heard && 2 * lineEnds >= bursts;
    }

    private Stream<Integer> all() {
        return Stream.concat(firsts.stream(), followers.stream());
    }
}
