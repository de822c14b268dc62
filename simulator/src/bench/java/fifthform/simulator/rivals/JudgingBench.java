package fifthform.simulator.rivals;

import fifthform.simulator.bench.Fleet;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * Prints the table of forecasts: every entrant in every kitchen of the judging fleet.
 *
 * <p>{@code -Dkitchens=2000} how many; {@code -Dcores=2}; {@code -Dentrants=ENGINE,LINE} only these; {@code -Dfrom=0} the
 * first number.
 */
public final class JudgingBench {
    private static final String JUDGING = "judging";

    private JudgingBench() {}

    public static void main(String[] arguments) {
        int kitchens = Integer.getInteger("kitchens", 2000);
        int cores = Integer.getInteger("cores", Runtime.getRuntime().availableProcessors());
        Contest contest = new Contest(Fleet.builtIn(System.getProperty("fleet", JUDGING)), cores);
        Set<Entrant> entrants = entrants(System.getProperty("entrants", ""));
        long from = Long.getLong("from", 0);
        long began = System.nanoTime();
        List<Ring.Coast> coasts = contest.each(from, kitchens, k -> new Ring(contest, k).coast());
        spread("coast after a lift in mid range, K", coasts.stream().map(Ring.Coast::kelvin).toList());
        spread("over the water until then, s", coasts.stream().map(Ring.Coast::dipSeconds).toList());
        spread("above mid cool range at its beginning, K", coasts.stream().map(Ring.Coast::beganBesideKelvin).toList());
        List<Round> rounds = contest.each(from, kitchens, k -> Round.in(new Ring(contest, k), entrants));
        List<Double> dips = rounds.stream()
                .flatMap(r -> r.tried().entrySet().stream())
                .filter(e -> e.getKey().ordinal() <= Entrant.TOUCHES_KEYS.ordinal())
                .map(e -> e.getValue())
                .map(t -> t.landing().firstDipSeconds())
                .toList();
        spread("over the water before the first lift, one lift or touches, s", dips);
        System.out.print(Table.of(rounds));
        System.out.printf(
                Locale.ROOT, "%n%d kitchens, %d entrants, %.0f s%n", kitchens, entrants.size(), (System.nanoTime() - began) / 1e9);
    }

    private static Set<Entrant> entrants(String words) {
        if (words.isBlank()) return EnumSet.allOf(Entrant.class);
        Set<Entrant> some = EnumSet.noneOf(Entrant.class);
        for (String word : words.split(",")) some.add(Entrant.valueOf(word.strip()));
        return some;
    }

    private static void spread(String what, List<Double> numbers) {
        List<Double> known = numbers.stream().filter(Double::isFinite).toList();
        System.out.printf(Locale.ROOT, "%s: n = %d of %d", what, known.size(), numbers.size());
        for (int percent : new int[] {0, 2, 5, 25, 50, 75, 95, 98, 100}) {
            System.out.printf(Locale.ROOT, "  p%d %.2f", percent, Reached.percentile(known, percent).value());
        }
        System.out.println();
    }
}
