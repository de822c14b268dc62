package fifthform.monitor.app;

import fifthform.curves.learning.Band;
import fifthform.curves.learning.HeatDose;
import fifthform.curves.learning.HeatScale;
import fifthform.curves.learning.LeftOut;
import fifthform.curves.learning.Outcome;
import fifthform.curves.learning.OwnLimit;
import fifthform.curves.learning.OwnRecipe;
import fifthform.curves.recipe.Recipe;
import fifthform.monitor.json.Decimal;
import fifthform.monitor.json.JsonLine;
import fifthform.monitor.learned.ComparisonWords;
import fifthform.monitor.learned.LearnedChocolate;
import fifthform.monitor.looks.LookWords;
import fifthform.monitor.settings.Units;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/** What is said of a maker's own limits. */
final class LearnWords {
    private static final int PLACES = 2;

    private final Units units;

    LearnWords(Units units) {
        this.units = Objects.requireNonNull(units, "units");
    }

    /** All that is said of one chocolate. */
    List<String> lines(LearnedChocolate learned, boolean practice) {
        List<String> lines = new ArrayList<>();
        int with = learned.batches().size();
        lines.add(learned.published().name() + " (" + learned.id() + ")" + (practice ? ", practice" : "") + ": "
                + count(with) + " looked at, " + learned.limit().batches() + " of use here.");
        learned.batches().forEach(batch -> lines.add("  " + batch.session() + "  " + words(batch)));
        lines.addAll(says(learned));
        if (learned.limit().batches() > 0) {
            lines.add("Heat is given as the temperature that would have done as much in "
                    + Decimal.of(HeatScale.MINUTES, 0) + " minutes, so that height and length both count. It is yours:"
                    + " this kitchen, this probe. A look is no measurement of crystals.");
        }
        lines.addAll(new ComparisonWords(units).lines(learned.published().name(), learned.comparison()));
        return lines;
    }

    private String words(LearnedChocolate.Batch batch) {
        String heat = batch.dose().map(this::words).orElse("no heat seen after the cool step");
        String seen = batch.outcome().map(LearnWords::words).orElse("");
        String out = batch.leftOut().map(why -> "not counted: " + words(why)).orElse("");
        return String.join(
                "; ",
                List.of(heat, seen, out).stream().filter(s -> !s.isEmpty()).toList());
    }

    private String words(HeatDose dose) {
        long over = dose.overRange().toSeconds();
        String highest = "highest " + units.withUnit(dose.highestCelsius());
        if (over == 0) return "never above the range (" + highest + ")";
        return "heat " + units.withUnit(dose.equivalentCelsius()) + " (" + highest + ", "
                + (over < 90 ? over + " s" : Math.round(over / 60.0) + " min") + " above the range)";
    }

    private static String words(Outcome outcome) {
        if (outcome.isMarked()) {
            return "marks after " + LookWords.age(outcome.markedAtHours().getAsDouble());
        }
        return "fine after " + LookWords.age(outcome.cleanAtHours().getAsDouble());
    }

    private static String words(LeftOut why) {
        return switch (why) {
            case NOT_REACHED -> "it never came to the working range after the cool step";
            case NOT_COOLED -> "it was not held cool for long enough, so marks need no heat to explain them";
            case READINGS_MISSING -> "readings are missing while it was above the working range";
            case TOO_EARLY -> "looked at too early; look again a day after the batch";
            case UNCLEAR -> "the looks say too little";
            case OTHER_CAUSE -> "what was seen has another cause";
            case CONTRADICTS -> "marks were seen and later none; look once more, or take one back with look --undo";
        };
    }

    private List<String> says(LearnedChocolate learned) {
        OwnLimit limit = learned.limit();
        String stays = "The published limit " + units.withUnit(limit.publishedCelsius()) + " " + inForce(learned) + ".";
        String last = limit.batches() == 1 ? "your last batch" : "your last " + limit.batches() + " batches";
        Band band = limit.band();
        return switch (limit.says()) {
            case TOO_FEW_BATCHES ->
                List.of("Too few batches: " + limit.batches() + " of use, and at least " + OwnLimit.LEAST_BATCHES
                        + " are needed. Nothing is claimed. " + stays);
            case ALL_CLEAN ->
                List.of(
                        "In " + last + " no bar was marked, the hottest at a heat of "
                                + shown(limit.hottestCleanCelsius())
                                + ". Where harm begins is known from below only: above "
                                + units.withUnit(band.lowerCelsius()) + ", 19 times in 20.",
                        stays);
            case ALL_MARKED ->
                List.of(
                        "In " + last + " the bars were marked every time, the coolest at a heat of "
                                + shown(limit.coolestMarkedCelsius())
                                + ". Where harm begins is known from above only, and it may not be the heat at all:"
                                + " look at cooling, setting and storing first.",
                        stays);
            case HARDLY_ANYTHING ->
                List.of(
                        "In " + last + " " + limit.marked() + " were marked, but hot and cool ones alike, or all had"
                                + " much the same heat: they hardly say where harm begins.",
                        stays);
            case LIMIT ->
                List.of(
                        "In " + last + " harm began near " + units.withUnit(band.middleCelsius()) + " (9 times in 10 "
                                + units.oneDecimal(band.lowerCelsius()) + " to "
                                + units.withUnit(band.upperCelsius()) + "); " + limit.marked() + " were marked.",
                        stays + ownRecipe(learned));
        };
    }

    /** How to make it count; nothing where the limit is not one that a recipe can have. */
    private static String ownRecipe(LearnedChocolate learned) {
        String id = "my-" + learned.id();
        return OwnRecipe.of(learned.published(), learned.limit(), id, LocalDate.EPOCH)
                .fold(
                        own -> " To work by your own: monitor/run learn --chocolate " + learned.id() + " --write " + id,
                        problems -> "");
    }

    private String inForce(LearnedChocolate learned) {
        boolean own = learned.inForceCelsius() != learned.limit().publishedCelsius();
        return own
                ? "stands beside " + units.withUnit(learned.inForceCelsius()) + " of your own recipe, which is in force"
                : "stays in force";
    }

    private String shown(OptionalDouble celsius) {
        return celsius.isPresent() ? units.withUnit(celsius.getAsDouble()) : "–";
    }

    /** After a recipe was written. */
    List<String> written(LearnedChocolate learned, Recipe own, Path file) {
        return List.of(
                "Written: " + file,
                "Its melt-out is " + units.withUnit(own.meltOut().limitCelsius()) + " (published "
                        + units.withUnit(learned.limit().publishedCelsius()) + ") and its warning "
                        + units.withUnit(own.meltOut().warnCelsius()) + ". Alarms go by it in batches that name it:"
                        + " monitor/run watch --chocolate " + own.id(),
                "To go back, name " + learned.id() + " again, or delete the file.");
    }

    static String json(LearnedChocolate learned, boolean practice) {
        OwnLimit limit = learned.limit();
        JsonLine line = new JsonLine()
                .text("chocolate", learned.id())
                .text("origin", practice ? "simulated" : "real")
                .whole("looked_at", learned.batches().size())
                .whole("counted", limit.batches())
                .whole("marked", limit.marked())
                .text("says", limit.says().word());
        if (limit.batches() >= OwnLimit.LEAST_BATCHES) {
            line.number("limit_c", limit.band().middleCelsius(), PLACES)
                    .number("lower_c", limit.band().lowerCelsius(), PLACES)
                    .number("upper_c", limit.band().upperCelsius(), PLACES);
        } else {
            line.raw("limit_c", "null").raw("lower_c", "null").raw("upper_c", "null");
        }
        return line.number("published_c", limit.publishedCelsius(), PLACES)
                .number("in_force_c", learned.inForceCelsius(), PLACES)
                .number("dose_minutes", HeatScale.MINUTES)
                .object("comparison", ComparisonWords.json(learned.comparison()))
                .objects(
                        "batches",
                        learned.batches().stream().map(LearnWords::json).toList())
                .end();
    }

    private static JsonLine json(LearnedChocolate.Batch batch) {
        JsonLine line = new JsonLine()
                .text("session", batch.session())
                .text("start", batch.start().toString());
        batch.dose()
                .ifPresent(dose -> line.number("dose_c", dose.equivalentCelsius(), PLACES)
                        .number("highest_c", dose.highestCelsius(), PLACES)
                        .number("over_range_s", dose.overRange().toMillis() / 1000.0, 0));
        batch.outcome().ifPresent(outcome -> {
            line.text("outcome", outcome.isMarked() ? "marked" : "fine");
            if (outcome.cleanAtHours().isPresent())
                line.number("clean_at_h", outcome.cleanAtHours().getAsDouble(), 1);
            if (outcome.markedAtHours().isPresent())
                line.number("marked_at_h", outcome.markedAtHours().getAsDouble(), 1);
        });
        batch.leftOut().ifPresent(why -> line.text("left_out", why.word()));
        batch.bars().ifPresent(bars -> line.text("bars", bars.word()));
        JsonLine traits = new JsonLine();
        batch.traits().known().forEach((trait, value) -> traits.number(trait.word(), value, PLACES));
        return line.object("traits", traits);
    }

    private static String count(int batches) {
        return batches + (batches == 1 ? " batch" : " batches");
    }
}
