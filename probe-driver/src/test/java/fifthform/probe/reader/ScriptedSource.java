package fifthform.probe.reader;

import fifthform.probe.link.Arrival;
import fifthform.probe.link.ByteLink;
import fifthform.probe.link.LinkException;
import fifthform.probe.link.LinkSource;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/**
 * A port that plays a script, one action a read or opening: text arrives, silence passes, the link goes, cannot be opened,
 * the recording ends. Each read takes 200 ms of the hand-moved clock.
 */
final class ScriptedSource implements LinkSource {
    private static final String GONE = "gone";
    private static final String CLOSED_PORT = "no port";
    private static final String END = "end";

    private final HandMovedClock clock;
    private final Deque<String> script = new ArrayDeque<>();
    int opened;
    int closed;

    ScriptedSource(HandMovedClock clock) {
        this.clock = clock;
    }

    ScriptedSource text(String text) {
        script.add("=" + text);
        return this;
    }

    ScriptedSource silence(Duration duration) {
        for (long i = 0; i < duration.toMillis() / 200; i++) script.add("=");
        return this;
    }

    ScriptedSource gone() {
        script.add(GONE);
        return this;
    }

    ScriptedSource cannotBeOpened(int times) {
        for (int i = 0; i < times; i++) script.add(CLOSED_PORT);
        return this;
    }

    ScriptedSource end() {
        script.add(END);
        return this;
    }

    @Override
    public String place() {
        return "script";
    }

    @Override
    public ByteLink open() throws LinkException {
        if (CLOSED_PORT.equals(script.peek())) {
            script.poll();
            throw new LinkException(place(), "not there", "wait");
        }
        opened++;
        return new Link();
    }

    private final class Link implements ByteLink {
        @Override
        public Optional<Arrival> read() throws LinkException {
            String action = script.isEmpty() ? END : script.poll();
            if (action.equals(GONE)) throw new LinkException(place(), "gone", "wait");
            if (action.equals(END)) return Optional.empty();
            clock.advance(Duration.ofMillis(200));
            return Optional.of(new Arrival(clock.instant(), action.substring(1).getBytes(StandardCharsets.UTF_8)));
        }

        @Override
        public void write(byte[] bytes) {}

        @Override
        public void close() {
            closed++;
        }
    }
}
