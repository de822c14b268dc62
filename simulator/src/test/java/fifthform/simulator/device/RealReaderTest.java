package fifthform.simulator.device;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.input.Input;
import fifthform.curves.input.ProbeFault;
import fifthform.curves.input.ProbeFault.Cause;
import fifthform.curves.input.Sample;
import fifthform.curves.setup.ProbeId;
import fifthform.probe.ProbeProtocol;
import fifthform.probe.link.ByteLink;
import fifthform.probe.link.LinkException;
import fifthform.probe.link.LinkSource;
import fifthform.probe.reader.ProbeLine;
import fifthform.probe.reader.ProbeReader;
import fifthform.probe.reader.ReaderClock;
import fifthform.simulator.scenario.Scenarios;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.ServiceLoader;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

/** The pretend adapters at the very reader that serves real ports: two threads, one kitchen, one gap. */
class RealReaderTest {
    private static final Instant START = Instant.parse("2026-01-10T09:00:00Z");

    /** The kitchen's own time; waiting in it lets it pass. */
    private record KitchenTime(RunningKitchen kitchen) implements ReaderClock {
        @Override
        public Instant instant() {
            return kitchen.now();
        }

        @Override
        public void pause(Duration duration) {
            kitchen.advanceTo(kitchen.now().plus(duration));
        }
    }

    @Test
    void aWholeBatchComesThroughWithOneGap() throws Exception {
        RunningKitchen kitchen = Scenarios.builtIn()
                .find("unplugged")
                .fold(s -> s, problems -> {
                    throw new AssertionError(problems);
                })
                .start(START);
        CountDownLatch ends = new CountDownLatch(2);
        CountDownLatch open = new CountDownLatch(2);
        List<Input> bowl = new CopyOnWriteArrayList<>();
        List<Input> bath = new CopyOnWriteArrayList<>();
        try (ProbeReader bowlReader = reader("bowl", together(kitchen.bowlSource(), open), kitchen, bowl, ends);
                ProbeReader bathReader = reader("bath", together(kitchen.bathSource(), open), kitchen, bath, ends)) {
            bathReader.start();
            bowlReader.start();
            assertTrue(ends.await(60, TimeUnit.SECONDS), "the lines did not end");
        }
        List<Sample> samples = samples(bowl);
        Duration longestGap = Duration.ZERO;
        for (int i = 1; i < samples.size(); i++) {
            Duration gap =
                    Duration.between(samples.get(i - 1).at(), samples.get(i).at());
            assertTrue(!gap.isNegative(), "out of order");
            if (gap.compareTo(longestGap) > 0) longestGap = gap;
        }
        assertTrue(longestGap.toSeconds() >= 25 && longestGap.toSeconds() <= 30, "gap " + longestGap);
        assertTrue(bowl.stream().anyMatch(i -> i instanceof ProbeFault f && f.cause() == Cause.UNPLUGGED));
        long seconds = Duration.between(START, kitchen.now()).toSeconds();
        assertEquals(2.0 * (seconds - 25), samples.size(), 12);
        assertEquals(seconds, samples(bath).size(), 3);
    }

    /**
     * A line that is open once both are. A thousand seconds go by here in one: what an adapter says before somebody listens
     * is lost, and how much that is would depend on when the other thread happens to begin.
     */
    private static LinkSource together(LinkSource source, CountDownLatch open) {
        return new LinkSource() {
            @Override
            public String place() {
                return source.place();
            }

            @Override
            public ByteLink open() throws LinkException {
                ByteLink link = source.open();
                open.countDown();
                try {
                    open.await();
                } catch (InterruptedException e) {
                    Thread.currentThread().interrupt();
                }
                return link;
            }
        };
    }

    private static ProbeReader reader(
            String name, LinkSource source, RunningKitchen kitchen, List<Input> heard, CountDownLatch ends) {
        ProbeProtocol talk = ServiceLoader.load(ProbeProtocol.class).stream()
                .map(ServiceLoader.Provider::get)
                .filter(p -> p.id().equals("text-lines"))
                .findFirst()
                .orElseThrow();
        ProbeLine line = new ProbeLine(name, source, talk, Map.of(0, new ProbeId(name)));
        return new ProbeReader(line, new KitchenTime(kitchen), heard::add, ends::countDown);
    }

    private static List<Sample> samples(List<Input> inputs) {
        return inputs.stream()
                .filter(Sample.class::isInstance)
                .map(Sample.class::cast)
                .toList();
    }
}
