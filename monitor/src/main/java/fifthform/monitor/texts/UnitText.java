package fifthform.monitor.texts;

/** Lengths of time, amounts and counts, with their units. */
public enum UnitText implements Text {
    // Spans.
    /** {0} seconds. */
    SECONDS,
    /** {0} rest. */
    AND_SECONDS,
    /** {0} seconds, {1} rest. */
    MINUTES_AND,
    /** {0} seconds. */
    MINUTES,
    /** {0} seconds, {1} seconds. */
    HOURS_AND_MINUTES,
    /** {0} whole hours. */
    HOURS,

    // Amounts.
    /** {0} grams. */
    GRAMS,
    /** {0} grams replace. */
    KILOGRAMS,
    GRAMS_IN_FULL,
    MINUTES_IN_FULL,

    // Counts.
    /** {0} how many. */
    BATCHES,

    // PlanWords.
    /** {0} millilitres. */
    MILLILITRES,
    /** {0} litres. */
    LITRES,

    // Dates, in the letters of DateTimeFormatter.
    DAY,
    DAY_AND_TIME
}
