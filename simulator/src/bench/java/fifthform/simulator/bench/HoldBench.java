package fifthform.simulator.bench;

import fifthform.curves.setup.Holding.Warmth;
import fifthform.simulator.bench.Hold.Hands;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.LongStream;

/**
 * Holds of an hour, with the advice and alone: {@code java … HoldBench FLEET HOLDS SEED WARMTH}. Mean shares of the hour with
 * Student's intervals at 95 %.
 */
public final class HoldBench {
    private static final int USUAL_HOLDS = 500;

    private HoldBench() {}

    public static void main(String[] arguments) {
        String name = arguments.length > 0 ? arguments[0] : "wide";
        int holds = arguments.length > 1 ? Integer.parseInt(arguments[1]) : USUAL_HOLDS;
        long seed = arguments.length > 2 ? Long.parseLong(arguments[2]) : 6;
        Warmth warmth = arguments.length > 3 ? Warmth.fromWord(arguments[3]).orElseThrow() : Warmth.BATH;
        Fleet fleet = (name.equals("wide") ? WideFleet.fleet() : Fleet.builtIn(name)).withSeed(seed);
        for (Hands hands : Hands.values()) {
            List<Hold> all = LongStream.range(0, holds)
                    .parallel()
                    .mapToObj(n -> Hold.of(fleet, n, hands, warmth))
                    .flatMap(hold -> hold.stream())
                    .toList();
            System.out.printf(
                    Locale.ROOT,
                    "%-8s by %s %d holds: in range %s of the hour, over %s, %.1f touches%n",
                    hands,
                    warmth.word(),
                    all.size(),
                    share(all, Hold::inRangeFraction),
                    share(all, Hold::overFraction),
                    all.stream().mapToInt(Hold::touches).average().orElse(0));
        }
    }

    private static String share(List<Hold> all, ToDoubleFunction<Hold> figure) {
        double mean = all.stream().mapToDouble(figure).average().orElseThrow();
        double squares = all.stream().mapToDouble(h -> Math.pow(figure.applyAsDouble(h) - mean, 2)).sum();
        Interval interval = Interval.ofMean(all.size(), mean, Math.sqrt(squares / (all.size() - 1)));
        return String.format(
                Locale.ROOT, "%.1f %% (%.1f-%.1f)", 100 * mean, 100 * interval.low(), 100 * interval.high());
    }
}
