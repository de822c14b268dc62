package fifthform.monitor.model;

import fifthform.curves.alarm.Side;
import fifthform.curves.input.AlarmId;

/** Which way things have gone wrong when an alarm speaks: for the sign on the screen and the contour of the sound. */
public final class Sides {
    private Sides() {}

    public static Side of(AlarmId id) {
        return switch (id) {
            case HEADING_OVER, OVER_RANGE, NEAR_MELT_OUT, MELT_OUT, MELT_TOO_HOT, BATH_HOT -> Side.TOO_HOT;
            case HEADING_UNDER, TOO_COOL, OVER_COOLED -> Side.TOO_COLD;
            case PROBE_FAULT, NO_READING, READING_DOUBTFUL, NOT_RECORDING, PROBE_OUT -> Side.NEITHER;
        };
    }
}
