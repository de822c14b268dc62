package fifthform.simulator.training;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;

/**
 * How quickly a network of the usual size learns: {@code java … TrainBench THREADS PASSES} goes through 256 sessions of
 * half an hour, drawn without physics, and says what 4,000 of them would take. Multiply-adds of the matrices count as two
 * operations, forward once and backward twice; what the curves and the weights' steps cost comes for nothing.
 */
public final class TrainBench {
    private static final int SESSIONS = 256;
    private static final int STEPS = 900;
    private static final int WANTED = 4000;

    private TrainBench() {}

    public static void main(String[] arguments) throws InterruptedException {
        int threads = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 2;
        int passes = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 6;
        Plan plan = new Plan(new Shape(2, 32, 64), passes, 16, 0.003, 0, 0.05, 0.05);
        try (Workers workers = new Workers(threads, plan.shape())) {
            Training training = new Training(new Lessons(sessions(), sessions().subList(0, 1)), plan, 1, workers);
            double operations = 6.0 * training.weights().count() * SESSIONS * STEPS;
            for (int i = 0; i < passes; i++) {
                long from = System.nanoTime();
                long cpuFrom = cpuNanos();
                training.pass();
                double seconds = (System.nanoTime() - from) / 1e9;
                double coreSeconds = (cpuNanos() - cpuFrom) / 1e9;
                System.out.printf(
                        Locale.ROOT,
                        "%d threads: %.1f GFLOP/s a core, %.1f s of a core a pass of %,d sessions; by the clock %.1f s%n",
                        threads,
                        operations / coreSeconds / 1e9,
                        coreSeconds * WANTED / SESSIONS,
                        WANTED,
                        seconds * WANTED / SESSIONS);
            }
        }
    }

    /** Of the whole program, so that neighbours on the machine do not count. */
    private static long cpuNanos() {
        return ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class).getProcessCpuTime();
    }

    private static List<Session> sessions() {
        List<Session> sessions = new ArrayList<>();
        for (int i = 0; i < SESSIONS; i++) sessions.add(session(new SplittableRandom(i)));
        return sessions;
    }

    private static Session session(SplittableRandom random) {
        float[] inputs = new float[STEPS * Session.INPUTS];
        float[] turn = new float[STEPS];
        float[] weight = new float[STEPS];
        for (int i = 0; i < inputs.length; i++) inputs[i] = (float) random.nextDouble(-1, 1);
        for (int t = 0; t < STEPS; t++) {
            turn[t] = (float) random.nextDouble(-1, 1);
            weight[t] = 1f / STEPS;
        }
        return new Session(1, inputs, turn, turn.clone(), new byte[STEPS], turn.clone(), weight, new int[STEPS]);
    }
}
