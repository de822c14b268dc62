package fifthform.simulator.scenario;

import fifthform.curves.check.Parsed;
import fifthform.simulator.maker.Interruption;
import fifthform.simulator.maker.Interruption.Moment;
import fifthform.simulator.maker.Interruption.What;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What comes between a maker and the batch, as {@code phone for 20 s, 0 s after lift-now}. */
final class InterruptionText {
    private static final Pattern FORM =
            Pattern.compile("([a-z-]+) for ([0-9.]+) s, ([0-9.]+) s after ([a-z-]+)", Pattern.CASE_INSENSITIVE);
    private static final double LONGEST_SECONDS = 86_400;

    private InterruptionText() {}

    static Parsed<Interruption> parse(int line, String text) {
        String where = "line " + line;
        Matcher form = FORM.matcher(text);
        if (!form.matches()) {
            return Parsed.refused(
                    where,
                    "\"" + text + "\" is not an interruption.",
                    "Write for example: phone for 20 s, 0 s after lift-now");
        }
        Optional<What> what = What.fromWord(form.group(1).toLowerCase(Locale.ROOT));
        if (what.isEmpty()) {
            return Parsed.refused(
                    where,
                    "\"" + form.group(1) + "\" does not come between a maker and a batch.",
                    "Use phone or probe-out.");
        }
        Optional<Moment> moment = Moment.fromWord(form.group(4).toLowerCase(Locale.ROOT));
        if (moment.isEmpty()) {
            return Parsed.refused(
                    where,
                    "\"" + form.group(4) + "\" is not a moment of the batch.",
                    "Use a place, for example warm-bath, or a cue, for example lift-now.");
        }
        double lasting = NumberText.number(form.group(2));
        double after = NumberText.number(form.group(3));
        if (!(lasting <= LONGEST_SECONDS && after <= LONGEST_SECONDS)) {
            return Parsed.refused(where, "\"" + text + "\" lasts too long.", "Give seconds, at most a day.");
        }
        return Parsed.accepted(
                new Interruption(what.get(), moment.get(), NumberText.duration(after), NumberText.duration(lasting)));
    }
}
