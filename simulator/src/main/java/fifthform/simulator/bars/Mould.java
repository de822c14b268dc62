package fifthform.simulator.bars;

import fifthform.curves.check.Require;
import java.util.function.DoubleUnaryOperator;

/**
 * What chocolate is poured into, and the air it sets in.
 *
 * @param mouldCelsius the mould when it is filled, −20 to 60 °C
 * @param millimetres how thick the bar is, 2 to 40 mm
 * @param wattsPerSquareMetreKelvin heat that the air takes away on each side, 1 to 100 W/m²K
 * @param airCelsius the air by the minutes since it was filled, °C
 */
public record Mould(
        double mouldCelsius, double millimetres, double wattsPerSquareMetreKelvin, DoubleUnaryOperator airCelsius) {
    public Mould {
        Require.within(mouldCelsius, -20, 60, "mouldCelsius");
        Require.within(millimetres, 2, 40, "millimetres");
        Require.within(wattsPerSquareMetreKelvin, 1, 100, "wattsPerSquareMetreKelvin");
    }
}
