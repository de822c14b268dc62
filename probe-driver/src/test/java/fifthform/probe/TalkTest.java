package fifthform.probe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.check.Parsed;
import fifthform.curves.check.Problem;
import fifthform.probe.LineSettings.Parity;
import fifthform.probe.protocol.TextLines;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TalkTest {
    @Test
    void whatIsWrittenIsReadBack() {
        Talk talk = new Talk("modbus-rtu", Map.of("register", "8", "baud", "19200"));
        assertEquals("modbus-rtu:baud=19200,register=8", talk.toString());
        assertEquals(talk, accepted(Talk.parse(talk.toString())));
        assertEquals(Talk.of("text-lines"), accepted(Talk.parse("text-lines")));
        assertEquals(talk, accepted(Talk.parse(" modbus-rtu: register = 8 , baud=19200")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "Text Lines", "text-lines:baud", "text-lines:=3", "text-lines:baud=1,baud=2", ":a=b"})
    void whatIsNoTalkIsRefusedWithAnExample(String text) {
        List<Problem> problems = Talk.parse(text).fold(talk -> List.of(), p -> List.copyOf(p));
        assertTrue(problems.size() >= 1 && problems.get(0).whatToDo().contains("modbus-rtu:baud"), problems::toString);
    }

    @Test
    void theLineIsSetForEveryProtocol() {
        Spoken usual = accepted(Spoken.of(Talk.of("text-lines"), List.of(new TextLines())));
        assertEquals(new LineSettings(9600), usual.line());
        Talk talk = accepted(Talk.parse("text-lines:baud=115200,parity=even,stop-bits=2"));
        Spoken spoken = accepted(Spoken.of(talk, List.of(new TextLines())));
        assertEquals(new LineSettings(115_200, Parity.EVEN, 2), spoken.line());
        assertEquals("115200 8E2", spoken.line().toString());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "text-line",
                "text-lines:baud=fast",
                "text-lines:parity=mark",
                "text-lines:stop-bits=3",
                "text-lines:colour=red"
            })
    void whatCannotBeUsedSaysWhy(String text) {
        String said = Spoken.of(accepted(Talk.parse(text)), List.of(new TextLines()))
                .fold(spoken -> "accepted", problems -> problems.toString());
        assertTrue(said.contains("Nothing was done"), said);
    }

    private static <T> T accepted(Parsed<T> parsed) {
        return parsed.fold(value -> value, problems -> {
            throw new AssertionError(problems);
        });
    }
}
