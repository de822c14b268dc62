package fifthform.monitor.sound;

import fifthform.curves.alarm.Priority;
import fifthform.curves.alarm.Side;
import java.util.Objects;

/**
 * One sound to make.
 *
 * @param kind how many pulses, how fast, how loud
 * @param side which way the pitch moves; a cue has its own two notes and no side
 */
public record Call(Kind kind, Side side) {
    /** The soft sound of a step that is due. */
    public static final Call CUE = new Call(Kind.CUE, Side.NEITHER);

    /** How pressing it sounds: by pulse rate, not by melody (NUREG-0700 rev. 2, 1.3.11, as the design page has it). */
    public enum Kind {
        URGENT(4, 90, 6, 0),
        PROMPT(3, 150, 2.5, 0),
        ADVISE(1, 250, 1, -6),
        CUE(2, 180, 1, -9);

        private final int pulses;
        private final int pulseMillis;
        private final double pulsesPerSecond;
        private final double decibels;

        Kind(int pulses, int pulseMillis, double pulsesPerSecond, double decibels) {
            this.pulses = pulses;
            this.pulseMillis = pulseMillis;
            this.pulsesPerSecond = pulsesPerSecond;
            this.decibels = decibels;
        }

        int pulses() {
            return pulses;
        }

        int pulseMillis() {
            return pulseMillis;
        }

        double pulsesPerSecond() {
            return pulsesPerSecond;
        }

        /** Level against the loudest kind, dB. */
        double decibels() {
            return decibels;
        }

        static Kind of(Priority priority) {
            return switch (priority) {
                case URGENT -> URGENT;
                case PROMPT -> PROMPT;
                case ADVISE -> ADVISE;
            };
        }
    }

    public Call {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(side, "side");
    }

    /** The sound of an alarm. */
    public static Call of(Priority priority, Side side) {
        return new Call(Kind.of(priority), side);
    }
}
