package fifthform.curves.phase;

import fifthform.curves.estimate.Estimate;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.recipe.Phase;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.signal.Window;
import java.time.Duration;
import java.time.Instant;

/**
 * Whether there are crystals to lose. Only chocolate that has been melted and has since been below the working range can be
 * heated too far; what lies between is being melted or still cools, however warm the kitchen. It decides what the phase
 * alone cannot: a wrong phase would silence the alarms, or raise them over a melt.
 */
public enum Melted {
    /** As it came: nothing of its crystals is known, and they are about to be melted. */
    NOT_YET,
    /** Bars of a failed batch: as above, and what bloomed melts later. Nothing short of the melting range is believed. */
    OLD_CRYSTALS,
    /** Melted, and not below the working range since. */
    STILL_WARM,
    /** Melted and cooled: from now on heat can harm. */
    COOLED_SINCE,
    /** In temper as it came, and to be kept so: heat can harm from the first reading, and no crystals need be made. */
    KEPT;

    /** What lasts for less is a lump, a touch of the wall or a probe that dips in. Own choice. */
    private static final Duration SUSTAINED = Duration.ofSeconds(10);

    private static final Duration PLAINLY = Duration.ofSeconds(20);

    /**
     * Only a small bowl falls so fast in cold water near the range; a tip in the air falls faster. What fell so fast is
     * believed only when that is two minutes past. Own choice, from lumped bowls.
     */
    static final double TOO_FAST_KELVIN_PER_MINUTE = 8;

    /** The same where the fast part was doubted and left no trace but the depth. Own choice. */
    private static final double TOO_FAR_KELVIN = 8;

    private static final Duration FALL_SEEN = Duration.ofMinutes(2);

    /** A probe may be off by so much; as the review of a melt has it, K. */
    private static final double BELOW_THE_MELT_KELVIN = 2;

    /** Above melt-out by this much no form V is left to protect. Own choice. */
    static final double ABOVE_MELT_OUT_KELVIN = 2.0;

    Melted next(Recipe recipe, Contact contact, Estimate estimate, Window window, Instant now) {
        double celsius = estimate.chocolateCelsius();
        double melts = recipe.meltOut().limitCelsius() + ABOVE_MELT_OUT_KELVIN;
        double low = recipe.work().range().lowCelsius();
        boolean hot = celsius >= melts && hotThroughout(melts, window, now.minus(PLAINLY));
        boolean cool =
                celsius < low && window.warmestThroughout(now.minus(SUSTAINED)).orElse(99) < low;
        return switch (this) {
            case NOT_YET -> hot ? STILL_WARM : NOT_YET;
            case OLD_CRYSTALS -> {
                double old = recipe.melt().range().lowCelsius() - BELOW_THE_MELT_KELVIN;
                yield celsius >= old && hotThroughout(old, window, now.minus(PLAINLY)) ? STILL_WARM : OLD_CRYSTALS;
            }
            case STILL_WARM -> cool ? COOLED_SINCE : STILL_WARM;
            case KEPT -> hot ? STILL_WARM : KEPT;
            case COOLED_SINCE -> hot && contact.place() != Place.COLD_WATER ? STILL_WARM : COOLED_SINCE;
        };
    }

    /**
     * Readings that were doubted leave a hole in the window. What lies on its far side counts too, or the first reading
     * believed after a steep rise would be taken for 20 s of heat, and the rise for a melt that is meant.
     */
    private static boolean hotThroughout(double melts, Window window, Instant from) {
        return window.coolestThroughout(from).orElse(0) >= melts
                && window.celsiusAt(from).orElse(0) >= melts;
    }

    /** Whether it is known to have been melted. */
    public boolean isSeen() {
        return this == STILL_WARM || this == COOLED_SINCE;
    }

    /** Whether there are crystals that heat could cost. */
    boolean hasSeed() {
        return this == COOLED_SINCE || this == KEPT;
    }

    /** What the maker's word for the phase says of it. */
    Melted told(Phase phase) {
        return switch (phase) {
            case MELT -> this == OLD_CRYSTALS ? this : NOT_YET;
            case COOL -> STILL_WARM;
            case SEED, REWARM, WORK, REST -> COOLED_SINCE;
        };
    }
}
