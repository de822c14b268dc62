package fifthform.monitor.model;

import fifthform.curves.forecast.Coast;
import fifthform.curves.forecast.Coasting;
import fifthform.curves.setup.Bowl;
import fifthform.curves.setup.BowlMaterial;
import fifthform.monitor.settings.Units;
import java.util.Optional;

/** What is known of the bowl, in one line; and that it seems to be another one. */
public final class BowlLine {
    private BowlLine() {}

    /** For example {@code this bowl coasts about 1.1 °C at 1 °C/min, from 3 lifts}. */
    public static String of(Bowl bowl, Coasting coasting, Units units) {
        if (coasting.bowl().doubt().isPresent())
            return "another bowl than " + named(bowl) + "? what that one taught is set aside";
        Coast coast = coasting.coast();
        String coasts = CoastWords.about(coast.seconds(), units);
        if (coast.liftsSeen() > 0) return "this bowl coasts " + coasts + ", " + CoastWords.from(coast.liftsSeen());
        return bowl.material() == BowlMaterial.UNKNOWN
                ? "a bowl not met before: a usual one coasts " + coasts
                : "a bowl not met before: one of " + bowl.material().word() + " coasts " + coasts;
    }

    /** That it is not the bowl it is said to be, for example {@code this behaves like a heavier bowl than "steel"}. */
    public static Optional<String> notice(Bowl bowl, Coasting coasting) {
        return coasting.bowl().doubt().map(like -> "this behaves like a " + like.word() + " bowl than " + named(bowl));
    }

    private static String named(Bowl bowl) {
        String amount = bowl.amountGrams().isPresent()
                ? ", " + Amounts.words(bowl.amountGrams().getAsDouble())
                : "";
        return "\"" + bowl.id() + amount + "\"";
    }
}
