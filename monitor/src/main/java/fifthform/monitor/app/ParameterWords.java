package fifthform.monitor.app;

import fifthform.monitor.texts.CommandText;
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
    private static final Pattern NO_CHOICE =
            Pattern.compile("Invalid value for option '(?<option>--[^'=]+)[^']*'[^:]*: "
                    + "expected one of \\[(?<choices>.*)] \\(case-insensitive\\) but was '(?<value>.*)'");

    private static final Pattern NOT_EXPECTED = Pattern.compile("Unmatched argument at index \\d+: '(?<value>.*)'");

    private ParameterWords() {}

    static String of(ParameterException e) {
        Matcher number = NO_NUMBER.matcher(e.getMessage());
        if (number.matches()) {
            boolean large = number.group("value").matches("[+-]?\\d{10,}");
            String whole = number.group("type").equals("double")
                    ? number(e)
                    : large ? CommandText.A_SMALLER_NUMBER.say() : CommandText.A_WHOLE_NUMBER.say();
            return CommandText.WAS_GIVE.say(subject(number), number.group("value"), whole);
        }
        Matcher choice = NO_CHOICE.matcher(e.getMessage());
        if (choice.matches())
            return CommandText.WAS_SAY_ONE_OF.say(
                    choice.group("option"),
                    choice.group("value"),
                    choice.group("choices").toLowerCase(Locale.ROOT));
        Matcher extra = NOT_EXPECTED.matcher(e.getMessage());
        if (extra.matches()) return CommandText.IS_NOT_EXPECTED_HERE.say(extra.group("value"));
        if (e instanceof MissingParameterException && e.getMessage().startsWith("Expected parameter for option"))
            return e.getMessage().replace("Expected parameter for option", CommandText.SOMETHING_MUST_FOLLOW.say())
                    + ".";
        return e.getMessage() + ".";
    }

    /** Where degrees are asked for, their scale as well: who wrote 95F would else leave the letter out and mean the same. */
    private static String number(ParameterException e) {
        return e.getArgSpec() != null && e.getArgSpec().paramLabel().contains("CELSIUS")
                ? CommandText.DEGREES_CELSIUS_FOR_EXAMPLE_31_5.say()
                : CommandText.A_NUMBER_FOR_EXAMPLE_31_5.say();
    }

    private static String subject(Matcher number) {
        if (number.group("option") != null) return number.group("option");
        return number.group("name") != null ? number.group("name") : number.group("plain");
    }
}
