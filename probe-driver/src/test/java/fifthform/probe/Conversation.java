package fifthform.probe;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/**
 * A link as a reader drives it: it asks before every frame until the decoder has a question, and lets time pass. Adapters
 * that speak by themselves have no question, and time tells their decoders nothing.
 */
final class Conversation {
    /** A link's read waits so long at most. */
    private static final Duration READ = Duration.ofMillis(200);

    /** No protocol may take longer to ask again. */
    private static final Duration LONGEST_PAUSE = Duration.ofSeconds(10);

    private final ProbeProtocol protocol;
    private final ProbeProtocol.Decoder decoder;
    private List<Signal> signals = new ArrayList<>();
    private Instant now = Instant.EPOCH;

    Conversation(ProbeProtocol protocol) {
        this.protocol = protocol;
        this.decoder = protocol.newDecoder();
    }

    /** One frame, whole, as the answer to the next question where the adapter waits for one. */
    void hear(byte[] frame) {
        untilAsked();
        arrive(frame, Duration.ofMillis(20));
    }

    /** The same in chunks of any length, empty ones too. */
    void hearInChunks(byte[] frame, SplittableRandom random) {
        untilAsked();
        int longest = 1 + random.nextInt(300);
        for (int from = 0; from < frame.length; ) {
            int to = Math.min(frame.length, from + random.nextInt(longest + 1));
            arrive(Arrays.copyOfRange(frame, from, to), Duration.ofNanos(100_000));
            from = to;
        }
    }

    private void untilAsked() {
        if (protocol.manner() == ProbeProtocol.Manner.SPEAKS) return;
        Instant latest = now.plus(LONGEST_PAUSE);
        while (now.isBefore(latest)) {
            now = now.plus(READ);
            if (decoder.ask(now, signals::add).isPresent()) return;
        }
        throw new AssertionError(protocol.id() + " has not asked within " + LONGEST_PAUSE);
    }

    private void arrive(byte[] bytes, Duration after) {
        now = now.plus(after);
        decoder.feed(bytes, signals::add);
        if (protocol.manner() == ProbeProtocol.Manner.SPEAKS) decoder.ask(now, signals::add);
    }

    /** All signals so far. */
    List<Signal> signals() {
        return List.copyOf(signals);
    }

    /** The signals since they were last taken. */
    List<Signal> takeSignals() {
        List<Signal> taken = signals;
        signals = new ArrayList<>();
        return taken;
    }
}
