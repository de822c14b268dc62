package fifthform.simulator.device;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.SplittableRandom;

/** Lines as a hobby micro-controller prints them: {@code T=31.25 C}, without a number in the label, so channel 0. */
final class LineText {
    private static final int GARBAGE_BYTES = 9;

    private LineText() {}

    /** The nearest number the adapter can show, exactly as it writes it. */
    static BigDecimal rounded(double celsius, double resolutionKelvin) {
        BigDecimal step = BigDecimal.valueOf(resolutionKelvin);
        return step.multiply(BigDecimal.valueOf(Math.round(celsius / resolutionKelvin)));
    }

    static byte[] measured(BigDecimal celsius) {
        return ascii("T=" + celsius.toPlainString() + " C");
    }

    static byte[] openCircuit() {
        return ascii("T=OPEN");
    }

    /** Printable characters without digits, so that no number can arise by chance. */
    static byte[] garbage(SplittableRandom random) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < GARBAGE_BYTES; i++) text.append((char) random.nextInt('a', 'k'));
        return ascii(text.toString());
    }

    private static byte[] ascii(String line) {
        return (line + "\r\n").getBytes(StandardCharsets.US_ASCII);
    }
}
