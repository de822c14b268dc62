package fifthform.monitor.model;

import fifthform.curves.review.Cause;
import fifthform.curves.review.Cause.Said;
import fifthform.curves.review.Causes;
import fifthform.monitor.settings.Units;
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
            lines.add((lines.isEmpty() ? "What went wrong first: " : "Then: ") + line(fault) + ".");
        }
        if (lines.isEmpty()) lines.add("What went wrong first: nothing, as far as the temperatures tell.");
        causes.all().stream()
                .filter(c -> c.weight() == Cause.Weight.REMARK)
                .forEach(c -> lines.add("Also: " + line(c) + "."));
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
            case MELTED_TOO_COOL ->
                "melted too cool: " + celsius(cause) + " at most, old crystals are surely erased from " + limit(cause)
                        + " on";
            case MELTED_TOO_SHORT -> "melted too shortly: hot for " + off(cause) + " only";
            case MELTED_TOO_HOT -> "melt too hot: " + celsius(cause) + ", it scorches above " + limit(cause);
            case COOLED_TOO_LITTLE ->
                "cooled too little: " + celsius(cause) + " was the coolest, crystals form below " + limit(cause);
            case HELD_TOO_SHORT ->
                "held in the cool too shortly: " + off(cause) + ", too few crystals as the model has it";
            case COOLED_TOO_DEEP ->
                "cooled too deep: " + celsius(cause) + " at the coolest, " + lasted(cause) + " below " + limit(cause);
            case COOLED_TOO_LONG -> "cooled too long: " + off(cause) + ", and thick by then as the model has it";
            case NOT_STIRRED -> "not stirred while it cooled" + stillFor(cause);
            case BATH_TOO_HOT -> "bath too hot: " + celsius(cause) + ", planned was " + limit(cause);
            case LIFTED_LATE ->
                "lifted " + off(cause) + " late; it went to " + celsius(cause) + ", the working range ends at "
                        + limit(cause);
            case OVERSHOT -> "too warm: " + celsius(cause) + " at most, " + lasted(cause) + " above " + limit(cause);
            case SEED_LOST -> "seed likely lost: " + celsius(cause) + " up to then, as the model has it";
            case WORKED_TOO_COOL ->
                "too cool to work: " + celsius(cause) + ", " + lasted(cause) + " well below " + limit(cause);
            case PROBE_OUT -> "probe out of the chocolate for " + lasted(cause) + ": nothing was watched";
            case PROBE_FAULTY -> "probe or wire faulty for " + lasted(cause);
            case READINGS_DOUBTFUL -> "readings not to be trusted for " + lasted(cause);
            case READINGS_MISSING -> "no readings for " + lasted(cause);
            case CUE_IGNORED -> "a cue that nobody followed for " + lasted(cause);
            case UNFINISHED -> "ended before it came to the working range";
            case NOT_PROVED -> "not proved: nobody told of a sample";
        };
    }

    private String said(Cause cause) {
        if (!(cause.said() instanceof Said.Told told)) {
            return cause.kind() == Cause.Kind.LIFTED_LATE ? "; the screen had not said it yet" : "";
        }
        return switch (cause.kind()) {
            case LIFTED_LATE, COOLED_TOO_DEEP, CUE_IGNORED ->
                "; “" + told.word().replace('-', ' ') + "” stood since " + clock(told.at());
            default -> "";
        };
    }

    private static String stillFor(Cause cause) {
        return cause.off()
                .filter(d -> d.toSeconds() > 0)
                .map(d -> ": seen at rest for " + Spans.words(d))
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
