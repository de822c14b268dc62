package fifthform.probe.find;

/**
 * Which bytes a receiver makes of a slower sender's bits, and how likely each is if the bits are any bits. Found by going
 * through all of them: sample i is taken in the middle of the receiver's bit i, the start bit being 0, and shows the sender's
 * bit in which that moment lies. Derivation ours, from the asynchronous frame of eight bits, the lowest first.
 */
final class SampledBits {
    /** Below it a byte can hardly be told from any byte. */
    static final double LOWEST_RATIO = 1.4;

    private static final int PHASES = 20;
    /** Clocks of cheap boards differ by up to 2 % (common practice, no source). */
    private static final double[] CLOCKS = {0.98, 1, 1.02};

    /** Of bytes amidst others: how many begin at an edge between two of the sender's bits. */
    private static final double IN_STEP_FRACTION = 0.6;
    /** Noise can turn any byte into any other. */
    private static final double NOISE_FRACTION = 0.03;

    private final double[] inStep = new double[256];
    private final double[] outOfStep = new double[256];

    /** @param ratio of the receiver's to the sender's speed, at least {@link #LOWEST_RATIO} */
    SampledBits(double ratio) {
        for (double clock : CLOCKS) {
            addAll(inStep, ratio * clock, 0, 1.0 / CLOCKS.length);
            for (int phase = 0; phase < PHASES; phase++)
                addAll(outOfStep, ratio * clock, ratio * clock * phase / PHASES, 1.0 / CLOCKS.length / PHASES);
        }
    }

    /** @param phaseBits how much of the sender's first bit has passed when the receiver begins */
    private static void addAll(double[] likelihood, double ratio, double phaseBits, double weight) {
        int bits = (int) ((8.5 + phaseBits) / ratio) + 1;
        int patterns = 1 << (bits - 1); // the first is low, else nothing would have begun
        for (int pattern = 0; pattern < patterns; pattern++)
            likelihood[sampled(pattern << 1, ratio, phaseBits)] += weight / patterns;
    }

    private static int sampled(int senderBits, double ratio, double phaseBits) {
        int value = 0;
        for (int i = 0; i < 8; i++) {
            int index = (int) ((i + 1.5 + phaseBits) / ratio);
            value |= (senderBits >> index & 1) << i;
        }
        return value;
    }

    /** The natural logarithm of how much more likely this byte is than among any bytes, where it begins after a pause. */
    double afterPause(int value) {
        return logarithm(inStep[value]);
    }

    /** The same where it follows another byte, and the receiver may have lost its step. */
    double amidst(int value) {
        return logarithm(IN_STEP_FRACTION * inStep[value] + (1 - IN_STEP_FRACTION) * outOfStep[value]);
    }

    private static double logarithm(double likelihood) {
        return Math.log(NOISE_FRACTION + (1 - NOISE_FRACTION) * 256 * likelihood);
    }
}
