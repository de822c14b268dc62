package fifthform.simulator.bench;

import fifthform.simulator.bench.PlannedEvening.Against;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.LongStream;

/**
 * The plan in kitchens of the home fleet, by somebody who does what it says: {@code java … PlanBench KITCHENS SEED}. Shares
 * with Wilson's intervals at 95 %.
 */
public final class PlanBench {
    private PlanBench() {}

    public static void main(String[] arguments) {
        int kitchens = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 2000;
        long seed = arguments.length > 1 ? Long.parseLong(arguments[1]) : 8001;
        Fleet fleet = Fleet.builtIn(Fleet.HOME).withSeed(seed);
        List<PlannedEvening> evenings = LongStream.range(0, kitchens)
                .parallel()
                .mapToObj(n -> PlannedEvening.of(fleet, n))
                .toList();
        say("slow bath, stirred: passes the range", evenings, e -> e.passes(e.stirredPeakCelsius()));
        say("slow bath, forgotten: passes the range", evenings, e -> e.passes(e.forgottenPeakCelsius()));
        say("slow bath, stirred: comes into the range", evenings, e -> e.reaches(e.stirredPeakCelsius()));
        say("  within 0.5 K of it", evenings, e -> e.reaches(e.stirredPeakCelsius() + 0.5));
        say("second step, stirred: in the range", evenings, e -> e.inRange(e.secondPeakCelsius()));
        say("  passes", evenings, e -> e.passes(e.secondPeakCelsius()));
        say("  within 0.5 K below or in it", evenings, e -> e.reaches(e.secondPeakCelsius() + 0.5));
        say("second step, forgotten: in the range", evenings, e -> e.inRange(e.secondForgottenCelsius()));
        say("  passes", evenings, e -> e.passes(e.secondForgottenCelsius()));
        say("poured three times: ends in the range", evenings, e -> e.inRange(e.endCelsius()));
        say("  passes at any time", evenings, e -> e.passes(e.toppedUpPeakCelsius()));
        say("hot bath, by the thermometer: passes", evenings, e -> e.passes(e.quickPeakCelsius()));
        say("  ends in the range", evenings, e -> e.reaches(e.quickPeakCelsius()) && !e.passes(e.quickPeakCelsius()));
        say("hot bath, at the latest time: passes", evenings, e -> e.passes(e.latestPeakCelsius()));
        under("slow bath", evenings, PlannedEvening::stirredPeakCelsius);
        under("second step, stirred", evenings, PlannedEvening::secondPeakCelsius);
        under("second step, forgotten", evenings, PlannedEvening::secondForgottenCelsius);
        under("poured three times", evenings, PlannedEvening::endCelsius);
        band("cold bath's time", evenings, PlannedEvening::cold);
        band("fall after it", evenings, PlannedEvening::fall);
        band("slow bath's time", evenings, PlannedEvening::warm);
        band("hot bath's time", evenings, PlannedEvening::quick);
        band("time in the range on the table", evenings, PlannedEvening::hold);
        long all = 4L * kitchens;
        long in = evenings.stream()
                .flatMap(e -> e.times().stream())
                .filter(Against::inBand)
                .count();
        System.out.println("all times in their bands: " + share(in, all));
    }

    private static void say(String what, List<PlannedEvening> evenings, Predicate<PlannedEvening> is) {
        System.out.println(what + ": " + share(evenings.stream().filter(is).count(), evenings.size()));
    }

    private static void under(String what, List<PlannedEvening> evenings, ToDoubleFunction<PlannedEvening> celsius) {
        double[] under = evenings.stream()
                .mapToDouble(e -> e.range().highCelsius() - celsius.applyAsDouble(e))
                .sorted()
                .toArray();
        System.out.printf(
                Locale.ROOT,
                "%s: highest point under the range's upper end, K, at 5/50/95 %%: %.2f %.2f %.2f%n",
                what,
                under[under.length / 20],
                under[under.length / 2],
                under[under.length - 1 - under.length / 20]);
    }

    private static void band(String what, List<PlannedEvening> evenings, Function<PlannedEvening, Against> figure) {
        List<Against> all = evenings.stream().map(figure).toList();
        double[] ratios = all.stream().mapToDouble(Against::ratio).sorted().toArray();
        System.out.printf(
                Locale.ROOT,
                "%s: in its band %s; came out at 5/50/95 %%: %.2f %.2f %.2f of the plan; band to x%.2f%n",
                what,
                share(all.stream().filter(Against::inBand).count(), all.size()),
                ratios[ratios.length / 20],
                ratios[ratios.length / 2],
                ratios[ratios.length - 1 - ratios.length / 20],
                all.stream()
                        .mapToDouble(a -> a.planned().high() / a.planned().value())
                        .average()
                        .orElseThrow());
    }

    private static String share(long hits, long of) {
        Interval interval = Interval.ofProportion(hits, of);
        return String.format(
                Locale.ROOT, "%.2f %% (%.2f-%.2f)", 100.0 * hits / of, 100 * interval.low(), 100 * interval.high());
    }
}
