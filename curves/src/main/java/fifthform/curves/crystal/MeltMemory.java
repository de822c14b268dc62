package fifthform.curves.crystal;

import fifthform.curves.check.Require;
import fifthform.curves.recipe.Recipe;
import java.time.Duration;

/**
 * Whether the melt has erased everything. In the model all is gone within minutes at 38 °C; published, a melt remembers
 * its crystals some kelvins above 34 °C. So it takes the recipe's melting range for a few minutes, and the model.
 *
 * @param atTarget time in or above the melting range since the last cooling
 * @param erased whether every crystal and its memory are gone
 */
public record MeltMemory(Duration atTarget, boolean erased) {
    /** A few minutes, or the recipe's hold where that is shorter. */
    private static final Duration FEW_MINUTES = Duration.ofMinutes(3);

    /** Less solid than this is nothing, kg per kg of fat. */
    private static final double NOTHING = 1e-6;

    /** Nothing has been held hot yet. */
    public static final MeltMemory NONE = new MeltMemory(Duration.ZERO, false);

    public MeltMemory {
        Require.notNegative(atTarget, "atTarget");
    }

    /** After a second at this temperature. */
    MeltMemory after(Recipe recipe, double celsius, Copies copies) {
        if (erased) return this;
        boolean hot = celsius >= recipe.melt().range().lowCelsius();
        Duration held = hot ? atTarget.plusSeconds(1) : atTarget;
        Duration wanted =
                recipe.melt().dwell().compareTo(FEW_MINUTES) < 0 ? recipe.melt().dwell() : FEW_MINUTES;
        // The copies are looked at only where the time is long enough.
        boolean done = hot && held.compareTo(wanted) >= 0 && isNothing(copies);
        return new MeltMemory(held, done);
    }

    private static boolean isNothing(Copies copies) {
        return copies.lower().bulk().solids() < NOTHING && copies.lower().wall().solids() < NOTHING;
    }
}
