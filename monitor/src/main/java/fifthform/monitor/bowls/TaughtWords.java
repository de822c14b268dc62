package fifthform.monitor.bowls;

import fifthform.curves.setup.LearnedCoast;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.BowlsText;
import fifthform.monitor.texts.UnitText;

/** What a bowl taught, in words. */
public final class TaughtWords {
    private TaughtWords() {}

    /** One line of one amount. */
    public static String line(Taught taught, Units units) {
        String what = taught.coast().map(coast -> coast(coast, units)).orElse(BowlsText.COAST_NOT_SEEN_YET.say());
        return amount(taught) + ": " + what + "; " + from(taught);
    }

    /** For example {@code coasts about 1.1 °C at 1 °C/min, 9 times in 10 between 0.8 and 1.5 °C}. */
    public static String coast(LearnedCoast coast, Units units) {
        double factor = StrictMath.exp(1.645 * coast.logSpread());
        double kelvin = coast.coastSeconds() / 60;
        return BowlsText.COASTS_ABOUT_AT_MIN_9_TIMES.say(
                units.difference(kelvin),
                units.difference(1),
                units.difference(kelvin / factor),
                units.difference(kelvin * factor));
    }

    /** What it rests on, for example {@code 9 lifts in 4 batches}. */
    public static String from(Taught taught) {
        if (taught.batches() == 0) return BowlsText.SET_BY_HAND.say();
        return taught.coast()
                .map(coast -> BowlsText.FROM_LIFTS_AND_BATCHES.say(coast.liftsSeen(), taught.batches()))
                .orElseGet(() -> UnitText.BATCHES.say(taught.batches()));
    }

    public static String amount(Taught taught) {
        return taught.amountGrams().isPresent()
                ? UnitText.GRAMS.say(Math.round(taught.amountGrams().getAsDouble()))
                : BowlsText.ANY_AMOUNT.say();
    }

    /** Whether a bowl can be called so: printable, with something in it that a file can be named by. */
    public static boolean isName(String name) {
        boolean printable = name.codePoints().noneMatch(Character::isISOControl);
        return printable && KeptBowl.isId(KeptBowl.idOf(name)) && name.length() <= 60;
    }
}
