package fifthform.simulator.bench;

import fifthform.curves.setup.Approach;
import fifthform.simulator.bench.WayUp.Keys;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.LongStream;

/**
 * Touches against one lift in the same unknown kitchens: {@code java … WayUpBench FLEET BATCHES SEED}. Shares with
 * Wilson's intervals at 95 %.
 */
public final class WayUpBench {
    private WayUpBench() {}

    public static void main(String[] arguments) {
        String name = arguments.length > 0 ? arguments[0] : "home";
        int batches = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 200;
        long seed = arguments.length > 2 ? Long.parseLong(arguments[2]) : 5;
        Fleet fleet = (name.equals("wide") ? WideFleet.fleet() : Fleet.builtIn(name)).withSeed(seed);
        for (Keys keys : Keys.values()) {
            List<WayUp> one = ways(fleet, batches, Approach.ONE_LIFT, keys);
            List<WayUp> touches = ways(fleet, batches, Approach.TOUCHES_WHERE_UNSURE, keys);
            row("one lift", keys, one);
            row("touches", keys, touches);
            double longer = 0;
            for (int i = 0; i < batches; i++) longer += touches.get(i).took().minus(one.get(i).took()).toMillis() / 60e3;
            System.out.printf(Locale.ROOT, "    touches take %.1f min longer%n", longer / batches);
        }
    }

    static List<WayUp> ways(Fleet fleet, int batches, Approach approach, Keys keys) {
        return LongStream.range(0, batches)
                .parallel()
                .mapToObj(n -> WayUp.of(fleet, n, approach, keys))
                .toList();
    }

    private static void row(String name, Keys keys, List<WayUp> ways) {
        System.out.printf(
                Locale.ROOT,
                "%-9s %-8s read: over %s, by 0.3 %s, short %s | true: over %s, by 0.3 %s, short %s | dips %.1f, %.1f min, false lifts %.2f%n",
                name,
                keys,
                share(ways, w -> w.over(w.readCelsius(), 0) ? 1 : 0),
                share(ways, w -> w.over(w.readCelsius(), 0.3) ? 1 : 0),
                share(ways, w -> w.isShort(w.readCelsius()) ? 1 : 0),
                share(ways, w -> w.over(w.trueCelsius(), 0) ? 1 : 0),
                share(ways, w -> w.over(w.trueCelsius(), 0.3) ? 1 : 0),
                share(ways, w -> w.isShort(w.trueCelsius()) ? 1 : 0),
                mean(ways, WayUp::dips),
                mean(ways, w -> w.took().toMillis() / 60e3),
                mean(ways, WayUp::falseLifts));
    }

    private static double mean(List<WayUp> ways, ToDoubleFunction<WayUp> figure) {
        return ways.stream().mapToDouble(figure).average().orElseThrow();
    }

    private static String share(List<WayUp> ways, ToDoubleFunction<WayUp> figure) {
        long hits = Math.round(ways.stream().mapToDouble(figure).sum());
        Interval interval = Interval.ofProportion(hits, ways.size());
        return String.format(
                Locale.ROOT,
                "%.1f %% (%.1f-%.1f)",
                100.0 * hits / ways.size(),
                100 * interval.low(),
                100 * interval.high());
    }
}
