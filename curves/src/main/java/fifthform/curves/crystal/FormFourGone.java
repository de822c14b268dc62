package fifthform.curves.crystal;

import fifthform.curves.check.Require;
import java.time.Duration;

/**
 * Whether form IV has melted, by temperature and time: a minute above 29.5 °C since it was last below 29 °C (both moved
 * by milk fat). The model's own IV is too small to be asked. Source: form IV melts at 27.5 °C (Wille and Lutton 1966) and
 * is present below 29 °C (Greweling 2007); the minute is common practice, no source.
 *
 * @param warm time spent above 29.5 °C
 */
public record FormFourGone(Duration warm) {
    private static final double GONE_ABOVE_CELSIUS = 29.5;
    private static final double PRESENT_BELOW_CELSIUS = 29;
    private static final Duration MINUTE = Duration.ofMinutes(1);

    /** It may be there. */
    public static final FormFourGone NOT_YET = new FormFourGone(Duration.ZERO);

    public FormFourGone {
        Require.notNegative(warm, "warm");
    }

    /** After a second at this temperature. */
    FormFourGone after(double celsius, double shiftKelvin) {
        if (celsius < PRESENT_BELOW_CELSIUS + shiftKelvin) return NOT_YET;
        boolean counts = celsius > GONE_ABOVE_CELSIUS + shiftKelvin;
        return isGone() || !counts ? this : new FormFourGone(warm.plusSeconds(1));
    }

    /** Whether it is taken to be gone. */
    public boolean isGone() {
        return warm.compareTo(MINUTE) >= 0;
    }
}
