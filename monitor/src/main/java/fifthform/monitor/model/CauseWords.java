package fifthform.monitor.model;

import fifthform.curves.review.Cause;
import fifthform.curves.review.Cause.Said;
import fifthform.curves.review.Causes;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.CauseText;
import fifthform.monitor.texts.InWords;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/** What went wrong in a batch, in words: the first first, with time and figures. */
public final class CauseWords {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);

    private final Units units;
    private final ZoneId zone;

    public CauseWords(Units units, ZoneId zone) {
        this.units = Objects.requireNonNull(units, "units");
        this.zone = Objects.requireNonNull(zone, "zone");
    }

    /** The whole list, a line each; one line that says so where nothing went wrong. */
    public List<String> lines(Causes causes) {
        List<String> lines = new ArrayList<>();
        for (Cause fault : causes.faults()) {
            lines.add((lines.isEmpty() ? CauseText.WHAT_WENT_WRONG_FIRST.say() : CauseText.THEN.say()) + line(fault)
                    + ".");
        }
        if (lines.isEmpty()) lines.add(CauseText.WHAT_WENT_WRONG_FIRST_NOTHING.say());
        causes.all().stream()
                .filter(c -> c.weight() == Cause.Weight.REMARK)
                .forEach(c -> lines.add(CauseText.ALSO.say(line(c))));
        return lines;
    }

    /** One cause with its time, for example {@code 14:01:20, lifted 18 s late: …}. */
    public String line(Cause cause) {
        return clock(cause.at()) + ", " + whatAndSaid(cause);
    }

    /** The same without its time. */
    public String whatAndSaid(Cause cause) {
        return what(cause) + said(cause);
    }

    /** The same without its time and without what the screen had said. */
    public String what(Cause cause) {
        return switch (cause.kind()) {
            case MELTED_TOO_COOL -> CauseText.MELTED_TOO_COOL_AT_MOST_OLD.say(celsius(cause), limit(cause));
            case MELTED_TOO_SHORT -> CauseText.MELTED_TOO_SHORTLY_HOT_FOR.say(off(cause));
            case MELTED_TOO_HOT -> CauseText.MELT_TOO_HOT_IT_SCORCHES_ABOVE.say(celsius(cause), limit(cause));
            case COOLED_TOO_LITTLE -> CauseText.COOLED_TOO_LITTLE_WAS_THE.say(celsius(cause), limit(cause));
            case HELD_TOO_SHORT -> CauseText.HELD_IN_THE_COOL_TOO_SHORTLY.say(off(cause));
            case COOLED_TOO_DEEP ->
                CauseText.COOLED_TOO_DEEP_AT_THE_COOLEST.say(celsius(cause), lasted(cause), limit(cause));
            case COOLED_TOO_LONG -> CauseText.COOLED_TOO_LONG_AND_THICK_BY.say(off(cause));
            case NOT_STIRRED -> CauseText.NOT_STIRRED_WHILE_IT_COOLED.say(stillFor(cause));
            case BATH_TOO_HOT -> CauseText.BATH_TOO_HOT_PLANNED_WAS.say(celsius(cause), limit(cause));
            case LIFTED_LATE -> CauseText.LIFTED_LATE_IT_WENT_TO_THE.say(off(cause), celsius(cause), limit(cause));
            case OVERSHOT -> CauseText.TOO_WARM_AT_MOST_ABOVE.say(celsius(cause), lasted(cause), limit(cause));
            case SEED_LOST -> CauseText.SEED_LIKELY_LOST_UP_TO_THEN.say(celsius(cause));
            case WORKED_TOO_COOL ->
                CauseText.TOO_COOL_TO_WORK_WELL_BELOW.say(celsius(cause), lasted(cause), limit(cause));
            case PROBE_OUT -> CauseText.PROBE_OUT_OF_THE_CHOCOLATE_FOR.say(lasted(cause));
            case PROBE_FAULTY -> CauseText.PROBE_OR_WIRE_FAULTY_FOR.say(lasted(cause));
            case READINGS_DOUBTFUL -> CauseText.READINGS_NOT_TO_BE_TRUSTED_FOR.say(lasted(cause));
            case READINGS_MISSING -> CauseText.NO_READINGS_FOR.say(lasted(cause));
            case CUE_IGNORED -> CauseText.A_CUE_THAT_NOBODY_FOLLOWED_FOR.say(lasted(cause));
            case UNFINISHED -> CauseText.ENDED_BEFORE_IT_CAME_TO_THE.say();
            case NOT_PROVED -> CauseText.NOT_PROVED_NOBODY_TOLD_OF_A.say();
        };
    }

    private String said(Cause cause) {
        if (!(cause.said() instanceof Said.Told told)) {
            return cause.kind() == Cause.Kind.LIFTED_LATE ? CauseText.THE_SCREEN_HAD_NOT_SAID_IT.say() : "";
        }
        return switch (cause.kind()) {
            case LIFTED_LATE, COOLED_TOO_DEEP, CUE_IGNORED ->
                CauseText.STOOD_SINCE.say(InWords.cue(told.word()), clock(told.at()));
            default -> "";
        };
    }

    private static String stillFor(Cause cause) {
        return cause.off()
                .filter(d -> d.toSeconds() > 0)
                .map(d -> CauseText.SEEN_AT_REST_FOR.say(Spans.words(d)))
                .orElse("");
    }

    private String celsius(Cause cause) {
        return units.withUnit(cause.celsius().orElse(Double.NaN));
    }

    private String limit(Cause cause) {
        return units.plain(cause.limitCelsius().orElse(Double.NaN)) + " " + units.symbol();
    }

    private static String off(Cause cause) {
        return Spans.words(cause.off().orElse(Duration.ZERO));
    }

    private static String lasted(Cause cause) {
        return Spans.words(cause.lasted().orElse(Duration.ZERO));
    }

    private String clock(Instant at) {
        return CLOCK.format(at.atZone(zone));
    }
}
