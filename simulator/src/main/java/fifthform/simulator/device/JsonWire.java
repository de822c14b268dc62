package fifthform.simulator.device;

import java.math.BigDecimal;
import java.util.SplittableRandom;

/** One JSON object a line: {@code {"temperature_c":31.25}}. */
final class JsonWire implements Wire {
    private final double resolutionKelvin;

    JsonWire(double resolutionKelvin) {
        this.resolutionKelvin = resolutionKelvin;
    }

    @Override
    public Said measured(double tipCelsius) {
        BigDecimal number = Steps.nearest(tipCelsius, resolutionKelvin);
        return Said.number(object(number.toPlainString()), number.doubleValue());
    }

    private static byte[] object(String value) {
        return Said.line("{\"temperature_c\":" + value + "}");
    }

    /** {@code null} is how JSON writes a number that is none (RFC 8259, 3 and 6). */
    @Override
    public Said openCircuit() {
        return Said.noNumber(object("null"));
    }

    @Override
    public Said dead() {
        return Said.noNumber(object(Steps.nearest(0, resolutionKelvin).toPlainString()));
    }

    @Override
    public byte[] garbage(SplittableRandom random) {
        return Garbage.line(random);
    }
}
