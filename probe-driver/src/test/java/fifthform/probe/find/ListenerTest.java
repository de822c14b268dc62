package fifthform.probe.find;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.probe.LineSettings;
import fifthform.probe.ProbeProtocol;
import fifthform.probe.Signal;
import fifthform.probe.link.TapeSource;
import fifthform.probe.protocol.TextLines;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

class ListenerTest {
    private final List<Integer> speeds = new ArrayList<>();

    @Test
    void theProtocolThatUnderstandsIsNamedFirst() throws Exception {
        List<Heard> heard = listen("31.25\n31.50\n31.75\n32.00\n", Duration.ofSeconds(10));
        assertEquals("text-lines", heard.get(0).protocol().id());
        assertTrue(heard.get(0).isConvincing());
        assertFalse(heard.get(1).isConvincing());
        assertEquals(List.of(4800, 9600), speeds, "each line setting once");
    }

    @Test
    void noiseConvincesNobody() throws Exception {
        assertTrue(listen("\u00ff~~\n?!\nx 1\n".repeat(20), Duration.ofSeconds(60)).stream()
                .noneMatch(Heard::isConvincing));
    }

    @Test
    void itDoesNotListenLongerThanTold() throws Exception {
        List<Heard> heard = listen("?!\n".repeat(100), Duration.ofSeconds(5));
        int unreadable = heard.stream()
                .filter(h -> h.protocol().id().equals("text-lines"))
                .findFirst()
                .orElseThrow()
                .unreadableBytes();
        assertEquals(12, unreadable, "lines at 0, 1, … 5 s, of two bytes each");
    }

    private List<Heard> listen(String text, Duration limit) throws Exception {
        byte[] bytes = text.getBytes(StandardCharsets.ISO_8859_1);
        Listener listener = new Listener(
                line -> {
                    speeds.add(line.baud());
                    return TapeSource.lines("tape", bytes, Instant.EPOCH, Duration.ofSeconds(1));
                },
                List.of(new Deaf(), new TextLines()));
        return listener.listen(limit);
    }

    /** Understands nothing. */
    private static final class Deaf implements ProbeProtocol {
        @Override
        public String id() {
            return "deaf";
        }

        @Override
        public String description() {
            return "nothing";
        }

        @Override
        public List<LineSettings> lines() {
            return List.of(new LineSettings(4800));
        }

        @Override
        public Decoder newDecoder() {
            return new Decoder() {
                @Override
                public void feed(byte[] bytes, Consumer<? super Signal> out) {
                    if (bytes.length > 0) out.accept(new Signal.Unreadable(bytes.length));
                }
            };
        }
    }
}
