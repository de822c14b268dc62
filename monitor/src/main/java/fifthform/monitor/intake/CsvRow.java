package fifthform.monitor.intake;

import fifthform.curves.check.Problem;
import fifthform.curves.input.Input;
import java.time.Instant;
import java.util.List;
import java.util.Objects;

/**
 * One row of a table of readings.
 *
 * @param line where it begins in the file, 1 for the first line
 * @param timeText its time as the file writes it, always a JSON number
 * @param at the same as an instant
 * @param inputs what the engine is to be given, in order: what the maker did, then room, bath and bowl
 * @param problems cells that could not be understood; the others are used
 */
public record CsvRow(long line, String timeText, Instant at, List<Input> inputs, List<Problem> problems) {
    public CsvRow {
        Objects.requireNonNull(timeText, "timeText");
        Objects.requireNonNull(at, "at");
        inputs = List.copyOf(inputs);
        problems = List.copyOf(problems);
    }
}
