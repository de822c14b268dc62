package fifthform.curves.contrast;

import java.util.Locale;

/**
 * What marked and fine batches are compared by. The list was fixed before any batch was looked at, and it is short: each
 * more would ask for more bars before anything may be claimed ({@link Comparison#LEAST_EACH}).
 *
 * <p>Left out: the coast past the lift, since what it does to the bars is the highest temperature it leads to; height and
 * length of an overshoot each by itself, since {@link fifthform.curves.learning.HeatScale} makes one number of them; the
 * word about the crystals, which is reckoned from the same temperatures.
 */
public enum Trait {
    /**
     * Heat after the cool step, °C, height and length as one number. Form V melts near 34 °C (Wille and Lutton 1966, JAOCS
     * 43:491-496, from memory: V 33.8 °C).
     */
    HEAT(Unit.CELSIUS),
    /** Lowest temperature of the cool step, °C. Too warm makes too few crystals, too cold makes IV and thickens. */
    LOWEST(Unit.CELSIUS),
    /** Minutes in the cool range, where form V can be born and grow. */
    COOL_MINUTES(Unit.MINUTES),
    /** Mean temperature while pouring, °C. Too cool leaves IV and thickens; too warm loses V slowly. */
    POURING(Unit.CELSIUS),
    /** Seed was added. It brings form V and asks less of the cool step. */
    SEED(Unit.YES_NO),
    /** The moulds set in the fridge, and not in a room or a cool place. It takes the heat of crystals away, and brings water. */
    FRIDGE(Unit.YES_NO);

    /** What its values are. */
    public enum Unit {
        CELSIUS,
        MINUTES,
        /** 1 for yes, 0 for no. */
        YES_NO
    }

    private final Unit unit;

    Trait(Unit unit) {
        this.unit = unit;
    }

    public Unit unit() {
        return unit;
    }

    /** The word in files. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
