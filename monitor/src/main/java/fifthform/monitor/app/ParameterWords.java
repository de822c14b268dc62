package fifthform.monitor.app;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.ParameterException;

/** What was wrong with an option or a name, in words for people: the library speaks of types. */
final class ParameterWords {
    private static final Pattern NO_NUMBER = Pattern.compile(
            "Invalid value for [^']*(?:'(?<option>--[^'=]+)[^']*'|\\(<(?<name>[^>]+)>\\)|'(?<plain>[^']+)').*: "
                    + "'(?<value>.*)' is not an? (?<type>double|int|long)");
    private static final Pattern NO_CHOICE = Pattern.compile("Invalid value for option '(?<option>--[^'=]+)[^']*': "
            + "expected one of \\[(?<choices>.*)] \\(case-insensitive\\) but was '(?<value>.*)'");

    private static final Pattern NOT_EXPECTED = Pattern.compile("Unmatched argument at index \\d+: '(?<value>.*)'");

    private ParameterWords() {}

    static String of(ParameterException e) {
        Matcher number = NO_NUMBER.matcher(e.getMessage());
        if (number.matches()) {
            boolean large = number.group("value").matches("[+-]?\\d{10,}");
            String whole = number.group("type").equals("double")
                    ? "a number, for example 31.5"
                    : large ? "a smaller number" : "a whole number";
            return subject(number) + " was " + number.group("value") + ". Give " + whole + ".";
        }
        Matcher choice = NO_CHOICE.matcher(e.getMessage());
        if (choice.matches())
            return choice.group("option") + " was " + choice.group("value") + ". Say one of: "
                    + choice.group("choices").toLowerCase(Locale.ROOT) + ".";
        Matcher extra = NOT_EXPECTED.matcher(e.getMessage());
        if (extra.matches()) return "\"" + extra.group("value") + "\" is not expected here.";
        if (e instanceof MissingParameterException && e.getMessage().startsWith("Expected parameter for option"))
            return e.getMessage().replace("Expected parameter for option", "Something must follow") + ".";
        return e.getMessage() + ".";
    }

    private static String subject(Matcher number) {
        if (number.group("option") != null) return number.group("option");
        return number.group("name") != null ? number.group("name") : number.group("plain");
    }
}
