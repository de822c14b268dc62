package fifthform.monitor.sound;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.alarm.Priority;
import fifthform.curves.alarm.Side;
import fifthform.monitor.settings.Volume;
import java.lang.reflect.Proxy;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import javax.sound.sampled.SourceDataLine;
import org.junit.jupiter.api.Test;

/** The one line, with a line of our own in place of the computer's. */
class SpeakerTest {
    private static final Call URGENT = Call.of(Priority.URGENT, Side.TOO_HOT);

    @Test
    void playsInTurnAndClosesTheLine() throws Exception {
        BlockingQueue<Object> done = new LinkedBlockingQueue<>();
        try (Speaker speaker = new Speaker(() -> line(done), () -> done.add("beep"), Volume.FULL)) {
            speaker.play(URGENT);
            speaker.play(Call.CUE);
            assertEquals("start", done.poll(5, TimeUnit.SECONDS));
            assertArrayEquals(Tones.pcm(URGENT, 0), (byte[]) done.poll(5, TimeUnit.SECONDS));
            assertArrayEquals(Tones.pcm(Call.CUE, 0), (byte[]) done.poll(5, TimeUnit.SECONDS));
            assertEquals(Speaker.State.SOUND, speaker.state());
        }
        assertEquals("close", done.poll(5, TimeUnit.SECONDS));
    }

    @Test
    void withoutADeviceItSaysSoAndBeeps() throws Exception {
        BlockingQueue<Object> done = new LinkedBlockingQueue<>();
        Speaker.Lines none = () -> {
            throw new IllegalArgumentException("No line matching");
        };
        try (Speaker speaker = new Speaker(none, () -> done.add("beep"), Volume.FULL)) {
            speaker.play(URGENT);
            assertEquals("beep", done.poll(5, TimeUnit.SECONDS));
            assertEquals("no sound on this computer", speaker.state().words());
        }
    }

    /** Whatever a sound system throws in the middle: the mark must not go on saying that there is sound. */
    @Test
    void aLineThatFailsInTheMiddleIsSaidAndBeepsInstead() throws Exception {
        BlockingQueue<Object> done = new LinkedBlockingQueue<>();
        Speaker.Lines failing = () -> (SourceDataLine) Proxy.newProxyInstance(
                SpeakerTest.class.getClassLoader(), new Class<?>[] {SourceDataLine.class}, (proxy, method, given) -> {
                    if (method.getName().equals("write")) throw new NullPointerException("demo");
                    return null;
                });
        try (Speaker speaker = new Speaker(failing, () -> done.add("beep"), Volume.FULL)) {
            speaker.play(URGENT);
            speaker.play(URGENT);
            assertEquals("beep", done.poll(5, TimeUnit.SECONDS));
            assertEquals(Speaker.State.NONE, speaker.state());
        }
    }

    @Test
    void theTrialLeavesTimeToGoToTheStoveAndSoundsThereAgainAndAgain() throws Exception {
        BlockingQueue<Object> done = new LinkedBlockingQueue<>();
        List<Long> waited = new ArrayList<>();
        List<Integer> heard = new ArrayList<>();
        Optional<String> said =
                SoundTrial.play(new Speaker(() -> line(done), () -> done.add("beep"), Volume.FULL), 10, 4, millis -> {
                    TimeUnit.MILLISECONDS.sleep(60);
                    waited.add(millis);
                    heard.add(
                            (int) done.stream().filter(byte[].class::isInstance).count());
                });
        assertEquals(Optional.empty(), said);
        assertEquals(
                11_500 + 4 * 1500 + 3 * 1500,
                waited.stream().mapToLong(each -> each).sum());
        assertEquals(List.of(0, 0), heard.subList(0, 2), "nothing before the maker is there");
        assertEquals(4, heard.get(heard.size() - 1), heard.toString());
    }

    @Test
    void nobodyIsSentToTheStoveForASoundThatCannotCome() {
        List<Long> waited = new ArrayList<>();
        Speaker.Lines none = () -> {
            throw new IllegalArgumentException("No line matching");
        };
        Optional<String> said = SoundTrial.play(new Speaker(none, () -> {}, Volume.FULL), 10, 4, millis -> {
            TimeUnit.MILLISECONDS.sleep(200);
            waited.add(millis);
        });
        assertTrue(said.orElseThrow().contains("no sound on this computer"), said.toString());
        assertEquals(List.of(1500L, 1500L), waited);
    }

    @Test
    void neverHoldsUpWhoAsks() {
        BlockingQueue<Object> done = new LinkedBlockingQueue<>();
        Speaker.Lines stuck = () -> {
            try {
                TimeUnit.SECONDS.sleep(30);
            } catch (InterruptedException ended) {
                done.add("ended");
            }
            throw new IllegalArgumentException("none");
        };
        try (Speaker speaker = new Speaker(stuck, () -> {}, Volume.FULL)) {
            for (int i = 0; i < 1000; i++) speaker.play(URGENT);
        }
        assertTrue(done.contains("ended"));
    }

    private static SourceDataLine line(BlockingQueue<Object> done) {
        return (SourceDataLine) Proxy.newProxyInstance(
                SpeakerTest.class.getClassLoader(), new Class<?>[] {SourceDataLine.class}, (proxy, method, given) -> {
                    switch (method.getName()) {
                        case "start", "close" -> done.add(method.getName());
                        case "write" -> {
                            done.add(Arrays.copyOfRange(
                                    (byte[]) given[0], (int) given[1], (int) given[1] + (int) given[2]));
                            return given[2];
                        }
                        default -> {
                            return null;
                        }
                    }
                    return null;
                });
    }
}
