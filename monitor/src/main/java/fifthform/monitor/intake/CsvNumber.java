package fifthform.monitor.intake;

import fifthform.monitor.json.Decimal;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * A number in a cell.
 *
 * @param value the number with all its digits
 */
record CsvNumber(BigDecimal value) {
    private static final Pattern SHAPE =
            Pattern.compile("[-+]?(\\d{1,30}(\\.\\d{0,30})?|\\.\\d{1,30})([eE][-+]?\\d{1,2})?");
    private static final Pattern JSON = Pattern.compile("-?(0|[1-9]\\d*)(\\.\\d+)?([eE][-+]?\\d+)?");
    /** How programs write that there is no value. */
    private static final Set<String> NONE = Set.of("", "nan", "na", "n/a", "null", "none", "-", "--");

    static boolean isNone(String cell) {
        return NONE.contains(cell.toLowerCase(Locale.ROOT));
    }

    static Optional<CsvNumber> of(String cell) {
        return SHAPE.matcher(cell).matches() ? Optional.of(new CsvNumber(new BigDecimal(cell))) : Optional.empty();
    }

    /** The cell's own text where JSON allows it, so that times are given back as they came. */
    String jsonText(String cell) {
        return JSON.matcher(cell).matches() ? cell : value.toPlainString();
    }

    double rounded() {
        return Decimal.rounded(value.doubleValue());
    }

    /** The step of the last digit, 1 to 0.000001. */
    double resolution() {
        return BigDecimal.ONE
                .movePointLeft(Math.min(Math.max(value.scale(), 0), Decimal.MOST_PLACES))
                .doubleValue();
    }
}
