package fifthform.simulator.bench;

import fifthform.simulator.bench.Begun.Start;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.LongStream;

/**
 * Bars tempered again and chocolate that comes in temper, over a fleet: {@code java … BeginningBench BATCHES SEED [START]}.
 * Shares with Wilson's intervals at 95 %. The seed that DEVELOPERS.md names is one that nothing is tuned on.
 */
public final class BeginningBench {
    private BeginningBench() {}

    public static void main(String[] arguments) {
        int batches = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 300;
        long seed = arguments.length > 1 ? Long.parseLong(arguments[1]) : 1;
        for (Start start : Start.values()) {
            if (arguments.length > 2 && !start.name().equalsIgnoreCase(arguments[2])) continue;
            Fleet fleet = start.fleet().withSeed(seed);
            List<Begun> all = LongStream.range(0, batches)
                    .parallel()
                    .mapToObj(n -> Begun.of(fleet, n))
                    .toList();
            System.out.println(start + ", " + all.size() + " batches");
            print("came to the range", all, Begun::reached);
            print("in range and never over", all, Begun::inRange);
            print("over", all, Begun::over);
            print("in temper when poured", all, Begun::inTemper);
            print("thick of these", all, Begun::thick);
            print("in range and in temper", all, b -> b.inRange() && b.inTemper());
            for (String word : List.of("enough", "doubtful", "too few")) {
                List<Begun> said = all.stream()
                        .filter(b -> b.word().filter(word::equals).isPresent())
                        .toList();
                print("\"" + word + "\" when poured", all, said::contains);
                if (!said.isEmpty()) print("  of these in temper", said, Begun::inTemper);
            }
            spread("forms V and VI when poured", all, b -> 100 * b.poured().stableFraction());
            spread("form VI when poured", all, b -> 100 * b.poured().six());
            spread("form IV when poured", all, b -> 100 * b.poured().four());
        }
    }

    private static void print(String what, List<Begun> all, Predicate<Begun> is) {
        int count = (int) all.stream().filter(is).count();
        Interval interval = Interval.ofProportion(count, all.size());
        System.out.printf(
                Locale.ROOT,
                "  %-26s %4d of %d, %.1f %% (%.1f to %.1f)%n",
                what,
                count,
                all.size(),
                100.0 * count / all.size(),
                100 * interval.low(),
                100 * interval.high());
    }

    private static void spread(String what, List<Begun> all, ToDoubleFunction<Begun> percent) {
        double[] sorted =
                all.stream().filter(Begun::reached).mapToDouble(percent).sorted().toArray();
        if (sorted.length == 0) return;
        System.out.printf(
                Locale.ROOT,
                "  %-26s %% of the fat: 5 %% below %.3f, middle %.3f, 5 %% above %.3f; most %.3f%n",
                what,
                sorted[sorted.length / 20],
                sorted[sorted.length / 2],
                sorted[sorted.length - 1 - sorted.length / 20],
                Arrays.stream(sorted).max().orElseThrow());
    }
}
