package fifthform.simulator.training;

import fifthform.simulator.training.Dips.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;

/**
 * How fast lessons are made, and what is in them: {@code TrainingKitchensBench [sessions] [seed] [threads]}. Times are
 * those of the clock.
 */
public final class TrainingKitchensBench {
    private TrainingKitchensBench() {}

    public static void main(String[] args) {
        int count = args.length > 0 ? Integer.parseInt(args[0]) : 400;
        long seed = args.length > 1 ? Long.parseLong(args[1]) : 1;
        int threads = args.length > 2 ? Integer.parseInt(args[2]) : 2;
        long begun = System.nanoTime();
        List<Session> sessions = TrainingKitchens.sessions(count, seed, threads);
        double minutes = (System.nanoTime() - begun) / 60e9;
        System.out.printf(Locale.ROOT, "%.0f sessions a minute on %d threads%n", count / minutes, threads);
        inputs(sessions);
        List<Gone> gone = new ArrayList<>();
        TrainingKitchens kitchens = new TrainingKitchens(seed);
        for (int n = 0; n < Math.min(count, 400); n++) gone.add(kitchens.gone(n));
        dips(gone);
    }

    private static void inputs(List<Session> sessions) {
        for (int i = 0; i < Session.INPUTS; i++) {
            DescriptiveStatistics all = new DescriptiveStatistics();
            for (Session s : sessions) for (int t = 0; t < s.steps; t += 7) all.addValue(s.inputs[t * Session.INPUTS + i]);
            line("input " + i, all);
        }
        DescriptiveStatistics steps = new DescriptiveStatistics();
        DescriptiveStatistics turn = new DescriptiveStatistics();
        DescriptiveStatistics bulk = new DescriptiveStatistics();
        long labels = 0;
        for (Session s : sessions) {
            steps.addValue(s.steps);
            for (int t = 0; t < s.steps; t++) {
                if (s.weight[t] > 0) turn.addValue(s.turn[t]);
                bulk.addValue(s.bulk[t]);
                if (!Float.isNaN(s.turn[t])) labels++;
            }
        }
        line("steps", steps);
        line("turn - base, K", turn);
        line("bulk - base, K", bulk);
        System.out.println("labels a session " + labels / sessions.size());
    }

    private static void dips(List<Gone> gone) {
        for (Kind kind : Kind.values()) {
            DescriptiveStatistics seconds = new DescriptiveStatistics();
            DescriptiveStatistics coast = new DescriptiveStatistics();
            DescriptiveStatistics turn = new DescriptiveStatistics();
            for (Gone g : gone) {
                for (int k = 1; k < g.steps().size(); k++) {
                    Lived last = g.steps().get(k - 1);
                    boolean lifted = g.steps().get(k).onTable() && !last.onTable() && g.dips().teaches(k - 1);
                    if (!lifted || g.dips().kind(g.dips().dip(k - 1)) != kind) continue;
                    seconds.addValue(g.steps().get(k).movedSeconds() - last.movedSeconds());
                    coast.addValue(g.turns().turnCelsius(k - 1) - last.kitchen().bulkCelsius());
                    turn.addValue(g.turns().turnCelsius(k - 1));
                }
            }
            System.out.printf(Locale.ROOT, "%s: %.2f a session%n", kind, seconds.getN() / (double) gone.size());
            line("  seconds", seconds);
            line("  coast, K", coast);
            line("  turn, C", turn);
        }
    }

    private static void line(String name, DescriptiveStatistics all) {
        System.out.printf(
                Locale.ROOT,
                "%-16s n %7d mean %8.3f sd %7.3f | min %8.3f 5%% %8.3f 25%% %8.3f 50%% %8.3f 75%% %8.3f 95%% %8.3f max %8.3f%n",
                name,
                all.getN(),
                all.getMean(),
                all.getStandardDeviation(),
                all.getMin(),
                all.getPercentile(5),
                all.getPercentile(25),
                all.getPercentile(50),
                all.getPercentile(75),
                all.getPercentile(95),
                all.getMax());
    }
}
