package fifthform.monitor.texts;

/** What batches say together. */
public enum LearnText implements Text {
    // LearnCommand.
    /** {0} how many. */
    REAL_KEPT_APART,
    /** {0} how many. */
    PRACTICE_KEPT_APART,
    /** {0} folder. */
    IS_NO_FOLDER_NOTHING_WAS,
    /** {0} p. */
    PASSED_OVER,
    PRACTICE_BARS,
    BARS_OF_ONES_OWN,
    /** {0} look plain chocolate. */
    OF,
    /** {0} which, {1} of. */
    NO_LOOKS_AT_ARE_KEPT_NOTHING,
    /** {0} which, {1} of. */
    TOO_FEW_BATCHES_NO_LOOKS_AT,
    WRITE_WAS_GIVEN_WITHOUT,
    WRITE_WAS_GIVEN_WITH_PRACTICE,
    /** {0} look plain write. */
    WRITE_WAS_NOTHING_WAS_WRITTEN,
    /** {0} file, {1} e message. */
    CANNOT_BE_WRITTEN_THE_LIMITS,
    /** {0} file. */
    IS_THERE_ALREADY_AND_NO_RECIPE,

    // LearnWords.
    PRACTICE,
    /** {0} learned published name, {1} learned id, {2} practice, {3} count, {4} learned limit batches. */
    LOOKED_AT_OF_USE_HERE,
    /** {0} decimal heat scale. */
    HEAT_IS_GIVEN_AS_THE,
    NO_HEAT_SEEN_AFTER_THE_COOL,
    /** {0} why. */
    NOT_COUNTED,
    /** {0} dose highest. */
    HIGHEST,
    /** {0} highest. */
    NEVER_ABOVE_THE_RANGE,
    /** {0} dose equivalent, {1} highest, {2} over. */
    HEAT_ABOVE_THE_RANGE,
    /** {0} look age outcome. */
    MARKS_AFTER,
    /** {0} look age outcome. */
    FINE_AFTER,
    IT_NEVER_CAME_TO_THE_WORKING,
    IT_WAS_NOT_HELD_COOL_FOR,
    READINGS_ARE_MISSING_WHILE_IT,
    LOOKED_AT_TOO_EARLY_LOOK_AGAIN,
    THE_LOOKS_SAY_TOO_LITTLE,
    WHAT_WAS_SEEN_HAS_ANOTHER,
    MARKS_WERE_SEEN_AND_LATER_NONE,
    /** {0} limit published, {1} in force learned. */
    THE_PUBLISHED_LIMIT,
    /** {0} limit batches. */
    YOUR_LAST_BATCHES,
    /** {0} limit batches, {1} own limit least, {2} stays. */
    TOO_FEW_BATCHES_OF_USE_AND,
    /** {0} last, {1} shown limit hottest, {2} band lower. */
    IN_NO_BAR_WAS_MARKED_THE,
    /** {0} last, {1} shown limit coolest. */
    IN_THE_BARS_WERE_MARKED_EVERY,
    /** {0} last, {1} limit marked. */
    IN_WERE_MARKED_BUT_HOT_AND,
    /** {0} last, {1} band middle, {2} one decimal band, {3} band upper, {4} limit marked. */
    IN_HARM_BEGAN_NEAR_9_TIMES,
    /** {0} learned id, {1} id. */
    TO_WORK_BY_YOUR_OWN_MONITOR,
    /** {0} learned in force. */
    STANDS_BESIDE_OF_YOUR_OWN,
    STAYS_IN_FORCE,
    /** {0} file. */
    WRITTEN,
    /** {0} own melt out, {1} learned limit published, {2} own melt out, {3} own id. */
    ITS_MELT_OUT_IS_PUBLISHED_AND,
    /** {0} learned id. */
    TO_GO_BACK_NAME_AGAIN_OR,

    // TargetLines.
    WHERE_SOURCES_AND_THE_RULE_FOR,
    /** {0} target word, {1} decimal band low, {2} decimal band high. */
    TO_C,
    WHY,

    // LearnCommand.
    /** {0} folder. */
    CANNOT_BE_READ_NOTHING_WAS,
    YOUR_BOWLS,
    /** {0} look plain chocolate, {1} join known. */
    CHOCOLATE_WAS_AND_NO_RECIPE,
    /** {0} looked chocolates stream. */
    LOOKED_AT_SO_FAR
}
