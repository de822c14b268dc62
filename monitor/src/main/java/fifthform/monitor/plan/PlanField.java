package fifthform.monitor.plan;

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

    /** What it is called. */
    public PlanText label() {
        return PlanText.valueOf(name());
    }

    public double low() {
        return low;
    }

    public double high() {
        return high;
    }
}
