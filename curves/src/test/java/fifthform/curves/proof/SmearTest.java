package fifthform.curves.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fifthform.curves.proof.Smear.Look;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/**
 * The rows "verdict" of the project's table of the smear test: well at most 5 min, weak 5 to 10 or streaks, none beyond 10,
 * over below 1.5 min and matt (common practice, no source; 5 min also on a maker's technique page, read).
 */
class SmearTest {
    @Test
    void timesAndLooksGiveTheirClass() {
        assertEquals(TemperClass.IN_TEMPER, told(4, true, Look.GLOSSY, OptionalDouble.empty()));
        assertEquals(TemperClass.UNDER, told(7, true, Look.GLOSSY, OptionalDouble.empty()));
        assertEquals(TemperClass.UNDER, told(4, true, Look.STREAKS, OptionalDouble.empty()));
        assertEquals(TemperClass.NO_TEMPER, told(11, true, Look.GLOSSY, OptionalDouble.empty()));
        assertEquals(TemperClass.NO_TEMPER, told(12, false, Look.WET_MIDDLE, OptionalDouble.empty()));
        assertEquals(TemperClass.OVER, told(1, true, Look.MATT, OptionalDouble.empty()));
        assertEquals(TemperClass.UNCLEAR, told(4, true, Look.MATT, OptionalDouble.empty()));
        assertEquals(TemperClass.UNCLEAR, told(6, false, Look.WET_MIDDLE, OptionalDouble.empty()));
    }

    /** Some 10 to 20 % a kelvin above 20 °C (assumption of the table). */
    @Test
    void aWarmRoomIsSlower() {
        assertEquals(TemperClass.IN_TEMPER, told(6, true, Look.GLOSSY, OptionalDouble.of(22)));
        assertEquals(TemperClass.UNDER, told(6, true, Look.GLOSSY, OptionalDouble.of(18)));
    }

    private static TemperClass told(double minutes, boolean set, Look look, OptionalDouble room) {
        return new Smear(minutes, set, look, room).temper();
    }
}
