package fifthform.monitor.app;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * A number of the command line. Java's own reading takes the letter of a Java literal along, so that {@code 95F}, meant as
 * degrees Fahrenheit, would silently be 95 °C.
 */
final class PlainDouble implements ITypeConverter<Double> {
    @Override
    public Double convert(String value) {
        boolean literal = value.matches(".*[fFdD]\\s*|\\s*[+-]?0[xX].*");
        try {
            if (!literal) return Double.valueOf(value);
        } catch (NumberFormatException e) {
            // Said below, in the words in which the library says it of other numbers.
        }
        throw new TypeConversionException("'" + value + "' is not a double");
    }
}
