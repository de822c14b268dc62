package fifthform.simulator.bench;

import fifthform.curves.setup.Bowl;
import fifthform.simulator.bench.BowlDays.Day;
import fifthform.simulator.bench.BowlDays.Really;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import java.util.stream.LongStream;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;

/**
 * What a bowl teaches from batch to batch, and how often another bowl is noticed. Each kitchen of the home fleet goes
 * through five batches in its own bowl, then one with twice the amount and one in a bowl of another material, both under
 * the name of the first.
 *
 * <p>{@code java … BowlBench KITCHENS FIRST} (250 and 10000 by default).
 */
public final class BowlBench {
    private static final int BATCHES = 5;

    /** Slower lifts and shorter coasts say nothing of a coast time: K/min, K. */
    private static final double LEAST_RATE = 0.6;

    private static final double LEAST_COAST = 0.12;

    /** Of a kilogram 10 K above the room, K/min. */
    private static final double USUAL_LOSS = 0.17;

    private BowlBench() {}

    /** One kitchen's days: five in its bowl, then two in others, and five of the next maker's luck. */
    private record Kitchen(List<Day> own, Day twice, Day other) {}

    public static void main(String[] arguments) {
        long kitchens = arguments.length > 0 ? Long.parseLong(arguments[0]) : 250;
        long first = arguments.length > 1 ? Long.parseLong(arguments[1]) : 10_000;
        for (String maker : new String[] {"follows-cues", ""}) {
            UnaryOperator<String> habit =
                    maker.isEmpty() ? text -> text : text -> BowlDays.with(text, "maker", maker);
            System.out.println(maker.isEmpty() ? "makers as in the home fleet" : "makers who obey");
            List<Kitchen> all = LongStream.range(first, first + kitchens)
                    .parallel()
                    .mapToObj(number -> kitchen(new BowlDays(Fleet.builtIn(Fleet.HOME), number, habit)))
                    .toList();
            coasts(all);
            others(all);
        }
    }

    private static Kitchen kitchen(BowlDays days) {
        Bowl bowl = days.fresh();
        List<Day> own = new ArrayList<>();
        for (int day = 0; day < BATCHES; day++) {
            own.add(days.day(day, bowl, Really.THE_BOWL));
            bowl = own.get(day).leaves();
        }
        return new Kitchen(
                own,
                days.day(BATCHES, bowl, Really.TWICE_THE_AMOUNT),
                days.day(BATCHES + 1, bowl, Really.OTHER_MATERIAL));
    }

    /** What was known of the coast time before a batch, against what its first lift off the warm water really did. */
    private static void coasts(List<Kitchen> all) {
        for (int day : new int[] {0, 1, 4}) {
            DescriptiveStatistics off = new DescriptiveStatistics();
            DescriptiveStatistics bias = new DescriptiveStatistics();
            DescriptiveStatistics said = new DescriptiveStatistics();
            for (Kitchen each : all) {
                Day it = each.own().get(day);
                it.ending().coastErrorsKelvin().stream().limit(1).forEach(k -> said.addValue(Math.abs(k)));
                really(it).ifPresent(seconds -> {
                    double log = Math.log(seconds) - it.first().coasting().coast().logSeconds();
                    off.addValue(Math.abs(log));
                    bias.addValue(log);
                });
            }
            System.out.printf(
                    Locale.ROOT,
                    "  before batch %d: coast time off by a factor of %.2f (median of %d), 9 of 10 within %.2f, bias %.2f;"
                            + " peak said at the first lift off by %.2f K (mean of %d), %.2f K (95 %%)%n",
                    day + 1,
                    Math.exp(off.getPercentile(50)),
                    off.getN(),
                    Math.exp(off.getPercentile(90)),
                    Math.exp(bias.getPercentile(50)),
                    said.getMean(),
                    said.getN(),
                    said.getPercentile(95));
        }
    }

    /** The coast time that explains the true coast: as the engine reckons it, from the true rate and a usual loss. */
    private static OptionalDouble really(Day day) {
        List<Lift> lifts = day.ending().outcome().lifts();
        if (lifts.isEmpty() || day.rateAtLift().isEmpty()) return OptionalDouble.empty();
        double coast = lifts.get(0).coastKelvin();
        double rate = day.rateAtLift().getAsDouble();
        if (60 * rate < LEAST_RATE || coast < LEAST_COAST) return OptionalDouble.empty();
        double kilograms = day.scenario().kitchen().chocolate().kilograms();
        double loss = USUAL_LOSS / 60 / Math.cbrt(kilograms);
        double times = Math.log((rate + loss) / loss);
        return OptionalDouble.of(coast / ((rate + loss) * -Math.expm1(-times) - loss * times));
    }

    private static void others(List<Kitchen> all) {
        print("false, fifth batch", all.stream().map(k -> k.own().get(4)).toList());
        print("false, third batch", all.stream().map(k -> k.own().get(2)).toList());
        print("twice the amount", all.stream().map(Kitchen::twice).toList());
        print("other material", all.stream().map(Kitchen::other).toList());
    }

    private static void print(String what, List<Day> days) {
        long turn = days.stream().filter(d -> d.coasting().bowl().answer().turn().isPresent()).count();
        long noticed = days.stream().filter(d -> d.coasting().bowl().doubt().isPresent()).count();
        long melt = days.stream().filter(d -> d.noticedByTheTurn()).count();
        System.out.printf(
                Locale.ROOT,
                "  %-20s of %d: by the turn out of the melting bath %.1f %%, by the end of the cold water %.1f %% (turn seen in %d)%n",
                what,
                days.size(),
                100.0 * melt / days.size(),
                100.0 * noticed / days.size(),
                turn);
    }
}
