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

    private ParameterWords() {}

    static String of(ParameterException e) {
        Matcher number = NO_NUMBER.matcher(e.getMessage());
        if (number.matches()) {
            String whole = number.group("type").equals("double") ? "a number, for example 31.5" : "a whole number";
            return subject(number) + " was " + number.group("value") + ". Give " + whole + ".";
        }
        Matcher choice = NO_CHOICE.matcher(e.getMessage());
        if (choice.matches())
            return choice.group("option") + " was " + choice.group("value") + ". Say one of: "
                    + choice.group("choices").toLowerCase(Locale.ROOT) + ".";
        if (e instanceof MissingParameterException && e.getMessage().startsWith("Expected parameter for option"))
            return e.getMessage().replace("Expected parameter for option", "Something must follow") + ".";
        return e.getMessage() + ".";
    }

    private static String subject(Matcher number) {
        if (number.group("option") != null) return number.group("option");
        return number.group("name") != null ? number.group("name") : number.group("plain");
    }
}
