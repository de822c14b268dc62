package fifthform.monitor.app;

import fifthform.monitor.texts.CommandText;
import fifthform.curves.setup.Bowl;
import fifthform.monitor.intake.CsvLayout;
import fifthform.monitor.intake.CsvLayout.Scale;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine.Option;

/** What a table of readings does not say of itself. */
final class TableOptions {
    @Option(
            names = "--chocolate",
            paramLabel = "ID",
            defaultValue = "dark",
            description = "of a table: its recipe; default dark")
    private String chocolate;

    @Option(names = "--bowl", paramLabel = "NAME", description = "of a table: your name for the bowl")
    private String bowl;

    @Option(names = "--amount", paramLabel = "GRAMS", description = "of a table: chocolate in the bowl, 10 to 20000 g")
    private Double amountGrams;

    @Option(
            names = "--start",
            paramLabel = "TIME",
            description = "of a table that has only seconds: when it began, for example 2026-01-31T10:15")
    private String start;

    @Option(
            names = "--time",
            paramLabel = "COLUMN",
            description = "of a table: the column with seconds, or with date and time; otherwise time_s or time")
    private String time;

    @Option(
            names = "--temperature",
            paramLabel = "COLUMN",
            description = "of a table: the column with the chocolate; otherwise temperature_c or temperature_f")
    private String temperature;

    @Option(names = "--bath", paramLabel = "COLUMN", description = "of a table: the column with the water")
    private String bath;

    @Option(names = "--room", paramLabel = "COLUMN", description = "of a table: the column with the room")
    private String room;

    @Option(
            names = "--scale",
            paramLabel = "c|f",
            defaultValue = "c",
            description = "of a table: the scale of the columns that you named; default c")
    private String scale;

    @Option(
            names = "--skip-bad-rows",
            description = "of a table: take the others in where some rows cannot be used; otherwise nothing is")
    private boolean skipBadRows;

    boolean skipsBadRows() {
        return skipBadRows;
    }

    String chocolate() {
        return chocolate;
    }

    Bowl bowl() throws Refusal {
        if (amountGrams != null && !(amountGrams >= 10 && amountGrams <= 20_000))
            throw new Refusal(
                    Exit.NOT_UNDERSTOOD, CommandText.AMOUNT_WAS_NOTHING_WAS_TAKEN.say(amountGrams));
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
            throw new Refusal(
                    Exit.NOT_UNDERSTOOD,
                    CommandText.START_WAS_NOTHING_WAS_TAKEN_IN.say(start));
        }
    }
}
