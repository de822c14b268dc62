package fifthform.probe.protocol;

import fifthform.probe.Signal;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Frames of one channel to signals.
 *
 * <p>A line that is held low reads as zeros for ever, and zero is an ice point as well. So zeros are believed only where
 * they were approached: the last temperature before them, and its junction where that is told, lay within
 * {@value #NEAR_KELVIN} K of zero. Zeros from the start of the link, or after a leap, are unreadable until another
 * temperature comes (our rule). Of adapters that tell numbers the engine judges zeros, by the time they took to come.
 */
final class ChipJudge {
    /** A tip in ice water still falls by less from one reading to the next, at one reading a second. */
    private static final double NEAR_KELVIN = 5;

    private final Chip chip;
    private final Chip.Doubt doubt;
    private boolean nearZero;

    ChipJudge(Chip chip) {
        this.chip = chip;
        this.doubt = chip.newDoubt();
    }

    /** Empty where the frame is unreadable. */
    Optional<Signal> judge(int channel, long frame) {
        Optional<ChipReading> reading = chip.read(frame);
        boolean doubtful = doubt.about(frame, reading);
        if (reading.isEmpty() || doubtful) return Optional.empty();
        if (reading.get().isZero())
            return Optional.of(reading.get().signal(channel)).filter(signal -> nearZero);
        if (reading.get().isTemperature()) nearZero = isNearZero(reading.get());
        return Optional.of(reading.get().signal(channel));
    }

    private static boolean isNearZero(ChipReading reading) {
        OptionalDouble junction = reading.junctionCelsius();
        return Math.abs(reading.tipCelsius()) <= NEAR_KELVIN && Math.abs(junction.orElse(0)) <= NEAR_KELVIN;
    }
}
