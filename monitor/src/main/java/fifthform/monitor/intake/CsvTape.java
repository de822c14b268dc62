package fifthform.monitor.intake;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import fifthform.curves.check.Parsed;
import fifthform.curves.check.Problem;
import fifthform.curves.setup.ProbeId;
import fifthform.curves.setup.Role;
import fifthform.monitor.intake.CsvColumns.Column;
import fifthform.monitor.texts.FileText;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;

/**
 * A table of readings (CSV as in RFC 4180) as inputs, row by row: each row is given as soon as its line has ended, so
 * that another program can write the table while it is read. Lines that begin with {@code #} are remarks.
 */
public final class CsvTape implements AutoCloseable {
    /** The talk of a probe whose readings stood in a table. */
    public static final String TALK = "csv";

    /** The chocolate: {@code temperature_c} or {@code temperature_f}. */
    public static final ProbeId BOWL = new ProbeId("bowl");
    /** The water: {@code bath_c}. */
    public static final ProbeId BATH = new ProbeId("bath");
    /** The kitchen: {@code room_c}. */
    public static final ProbeId ROOM = new ProbeId("room");

    private final CsvReader<CsvRecord> csv;
    private final Iterator<CsvRecord> records;
    private final CsvColumns columns;
    private final CsvRowReader rows;
    private final String name;
    private boolean ended;

    private CsvTape(
            String name,
            CsvReader<CsvRecord> csv,
            Iterator<CsvRecord> records,
            CsvColumns columns,
            Instant start,
            CsvLayout layout) {
        this.name = name;
        this.csv = csv;
        this.records = records;
        this.columns = columns;
        this.rows = new CsvRowReader(name, columns, start, layout);
    }

    /**
     * Reads the header.
     *
     * @param name the file's name, for messages
     * @param text the table; closed by {@link #close}
     * @param start the instant of {@code time_s} 0
     * @return the tape, or what is wrong with the header
     * @throws IOException the text cannot be read
     */
    public static Parsed<CsvTape> open(String name, Reader text, Instant start) throws IOException {
        return open(name, text, start, CsvLayout.usual());
    }

    /**
     * Reads the header of a table that is laid out so.
     *
     * @param start the instant of second 0; the first row's own time takes its place where there is one
     */
    public static Parsed<CsvTape> open(String name, Reader text, Instant start, CsvLayout layout) throws IOException {
        CsvReader<CsvRecord> csv = CsvReader.builder()
                .fieldSeparator(layout.separator())
                .commentStrategy(CommentStrategy.SKIP)
                .skipEmptyLines(true)
                .allowMissingFields(true)
                .allowExtraFields(true)
                .ofCsvRecord(text);
        try {
            Iterator<CsvRecord> records = csv.iterator();
            if (!records.hasNext()) {
                return Parsed.refused(
                        name, FileText.IT_IS_EMPTY_NOTHING_TO_ANALYSE.say(), FileText.BEGIN_IT_WITH_A_LINE_LIKE.say());
            }
            return CsvColumns.of(name, records.next().getFields(), layout.named())
                    .fold(
                            columns -> Parsed.accepted(new CsvTape(name, csv, records, columns, start, layout)),
                            Parsed::refused);
        } catch (UncheckedIOException e) {
            throw e.getCause();
        } catch (CsvParseException e) {
            return Parsed.refused(List.of(notCsv(name)));
        }
    }

    /** What is measured in it, the chocolate first. */
    public List<Role> roles() {
        List<Role> roles = new ArrayList<>(List.of(Role.BOWL));
        if (columns.has(Column.BATH_C) || columns.has(Column.BATH_F)) roles.add(Role.BATH);
        if (columns.has(Column.ROOM_C) || columns.has(Column.ROOM_F)) roles.add(Role.ROOM);
        return List.copyOf(roles);
    }

    /**
     * Waits for the next row.
     *
     * @return the row, or why it had to be left out; empty at the end
     * @throws IOException the text cannot be read any further
     */
    public Optional<Parsed<CsvRow>> next() throws IOException {
        try {
            if (ended || !records.hasNext()) return Optional.empty();
            CsvRecord cells = records.next();
            return Optional.of(rows.read(cells.getStartingLineNumber(), cells.getFields()));
        } catch (UncheckedIOException e) {
            throw e.getCause();
        } catch (CsvParseException e) {
            // After this the library does not know where a row begins.
            ended = true;
            return Optional.of(Parsed.refused(List.of(notCsv(name))));
        }
    }

    /** The first row's own date and time with its offset; empty before it was read, and where times are seconds. */
    public Optional<OffsetDateTime> began() {
        return rows.began();
    }

    @Override
    public void close() throws IOException {
        csv.close();
    }

    private static Problem notCsv(String name) {
        return new Problem(name, FileText.IT_CANNOT_BE_READ_AS_A.say(), FileText.CHECK_THAT_IT_IS_TEXT_WITH.say());
    }
}
