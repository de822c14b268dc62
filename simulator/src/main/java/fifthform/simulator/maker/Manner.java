package fifthform.simulator.maker;

/** What somebody who is there to judge a forecast does about it once the bowl stands over the bath for the rewarm. */
public enum Manner {
    /** Stays until told to lift or out of patience, then waits for the peak. Hears nothing else. */
    ONE_LIFT,
    /** Lifts and puts back as told, again and again, until told that it is in range, or out of patience. */
    TOUCHES,
    /** Stays whatever is said, to see how early a warning comes. */
    STAYS_ON,
    /** Hears nothing, brings the bowl into the range by short touches of its own and holds it there for an hour. */
    STEADY;

    /** Whether it lifts when told. */
    boolean lifts() {
        return this == ONE_LIFT || this == TOUCHES;
    }
}
