package fifthform.simulator.device;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.cue.CueId;
import fifthform.curves.engine.Event.CueGiven;
import fifthform.probe.link.Arrival;
import fifthform.probe.link.ByteLink;
import fifthform.probe.link.LinkException;
import fifthform.probe.link.LinkSource;
import fifthform.simulator.bowl.Spot;
import fifthform.simulator.scenario.Scenario;
import fifthform.simulator.scenario.ScenarioText;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

/** The bytes of the pretend adapters, their faults, and two readers on two threads. */
class RunningKitchenTest {
    private static final Instant START = Instant.parse("2026-01-10T09:00:00Z");
    private static final String TEXT = """
            demo = invented for a test
            title = A test
            about = Nothing much.
            chocolate = dark
            bowl = steel
            maker = follows-cues
            """;

    private static RunningKitchen kitchen(String... more) {
        Scenario scenario = ScenarioText.parse("test", TEXT + String.join("\n", more))
                .fold(s -> s, problems -> {
                    throw new AssertionError(problems);
                });
        return scenario.start(START);
    }

    private static String text(Arrival arrival) {
        return new String(arrival.bytes(), StandardCharsets.US_ASCII);
    }

    /** All that arrives before this time, silences left out; the arrival at this time is read and dropped. */
    private static List<Arrival> lines(ByteLink link, Instant until) throws LinkException, InterruptedException {
        List<Arrival> lines = new ArrayList<>();
        for (Arrival next = link.read().orElseThrow();
                next.at().isBefore(until);
                next = link.read().orElseThrow()) {
            if (!next.isSilence()) lines.add(next);
        }
        return lines;
    }

    /** A port takes bytes until its buffer is full; where nobody listens a write then waits for ever. */
    @Test
    void aPortThatTakesNoMoreHoldsNobodyUp() throws Exception {
        CountDownLatch never = new CountDownLatch(1);
        CountDownLatch waits = new CountDownLatch(1);
        ByteLink full = new ByteLink() {
            @Override
            public Optional<Arrival> read() throws InterruptedException {
                never.await();
                return Optional.empty();
            }

            @Override
            public void write(byte[] bytes) {
                waits.countDown();
                boolean done = false;
                while (!done) {
                    try {
                        never.await();
                        done = true;
                    } catch (InterruptedException ignored) {
                        // a native write heeds no interrupt
                    }
                }
            }

            @Override
            public void close() {}
        };
        LinkSource source = new LinkSource() {
            @Override
            public ByteLink open() {
                return full;
            }

            @Override
            public String place() {
                return "a full port";
            }
        };
        KitchenVoice voice = new KitchenVoice(kitchen(), source, at -> Thread.sleep(1));
        CompletableFuture<Void> speaking = CompletableFuture.runAsync(() -> {
            try {
                voice.speak();
            } catch (LinkException | InterruptedException e) {
                throw new AssertionError(e);
            }
        });
        assertTrue(waits.await(10, TimeUnit.SECONDS));
        voice.close();
        speaking.get(10, TimeUnit.SECONDS);
        never.countDown();
    }

    @Test
    void aLineEveryHalfSecondOnTheAdaptersGrid() throws Exception {
        ByteLink link = kitchen("noise = 0 K", "offset = 0.5 K", "resolution = 0.0625 K")
                .bowlSource()
                .open();
        List<Arrival> lines = lines(link, START.plusSeconds(3));
        assertEquals(5, lines.size());
        assertEquals(START.plusMillis(500), lines.get(0).at());
        assertEquals("T=21.5000 C\r\n", text(lines.get(0)));
    }

    @Test
    void everyNumberIsAWholeNumberOfSteps() throws Exception {
        ByteLink link =
                kitchen("resolution = 0.05 K", "noise = 0.3 K").bowlSource().open();
        List<Arrival> lines = lines(link, START.plusSeconds(300));
        long different = lines.stream().map(RunningKitchenTest::text).distinct().count();
        assertTrue(different > 20, "no noise");
        for (Arrival line : lines) assertTrue(text(line).matches("T=\\d+\\.\\d[05] C\r\n"), text(line));
    }

    @Test
    void silencesKeepTimeGoingBetweenTheLines() throws Exception {
        ByteLink link = kitchen().bowlSource().open();
        Instant last = START;
        for (int i = 0; i < 40; i++) {
            Instant at = link.read().orElseThrow().at();
            assertTrue(Duration.between(last, at).toMillis() <= 200);
            last = at;
        }
        assertEquals(START.plusSeconds(5), last);
    }

    @Test
    void whoIsToldActsAndWhoIsDoneEndsTheLine() throws Exception {
        RunningKitchen kitchen = kitchen();
        ByteLink link = kitchen.bowlSource().open();
        lines(link, START.plusSeconds(900));
        kitchen.told(new CueGiven(kitchen.now(), CueId.MELTED, OptionalDouble.empty()));
        lines(link, START.plusSeconds(915));
        assertEquals(Spot.COLD_WATER, kitchen.truth().spot());
        kitchen.advanceTo(START.plus(Duration.ofHours(5)));
        assertTrue(kitchen.done());
        Optional<Arrival> next = link.read();
        while (next.isPresent()) next = link.read(); // what was sent while nobody read still arrives
        assertEquals(Optional.empty(), kitchen.bathSource().open().read());
    }

    @Test
    void unpluggedThrowsUntilItIsBackAndTheOldLineStaysDead() throws Exception {
        RunningKitchen kitchen = kitchen("fault = unplugged for 25 s, 10 s after hot-bath");
        ByteLink old = kitchen.bowlSource().open();
        LinkException gone = assertThrows(LinkException.class, () -> lines(old, START.plusSeconds(60)));
        assertEquals("practice bowl", gone.place());
        assertEquals(START.plusSeconds(10), kitchen.now());
        int vain = 0;
        while (vain < 100) {
            try {
                kitchen.bowlSource().open();
                break;
            } catch (LinkException stillGone) {
                vain++;
            }
        }
        assertEquals(50, vain);
        assertThrows(LinkException.class, old::read);
        assertTrue(lines(kitchen.bowlSource().open(), START.plusSeconds(40)).size() > 5);
    }

    @Test
    void aLineThatWasNotReadDuringTheGapIsDeadAllTheSame() throws Exception {
        RunningKitchen kitchen = kitchen("fault = unplugged for 25 s, 10 s after start");
        ByteLink old = kitchen.bowlSource().open();
        kitchen.advanceTo(START.plusSeconds(60));
        assertThrows(LinkException.class, old::read);
    }

    @Test
    void anOpenCircuitGarbageAndSilence() throws Exception {
        RunningKitchen kitchen = kitchen(
                "fault = open-circuit for 2 s, 2 s after start",
                "fault = garbage for 2 s, 4 s after start",
                "fault = silent for 2 s, 6 s after start");
        ByteLink link = kitchen.bowlSource().open();
        assertTrue(lines(link, START.plusSeconds(2)).stream().allMatch(a -> text(a).endsWith(" C\r\n")));
        List<Arrival> open = lines(link, START.plusSeconds(4));
        assertEquals(
                List.of("T=OPEN\r\n"),
                open.stream().map(RunningKitchenTest::text).distinct().toList());
        List<Arrival> garbage = lines(link, START.plusSeconds(6));
        assertTrue(garbage.stream().allMatch(a -> text(a).matches("[a-j]{9}\r\n")));
        assertEquals(3, garbage.size());
        assertEquals(0, lines(link, START.plusSeconds(8)).size());
        assertEquals(3, lines(link, START.plusSeconds(10)).size());
    }

    @Test
    void aFaultDoesNotChangeTheNoiseThatFollows() throws Exception {
        List<Arrival> whole = lines(kitchen("noise = 0.3 K").bowlSource().open(), START.plusSeconds(20));
        List<Arrival> broken = lines(
                kitchen("noise = 0.3 K", "fault = silent for 5 s, 5 s after start")
                        .bowlSource()
                        .open(),
                START.plusSeconds(20));
        assertEquals(text(whole.get(whole.size() - 1)), text(broken.get(broken.size() - 1)));
    }

    /** Two threads, as live: the bath's reader never gets ahead of the bowl's and sees each of its lines once. */
    @Test
    void twoReadersShareOneKitchen() {
        assertTimeoutPreemptively(Duration.ofSeconds(60), () -> {
            RunningKitchen kitchen = kitchen();
            ByteLink bowl = kitchen.bowlSource().open();
            ByteLink bath = kitchen.bathSource().open();
            CompletableFuture<List<Instant>> heard = CompletableFuture.supplyAsync(() -> bathTimes(kitchen, bath));
            while (bowl.read().isPresent()) {
                // the bowl's reader drives the kitchen to the end of the batch
            }
            long seconds = Duration.between(START, kitchen.now()).toSeconds();
            List<Instant> times = heard.get();
            assertEquals(seconds, times.size());
            for (int i = 0; i < times.size(); i++) assertEquals(START.plusSeconds(i + 1), times.get(i));
        });
    }

    private static List<Instant> bathTimes(RunningKitchen kitchen, ByteLink bath) {
        List<Instant> times = new ArrayList<>();
        try {
            for (Optional<Arrival> next = bath.read(); next.isPresent(); next = bath.read()) {
                if (next.get().at().isAfter(kitchen.now())) throw new AssertionError("from the future");
                if (!next.get().isSilence()) times.add(next.get().at());
            }
        } catch (LinkException | InterruptedException e) {
            throw new AssertionError(e);
        }
        return times;
    }

    @Test
    void closingWakesAWaitingReader() {
        assertTimeoutPreemptively(Duration.ofSeconds(20), () -> {
            ByteLink bath = kitchen().bathSource().open();
            CompletableFuture<Void> waiting = CompletableFuture.runAsync(() -> {
                assertThrows(LinkException.class, () -> {
                    while (true) bath.read();
                });
            });
            bath.close();
            waiting.get();
        });
    }
}
