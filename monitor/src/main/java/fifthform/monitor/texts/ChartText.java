package fifthform.monitor.texts;

/** What drawings say: on them, and to a screen reader. */
public enum ChartText implements Text {
    // CurveCanvas.
    MINUTES,

    // LadderCanvas.
    /** {0} now. */
    LADDER_NOW,
    /** {0} limit, {1} where it is. */
    LADDER_LIMIT,
    LADDER_OF_LIMITS,

    // TraceCanvas.
    /** {0} where. */
    FORECAST_ENDS_AT,
    /** {0} first, {1} last, {2} forecast, {3} crystals, {4} marked. */
    CURVE_FROM_TO,
    CURVE_NO_READINGS_YET,
    NO_FORECAST,
    THEN,
    /** {0} trace crystals stream. */
    CRYSTALS,
    /** {0} flag word. */
    MARKED,

    // TraceDrawing.
    NO_READING,
    NOW
}
