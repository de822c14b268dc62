package fifthform.simulator.device;

import java.math.BigDecimal;

/** Rounding to the steps of a converter. */
final class Steps {
    private Steps() {}

    /** The nearest number with this step, exactly as it is written. */
    static BigDecimal nearest(double value, double step) {
        return BigDecimal.valueOf(step).multiply(BigDecimal.valueOf(Math.round(value / step)));
    }

    /** How many steps, no fewer and no more than the code has room for. */
    static long count(double value, double step, long lowest, long highest) {
        return Math.max(lowest, Math.min(highest, Math.round(value / step)));
    }
}
