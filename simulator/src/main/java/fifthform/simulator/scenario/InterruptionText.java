package fifthform.simulator.scenario;

import fifthform.curves.check.Nearest;
import fifthform.curves.check.Parsed;
import fifthform.simulator.maker.Interruption;
import fifthform.simulator.maker.Interruption.Moment;
import fifthform.simulator.maker.Interruption.What;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What happens out of the ordinary, as {@code phone for 20 s, 0 s after lift-now} or {@code hair-dryer for 5 s every 180 s,
 * 60 s after in-range}.
 */
final class InterruptionText {
    private static final Pattern FORM = Pattern.compile(
            "([a-z-]+) for ([0-9.]+) s(?: every ([0-9.]+) s)?, ([0-9.]+) s after ([a-z-]+)", Pattern.CASE_INSENSITIVE);
    private static final double LONGEST_SECONDS = 86_400;

    private InterruptionText() {}

    static Parsed<Interruption> parse(int line, String text, Set<What> fitting) {
        String where = "line " + line;
        Matcher form = FORM.matcher(text);
        if (!form.matches()) {
            return Parsed.refused(
                    where,
                    "\"" + text + "\" does not say what happens when.",
                    "Write for example: " + example(fitting) + " for 20 s, 0 s after lift-now");
        }
        Optional<What> what =
                What.fromWord(form.group(1).toLowerCase(Locale.ROOT)).filter(fitting::contains);
        if (what.isEmpty()) {
            return Parsed.refused(
                    where, "\"" + form.group(1) + "\" cannot happen here.", nearest(form.group(1), fitting));
        }
        Optional<Moment> moment = Moment.fromWord(form.group(5).toLowerCase(Locale.ROOT));
        if (moment.isEmpty()) {
            return Parsed.refused(
                    where,
                    "\"" + form.group(5) + "\" is not a moment of the batch.",
                    "Use a place, for example warm-bath, or a cue, for example lift-now.");
        }
        double lasting = NumberText.number(form.group(2));
        double after = NumberText.number(form.group(4));
        if (!(lasting <= LONGEST_SECONDS && after <= LONGEST_SECONDS)) {
            return Parsed.refused(where, "\"" + text + "\" lasts too long.", "Give seconds, at most a day.");
        }
        Optional<Duration> every =
                Optional.ofNullable(form.group(3)).map(NumberText::number).map(NumberText::duration);
        if (every.filter(pause -> pause.compareTo(NumberText.duration(lasting)) <= 0)
                .isPresent()) {
            return Parsed.refused(
                    where, "\"" + text + "\" begins again before it is over.", "Let it last less, or come less often.");
        }
        return Parsed.accepted(new Interruption(
                what.get(), moment.get(), NumberText.duration(after), NumberText.duration(lasting), every));
    }

    private static String example(Set<What> fitting) {
        return words(fitting).get(0);
    }

    private static String nearest(String said, Set<What> fitting) {
        return Nearest.to(said, words(fitting))
                .map(near -> "Did you mean \"" + near + "\"?")
                .orElse("Use " + String.join(", ", words(fitting)) + ".");
    }

    private static List<String> words(Set<What> fitting) {
        return fitting.stream().map(What::word).toList();
    }
}
