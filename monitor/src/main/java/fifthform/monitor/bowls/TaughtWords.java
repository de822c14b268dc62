package fifthform.monitor.bowls;

import fifthform.curves.setup.LearnedCoast;
import fifthform.monitor.settings.Units;

/** What a bowl taught, in words. */
public final class TaughtWords {
    private TaughtWords() {}

    /** One line of one amount. */
    public static String line(Taught taught, Units units) {
        String what = taught.coast().map(coast -> coast(coast, units)).orElse("coast not seen yet");
        return amount(taught) + ": " + what + "; " + from(taught);
    }

    /** For example {@code coasts about 1.1 °C at 1 °C/min, 9 times in 10 between 0.8 and 1.5 °C}. */
    public static String coast(LearnedCoast coast, Units units) {
        double factor = StrictMath.exp(1.645 * coast.logSpread());
        double kelvin = coast.coastSeconds() / 60;
        return "coasts about " + units.difference(kelvin) + " at " + units.difference(1)
                + "/min, 9 times in 10 between " + units.difference(kelvin / factor) + " and "
                + units.difference(kelvin * factor);
    }

    /** What it rests on, for example {@code 9 lifts in 4 batches}. */
    public static String from(Taught taught) {
        if (taught.batches() == 0) return "set by hand";
        String batches = count(taught.batches(), "batch", "batches");
        return taught.coast()
                        .map(c -> count(c.liftsSeen(), "lift", "lifts") + " in ")
                        .orElse("")
                + batches;
    }

    private static String count(int number, String one, String many) {
        return number + " " + (number == 1 ? one : many);
    }

    public static String amount(Taught taught) {
        return taught.amountGrams().isPresent()
                ? Math.round(taught.amountGrams().getAsDouble()) + " g"
                : "any amount";
    }

    /** Whether a bowl can be called so: printable, with something in it that a file can be named by. */
    public static boolean isName(String name) {
        boolean printable = name.codePoints().noneMatch(Character::isISOControl);
        return printable && KeptBowl.isId(KeptBowl.idOf(name)) && name.length() <= 60;
    }
}
