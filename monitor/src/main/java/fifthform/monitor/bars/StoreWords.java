package fifthform.monitor.bars;

import fifthform.curves.setting.StoreEvent;
import fifthform.curves.setting.StoreRecord;
import fifthform.monitor.model.Spans;
import fifthform.monitor.settings.Units;
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
                "It is " + celsius + ", and bars bloom above " + units.plain(24) + " " + units.symbol() + ". "
                        + event.time()
                                .map(t -> "If it climbs as in the last hour, that is in about " + Spans.words(t) + ". ")
                                .orElse("")
                        + "Carry them to a cooler place.";
            case WARM -> "It is " + celsius + ": bars bloom at this. Carry them to a cooler place.";
            case MELTING -> "It is " + celsius + ": the good crystals themselves begin to melt.";
            case COOL_AGAIN -> "Cool again, " + celsius + ".";
            case SWINGS ->
                "Within a day it swung by " + units.difference(figure) + "; more than " + units.difference(3)
                        + " makes bloom in time. A box in a box evens it out.";
            case COLD ->
                "It is " + celsius
                        + ": what is taken out of here gets wet. Keep bars closed until they are as warm as the room.";
            case SILENT -> "No reading for ten minutes. Look at the plug; what was read is kept.";
            case READS_AGAIN -> "It reads again, " + celsius + ".";
        };
    }

    /** The figures. */
    public List<String> of(StoreRecord record) {
        if (record.isEmpty()) return List.of("Nothing was read yet.");
        List<String> lines = new ArrayList<>();
        lines.add("Watched for " + Spans.words(record.watched()) + ": " + units.oneDecimal(record.lowestCelsius())
                + " to " + units.withUnit(record.highestCelsius()) + ", within a day by "
                + units.difference(record.largestSwingKelvin()) + " at most.");
        lines.add(
                "Above " + units.plain(20) + " " + units.symbol() + ": " + hours(record.aboveRecommended()) + "; above "
                        + units.plain(24) + ": " + hours(record.aboveLimit()) + "; above " + units.plain(28) + ": "
                        + hours(record.melting()) + ".");
        if (record.unread().compareTo(Duration.ofMinutes(10)) > 0)
            lines.add("For " + Spans.words(record.unread()) + " between readings nothing is known.");
        return lines;
    }

    private static String hours(Duration time) {
        return time.isZero() ? "never" : Spans.words(time);
    }
}
