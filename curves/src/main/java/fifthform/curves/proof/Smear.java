package fifthform.curves.proof;

import fifthform.curves.check.Require;
import java.util.Locale;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * A thin film of chocolate on a clean knife or paper, timed until it is dry to touch at room temperature.
 *
 * <p>Limits: a good film of about 0.5 mm sets within 5 min (chocolate maker's technique page, read; within 3 to 5 min by a
 * mould supplier's page, read); weak sets in 5 to 10 min with streaks or a wet middle, none stays wet beyond 10, an
 * over-crystallised one drags and is matt within 1.5 min (common practice, no source). The correction for a room above
 * 20 °C is an assumption, a share of time for each kelvin.
 *
 * @param minutes until it was dry to touch, or how long it was watched, 0 to 120 min
 * @param isSet whether it was dry then
 * @param look how it looked then
 * @param roomCelsius of the place, 5 to 40 °C, where known
 */
public record Smear(double minutes, boolean isSet, Look look, OptionalDouble roomCelsius) {
    /** How the film looks. */
    public enum Look {
        GLOSSY,
        STREAKS,
        MATT,
        WET_MIDDLE;

        /** The word in files and answers. */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /** From here on even good temper is slow (common practice, no source). */
    public static final double WARM_ROOM_CELSIUS = 23;
    /** How long to watch. */
    public static final double LONGEST_MINUTES = 10;
    /** Streaks may only show after setting (common practice, no source). */
    public static final double LOOK_AGAIN_MINUTES = 15;

    private static final double WELL_MINUTES = 5;
    private static final double OVER_MINUTES = 1.5;
    private static final double NEUTRAL_CELSIUS = 20;
    /** Middle of the assumed 10 to 20 % a kelvin. */
    private static final double SHARE_A_KELVIN = 0.15;

    public Smear {
        Require.within(minutes, 0, 120, "minutes");
        Objects.requireNonNull(look, "look");
        Require.within(roomCelsius, 5, 40, "roomCelsius");
    }

    /** Its time as it would have been at 20 °C. */
    public double minutesAtTwenty() {
        double warmer = Math.max(0, roomCelsius.orElse(NEUTRAL_CELSIUS) - NEUTRAL_CELSIUS);
        return minutes / (1 + SHARE_A_KELVIN * warmer);
    }

    /** What it says; no film tells under- from untempered as sharply as the words look. */
    public TemperClass temper() {
        double at = minutesAtTwenty();
        if (!isSet) return at >= LONGEST_MINUTES ? TemperClass.NO_TEMPER : TemperClass.UNCLEAR;
        if (at > LONGEST_MINUTES) return TemperClass.NO_TEMPER;
        if (look == Look.MATT) return at < OVER_MINUTES ? TemperClass.OVER : TemperClass.UNCLEAR;
        if (look == Look.STREAKS || look == Look.WET_MIDDLE || at > WELL_MINUTES) return TemperClass.UNDER;
        return TemperClass.IN_TEMPER;
    }
}
