package fifthform.monitor.notebook;

import fifthform.curves.learning.BarLook;
import fifthform.curves.learning.Bloom;
import fifthform.curves.learning.Sign;
import fifthform.monitor.looks.KeptLook;
import fifthform.monitor.looks.LookWords;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.InWords;
import fifthform.monitor.texts.NotebookText;
import java.time.Duration;
import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** What stands in the cells of a row. */
public final class RowWords {
    private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);
    private static final double DAY_HOURS = 24;

    private RowWords() {}

    /** When it began; its name where that is not known. */
    public static String when(BatchRow row) {
        return row.start().equals(Instant.EPOCH) ? row.name() : WHEN.format(row.when());
    }

    /** Day and chocolate: enough to know it by in a sentence. */
    static String inShort(BatchRow row) {
        return row.when().toLocalDate() + " " + row.chocolateId();
    }

    public static String chocolate(BatchRow row) {
        String name = row.chocolate().isEmpty() ? NotebookText.NOT_SAID.say() : row.chocolate();
        String kind = row.kind() == BatchKind.PRACTICE ? NotebookText.PRACTICE_OF.say(name) : name;
        if (row.beginning().isInTemper()) return NotebookText.ROW_IN_TEMPER.say(kind);
        return row.beginning().again().isPresent() ? NotebookText.ROW_AGAIN.say(kind) : kind;
    }

    /** What it began with; empty for a whole batch. */
    public static String beginning(BatchRow row) {
        if (row.beginning().isInTemper()) return NotebookText.BEGAN_IN_TEMPER.say();
        return row.beginning().again().map(NotebookText.MADE_AGAIN_FROM::say).orElse("");
    }

    /** The hold that was planned; empty where none was. */
    public static String hold(BatchRow row) {
        return row.holding()
                .map(plan ->
                        NotebookText.HOLD_PLANNED.say(Long.toString(minutes(plan.time())), InWords.of(plan.warmth())))
                .orElse("");
    }

    public static String bowl(BatchRow row) {
        return row.bowl().isEmpty() ? NotebookText.NOT_SAID.say() : row.bowl();
    }

    public static String amount(BatchRow row) {
        return row.amountGrams().isPresent()
                ? NotebookText.GRAMS.say(
                        Long.toString(Math.round(row.amountGrams().getAsDouble())))
                : NotebookText.NOT_SAID.say();
    }

    /** Whole minutes, without their unit. */
    public static String minutes(BatchRow row) {
        return row.counts() ? Long.toString(minutes(row.length())) : NotebookText.NOT_SAID.say();
    }

    static long minutes(Duration length) {
        return Math.round(length.toMillis() / 60_000.0);
    }

    /** With its unit. */
    public static String temperature(OptionalDouble celsius, Units units) {
        return celsius.isPresent() ? units.withUnit(celsius.getAsDouble()) : NotebookText.NOT_SAID.say();
    }

    public static String lowest(BatchRow row, Units units) {
        return temperature(row.figures().lowestCelsius(), units);
    }

    /** The working range its chocolate wanted. */
    public static String range(BatchRow row, Units units) {
        return Comparison.range(row, units);
    }

    /** How long it was above the working range. */
    public static String over(BatchRow row) {
        return Comparison.over(row);
    }

    public static String peak(BatchRow row, Units units) {
        return temperature(row.figures().peakCelsius(), units);
    }

    /** How it ended, with what the crystals were said to be. */
    public static String end(BatchRow row) {
        String word = end(row.end());
        String full = row.figures()
                .crystals()
                .filter(said -> row.counts())
                .map(said -> NotebookText.END_WITH_CRYSTALS.say(word, InWords.crystals(said)))
                .orElse(word);
        return switch (row.condition()) {
            case CUT_OFF -> NotebookText.END_CUT_OFF.say(full);
            case IN_PART -> NotebookText.END_IN_PART.say(full);
            case WHOLE, GOING_ON, UNREADABLE, UNREAD -> full;
        };
    }

    public static String end(Ended end) {
        return switch (end) {
            case UNREADABLE -> NotebookText.END_UNREADABLE.say();
            case UNREAD -> NotebookText.END_UNREAD.say();
            case GOING_ON -> NotebookText.END_GOING_ON.say();
            case SEED_LOST -> NotebookText.END_SEED_LOST.say();
            case MELT_OUT -> NotebookText.END_MELT_OUT.say();
            case OVER_RANGE -> NotebookText.END_OVER_RANGE.say();
            case NOT_COOLED -> NotebookText.END_NOT_COOLED.say();
            case UNFINISHED -> NotebookText.END_UNFINISHED.say();
            case IN_RANGE -> NotebookText.END_IN_RANGE.say();
        };
    }

    /** The looks, short: age and what was seen. */
    public static String looks(BatchRow row) {
        if (row.looks().isEmpty()) return row.counts() ? NotebookText.NO_LOOKS.say() : NotebookText.NOT_SAID.say();
        return row.looks().stream()
                .map(look -> NotebookText.LOOK_AT.say(age(look.look().ageHours()), seen(look.look())))
                .collect(Collectors.joining(" · "));
    }

    /** Whole days from a day on, for a short cell. */
    private static String age(double hours) {
        return hours < DAY_HOURS - 6
                ? LookWords.age(hours)
                : NotebookText.DAYS_SHORT.say(Math.max(1, Math.round(hours / DAY_HOURS)));
    }

    private static String seen(BarLook look) {
        if (look.sign() == Sign.CLEAN) return NotebookText.SEEN_CLEAN.say();
        List<String> parts = new ArrayList<>();
        if (!look.bloom().isEmpty() && !look.bloom().contains(Bloom.NONE))
            parts.add(look.bloom().stream().map(InWords::of).collect(Collectors.joining(", ")));
        look.snap().map(LookWords::of).ifPresent(parts::add);
        if (parts.isEmpty())
            parts.add(
                    look.bloom().contains(Bloom.NONE)
                            ? LookWords.of(Bloom.NONE)
                            : NotebookText.SEEN_NOTHING_SAID.say());
        return String.join(", ", parts);
    }

    /** All that a search goes through, in small letters. */
    static String all(BatchRow row, Units units) {
        List<String> parts = new ArrayList<>(List.of(
                row.name(),
                when(row),
                chocolate(row),
                row.chocolateId(),
                row.bowl(),
                beginning(row),
                hold(row),
                amount(row),
                row.kind() == BatchKind.REAL ? NotebookText.REAL.say() : NotebookText.PRACTICE.say(),
                peak(row, units),
                end(row),
                row.end().word(),
                looks(row),
                row.trouble()));
        for (KeptLook look : row.looks()) parts.add(LookWords.line(look));
        return String.join(" ", parts).toLowerCase(Locale.ROOT);
    }
}
