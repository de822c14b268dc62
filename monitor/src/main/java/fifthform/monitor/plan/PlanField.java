package fifthform.monitor.plan;

import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.PlanText;

/** What is typed into the plan's form, with the range of a number. */
public enum PlanField {
    AMOUNT(50, 20_000),
    BOWL_WEIGHT(20, 10_000),
    PAN_WEIGHT(50, 15_000),
    BATH_WATER(200, 30_000),
    TAP(0, 35),
    ROOM(5, 40),
    HUMIDITY(5, 100),
    QUICK_BATH(30, 80),
    BAR(1, 5000),
    /** A clock time, not a number. */
    START(0, 0);

    final double low;
    final double high;

    PlanField(double low, double high) {
        this.low = low;
        this.high = high;
    }

    /** What it is called, with its unit. */
    public String label(Units units) {
        return PlanText.valueOf(name()).say(units.symbol());
    }

    private boolean isTemperature() {
        return this == TAP || this == ROOM || this == QUICK_BATH;
    }

    /** What was typed as the plan takes it: °C, g, %. */
    double taken(double typed, Units units) {
        return isTemperature() ? units.celsius(typed) : typed;
    }

    /** A value of the plan as it is typed. */
    public double shown(double value, Units units) {
        return isTemperature() ? units.shown(value) : value;
    }

    /** The lowest number it takes, in °C, g or %. */
    public double low() {
        return low;
    }

    /** The highest number it takes, in °C, g or %. */
    public double high() {
        return high;
    }
}
