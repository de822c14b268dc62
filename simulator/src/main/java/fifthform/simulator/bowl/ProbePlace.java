package fifthform.simulator.bowl;

/** Where the tip of the chocolate's probe is. */
public enum ProbePlace {
    /** In the middle of the chocolate. */
    IN_CHOCOLATE,
    /** Resting on the bowl's wall. */
    AT_WALL,
    /** Out of the bowl, in the air of the room, with chocolate on it. */
    OUT
}
