package fifthform.monitor.app;

import fifthform.curves.setup.Bowl;
import fifthform.monitor.intake.CsvLayout;
import fifthform.monitor.intake.CsvLayout.Scale;
import fifthform.monitor.texts.CommandText;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine.Option;

/** What a table of readings does not say of itself. */
final class TableOptions {
    @Option(names = "--chocolate", paramLabel = "ID", defaultValue = "dark")
    private String chocolate;

    @Option(names = "--bowl", paramLabel = "NAME")
    private String bowl;

    @Option(names = "--amount", paramLabel = "GRAMS")
    private Double amountGrams;

    @Option(names = "--start", paramLabel = "TIME")
    private String start;

    @Option(names = "--time", paramLabel = "COLUMN")
    private String time;

    @Option(names = "--temperature", paramLabel = "COLUMN")
    private String temperature;

    @Option(names = "--bath", paramLabel = "COLUMN")
    private String bath;

    @Option(names = "--room", paramLabel = "COLUMN")
    private String room;

    @Option(names = "--scale", paramLabel = "c|f", defaultValue = "c")
    private String scale;

    @Option(names = "--skip-bad-rows")
    private boolean skipBadRows;

    boolean skipsBadRows() {
        return skipBadRows;
    }

    String chocolate() {
        return chocolate;
    }

    Bowl bowl() throws Refusal {
        if (amountGrams != null && !(amountGrams >= Bowl.LEAST_GRAMS && amountGrams <= Bowl.MOST_GRAMS))
            throw new Refusal(Exit.NOT_UNDERSTOOD, CommandText.AMOUNT_WAS_NOTHING_WAS_TAKEN.say(amountGrams));
        OptionalDouble grams = amountGrams == null ? OptionalDouble.empty() : OptionalDouble.of(amountGrams);
        return Setups.bowl(bowl == null ? Bowl.ANY.id() : bowl, grams);
    }

    CsvLayout layout(String text, ZoneId zone) throws Refusal {
        if (!scale.equals("c") && !scale.equals("f"))
            throw new Refusal(Exit.NOT_UNDERSTOOD, CommandText.SCALE_WAS_NOTHING_WAS_TAKEN_IN.say(scale));
        Scale named = scale.equals("f") ? Scale.FAHRENHEIT : Scale.CELSIUS;
        return CsvLayout.of(text, zone)
                .with(
                        Optional.ofNullable(time),
                        Optional.ofNullable(temperature),
                        Optional.ofNullable(bath),
                        Optional.ofNullable(room),
                        named);
    }

    /** When it began, where that was said; by the clock of {@code zone} where no offset was. */
    Optional<OffsetDateTime> start(ZoneId zone) throws Refusal {
        if (start == null) return Optional.empty();
        try {
            return Optional.of(OffsetDateTime.parse(start));
        } catch (DateTimeException e) {
            // Without an offset, then.
        }
        try {
            LocalDateTime local = LocalDateTime.parse(start);
            return Optional.of(local.atOffset(zone.getRules().getOffset(local)));
        } catch (DateTimeException e) {
            throw new Refusal(Exit.NOT_UNDERSTOOD, CommandText.START_WAS_NOTHING_WAS_TAKEN_IN.say(start));
        }
    }
}
