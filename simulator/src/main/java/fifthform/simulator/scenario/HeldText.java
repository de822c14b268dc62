package fifthform.simulator.scenario;

import fifthform.curves.check.Parsed;
import fifthform.curves.setup.Holding;
import fifthform.curves.setup.Holding.Warmth;
import java.time.Duration;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A planned hold, as {@code 60 min by air}. */
final class HeldText {
    private static final Pattern FORM = Pattern.compile("([0-9]+) min by ([a-z]+)");

    private HeldText() {}

    static Parsed<Holding> parse(String where, String text) {
        Matcher form = FORM.matcher(text);
        Optional<Warmth> warmth = form.matches() ? Warmth.fromWord(form.group(2)) : Optional.empty();
        Duration time = form.matches() ? Duration.ofMinutes(Long.parseLong(form.group(1))) : Duration.ZERO;
        boolean fits = time.compareTo(Holding.SHORTEST) >= 0 && time.compareTo(Holding.LONGEST) <= 0;
        if (warmth.isPresent() && fits) return Parsed.accepted(new Holding(time, warmth.get()));
        return Parsed.refused(
                where, "\"" + text + "\" is no way to hold it.", "Write for example 60 min by bath, by air or by box.");
    }
}
