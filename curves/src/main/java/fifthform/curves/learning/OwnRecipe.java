package fifthform.curves.learning;

import fifthform.curves.check.Parsed;
import fifthform.curves.recipe.MeltOut;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.recipe.Source;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A recipe with the maker's own limit, for a maker who asks for one. Nothing else makes a learned limit count.
 *
 * <p>A limit is lowered to the middle of what was learned, but raised only to the lower end of its band: too low costs a
 * needless alarm, too high a batch.
 */
public final class OwnRecipe {
    private static final String MELT_OUT = "melt-out";
    private static final String WARN = "warn";

    /** The guard alarm stands 0.8 K below melt-out, and the warning must come before it. */
    private static final double WARN_BELOW_KELVIN = 0.9;

    /** More is no kitchen's own limit but a probe that reads wrong. Own choice. */
    private static final double FURTHEST_KELVIN = 1.5;

    /** An alarm that rests on a wider band would be moved by chance. Own choice. */
    private static final double WIDEST_KELVIN = 2.0;

    private static final Pattern OWN = Pattern.compile("own batches of ([a-z0-9][a-z0-9-]*), .*");

    private OwnRecipe() {}

    /** The chocolate whose batches gave a recipe its limit; empty where its limit is not an own one. */
    public static Optional<String> baseOf(Recipe recipe) {
        return recipe.sources().stream()
                .filter(source -> source.key().equals(MELT_OUT))
                .map(source -> OWN.matcher(source.text()))
                .filter(Matcher::matches)
                .map(own -> own.group(1))
                .findFirst();
    }

    /**
     * The published recipe with the limit that was learned, or why there is none.
     *
     * @param base the published recipe that the doses were counted by
     * @param id id of the new one: lower-case letters, digits, hyphens
     * @param date of the day, for its source
     */
    public static Parsed<Recipe> of(Recipe base, OwnLimit learned, String id, LocalDate date) {
        if (learned.says() != OwnLimit.Says.LIMIT) {
            return Parsed.refused(
                    base.id(),
                    "These batches show no limit of your own (" + learned.says().word() + ").",
                    "Look at more batches first.");
        }
        if (learned.band().widthKelvin() > WIDEST_KELVIN) {
            return Parsed.refused(
                    base.id(),
                    "The band of your limit is still " + tenths(learned.band().widthKelvin())
                            + " K wide; an alarm can rest on one of " + tenths(WIDEST_KELVIN) + " K at most.",
                    "Look at more batches first.");
        }
        double published = base.meltOut().limitCelsius();
        double wanted = wanted(learned, published);
        if (Double.isNaN(wanted)) {
            return Parsed.refused(
                    base.id(),
                    "Your batches do not show surely enough that the limit lies above the published "
                            + tenths(published) + " C.",
                    "A limit is raised only where even the lower end of its band is higher. Nothing needs to be written.");
        }
        if (Math.abs(wanted - published) > FURTHEST_KELVIN) {
            return Parsed.refused(
                    base.id(),
                    "The limit learned (" + tenths(wanted) + " C) is further from the published " + tenths(published)
                            + " C than kitchens differ.",
                    "Check the probe first: fifthform check-probe");
        }
        double warn = Math.min(base.meltOut().warnCelsius(), round(wanted - WARN_BELOW_KELVIN));
        if (warn < base.work().range().highCelsius()) {
            return Parsed.refused(
                    base.id(),
                    "A melt-out at " + tenths(wanted) + " C leaves no room above the working range, which ends at "
                            + tenths(base.work().range().highCelsius()) + " C: alarms would ring while you pour.",
                    "Check the probe and the cooling first. To go on, lower the working range in a recipe of your own.");
        }
        return Parsed.accepted(recipe(base, learned, id, date, new MeltOut(warn, wanted)));
    }

    private static double wanted(OwnLimit learned, double published) {
        Band band = learned.band();
        if (round(band.middleCelsius()) < published) return round(band.middleCelsius());
        return round(band.lowerCelsius()) > published ? round(band.lowerCelsius()) : Double.NaN;
    }

    private static Recipe recipe(Recipe base, OwnLimit learned, String id, LocalDate date, MeltOut own) {
        Band band = learned.band();
        String batches = "own batches of " + base.id() + ", " + learned.batches() + ", " + date;
        String source = batches + ": harm began near " + tenths(band.middleCelsius()) + " C ("
                + tenths(band.lowerCelsius()) + " to " + tenths(band.upperCelsius()) + "); published "
                + tenths(base.meltOut().limitCelsius()) + " C";
        List<Source> sources = new ArrayList<>();
        for (Source each : base.sources()) {
            boolean lowered = own.warnCelsius() < base.meltOut().warnCelsius();
            if (each.key().equals(WARN) && lowered) {
                sources.add(new Source(
                        WARN,
                        WARN_BELOW_KELVIN + " K below that melt-out; published "
                                + tenths(base.meltOut().warnCelsius()) + " C"));
            } else if (!each.key().equals(MELT_OUT)) sources.add(each);
        }
        sources.add(new Source(MELT_OUT, source));
        return new Recipe(
                id,
                base.name() + ", own limit",
                base.composition(),
                base.melt(),
                base.cool(),
                base.work(),
                own,
                base.scorchCelsius(),
                base.rewarmBathCelsius(),
                base.basis() + "; melt-out from own batches",
                sources);
    }

    private static double round(double celsius) {
        return new BigDecimal(celsius).setScale(1, RoundingMode.HALF_UP).doubleValue();
    }

    private static String tenths(double celsius) {
        return new BigDecimal(celsius).setScale(1, RoundingMode.HALF_UP).toPlainString();
    }
}
