package fifthform.curves.plan;

/** What the maker must know of a plan. */
public enum Caveat {
    /** The thermometer was not checked, so the margin is wide. */
    PROBE_UNCHECKED,
    /** Even the second step of the slow bath is aimed below the range; short dips do the rest. */
    ENDS_SHORT,
    /** The tap is too warm for a cold bath without ice. */
    TAP_TOO_WARM,
    /** The hotter bath is so hot that the coast of the first seconds may pass the range. */
    QUICK_TOO_HOT,
    /** The bowl was not weighed. */
    BOWL_GUESSED,
    /** The pan was not weighed. */
    PAN_GUESSED,
    /** Nobody said how warm the tap is. */
    TAP_GUESSED,
    /** Nobody said how warm the room is. */
    ROOM_GUESSED,
    /** How far this bowl coasts is a guess from its material. */
    COAST_GUESSED,
    /** The room is too warm for the bowl to cool below its range. */
    ROOM_WARM;

    /** The word in files. */
    public String word() {
        return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
}
