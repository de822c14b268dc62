package fifthform.monitor.model;

import fifthform.curves.forecast.Coast;
import fifthform.curves.forecast.Coasting;
import fifthform.curves.setup.Bowl;
import fifthform.curves.setup.BowlMaterial;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.InWords;
import fifthform.monitor.texts.WatchText;
import java.util.Optional;

/** What is known of the bowl, in one line; and that it seems to be another one. */
public final class BowlLine {
    private BowlLine() {}

    /** For example {@code this bowl coasts about 1.1 °C at 1 °C/min, from 3 lifts}. */
    public static String of(Bowl bowl, Coasting coasting, Units units) {
        Optional<String> other = doubt(bowl, coasting);
        if (other.isPresent()) return other.get();
        Coast coast = coasting.coast();
        String coasts = CoastWords.about(coast.seconds(), units);
        if (coast.liftsSeen() > 0) return WatchText.THIS_BOWL_COASTS.say(coasts, CoastWords.from(coast.liftsSeen()));
        return bowl.material() == BowlMaterial.UNKNOWN
                ? WatchText.A_BOWL_NOT_MET_BEFORE_A.say(coasts)
                : WatchText.A_BOWL_NOT_MET_BEFORE_ONE.say(InWords.of(bowl.material()), coasts);
    }

    /** What becomes of what was learned, where it seems to be another bowl. */
    static Optional<String> doubt(Bowl bowl, Coasting coasting) {
        return coasting.bowl().doubt().map(like -> WatchText.ANOTHER_BOWL_THAN_WHAT_THAT.say(named(bowl)));
    }

    /** That it is not the bowl it is said to be, for example {@code this behaves like a heavier bowl than “steel”}. */
    public static Optional<String> notice(Bowl bowl, Coasting coasting) {
        return coasting.bowl()
                .doubt()
                .map(like -> WatchText.THIS_BEHAVES_LIKE_A_BOWL_THAN.say(InWords.of(like), named(bowl)));
    }

    private static String named(Bowl bowl) {
        String amount = bowl.amountGrams().isPresent()
                ? ", " + Amounts.words(bowl.amountGrams().getAsDouble())
                : "";
        return "“" + bowl.id() + amount + "”";
    }
}
