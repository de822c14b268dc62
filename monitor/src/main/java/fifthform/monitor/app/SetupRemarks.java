package fifthform.monitor.app;

import fifthform.curves.recipe.CelsiusRange;
import fifthform.curves.recipe.Recipe;
import fifthform.monitor.texts.SetupText;
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
        String usual = SetupText.USUALLY_ABOUT_C.say(plain(recipe.rewarmBathCelsius()));
        if (celsius < work.lowCelsius() + WARMER_KELVIN)
            said.add(SetupText.BATH_WAS_C_WATER_SO_COOL.say(
                    plain(celsius), plain(work.lowCelsius()), plain(work.highCelsius()), usual));
        else if (celsius > recipe.rewarmBathCelsius() + HOTTER_KELVIN)
            said.add(SetupText.BATH_WAS_C_OVER_WATER_SO.say(plain(celsius), usual));
    }

    private void amount(double grams, List<String> said) {
        if (grams < LITTLE_GRAMS) said.add(SetupText.AMOUNT_WAS_G_SO_LITTLE_HARDLY.say(plain(grams)));
        else if (grams > MUCH_GRAMS) said.add(SetupText.AMOUNT_WAS_G_SO_MUCH_WAS.say(plain(grams)));
    }

    private void seed(double grams, OptionalDouble amountGrams, List<String> said) {
        boolean much =
                amountGrams.isPresent() ? grams > MOST_SEED_SHARE * amountGrams.getAsDouble() : grams > MOST_SEED_GRAMS;
        if (!much) return;
        String of = amountGrams.isPresent() ? SetupText.FOR_G_OF_CHOCOLATE.say(plain(amountGrams.getAsDouble())) : "";
        said.add(SetupText.SEED_WAS_G_SO_MUCH_SEED.say(plain(grams), of));
    }

    private static String plain(double value) {
        return value == Math.rint(value)
                ? String.valueOf(Math.round(value))
                : String.valueOf(Math.round(10 * value) / 10.0);
    }
}
