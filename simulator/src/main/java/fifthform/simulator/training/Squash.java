package fifthform.simulator.training;

/**
 * Quick tanh and logistic function for training, the same bits everywhere: only +, ·, / of {@code float}. Within 5·10⁻⁷
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
        clip(x, FAR);
        for (int j = 0; j < x.length; j++) x[j] = doubled(0.5f * x[j]);
    }

    /** 1 / (1 + e⁻ˣ) = (1 + tanh(x/2)) / 2. */
    static void logistic(float[] x) {
        clip(x, 2 * FAR);
        for (int j = 0; j < x.length; j++) x[j] = 0.5f + 0.5f * doubled(0.25f * x[j]);
    }

    /** In a loop of its own: together with the quotient it takes nearly twice as long. */
    private static void clip(float[] x, float most) {
        for (int j = 0; j < x.length; j++) x[j] = Math.max(-most, Math.min(most, x[j]));
    }

    /** tanh 2a for −4.5 to 4.5. */
    private static float doubled(float a) {
        float s = a * a;
        float over = a * (34459425f + s * (4729725f + s * (135135f + s * (990f + s))));
        float under = 34459425f + s * (16216200f + s * (945945f + s * (13860f + s * 45f)));
        return 2 * over * under / (under * under + over * over);
    }
}
