package fifthform.simulator.training;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Sessions without any physics, whose right answers are known. */
final class Invented {
    /** Standard deviation of what nobody can know about a turning point, K. */
    static final double NOISE_KELVIN = 0.3;

    private Invented() {}

    /** Every number drawn, with gaps among the labels: nothing to learn, everything to go through. */
    static Session anything(int steps, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        float[] inputs = drawn(steps * Session.INPUTS, random, 0);
        float[] turn = drawn(steps, random, 0.2);
        float[] turnLater = drawn(steps, random, 0.2);
        float[] weight = new float[steps];
        byte[] place = new byte[steps];
        int[] dip = new int[steps];
        for (int t = 0; t < steps; t++) {
            weight[t] = Float.isNaN(turn[t]) && Float.isNaN(turnLater[t]) ? 0 : (float) random.nextDouble();
            place[t] = (byte) (random.nextInt(4) - 1);
            dip[t] = t * 3 / steps;
        }
        return new Session(seed, inputs, turn, turnLater, place, drawn(steps, random, 0.2), weight, dip);
    }

    private static float[] drawn(int count, SplittableRandom random, double without) {
        float[] all = new float[count];
        for (int i = 0; i < count; i++) {
            all[i] = random.nextDouble() < without ? Float.NaN : (float) random.nextDouble(-1.5, 1.5);
        }
        return all;
    }

    /**
     * Dips of half a minute with a rate each, K per 10 s: the bowl coasts for 20 s at that rate, and turns there but for
     * noise. The rate is told as the difference of two means 10 s apart, and is wrong by 0.05 K each time anew, so that
     * the network does better to remember it.
     */
    static List<Session> coasts(int count, long seed) {
        List<Session> all = new ArrayList<>();
        for (int i = 0; i < count; i++) all.add(coast(seed + i));
        return all;
    }

    private static Session coast(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int steps = 60;
        int perDip = 15;
        float[] inputs = new float[steps * Session.INPUTS];
        float[] turn = new float[steps];
        float[] weight = new float[steps];
        int[] dip = new int[steps];
        double rate = 0;
        double noise = 0;
        for (int t = 0; t < steps; t++) {
            if (t % perDip == 0) {
                rate = random.nextDouble(0.1, 0.9);
                noise = NOISE_KELVIN * normal(random);
            }
            inputs[t * Session.INPUTS + 4] = (float) (rate + 0.05 * normal(random));
            inputs[t * Session.INPUTS + Session.INPUTS - 1] = 1;
            turn[t] = (float) (2 * rate + noise);
            weight[t] = 1f / perDip;
            dip[t] = t / perDip;
        }
        return new Session(seed, inputs, turn, turn.clone(), new byte[steps], new float[steps], weight, dip);
    }

    /** Sum of twelve uniform numbers, less six: normal enough. */
    private static double normal(SplittableRandom random) {
        double sum = -6;
        for (int i = 0; i < 12; i++) sum += random.nextDouble();
        return sum;
    }
}
