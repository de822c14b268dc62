package fifthform.monitor.intake;

import fifthform.curves.check.Parsed;
import fifthform.curves.check.Problem;
import fifthform.curves.input.Input;
import fifthform.curves.input.MakerAction;
import fifthform.curves.input.ProbeFault;
import fifthform.curves.input.ProbeFault.Cause;
import fifthform.curves.input.Sample;
import fifthform.curves.setup.ProbeId;
import fifthform.monitor.intake.CsvColumns.Column;
import fifthform.monitor.json.Decimal;
import fifthform.monitor.texts.DidYouMean;
import fifthform.monitor.texts.FileText;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** Turns the cells of one row after the other into inputs; remembers the time of the row before. */
final class CsvRowReader {
    /** A value that is rounded to a step is off by a rectangular spread: its standard deviation is the step / √12. */
    private static final double STEPS_A_SIGMA = 3.4641016151377544;
    /** Far beyond any batch and well within what an instant holds, s. */
    private static final BigDecimal LONGEST_SECONDS = BigDecimal.valueOf(9_000_000_000L);

    private final String name;
    private final CsvColumns columns;
    private final CsvLayout layout;
    private Instant start;
    private Optional<OffsetDateTime> began = Optional.empty();
    private boolean seconds;
    private BigDecimal lastSeconds = LONGEST_SECONDS.negate();

    CsvRowReader(String name, CsvColumns columns, Instant start, CsvLayout layout) {
        this.name = name;
        this.columns = columns;
        this.start = start;
        this.layout = layout;
        this.seconds = columns.has(Column.TIME_S);
    }

    Optional<OffsetDateTime> began() {
        return began;
    }

    /** Seconds since the start; the first row decides whether the column says seconds or date and time. */
    private Optional<CsvNumber> time(String cell) {
        if (seconds) return number(cell);
        if (began.isEmpty() && number(cell).isPresent()) {
            seconds = true;
            return number(cell);
        }
        Optional<OffsetDateTime> at = CsvTime.of(cell, layout.zone());
        if (at.isPresent() && began.isEmpty()) {
            began = at;
            start = at.get().toInstant();
        }
        return at.map(OffsetDateTime::toInstant)
                .map(instant -> Duration.between(start, instant))
                .map(since -> new CsvNumber(BigDecimal.valueOf(since.getSeconds())
                        .add(BigDecimal.valueOf(since.getNano(), 9))
                        .stripTrailingZeros()));
    }

    /** A number, with the decimals of the table's language. */
    private Optional<CsvNumber> number(String cell) {
        boolean comma = layout.decimals() == CsvLayout.Decimals.COMMA && cell.matches("[-+]?\\d+,\\d+");
        return CsvNumber.of(comma ? cell.replace(',', '.') : cell);
    }

    /** The row, or why it cannot be placed in time and so cannot be used at all. */
    Parsed<CsvRow> read(long line, List<String> cells) {
        String where = FileText.LINE.say(name, line);
        Column timed = columns.has(Column.TIME_S) ? Column.TIME_S : Column.TIME;
        String timeCell = columns.cell(timed, cells);
        Optional<CsvNumber> time = time(timeCell);
        if (time.isEmpty() || time.get().value().abs().compareTo(LONGEST_SECONDS) >= 0) {
            return Parsed.refused(
                    where,
                    FileText.IS_WHICH_IS_THE_ROW_IS.say(
                            timed.word(),
                            timeCell,
                            timed == Column.TIME ? FileText.NO_TIME.say() : FileText.NO_NUMBER_OF_SECONDS.say()),
                    began.isPresent() || timed == Column.TIME && !seconds
                            ? FileText.WRITE_DATE_AND_TIME_AS_2026.say()
                            : FileText.WRITE_SECONDS_SINCE_THE_START.say());
        }
        boolean cutInTwo = cells.stream().skip(columns.count()).anyMatch(cell -> !cell.isBlank());
        if (cutInTwo) {
            return Parsed.refused(
                    where,
                    FileText.IT_HAS_CELLS_AND_THE_HEADER.say(cells.size(), columns.count()),
                    FileText.WRITE_DECIMALS_WITH_A_POINT_30.say());
        }
        BigDecimal seconds = time.get().value();
        if (seconds.compareTo(lastSeconds) < 0) {
            return Parsed.refused(
                    where,
                    FileText.ITS_TIME_S_IS_BEFORE_THAT.say(timeCell, lastSeconds.toPlainString()),
                    FileText.PUT_THE_ROWS_IN_THE_ORDER.say());
        }
        lastSeconds = seconds;
        Instant at = start.plusNanos(
                seconds.setScale(9, RoundingMode.HALF_UP).movePointRight(9).longValueExact());
        return Parsed.accepted(
                row(new RowParts(where, at, cells), line, time.get().jsonText(timeCell)));
    }

    private record RowParts(String where, Instant at, List<String> cells) {}

    private CsvRow row(RowParts row, long line, String timeText) {
        List<Input> inputs = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        events(row, inputs, problems);
        temperature(Column.ROOM_C, CsvTape.ROOM, row, inputs, problems);
        temperature(Column.ROOM_F, CsvTape.ROOM, row, inputs, problems);
        temperature(Column.BATH_F, CsvTape.BATH, row, inputs, problems);
        temperature(Column.BATH_C, CsvTape.BATH, row, inputs, problems);
        // The chocolate comes last, so that what is said at its reading knows the whole row.
        temperature(Column.TEMPERATURE_C, CsvTape.BOWL, row, inputs, problems);
        temperature(Column.TEMPERATURE_F, CsvTape.BOWL, row, inputs, problems);
        return new CsvRow(line, timeText, row.at, inputs, problems);
    }

    private void events(RowParts row, List<Input> inputs, List<Problem> problems) {
        String cell = columns.cell(Column.EVENT, row.cells);
        if (cell.isEmpty()) return;
        for (String word : cell.toLowerCase(Locale.ROOT).split("[\\s;]+")) {
            Optional<MakerAction> action = CsvEvents.action(word, row.at);
            action.ifPresent(inputs::add);
            if (action.isPresent()) continue;
            problems.add(new Problem(
                    row.where,
                    FileText.EVENT_IS_NOT_KNOWN_AND_LEFT.say(word),
                    FileText.KNOWN.say(DidYouMean.oneOf(CsvEvents.WORDS, word), String.join(", ", CsvEvents.WORDS))));
        }
    }

    private void temperature(Column column, ProbeId probe, RowParts row, List<Input> inputs, List<Problem> problems) {
        String cell = columns.cell(column, row.cells);
        if (CsvNumber.isNone(cell)) return;
        Optional<CsvNumber> number = number(cell);
        if (number.isEmpty()) {
            inputs.add(new ProbeFault(row.at, probe, Cause.GARBLED));
            problems.add(new Problem(
                    row.where,
                    FileText.IS_WHICH_IS_NO_NUMBER_IT.say(column.word(), cell),
                    cell.matches("[-+]?\\d+,\\d+")
                            ? FileText.WRITE_DECIMALS_AFTER_A_POINT.say(cell.replace(',', '.'))
                            : FileText.WRITE_A_NUMBER_OR_NOTHING.say()));
            return;
        }
        Input reading = reading(column, probe, row.at, number.get());
        inputs.add(reading);
        if (reading instanceof ProbeFault) {
            problems.add(new Problem(
                    row.where,
                    FileText.IS_WHICH_NO_KITCHEN_HAS_IT.say(column.word(), cell),
                    FileText.WRITE_WHAT_WAS_MEASURED_FROM.say()));
        }
    }

    private static Input reading(Column column, ProbeId probe, Instant at, CsvNumber number) {
        boolean fahrenheit = column == Column.TEMPERATURE_F || column == Column.BATH_F || column == Column.ROOM_F;
        double celsius = fahrenheit ? Decimal.rounded((number.value().doubleValue() - 32) * 5 / 9) : number.rounded();
        double resolutionKelvin = fahrenheit ? number.resolution() * 5 / 9 : number.resolution();
        if (!(celsius >= Sample.LOWEST_CELSIUS && celsius <= Sample.HIGHEST_CELSIUS)) {
            return new ProbeFault(at, probe, Cause.OUT_OF_RANGE);
        }
        return new Sample(
                at, probe, celsius, resolutionKelvin / STEPS_A_SIGMA, OptionalDouble.empty(), OptionalDouble.empty());
    }
}
