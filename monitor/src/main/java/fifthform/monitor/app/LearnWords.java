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
import fifthform.monitor.texts.LearnText;
import fifthform.monitor.texts.UnitText;
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
        lines.add(LearnText.LOOKED_AT_OF_USE_HERE.say(
                learned.published().name(),
                learned.id(),
                practice ? LearnText.PRACTICE.say() : "",
                count(with),
                learned.limit().batches()));
        learned.batches().forEach(batch -> lines.add("  " + batch.session() + "  " + words(batch)));
        lines.addAll(says(learned));
        if (learned.limit().batches() > 0) {
            lines.add(LearnText.HEAT_IS_GIVEN_AS_THE.say(Decimal.of(HeatScale.MINUTES, 0)));
        }
        lines.addAll(new ComparisonWords(units).lines(learned.published().name(), learned.comparison()));
        return lines;
    }

    private String words(LearnedChocolate.Batch batch) {
        String heat = batch.dose().map(this::words).orElse(LearnText.NO_HEAT_SEEN_AFTER_THE_COOL.say());
        String seen = batch.outcome().map(LearnWords::words).orElse("");
        String out = batch.leftOut()
                .map(why -> LearnText.NOT_COUNTED.say(words(why)))
                .orElse("");
        return String.join(
                "; ",
                List.of(heat, seen, out).stream().filter(s -> !s.isEmpty()).toList());
    }

    private String words(HeatDose dose) {
        long over = dose.overRange().toSeconds();
        String highest = LearnText.HIGHEST.say(units.withUnit(dose.highestCelsius()));
        if (over == 0) return LearnText.NEVER_ABOVE_THE_RANGE.say(highest);
        return LearnText.HEAT_ABOVE_THE_RANGE.say(
                units.withUnit(dose.equivalentCelsius()),
                highest,
                over < 90 ? UnitText.SECONDS.say(over) : UnitText.MINUTES.say(Math.round(over / 60.0)));
    }

    private static String words(Outcome outcome) {
        if (outcome.isMarked()) {
            return LearnText.MARKS_AFTER.say(
                    LookWords.age(outcome.markedAtHours().getAsDouble()));
        }
        return LearnText.FINE_AFTER.say(LookWords.age(outcome.cleanAtHours().getAsDouble()));
    }

    private static String words(LeftOut why) {
        return switch (why) {
            case NOT_REACHED -> LearnText.IT_NEVER_CAME_TO_THE_WORKING.say();
            case NOT_COOLED -> LearnText.IT_WAS_NOT_HELD_COOL_FOR.say();
            case READINGS_MISSING -> LearnText.READINGS_ARE_MISSING_WHILE_IT.say();
            case TOO_EARLY -> LearnText.LOOKED_AT_TOO_EARLY_LOOK_AGAIN.say();
            case UNCLEAR -> LearnText.THE_LOOKS_SAY_TOO_LITTLE.say();
            case OTHER_CAUSE -> LearnText.WHAT_WAS_SEEN_HAS_ANOTHER.say();
            case CONTRADICTS -> LearnText.MARKS_WERE_SEEN_AND_LATER_NONE.say();
        };
    }

    private List<String> says(LearnedChocolate learned) {
        OwnLimit limit = learned.limit();
        String stays = LearnText.THE_PUBLISHED_LIMIT.say(units.withUnit(limit.publishedCelsius()), inForce(learned));
        String last = LearnText.YOUR_LAST_BATCHES.say(limit.batches());
        Band band = limit.band();
        return switch (limit.says()) {
            case TOO_FEW_BATCHES ->
                List.of(LearnText.TOO_FEW_BATCHES_OF_USE_AND.say(limit.batches(), OwnLimit.LEAST_BATCHES, stays));
            case ALL_CLEAN ->
                List.of(
                        LearnText.IN_NO_BAR_WAS_MARKED_THE.say(
                                last, shown(limit.hottestCleanCelsius()), units.withUnit(band.lowerCelsius())),
                        stays);
            case ALL_MARKED ->
                List.of(LearnText.IN_THE_BARS_WERE_MARKED_EVERY.say(last, shown(limit.coolestMarkedCelsius())), stays);
            case HARDLY_ANYTHING -> List.of(LearnText.IN_WERE_MARKED_BUT_HOT_AND.say(last, limit.marked()), stays);
            case LIMIT ->
                List.of(
                        LearnText.IN_HARM_BEGAN_NEAR_9_TIMES.say(
                                last,
                                units.withUnit(band.middleCelsius()),
                                units.oneDecimal(band.lowerCelsius()),
                                units.withUnit(band.upperCelsius()),
                                limit.marked()),
                        stays + ownRecipe(learned));
        };
    }

    /** How to make it count; nothing where the limit is not one that a recipe can have. */
    private static String ownRecipe(LearnedChocolate learned) {
        String id = "my-" + learned.id();
        return OwnRecipe.of(learned.published(), learned.limit(), id, LocalDate.EPOCH)
                .fold(own -> LearnText.TO_WORK_BY_YOUR_OWN_MONITOR.say(learned.id(), id), problems -> "");
    }

    private String inForce(LearnedChocolate learned) {
        boolean own = learned.inForceCelsius() != learned.limit().publishedCelsius();
        return own
                ? LearnText.STANDS_BESIDE_OF_YOUR_OWN.say(units.withUnit(learned.inForceCelsius()))
                : LearnText.STAYS_IN_FORCE.say();
    }

    private String shown(OptionalDouble celsius) {
        return celsius.isPresent() ? units.withUnit(celsius.getAsDouble()) : "–";
    }

    /** After a recipe was written. */
    List<String> written(LearnedChocolate learned, Recipe own, Path file) {
        return List.of(
                LearnText.WRITTEN.say(file),
                LearnText.ITS_MELT_OUT_IS_PUBLISHED_AND.say(
                        units.withUnit(own.meltOut().limitCelsius()),
                        units.withUnit(learned.limit().publishedCelsius()),
                        units.withUnit(own.meltOut().warnCelsius()),
                        own.id()),
                LearnText.TO_GO_BACK_NAME_AGAIN_OR.say(learned.id()));
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
        return UnitText.BATCHES.say(batches);
    }
}
