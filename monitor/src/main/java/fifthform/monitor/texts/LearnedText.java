package fifthform.monitor.texts;

/** What differs between batches whose bars were marked and those whose were fine. */
public enum LearnedText implements Text {
    /** {0} the chocolate, {1} marked, {2} fine. */
    HELD_AGAINST,
    /** {0} how many of each. */
    TOO_FEW,
    /** {0} how many more, {1} of them marked, {2} fine. */
    LOOKS_NEEDED,
    /** {0} the trait, {1} middle of the marked ones, {2} how many, {3} middle of the fine ones, {4} how many. */
    GOES_WITH,
    /** {0} the trait, {1} how many of the marked, {2} of how many, {3} how many of the fine, {4} of how many. */
    GOES_WITH_COUNTS,
    /** {0} more or less by so much, {1} from, {2} to. */
    DIFFERENCE,
    /** {0} how likely by chance. */
    BY_CHANCE,
    /** {0} how much. */
    MORE,
    /** {0} how much. */
    LESS,
    CAUTION,
    NOTHING_DIFFERS,
    /** {0} traits. */
    NOT_SURELY,
    /** {0} traits. */
    UNTOLD,

    // One thing to try.
    /** {0} what. */
    SUGGESTION,
    SUGGESTION_NONE,
    SUGGESTION_OUTSIDE,
    /** {0} °C. */
    TRY_HEAT_AT_MOST,
    /** {0} °C. */
    TRY_HEAT_AT_LEAST,
    /** {0} °C. */
    TRY_LOWEST_AT_MOST,
    /** {0} °C. */
    TRY_LOWEST_AT_LEAST,
    /** {0} min. */
    TRY_COOL_MINUTES_AT_MOST,
    /** {0} min. */
    TRY_COOL_MINUTES_AT_LEAST,
    /** {0} °C. */
    TRY_POURING_AT_MOST,
    /** {0} °C. */
    TRY_POURING_AT_LEAST,
    TRY_SEED,
    TRY_NO_SEED,
    TRY_FRIDGE,
    TRY_NO_FRIDGE,

    // The traits.
    HEAT,
    LOWEST,
    COOL_MINUTES,
    POURING,
    SEED,
    FRIDGE,

    /** {0} minutes. */
    MINUTES,
    /** {0} in a hundred. */
    PERCENT,
    LESS_THAN_A_TENTH_OF_A_PERCENT,

    // BowlFigures.
    /** {0} shown figure f, {1} shown figure f, {2} unit. */
    AT_9_TIMES_IN_10_TO,
    FROM_TOO_FEW_BATCHES_TO_SAY,
    /** {0} taught coast, {1} coast. */
    A_COAST_TIME_OF,
    COAST_NOT_SEEN_YET,
    /** {0} turn. */
    OUT_OF_THE_MELTING_BATH_IT,
    /** {0} pull. */
    COOLS_WITH_A_TIME_CONSTANT_OF,
    /** {0} coast seconds, {1} coast seconds factor, {2} coast seconds factor. */
    S_TO_S,

    // LookedSessions.
    /** {0} before file name. */
    THIS_IS_THE_SAME_BATCH_AS,
    A_BATCH_COUNTS_ONCE_IF_LOOKS
}
