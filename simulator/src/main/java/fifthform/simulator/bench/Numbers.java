package fifthform.simulator.bench;

import fifthform.simulator.maker.Luck;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.function.ToDoubleFunction;

/** Drawn numbers as a scenario writes them. */
final class Numbers {
    /** Five digits are more than any kitchen knows of itself. */
    private static final MathContext DIGITS = new MathContext(5);

    /** Limits that are missed so often stand in the wrong place; then the nearer limit is taken. */
    private static final int TRIES = 1000;

    private Numbers() {}

    static String plain(double number) {
        return new BigDecimal(number).round(DIGITS).toPlainString();
    }

    /** The first draw that lies within the limits. */
    static double within(double low, double high, Luck luck, ToDoubleFunction<Luck> draw) {
        Luck next = luck;
        double drawn = draw.applyAsDouble(next);
        for (int i = 0; i < TRIES && !(drawn >= low && drawn <= high); i++) {
            next = next.after();
            drawn = draw.applyAsDouble(next);
        }
        return Math.max(low, Math.min(high, drawn));
    }
}
