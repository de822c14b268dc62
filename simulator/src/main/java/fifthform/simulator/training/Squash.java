package fifthform.simulator.training;

/**
 * Quick tanh and logistic function for training, the same bits everywhere: only +, ·, / of {@code float}. Within 2·10⁻⁶
 * of {@code StrictMath}, which the program itself uses; a test holds that.
 *
 * <p>Source: Lambert's continued fraction of tanh, cut off after the ninth term, for half the argument, then
 * {@code tanh 2a = 2 tanh a / (1 + tanh² a)}; from memory (Abramowitz and Stegun 4.5.70 and 4.5.33).
 */
final class Squash {
    /** From here on tanh is 1 to within a float's last place. */
    private static final float FAR = 9;

    private Squash() {}

    static void tanh(float[] x) {
        for (int j = 0; j < x.length; j++) x[j] = tanh(x[j]);
    }

    /** 1 / (1 + e⁻ˣ). */
    static void logistic(float[] x) {
        for (int j = 0; j < x.length; j++) x[j] = 0.5f + 0.5f * tanh(0.5f * x[j]);
    }

    static float tanh(float x) {
        float a = 0.5f * Math.max(-FAR, Math.min(FAR, x));
        float s = a * a;
        float over = a * (34459425f + s * (4729725f + s * (135135f + s * (990f + s))));
        float under = 34459425f + s * (16216200f + s * (945945f + s * (13860f + s * 45f)));
        return 2 * over * under / (under * under + over * over);
    }
}
