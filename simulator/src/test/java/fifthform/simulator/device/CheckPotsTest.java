package fifthform.simulator.device;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.probe.ProbeProtocol;
import fifthform.probe.Signal;
import fifthform.probe.Talk;
import fifthform.probe.link.ByteLink;
import fifthform.probe.link.LinkException;
import fifthform.simulator.device.CheckPots.Make;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The pots for practising a check do what water does, and their probe errs as it was made to. */
class CheckPotsTest {
    private static final Instant START = Instant.parse("2026-01-01T09:00:00Z");
    private static final Make MAKE = new Make(1.01, -0.8, 21);

    private final CheckPots pots = new CheckPots(MAKE, START, new SplittableRandom(4));

    @Test
    void theProbeErrsByItsGainAndOffsetInEveryPot() throws Exception {
        try (ByteLink line = pots.source().open()) {
            assertEquals(1.01 * 21 - 0.8, last(line, 30), 0.1);
            pots.dipIntoIce();
            double soon = last(line, 2);
            assertTrue(soon > 5 && soon < 15, "a tip takes its time: " + soon);
            assertEquals(-0.8, last(line, 60), 0.1);
            pots.dipIntoBoil(98.3);
            assertEquals(1.01 * 98.3 - 0.8, last(line, 60), 0.3);
            pots.dipIntoBath(32);
            assertEquals(1.01 * 32 - 0.8, last(line, 60), 0.1);
        }
    }

    /** A board at 10 °C: the converter's one slope makes 44.4 °C of 45 °C ({@link CodesTest}), and the program undoes it. */
    @Test
    void whatTheConvertersOneSlopeDoesIsUndone() throws Exception {
        Language language = Tongues.language(Talk.of("max31855"));
        CheckPots cold = new CheckPots(new Make(1, 0, 10), language, START, new SplittableRandom(4));
        cold.dipIntoBath(45);
        List<Signal> signals = new ArrayList<>();
        ProbeProtocol.Decoder decoder = language.protocol().newDecoder();
        try (ByteLink line = cold.source().open()) {
            for (int i = 0; i < 8 * 60; i++)
                decoder.feed(line.read().orElseThrow().bytes(), signals::add);
        }
        Signal.Measured last = (Signal.Measured) signals.get(signals.size() - 1);
        assertEquals(44.5, last.tipCelsius(), 0.3);
        double tip = language.protocol()
                .sensor()
                .tipCelsius(last.tipCelsius(), last.junctionCelsius(), last.emfMillivolts());
        assertEquals(0.59, tip - last.tipCelsius(), 0.02);
    }

    @Test
    void aClosedLineSaysSo() throws Exception {
        ByteLink line = pots.source().open();
        line.close();
        assertThrows(LinkException.class, line::read);
    }

    /** The last number within that many seconds of the pots' time. */
    private static double last(ByteLink line, int seconds) throws Exception {
        double last = Double.NaN;
        for (int i = 0; i < 8 * seconds; i++) {
            String text = new String(line.read().orElseThrow().bytes(), StandardCharsets.US_ASCII);
            if (!text.isEmpty()) last = Double.parseDouble(text.replaceAll("[^-0-9.]", ""));
        }
        return last;
    }
}
