package fifthform.probe.protocol;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.probe.ProbeProtocol;
import fifthform.probe.Signal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** JSON and nothing else, and never another reading than text lines give for it. */
class JsonLinesTest {
    @Test
    void bothProtocolsReadTheSameFromJson() {
        StringBuilder lines = new StringBuilder();
        for (int i = 0; i < 300; i++) {
            lines.append("{\"ms\":").append(100 * i).append(",\"tc\":31.").append(10 + i % 90);
            lines.append(i % 3 == 0 ? ",\"cj\":24.5}\n" : i % 7 == 0 ? ",\"fault\":1}\n" : "}\n");
        }
        List<Signal> signals = signals(new JsonLines(), lines.toString());
        assertEquals(signals(new TextLines(), lines.toString()), signals);
        assertTrue(Decoding.tips(signals).size() > 200);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "31.25",
                "T: 31.25 C",
                "tc=31.25 cj=24.50",
                "nan",
                "OPEN",
                "[31.25]",
                "{tc:31.25}",
                "x{\"tc\":31.25}"
            })
    void whatIsNoObjectIsUnreadable(String line) {
        assertEquals(List.of(new Signal.Unreadable(line.length())), signals(new JsonLines(), "\n" + line + "\n"));
    }

    private static List<Signal> signals(ProbeProtocol protocol, String lines) {
        List<Signal> signals = new ArrayList<>();
        protocol.newDecoder().feed(lines.getBytes(StandardCharsets.UTF_8), signals::add);
        return signals;
    }
}
