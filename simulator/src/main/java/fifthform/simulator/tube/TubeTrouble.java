package fifthform.simulator.tube;

/** What a maker can do wrong, so that the curve says nothing of the temper. */
public enum TubeTrouble {
    NONE,
    /** The spoon stood about until it was 25 °C or less. */
    START_COLD,
    /** It was taken from a bowl of 36 °C and more, or over the hob. */
    START_HOT,
    /** The cup was left in the room, or hung in cool water without ice. */
    NOT_IN_ICE,
    /** Somebody stirred in the cup, all along. */
    STIRRED,
    /** The tip slipped from the axis to the shell on the way, or back. */
    MOVED,
    /** The probe was pulled out before the end. */
    PULLED_OUT,
    /** The tip leaned on the cup's wall. */
    AT_WALL,
    /** Water of 5 to 14 °C with hardly any ice. */
    WARM_BATH,
    /** The ice was gone within minutes. */
    WARMING_BATH,
    /** Taken out of the ice too early. */
    TOO_SHORT,
    /** One reading in 15 s or slower. */
    TOO_FEW,
    /** No readings for a minute in the middle. */
    GAP,
    /** A display that shows whole degrees. */
    COARSE,
    /** Times that stand still or go back. */
    BAD_TIMES
}
