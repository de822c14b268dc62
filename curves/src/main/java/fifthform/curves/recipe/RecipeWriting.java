package fifthform.curves.recipe;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/** One recipe on its way to text. */
final class RecipeWriting {
    private final Map<RecipeKey, String> values = new EnumMap<>(RecipeKey.class);
    private final Map<RecipeKey, String> sources = new EnumMap<>(RecipeKey.class);
    private final Set<RecipeKey> order = new LinkedHashSet<>();

    RecipeWriting(Recipe recipe) {
        // Keys with a source come first and in the order of the sources, so that reading gives the same list again.
        for (Source source : recipe.sources()) {
            RecipeKey key = RecipeKey.fromWord(source.key())
                    .orElseThrow(() -> new IllegalArgumentException("source of unknown key " + source.key()));
            sources.put(key, readable("source", source.text()));
            order.add(key);
        }
        for (RecipeKey key : RecipeKey.values()) order.add(key);
        put(recipe);
    }

    String text() {
        StringBuilder text = new StringBuilder();
        for (RecipeKey key : order) {
            text.append(key.word()).append(" = ").append(values.get(key));
            if (sources.containsKey(key)) text.append("  # ").append(sources.get(key));
            text.append('\n');
        }
        return text.toString();
    }

    private void put(Recipe recipe) {
        values.put(RecipeKey.ID, recipe.id());
        values.put(RecipeKey.NAME, value("name", recipe.name()));
        values.put(RecipeKey.BASIS, value("basis", recipe.basis()));
        values.put(RecipeKey.COCOA_BUTTER, percent(recipe.composition().cocoaButterFraction()));
        values.put(RecipeKey.MILK_FAT, percent(recipe.composition().milkFatFraction()));
        values.put(RecipeKey.SUGAR, percent(recipe.composition().sugarFraction()));
        values.put(RecipeKey.OTHER_SOLIDS, percent(recipe.composition().otherFraction()));
        range(RecipeKey.MELT_LOW, RecipeKey.MELT_HIGH, recipe.melt().range());
        values.put(RecipeKey.MELT_HOLD, hold(recipe.melt().dwell()));
        range(RecipeKey.COOL_LOW, RecipeKey.COOL_HIGH, recipe.cool().range());
        values.put(RecipeKey.COOL_HOLD, hold(recipe.cool().dwell()));
        range(RecipeKey.WORK_LOW, RecipeKey.WORK_HIGH, recipe.work().range());
        values.put(RecipeKey.WARN, celsius(recipe.meltOut().warnCelsius()));
        values.put(RecipeKey.MELT_OUT, celsius(recipe.meltOut().limitCelsius()));
        values.put(RecipeKey.SCORCH, celsius(recipe.scorchCelsius()));
        values.put(RecipeKey.BATH, celsius(recipe.rewarmBathCelsius()));
    }

    private void range(RecipeKey low, RecipeKey high, CelsiusRange range) {
        values.put(low, celsius(range.lowCelsius()));
        values.put(high, celsius(range.highCelsius()));
    }

    private static String celsius(double celsius) {
        return RecipeQuantity.write(new BigDecimal(celsius)) + " C";
    }

    private static String percent(double fraction) {
        return RecipeQuantity.write(new BigDecimal(fraction).movePointRight(2)) + " %";
    }

    private static String hold(Duration hold) {
        boolean wholeMinutes = hold.equals(Duration.ofMinutes(hold.toMinutes()));
        return wholeMinutes
                ? hold.toMinutes() + " min"
                : RecipeQuantity.write(BigDecimal.valueOf(hold.toMillis(), 3)) + " s";
    }

    private static String value(String what, String text) {
        if (text.startsWith("#") || text.matches(".*\\s#.*")) {
            throw new IllegalArgumentException(what + " must not hold a word that begins with #, was " + text);
        }
        return readable(what, text);
    }

    private static String readable(String what, String text) {
        if (text.isBlank() || !text.strip().equals(text) || text.lines().count() != 1) {
            throw new IllegalArgumentException(
                    what + " must be one line without white space at its ends, was \"" + text + "\"");
        }
        return text;
    }
}
