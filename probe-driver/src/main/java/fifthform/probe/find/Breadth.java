package fifthform.probe.find;

import fifthform.probe.ProbeProtocol;
import fifthform.probe.Signal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * How readily a protocol takes bytes for a temperature, by trial: of two protocols that read the same, the one that is
 * harder to please knows more about its adapter.
 */
final class Breadth {
    /** Made up; one of each kind of line or frame that something could send. */
    private static final List<String> LINES = List.of(
            "31.25",
            "31,25",
            "T: 31.25 C",
            "temp=31.25",
            "1;31.25;24.5",
            "T1:31.25 T2:41.00",
            "{\"tc\":31.25}",
            "{\"tc\":31.25,\"cj\":24.5}",
            "{\"temperature\":31.25}",
            "01F41610",
            "0x01F4",
            "03E8",
            "1.204,24.5",
            "31250",
            "88.3 F",
            "+3.125E+01");

    /** Each line is said so often that a protocol which waits for confirmation has it. */
    private static final int TIMES = 4;

    private Breadth() {}

    static int of(ProbeProtocol protocol) {
        AtomicInteger taken = new AtomicInteger();
        for (String line : LINES) {
            ProbeProtocol.Decoder decoder = protocol.newDecoder();
            byte[] bytes = (line + "\r\n").getBytes(StandardCharsets.US_ASCII);
            boolean[] read = {false};
            for (int i = 0; i < TIMES; i++) decoder.feed(bytes, s -> read[0] |= s instanceof Signal.Measured);
            if (read[0]) taken.incrementAndGet();
        }
        return taken.get();
    }
}
