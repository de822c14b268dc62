package fifthform.monitor.bars;

import fifthform.curves.setting.StoreEvent;
import fifthform.curves.setting.StoreRecord;
import fifthform.monitor.model.Spans;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.BarsText;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** What is said of a store. */
public final class StoreWords {
    private final Units units;

    public StoreWords(Units units) {
        this.units = Objects.requireNonNull(units, "units");
    }

    /** One event. */
    public String of(StoreEvent event) {
        double figure = event.celsius().orElse(Double.NaN);
        String celsius = Double.isNaN(figure) ? "" : units.withUnit(figure);
        return switch (event.kind()) {
            case NEARLY_WARM ->
                BarsText.IT_IS_AND_BARS_BLOOM_ABOVE.say(
                        celsius,
                        units.plain(24),
                        units.symbol(),
                        event.time()
                                .map(t -> BarsText.IF_IT_CLIMBS_AS_IN_THE.say(Spans.words(t)))
                                .orElse(""));
            case WARM -> BarsText.IT_IS_BARS_BLOOM_AT_THIS.say(celsius);
            case MELTING -> BarsText.IT_IS_THE_GOOD_CRYSTALS.say(celsius);
            case COOL_AGAIN -> BarsText.COOL_AGAIN.say(celsius);
            case SWINGS -> BarsText.WITHIN_A_DAY_IT_SWUNG_BY.say(units.difference(figure), units.difference(3));
            case COLD -> BarsText.IT_IS_WHAT_IS_TAKEN_OUT.say(celsius);
            case SILENT -> BarsText.NO_READING_FOR_TEN_MINUTES.say();
            case READS_AGAIN -> BarsText.IT_READS_AGAIN.say(celsius);
        };
    }

    /** The figures. */
    public List<String> of(StoreRecord record) {
        if (record.isEmpty()) return List.of(BarsText.NOTHING_WAS_READ_YET.say());
        List<String> lines = new ArrayList<>();
        lines.add(BarsText.WATCHED_FOR_TO_WITHIN_A_DAY.say(
                Spans.words(record.watched()),
                units.oneDecimal(record.lowestCelsius()),
                units.withUnit(record.highestCelsius()),
                units.difference(record.largestSwingKelvin())));
        lines.add(BarsText.ABOVE_ABOVE_ABOVE.say(
                units.plain(20),
                units.symbol(),
                hours(record.aboveRecommended()),
                units.plain(24),
                hours(record.aboveLimit()),
                units.plain(28),
                hours(record.melting())));
        if (record.unread().compareTo(Duration.ofMinutes(10)) > 0)
            lines.add(BarsText.FOR_BETWEEN_READINGS_NOTHING.say(Spans.words(record.unread())));
        return lines;
    }

    private static String hours(Duration time) {
        return time.isZero() ? BarsText.NEVER.say() : Spans.words(time);
    }
}
