package fifthform.curves.alarm;

/** Which way things have gone wrong: decides the sound's contour and which way the triangle points. */
public enum Side {
    TOO_HOT,
    TOO_COLD,
    /** Measurement or recording: no temperature side. */
    NEITHER
}
