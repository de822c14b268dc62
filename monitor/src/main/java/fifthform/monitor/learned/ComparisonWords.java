package fifthform.monitor.learned;

import fifthform.curves.contrast.Comparison;
import fifthform.curves.contrast.Contrast;
import fifthform.curves.contrast.Span;
import fifthform.curves.contrast.Suggestion;
import fifthform.curves.contrast.Trait;
import fifthform.monitor.json.JsonLine;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.LearnedText;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/** What differs between marked and fine batches, in the same words wherever it is said. */
public final class ComparisonWords {
    private static final int PLACES = 2;
    private static final int CHANCE_PLACES = 4;

    private final Units units;

    public ComparisonWords(Units units) {
        this.units = Objects.requireNonNull(units, "units");
    }

    /** All of it, a sentence or two a line; what may not be claimed is not hinted at. */
    public List<String> lines(String chocolate, Comparison comparison) {
        List<String> lines = new ArrayList<>(statement(chocolate, comparison));
        lines.addAll(others(comparison));
        lines.add(suggestion(comparison));
        return lines;
    }

    /** The same for a page with little room: what is claimed, or why nothing is, and the suggestion below it. */
    public List<String> page(String chocolate, Comparison comparison) {
        return List.of(String.join(" ", statement(chocolate, comparison)), suggestion(comparison));
    }

    private List<String> statement(String chocolate, Comparison comparison) {
        List<String> lines = new ArrayList<>();
        lines.add(LearnedText.HELD_AGAINST.say(
                chocolate, Integer.toString(comparison.marked()), Integer.toString(comparison.fine())));
        switch (comparison.says()) {
            case TOO_FEW -> lines.add(LearnedText.TOO_FEW.say(Integer.toString(Comparison.LEAST_EACH)));
            case NOTHING -> lines.add(LearnedText.NOTHING_DIFFERS.say());
            case DIFFERS -> {
                comparison.contrasts().stream()
                        .filter(Contrast::isClaimed)
                        .forEach(contrast -> lines.add(said(contrast)));
                lines.add(LearnedText.CAUTION.say());
            }
        }
        return lines;
    }

    private static List<String> others(Comparison comparison) {
        List<String> lines = new ArrayList<>();
        if (comparison.says() == Comparison.Says.TOO_FEW) return lines;
        List<Trait> unsure = comparison.contrasts().stream()
                .filter(contrast -> !contrast.isClaimed())
                .map(Contrast::trait)
                .toList();
        if (!unsure.isEmpty()) lines.add(LearnedText.NOT_SURELY.say(names(unsure)));
        if (!comparison.untold().isEmpty()) lines.add(LearnedText.UNTOLD.say(names(comparison.untold())));
        return lines;
    }

    private static String names(List<Trait> traits) {
        return traits.stream().map(ComparisonWords::name).collect(Collectors.joining("; "));
    }

    private static String name(Trait trait) {
        return switch (trait) {
            case HEAT -> LearnedText.HEAT.say();
            case LOWEST -> LearnedText.LOWEST.say();
            case COOL_MINUTES -> LearnedText.COOL_MINUTES.say();
            case POURING -> LearnedText.POURING.say();
            case SEED -> LearnedText.SEED.say();
            case FRIDGE -> LearnedText.FRIDGE.say();
        };
    }

    private String said(Contrast contrast) {
        String chance = LearnedText.BY_CHANCE.say(chance(contrast.corrected()));
        if (contrast.trait().unit() == Trait.Unit.YES_NO) return counts(contrast) + " " + chance;
        String middles = LearnedText.GOES_WITH.say(
                name(contrast.trait()),
                value(contrast.trait(), contrast.markedMiddle()),
                Integer.toString(contrast.marked()),
                value(contrast.trait(), contrast.fineMiddle()),
                Integer.toString(contrast.fine()));
        String difference = contrast.interval()
                .map(interval -> " " + difference(contrast, interval))
                .orElse("");
        return middles + difference + " " + chance;
    }

    private static String counts(Contrast contrast) {
        return LearnedText.GOES_WITH_COUNTS.say(
                name(contrast.trait()),
                Long.toString(Math.round(contrast.markedMiddle() * contrast.marked())),
                Integer.toString(contrast.marked()),
                Long.toString(Math.round(contrast.fineMiddle() * contrast.fine())),
                Integer.toString(contrast.fine()));
    }

    private String difference(Contrast contrast, Span interval) {
        boolean more = contrast.higher() == Contrast.Higher.IN_MARKED;
        double sign = more ? 1 : -1;
        double from = more ? interval.lower() : -interval.upper();
        double to = more ? interval.upper() : -interval.lower();
        String by = change(contrast.trait(), sign * contrast.difference());
        return LearnedText.DIFFERENCE.say(
                (more ? LearnedText.MORE : LearnedText.LESS).say(by),
                change(contrast.trait(), from),
                change(contrast.trait(), to));
    }

    private String value(Trait trait, double value) {
        return trait.unit() == Trait.Unit.MINUTES ? minutes(value) : units.withUnit(value);
    }

    private String change(Trait trait, double difference) {
        return trait.unit() == Trait.Unit.MINUTES ? minutes(difference) : units.difference(difference);
    }

    private static String minutes(double minutes) {
        return LearnedText.MINUTES.say(Units.format("%.1f", minutes));
    }

    private static String chance(double chance) {
        return chance < 0.001
                ? LearnedText.LESS_THAN_A_TENTH_OF_A_PERCENT.say()
                : LearnedText.PERCENT.say(Units.format("%.1f", 100 * chance));
    }

    private String suggestion(Comparison comparison) {
        if (comparison.suggestion().isPresent()) {
            return LearnedText.SUGGESTION.say(toTry(comparison.suggestion().get()));
        }
        return switch (comparison.says()) {
            case TOO_FEW ->
                LearnedText.LOOKS_NEEDED.say(
                        Integer.toString(comparison.looksNeeded()),
                        Integer.toString(comparison.markedNeeded()),
                        Integer.toString(comparison.fineNeeded()));
            case NOTHING -> LearnedText.SUGGESTION_NONE.say();
            case DIFFERS -> LearnedText.SUGGESTION_OUTSIDE.say();
        };
    }

    private String toTry(Suggestion suggestion) {
        boolean most = suggestion.way() == Suggestion.Way.AT_MOST;
        boolean with = suggestion.way() == Suggestion.Way.WITH;
        String value = suggestion.trait().unit() == Trait.Unit.MINUTES
                ? LearnedText.MINUTES.say(Units.format("%.0f", suggestion.value()))
                : units.withUnit(suggestion.value());
        return switch (suggestion.trait()) {
            case HEAT -> most ? LearnedText.TRY_HEAT_AT_MOST.say(value) : LearnedText.TRY_HEAT_AT_LEAST.say(value);
            case LOWEST ->
                most ? LearnedText.TRY_LOWEST_AT_MOST.say(value) : LearnedText.TRY_LOWEST_AT_LEAST.say(value);
            case COOL_MINUTES ->
                most
                        ? LearnedText.TRY_COOL_MINUTES_AT_MOST.say(value)
                        : LearnedText.TRY_COOL_MINUTES_AT_LEAST.say(value);
            case POURING ->
                most ? LearnedText.TRY_POURING_AT_MOST.say(value) : LearnedText.TRY_POURING_AT_LEAST.say(value);
            case SEED -> with ? LearnedText.TRY_SEED.say() : LearnedText.TRY_NO_SEED.say();
            case FRIDGE -> with ? LearnedText.TRY_FRIDGE.say() : LearnedText.TRY_NO_FRIDGE.say();
        };
    }

    /** For scripts: temperatures in °C, times in minutes, shares from 0 to 1. */
    public static JsonLine json(Comparison comparison) {
        JsonLine line = new JsonLine()
                .text("says", comparison.says().word())
                .whole("marked", comparison.marked())
                .whole("fine", comparison.fine())
                .whole("least_each", Comparison.LEAST_EACH)
                .whole("looks_needed", comparison.looksNeeded())
                .objects(
                        "compared",
                        comparison.contrasts().stream()
                                .map(ComparisonWords::json)
                                .toList())
                .texts(
                        "not_compared",
                        comparison.untold().stream().map(Trait::word).toList());
        return comparison
                .suggestion()
                .map(s -> line.object(
                        "suggestion",
                        new JsonLine()
                                .text("what", s.trait().word())
                                .text("way", s.way().word())
                                .number("value", s.value(), PLACES)))
                .orElseGet(() -> line.raw("suggestion", "null"));
    }

    private static JsonLine json(Contrast contrast) {
        JsonLine line = new JsonLine()
                .text("what", contrast.trait().word())
                .whole("marked", contrast.marked())
                .whole("fine", contrast.fine())
                .number("marked_middle", contrast.markedMiddle(), PLACES)
                .number("fine_middle", contrast.fineMiddle(), PLACES)
                .number("difference", contrast.difference(), PLACES);
        contrast.interval()
                .ifPresent(span -> line.number("lower", span.lower(), PLACES).number("upper", span.upper(), PLACES));
        return line.number("chance", contrast.chance(), CHANCE_PLACES)
                .number("corrected", contrast.corrected(), CHANCE_PLACES)
                .raw("claimed", Boolean.toString(contrast.isClaimed()));
    }
}
