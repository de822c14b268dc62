package fifthform.monitor.texts;

/** What is said of bowls and what they taught. */
public enum BowlsText implements Text {
    // BowlMemory.
    /** {0} doubt word, {1} bowl id. */
    IT_BEHAVED_LIKE_A_BOWL_THAN,
    NAME_YOUR_BOWL_NEXT_TIME_BOWL,
    /** {0} bowl id. */
    THE_BOWL_WAS_CHANGED_WHILE,
    /** {0} bowl id, {1} taught coast c. */
    YOUR_BOWL_THE_NEXT_BATCH,
    /** {0} bowl id. */
    HOW_ANSWERS_COLD_WATER_IS,
    /** {0} e message. */
    WHAT_THE_BOWL_TAUGHT_COULD_NOT,

    // BowlWords.
    /** {0} shown. */
    CANNOT_BE_THE_NAME_OF_A,
    /** {0} name. */
    NONE_IS_KNOWN_YET_BEGIN_ONE,
    /** {0} all. */
    KNOWN,
    /** {0} name, {1} all empty name. */
    THERE_IS_NO_BOWL_NOTHING_WAS,
    /** {0} bowl id. */
    BOWL,
    /** {0} what, {1} bowl material word, {2} question what was meant, or nothing. */
    ITS_COAST_HAS_NOT_BEEN_SEEN,
    /** {0} name, {1} question what was meant. */
    NO_BOWL_IS_CALLED_SO_FAR,
    TAKEN_OVER_FROM_ANOTHER_AMOUNT,

    // BowlsAddCommand.
    /** {0} fresh id, {1} fresh id. */
    THERE_IS_A_BOWL_ALREADY,

    // BowlsCommand.
    NO_BOWL_IS_KNOWN_YET_ONE,
    /** {0} e message. */
    THE_BOWL_COULD_NOT_BE_WRITTEN,
    /** {0} bowl name, {1} bowl id, {2} bowl material word. */
    ID,
    NOTHING_WAS_LEARNED_OF_IT_YET,
    COAST_NOT_SEEN_YET,
    /** {0} taught amount, {1} what, {2} taught from, {3} taught at zone. */
    LAST,
    NOTHING_LEARNED_YET,
    /** {0} bowl taught size. */
    AND_MORE,

    // BowlsEditCommand.
    NEITHER_NAME_NOR_MATERIAL_WAS,

    // BowlsForgetCommand.
    /** {0} kept. */
    FORGOTTEN_ITS_FILE_IS_KEPT_AS,

    // BowlsSetCommand.
    /** {0} taught same percent. */
    AMOUNTS_WITHIN_OF_EACH_OTHER,
    /** {0} bowls gone, {1} other taught same. */
    THIS_REPLACES,

    // BowlText.
    IT_IS_EMPTY,
    IT_IS_OF_A_NEWER_PROGRAM,
    /** {0} i, {1} e message. */
    LINE,
    /** {0} key. */
    IS_TOO_LARGE,

    // Bowls.
    THIS_IS_A_FILE_AND_THE,
    /** {0} why. */
    WHAT_THE_BOWLS_TAUGHT_CANNOT,
    /** {0} bowl id. */
    IT_SAYS_TO_BE_THE_BOWL,
    /** {0} join read complaints. */
    SOME_OF_WHAT_THIS_BOWL_TAUGHT,
    /** {0} why message. */
    WHAT_THIS_BOWL_TAUGHT_CANNOT,

    // TaughtWords.
    /** {0} lifts, {1} batches. */
    FROM_LIFTS_AND_BATCHES,
    /** {0} difference kelvin, {1} difference, {2} difference kelvin factor, {3} difference kelvin factor. */
    COASTS_ABOUT_AT_MIN_9_TIMES,
    SET_BY_HAND,
    ANY_AMOUNT
}
