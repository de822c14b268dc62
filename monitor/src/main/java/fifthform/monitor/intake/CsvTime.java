package fifthform.monitor.intake;

import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.temporal.TemporalAccessor;
import java.util.Locale;
import java.util.Optional;

/** Date and time of day as ISO 8601 has it, a {@code T} or a space between them, an offset behind them or none. */
final class CsvTime {
    private static final DateTimeFormatter FORM = new DateTimeFormatterBuilder()
            .parseCaseInsensitive()
            .append(DateTimeFormatter.ISO_LOCAL_DATE)
            .appendPattern("['T'][' ']")
            .append(DateTimeFormatter.ISO_LOCAL_TIME)
            .optionalStart()
            .appendOffsetId()
            .optionalEnd()
            .toFormatter(Locale.ROOT);

    private CsvTime() {}

    /** The cell's time; by the clock of {@code zone} where it has no offset. */
    static Optional<OffsetDateTime> of(String cell, ZoneId zone) {
        try {
            TemporalAccessor read = FORM.parseBest(cell, OffsetDateTime::from, LocalDateTime::from);
            if (read instanceof OffsetDateTime at) return Optional.of(at);
            LocalDateTime local = (LocalDateTime) read;
            ZoneOffset offset = zone.getRules().getOffset(local);
            return Optional.of(local.atOffset(offset));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
