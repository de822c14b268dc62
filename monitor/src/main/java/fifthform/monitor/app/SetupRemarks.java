package fifthform.monitor.app;

import fifthform.curves.recipe.CelsiusRange;
import fifthform.curves.recipe.Recipe;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What is odd about a set-up that was typed, and may be a slip: it is said and not refused, since kitchens are odd.
 * Always in degrees Celsius, as the options are.
 */
final class SetupRemarks {
    /** Over a bath so little warmer than the range the last of the way takes for ever, K. Own choice. */
    private static final double WARMER_KELVIN = 2;

    /** So far over what the recipe plans a bath gives a degree within a second or two, K. Own choice. */
    private static final double HOTTER_KELVIN = 30;

    /** Seed is a hundredth of the batch to a third of it: common practice, no source. */
    private static final double MOST_SEED_SHARE = 0.4;

    /** A third of the largest batch that a home bowl holds; own choice. */
    private static final double MOST_SEED_GRAMS = 2000;

    /** Less hardly covers the tip of a probe. Own choice. */
    private static final double LITTLE_GRAMS = 100;

    private static final double MUCH_GRAMS = 10_000;

    private final Recipe recipe;

    SetupRemarks(Recipe recipe) {
        this.recipe = recipe;
    }

    /** One line a remark: what, why, what to do. */
    List<String> of(OptionalDouble bathCelsius, OptionalDouble amountGrams, OptionalDouble seedGrams) {
        List<String> said = new ArrayList<>();
        bathCelsius.ifPresent(celsius -> bath(celsius, said));
        amountGrams.ifPresent(grams -> amount(grams, said));
        seedGrams.ifPresent(grams -> seed(grams, amountGrams, said));
        return said;
    }

    private void bath(double celsius, List<String> said) {
        CelsiusRange work = recipe.work().range();
        String usual = ", usually about " + plain(recipe.rewarmBathCelsius()) + " °C.";
        if (celsius < work.lowCelsius() + WARMER_KELVIN)
            said.add("--bath was " + plain(celsius)
                    + " °C. Water so cool cannot warm the chocolate to its working range, "
                    + plain(work.lowCelsius()) + " to " + plain(work.highCelsius())
                    + " °C. If that is a slip, start again with the temperature of the warm bath" + usual);
        else if (celsius > recipe.rewarmBathCelsius() + HOTTER_KELVIN)
            said.add("--bath was " + plain(celsius) + " °C. Over water so hot a bowl is past its working range within"
                    + " seconds, and steam scalds. Let it cool, or give its temperature when you rewarm" + usual);
    }

    private void amount(double grams, List<String> said) {
        if (grams < LITTLE_GRAMS)
            said.add(
                    "--amount was " + plain(grams) + " g. So little hardly covers the tip of a probe, and forecasts are"
                            + " unsure. If it was meant in kilograms, start again and give grams.");
        else if (grams > MUCH_GRAMS)
            said.add("--amount was " + plain(grams) + " g. So much was never tried, and forecasts are unsure."
                    + " If that is a slip, start again and give grams.");
    }

    private void seed(double grams, OptionalDouble amountGrams, List<String> said) {
        boolean much =
                amountGrams.isPresent() ? grams > MOST_SEED_SHARE * amountGrams.getAsDouble() : grams > MOST_SEED_GRAMS;
        if (!much) return;
        String of = amountGrams.isPresent() ? " for " + plain(amountGrams.getAsDouble()) + " g of chocolate" : "";
        said.add("--seed was " + plain(grams) + " g" + of + ". So much seed cools the bowl past its range and does not"
                + " melt. If that is a slip, start again; seed is usually less than a third of the chocolate.");
    }

    private static String plain(double value) {
        return value == Math.rint(value)
                ? String.valueOf(Math.round(value))
                : String.valueOf(Math.round(10 * value) / 10.0);
    }
}
