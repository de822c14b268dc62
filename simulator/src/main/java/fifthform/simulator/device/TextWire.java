package fifthform.simulator.device;

import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.Set;
import java.util.SplittableRandom;

/** Lines as a hobby micro-controller prints them: {@code T=31.25 C}, without a number in the label, so channel 0. */
final class TextWire implements Wire {
    private final double resolutionKelvin;

    TextWire(double resolutionKelvin) {
        this.resolutionKelvin = resolutionKelvin;
    }

    @Override
    public Said measured(double tipCelsius) {
        BigDecimal number = Steps.nearest(tipCelsius, resolutionKelvin);
        return Said.number(told(number), number.doubleValue());
    }

    private static byte[] told(BigDecimal celsius) {
        return Said.line("T=" + celsius.toPlainString() + " C");
    }

    @Override
    public Said openCircuit() {
        return Said.noNumber(Said.line("T=OPEN"));
    }

    @Override
    public Said shortCircuit() {
        return Said.noNumber(Said.line("Short to GND"));
    }

    /** The converter's zeros come through the program in between as a number like any other. */
    @Override
    public Said dead() {
        return Said.noNumber(told(Steps.nearest(0, resolutionKelvin)));
    }

    @Override
    public byte[] garbage(SplittableRandom random) {
        return Garbage.line(random);
    }

    @Override
    public Set<Trouble> troubles() {
        return EnumSet.complementOf(EnumSet.of(Trouble.WRONG_CRC));
    }
}
