package fifthform.probe.protocol;

import fifthform.probe.ProbeProtocol;
import fifthform.probe.Signal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Feeds whole text to a fresh decoder. */
final class Decoding {
    private Decoding() {}

    static List<Signal> lines(String... lines) {
        return bytes((String.join("\n", lines) + "\n").getBytes(StandardCharsets.UTF_8));
    }

    static List<Signal> bytes(byte[] bytes) {
        ProbeProtocol.Decoder decoder = new TextLines().newDecoder();
        List<Signal> signals = new ArrayList<>();
        decoder.feed(bytes, signals::add);
        return signals;
    }

    static List<Double> tips(List<Signal> signals) {
        return signals.stream()
                .filter(Signal.Measured.class::isInstance)
                .map(signal -> ((Signal.Measured) signal).tipCelsius())
                .toList();
    }
}
