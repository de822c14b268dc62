package fifthform.monitor.app;

import fifthform.curves.whatif.Change;
import fifthform.curves.whatif.Change.BathShifted;
import fifthform.curves.whatif.Change.LiftMoved;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.CommandText;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What {@code --what-if} asks.
 *
 * @param what the lift or the bath
 * @param by how much: s for a lift, K for a bath
 */
record WhatIfQuestion(What what, double by) {
    enum What {
        LIFT,
        BATH
    }

    private static final Pattern FORM =
            Pattern.compile("(lift|bath)=([+-]?\\d+(?:\\.\\d+)?)\\s*(s|c|k|f|°c|°f)?", Pattern.CASE_INSENSITIVE);

    private static final double FAHRENHEIT_FOR_A_KELVIN = 1.8;

    /** The question, its temperature difference in these units where it names none. */
    static WhatIfQuestion parse(String text, Units units) throws Refusal {
        Matcher said = FORM.matcher(text.strip());
        if (!said.matches()) throw refused(text);
        boolean ofLift = said.group(1).equalsIgnoreCase("lift");
        String unit =
                said.group(3) == null ? "" : said.group(3).replace("°", "").toLowerCase(java.util.Locale.ROOT);
        double by = Double.parseDouble(said.group(2));
        if (ofLift) {
            boolean known = unit.isEmpty() || unit.equals("s");
            if (!known || Math.abs(by) > LiftMoved.MOST_SECONDS) throw refused(text);
            return new WhatIfQuestion(What.LIFT, by);
        }
        boolean fahrenheit = unit.equals("f") || unit.isEmpty() && units == Units.FAHRENHEIT;
        double kelvin = fahrenheit ? by / FAHRENHEIT_FOR_A_KELVIN : by;
        if (unit.equals("s") || Math.abs(kelvin) > BathShifted.MOST_KELVIN) throw refused(text);
        return new WhatIfQuestion(What.BATH, kelvin);
    }

    private static Refusal refused(String text) {
        return new Refusal(Exit.NOT_UNDERSTOOD, CommandText.WHAT_IF_WAS_NOTHING_WAS_DONE.say(text));
    }

    /** The same of the lift with this number. */
    Change of(int lift) {
        return what == What.LIFT ? new LiftMoved(lift, by) : new BathShifted(lift, by);
    }
}
