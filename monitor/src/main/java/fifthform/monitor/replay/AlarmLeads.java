package fifthform.monitor.replay;

import fifthform.curves.engine.Event;
import fifthform.curves.engine.Event.AlarmRaised;
import fifthform.curves.input.AlarmId;
import fifthform.curves.recipe.Recipe;
import fifthform.monitor.model.Sides;
import fifthform.monitor.model.Spans;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.InWords;
import fifthform.monitor.texts.ReplayText;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The alarms of a batch with their lead: how long before the reading passed the line that an alarm warns of it was
 * raised. Counted in the readings as they were recorded; where melt-out was told before the reading showed it, which lags
 * behind the chocolate, until then.
 */
final class AlarmLeads {
    /** So long after its end a line that is passed still belongs to the alarm. Own choice: what forecasts look ahead. */
    private static final Duration STILL_ITS = Duration.ofSeconds(180);

    private final Recording recording;
    private final Units units;
    private final Clock clock;

    AlarmLeads(Recording recording, Units units, Clock clock) {
        this.recording = recording;
        this.units = units;
        this.clock = clock;
    }

    List<ListRow> rows() {
        List<Event> events =
                recording.told().stream().map(Recording.Told::event).toList();
        List<ListRow> rows = new ArrayList<>();
        for (int i = 0; i < events.size(); i++)
            if (events.get(i) instanceof AlarmRaised raised)
                rows.add(row(raised, events.subList(i + 1, events.size())));
        return rows;
    }

    private ListRow row(AlarmRaised raised, List<Event> after) {
        Optional<Instant> over = after.stream()
                .filter(e -> e instanceof Event.AlarmCleared c && c.alarm() == raised.alarm())
                .map(Event::at)
                .findFirst();
        Optional<Instant> seen = after.stream()
                .filter(e -> e instanceof Event.AlarmSeen s && s.alarm() == raised.alarm())
                .map(Event::at)
                .findFirst();
        List<String> detail = new ArrayList<>();
        lead(raised, over, after).ifPresent(detail::add);
        detail.add(over.map(o -> ReplayText.STOOD.say(span(raised.at(), o))).orElse(ReplayText.STOOD_TO_END.say()));
        seen.filter(s -> over.map(o -> !s.isAfter(o)).orElse(true))
                .ifPresent(s -> detail.add(ReplayText.SEEN_AFTER.say(span(raised.at(), s))));
        long nanos = recording.nanos(raised.at());
        return new ListRow(
                Optional.of(nanos),
                clock.time(nanos),
                ReplayText.ALARM_WORDS.say(InWords.of(raised.priority()), AlarmNames.of(raised.alarm())),
                String.join(" · ", detail),
                Optional.of(Happening.Sign.of(raised.priority(), Sides.of(raised.alarm()))));
    }

    private static String span(Instant from, Instant to) {
        return Spans.words(Duration.between(from, to));
    }

    /** The lead in words; empty for an alarm that speaks of no line to come. */
    private Optional<String> lead(AlarmRaised raised, Optional<Instant> over, List<Event> after) {
        OptionalDouble line = line(raised.alarm());
        if (line.isEmpty()) return Optional.empty();
        boolean above = raised.alarm() != AlarmId.HEADING_UNDER;
        long from = recording.nanos(raised.at());
        long to = over.map(o -> recording.nanos(o.plus(STILL_ITS))).orElse(recording.endNanos());
        String limit = units.withUnit(line.getAsDouble());
        Readings bowl = recording.bowl();
        int at = bowl.lastAt(from);
        if (at >= 0 && isPast(bowl.celsius(at), line.getAsDouble(), above))
            return Optional.of(ReplayText.LEAD_NONE.say(limit));
        long passed = warnsOfMeltOut(raised.alarm()) ? meltOutTold(after) : Long.MAX_VALUE;
        for (int i = Math.max(0, at); i < bowl.size() && bowl.nanos(i) < passed; i++)
            if (isPast(bowl.celsius(i), line.getAsDouble(), above)) passed = bowl.nanos(i);
        return Optional.of(
                passed > to
                        ? ReplayText.LEAD_NOT_PASSED.say(limit)
                        : ReplayText.LEAD.say(Spans.words(Duration.ofNanos(passed - from)), limit));
    }

    private static boolean warnsOfMeltOut(AlarmId alarm) {
        return alarm == AlarmId.OVER_RANGE || alarm == AlarmId.NEAR_MELT_OUT;
    }

    private long meltOutTold(List<Event> after) {
        return after.stream()
                .filter(e -> e instanceof AlarmRaised raised && raised.alarm() == AlarmId.MELT_OUT)
                .mapToLong(e -> recording.nanos(e.at()))
                .findFirst()
                .orElse(Long.MAX_VALUE);
    }

    private static boolean isPast(double celsius, double line, boolean above) {
        return above ? celsius > line : celsius < line;
    }

    /** What the alarm warns of, °C. */
    private OptionalDouble line(AlarmId alarm) {
        Recipe recipe = recording.setup().recipe();
        return switch (alarm) {
            case HEADING_OVER -> OptionalDouble.of(recipe.work().range().highCelsius());
            case OVER_RANGE, NEAR_MELT_OUT -> OptionalDouble.of(recipe.meltOut().limitCelsius());
            case HEADING_UNDER -> OptionalDouble.of(recipe.work().range().lowCelsius());
            case MELT_OUT,
                    TOO_COOL,
                    OVER_COOLED,
                    MELT_TOO_HOT,
                    BATH_HOT,
                    PROBE_FAULT,
                    NO_READING,
                    READING_DOUBTFUL,
                    NOT_RECORDING,
                    PROBE_OUT -> OptionalDouble.empty();
        };
    }
}
