package fifthform.curves.setting;

import fifthform.curves.check.Require;
import fifthform.curves.plan.DewPoint;
import java.time.Duration;
import java.util.Optional;

/**
 * Whether water comes onto something cold that is taken out, and how long it must stay closed until none does. The rule is
 * {@code surface > dew point of the room + 1 K} (computed; condensation under 10 °C: food-info.net QA FP44, read).
 *
 * @param dewCelsius dew point of the room's air, °C
 * @param safeCelsius from here on it may be opened, °C
 * @param roomCelsius the room, °C
 */
public record Condensation(double dewCelsius, double safeCelsius, double roomCelsius) {
    /** Above the dew point, so that a damp corner of the room does no harm, K. */
    static final double MARGIN_KELVIN = 1;

    /**
     * A wrapped or covered bar warms by this much more slowly than a bare one: still air within the wrapping. Own choice,
     * on the slow side; nothing was measured.
     */
    private static final double WRAPPED_WATTS_PER_SQUARE_METRE_KELVIN = 4;

    private static final double JOULES_PER_KILOGRAM_KELVIN = 1590;
    private static final double KILOGRAMS_PER_CUBIC_METRE = 1300;

    /** In the air of a room. */
    public static Condensation in(double roomCelsius, double humidityPercent) {
        Require.within(roomCelsius, 0, 45, "roomCelsius");
        Require.within(humidityPercent, 1, 100, "humidityPercent");
        double dew = DewPoint.WMO.celsius(roomCelsius, humidityPercent);
        return new Condensation(dew, dew + MARGIN_KELVIN, roomCelsius);
    }

    /** Whether water comes onto it at this temperature, °C, or may. */
    public boolean wets(double surfaceCelsius) {
        return surfaceCelsius < safeCelsius;
    }

    /**
     * How long it has to stay closed in the room; zero where it may be opened at once, empty where the air is so damp that
     * it never may.
     *
     * @param surfaceCelsius how cold it is
     * @param millimetres how thick
     */
    public Optional<Duration> closedFor(double surfaceCelsius, double millimetres) {
        if (!wets(surfaceCelsius)) return Optional.of(Duration.ZERO);
        if (safeCelsius >= roomCelsius - 0.2) return Optional.empty();
        double tau = KILOGRAMS_PER_CUBIC_METRE
                * millimetres
                / 1000
                * JOULES_PER_KILOGRAM_KELVIN
                / (2 * WRAPPED_WATTS_PER_SQUARE_METRE_KELVIN);
        double seconds = tau * StrictMath.log((roomCelsius - surfaceCelsius) / (roomCelsius - safeCelsius));
        return Optional.of(Duration.ofSeconds(Math.round(seconds)));
    }
}
