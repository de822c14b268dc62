package fifthform.curves.recipe;

import fifthform.curves.check.Parsed;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Numbers with units in a recipe's text. Values are kept as decimals of at most six places, so that writing and reading
 * them again gives the same number.
 */
final class RecipeQuantity {
    private static final Pattern SHAPE = Pattern.compile("(\\S+?)\\s*(%|°?\\s?[CcFf]|min|s)?");
    private static final Pattern NUMBER = Pattern.compile("[-+]?(\\d{1,9}(\\.\\d{0,30})?|\\.\\d{1,30})");
    private static final int PLACES = 6;
    private static final BigDecimal SIXTY = BigDecimal.valueOf(60);
    /** Longest hold that is no slip of the pen, s: a day. */
    private static final BigDecimal LONGEST_SECONDS = BigDecimal.valueOf(86_400);

    private RecipeQuantity() {}

    /** The value of a line in %, °C or s. */
    static Parsed<BigDecimal> read(RecipeLine line) {
        Matcher shape = SHAPE.matcher(line.value());
        if (!shape.matches()) return notANumber(line);
        String number = shape.group(1);
        if (!NUMBER.matcher(number).matches()) return notANumber(line);
        String unit = shape.group(2) == null
                ? ""
                : shape.group(2).replaceAll("[°\\s]", "").toLowerCase(Locale.ROOT);
        BigDecimal value = new BigDecimal(number);
        return switch (line.key().kind) {
            case PERCENT -> unit.equals("%") ? within(line, value, 0, 100) : wrongUnit(line, "%");
            case CELSIUS -> celsius(line, value, unit);
            case SECONDS -> seconds(line, value, unit);
            case ID, TEXT -> throw new IllegalArgumentException(line.key() + " holds no number");
        };
    }

    /** A number as it stands in a recipe: at most six places, no trailing zeros, the same on every JDK. */
    static String write(BigDecimal value) {
        BigDecimal trimmed = rounded(value).stripTrailingZeros();
        return trimmed.signum() == 0 ? "0" : trimmed.toPlainString();
    }

    static BigDecimal rounded(BigDecimal value) {
        return value.setScale(PLACES, RoundingMode.HALF_UP);
    }

    private static Parsed<BigDecimal> celsius(RecipeLine line, BigDecimal value, String unit) {
        return switch (unit) {
            case "c" -> within(line, value, -20, 150);
            case "f" ->
                within(
                        line,
                        value.subtract(BigDecimal.valueOf(32))
                                .multiply(BigDecimal.valueOf(5))
                                .divide(BigDecimal.valueOf(9), PLACES, RoundingMode.HALF_UP),
                        -20,
                        150);
            default -> wrongUnit(line, "C or F");
        };
    }

    private static Parsed<BigDecimal> seconds(RecipeLine line, BigDecimal value, String unit) {
        return switch (unit) {
            case "s" -> within(line, value, 0, LONGEST_SECONDS.intValueExact());
            case "min" -> within(line, value.multiply(SIXTY), 0, LONGEST_SECONDS.intValueExact());
            default -> wrongUnit(line, "min or s");
        };
    }

    private static Parsed<BigDecimal> within(RecipeLine line, BigDecimal value, int low, int high) {
        BigDecimal kept = rounded(value);
        if (kept.compareTo(BigDecimal.valueOf(low)) < 0 || kept.compareTo(BigDecimal.valueOf(high)) > 0) {
            String unit = switch (line.key().kind) {
                case PERCENT -> "%";
                case CELSIUS -> "C";
                default -> "s";
            };
            return Parsed.refused(
                    line.where(),
                    "\"" + line.key().word() + "\" is " + line.value() + ".",
                    "Give a value from " + low + " to " + high + " " + unit + ".");
        }
        return Parsed.accepted(kept);
    }

    private static Parsed<BigDecimal> notANumber(RecipeLine line) {
        String whatToDo = line.value().matches("\\d+,\\d+.*")
                ? "Write the decimals after a point: " + line.value().replace(',', '.')
                : "Write a number and its unit, for example: " + line.key().word() + " = " + line.key().kind.example;
        return Parsed.refused(
                line.where(),
                "\"" + line.value() + "\" for \"" + line.key().word() + "\" is not a number with its unit.",
                whatToDo);
    }

    private static Parsed<BigDecimal> wrongUnit(RecipeLine line, String units) {
        return Parsed.refused(
                line.where(),
                "\"" + line.key().word() + "\" needs its unit: " + units + "; it says \"" + line.value() + "\".",
                "Write for example: " + line.key().word() + " = " + line.key().kind.example);
    }
}
