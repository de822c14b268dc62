package fifthform.simulator.bench;

import fifthform.simulator.bench.KnownHarm.Doses;
import fifthform.simulator.bench.KnownHarm.Tally;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/**
 * How often a maker's known limit lies within the band that is learned from looks at the bars, with one standard error;
 * how often a limit is said, how wide it then is and how far off.
 *
 * <p>{@code java … LearnedLimitBench MAKERS} (2000 by default).
 */
public final class LearnedLimitBench {
    private LearnedLimitBench() {}

    public static void main(String[] arguments) {
        int makers = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 2000;
        for (Doses doses : Doses.values()) {
            for (int batches : new int[] {6, 10, 20, 40}) {
                print(doses + ", " + batches + " batches", Tally.of(makers, batches, doses));
            }
        }
        for (double limit : new double[] {32.6, 33.2, 33.8, 34.4, 35.0, 35.3}) {
            for (int batches : new int[] {10, 40}) {
                List<KnownHarm> all = IntStream.range(0, makers / 4)
                        .mapToObj(n -> KnownHarm.maker(n, limit, batches, Doses.MIXED))
                        .toList();
                print("MIXED, limit " + limit + ", " + batches + " batches", Tally.of(all));
            }
        }
    }

    private static void print(String what, Tally tally) {
        System.out.printf(
                Locale.ROOT,
                "%-36s within the band %s; a limit is said by %d of %d, within %s, band %.2f K wide, off by %.2f K%n",
                what,
                share(tally.within(), tally.makers()),
                tally.said(),
                tally.makers(),
                tally.said() == 0 ? "-" : share(tally.withinOfSaid(), tally.said()),
                tally.widthKelvin(),
                tally.errorKelvin());
    }

    private static String share(int hits, int of) {
        double p = (double) hits / of;
        return String.format(Locale.ROOT, "%.1f ± %.1f %%", 100 * p, 100 * Math.sqrt(p * (1 - p) / of));
    }
}
