package fifthform.curves.recipe;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Recipes that obey all the rules and are otherwise arbitrary. */
final class RandomRecipe {
    private RandomRecipe() {}

    static Recipe from(SplittableRandom random) {
        int coolLow = millionths(random, 20, 27);
        int coolHigh = coolLow + millionths(random, 0.1, 1);
        int workLow = coolHigh + millionths(random, 0.1, 3);
        int workHigh = workLow + millionths(random, 0.1, 2);
        int warn = workHigh + millionths(random, 0, 1);
        int meltOut = warn + millionths(random, 0.1, 2);
        int meltLow = meltOut + millionths(random, 0.1, 10);
        int meltHigh = meltLow + millionths(random, 0.1, 5);
        int scorch = meltHigh + millionths(random, 0, 5);
        int bath = workHigh + (int) random.nextLong(1, scorch - workHigh + 1L);
        return new Recipe(
                "r-" + random.nextInt(1000),
                "Café №" + random.nextInt(10),
                composition(random),
                new PhaseTarget(range(meltLow, meltHigh), Duration.ofMillis(random.nextInt(1_000_000))),
                new PhaseTarget(range(coolLow, coolHigh), Duration.ofMinutes(random.nextInt(60))),
                new PhaseTarget(range(workLow, workHigh), Duration.ZERO),
                new MeltOut(celsius(warn), celsius(meltOut)),
                celsius(scorch),
                celsius(bath),
                "invented = demo",
                sources(random));
    }

    private static Composition composition(SplittableRandom random) {
        int butter = random.nextInt(1, 60_000_000);
        int milkFat = random.nextInt(0, 20_000_000);
        int sugar = random.nextInt(0, 20_000_000);
        return new Composition(
                fraction(butter), fraction(milkFat), fraction(sugar), fraction(100_000_000 - butter - milkFat - sugar));
    }

    private static List<Source> sources(SplittableRandom random) {
        List<Source> sources = new ArrayList<>();
        for (RecipeKey key : RecipeKey.values()) {
            if (random.nextBoolean()) {
                sources.add(random.nextInt(sources.size() + 1), new Source(key.word(), "table # " + random.nextInt()));
            }
        }
        return sources;
    }

    private static int millionths(SplittableRandom random, double low, double high) {
        return (int) (random.nextDouble(low, high) * 1e6);
    }

    private static double celsius(int millionths) {
        return BigDecimal.valueOf(millionths, 6).doubleValue();
    }

    private static double fraction(int hundredMillionths) {
        return BigDecimal.valueOf(hundredMillionths, 8).doubleValue();
    }

    private static CelsiusRange range(int low, int high) {
        return new CelsiusRange(celsius(low), celsius(high));
    }
}
