package fifthform.monitor.texts;

/** What is said of looks at the bars: what was seen, what it counts as and when to look again. */
public enum LooksText implements Text {
    // LookCalendar.
    /** {0} chocolate, {1} look age. */
    LOOK_AT_THE_BARS_OF_OLD,
    /** {0} look for, {1} session. */
    LOOK_FOR_KEEP_IT_WITH_MONITOR,

    // LookFile.
    /** {0} why. */
    THE_LOOKS_AT_THESE_BARS_CANNOT,
    /** {0} e message. */
    THIS_LOOK_CANNOT_BE_READ_AND,
    THE_LINE_STAYS_AS_IT_IS,

    // LookText.
    /** {0} key. */
    IS_OUT_OF_RANGE,
    /** {0} said. */
    IS_NOT_KNOWN,

    // LookTime.
    LOOK_FOR_AFTER_A_DAY,
    LOOK_FOR_AFTER_TWO_DAYS,
    LOOK_FOR_AFTER_A_WEEK,
    LOOK_FOR_AFTER_FOUR_WEEKS,
    A_DAY,
    TWO_DAYS,
    A_WEEK,
    FOUR_WEEKS,

    // LookWords.
    NO_BLOOM,
    A_GREY_OR_WHITE_VEIL,
    STREAKS,
    BLOTCHES,
    A_ROUGH_DRY_COAT_THAT_DOES,
    SPOTS_OR_RINGS_OF_OIL,
    SOMETHING_FUZZY_THAT_GROWS,
    ALL_OVER,
    THE_THICK_PART,
    THE_EDGES,
    THE_SIDE_FROM_THE_MOULD,
    THE_OPEN_SIDE,
    OVER_NUTS_OR_PIECES,
    ON_A_FEW_BARS_ONLY,
    BREAKS_WITH_A_CLEAN_SNAP,
    BREAKS_SOFTLY,
    BENDS_BEFORE_IT_BREAKS,
    BRIGHT,
    SATIN,
    DULL,
    CAME_OUT_BY_ITSELF,
    CAME_OUT_WITH_A_TAP,
    SOME_STUCK,
    STUCK,
    KEPT_COOL_15_TO_20_C,
    KEPT_IN_THE_FRIDGE,
    KEPT_WARM_ABOVE_24_C_FOR,
    KEPT_WARM_AND_COOL_BY_TURNS,
    /** {0} decimal hours. */
    HOURS,
    /** {0} decimal hours day. */
    DAYS,
    NOT_SURE_OF_IT,
    /** {0} join kept photos. */
    PHOTOS,
    /** {0} kept number, {1} age kept look, {2} seen kept look, {3} photos, {4} note. */
    LOOK_AFTER_THE_BATCH,
    FINE_SO_FAR,
    IT_COUNTS_AS_FINE,
    IT_COUNTS_AS_MARKS_OF_LOST,
    THIS_HAS_ANOTHER_CAUSE_THAN,
    IN_THE_THICK_PART_ONLY_IT,
    ON_A_FEW_BARS_ONLY_IT,
    BARS_THAT_WERE_KEPT_WARM_BLOOM,
    THIS_IS_NO_BLOOM,
    ONE_WEAK_SIGN_OR_TOO_LITTLE,
    THROW_THE_WHOLE_BATCH_AWAY_AND,
    THESE_BARS_CAN_BE_MELTED_AND,
    TOO_EARLY_TO_SAY_MUCH_LOOK,
    LOOK_AGAIN_AFTER_2_DAYS_7,
    LOOK_AGAIN_AFTER_7_DAYS_AND,
    LOOK_AGAIN_AFTER_4_WEEKS_WHAT,

    // PhotoPath.
    /** {0} look plain kept. */
    THERE_IS_NO_FILE_AT_THE,

    // LookCommand.
    AT_BELONGS_TO_REMINDERS,
    REMINDERS_STANDS_ALONE_NOTHING,
    THESE_BARS_ARE_OLDER_THAN_FOUR,
    /** {0} left size. */
    STILL_TO_COME_SEND_THIS_TO,
    /** {0} at. */
    AT_WAS_NOTHING_WAS_DONE_SAY,
    UNDO_STANDS_ALONE_NOTHING_WAS,
    /** {0} look line. */
    TAKEN_BACK_ITS_LINE_STAYS_IN,
    NONE_IS_KEPT,
    /** {0} join loaded looks. */
    KEPT,
    IT_WAS_TAKEN_BACK_BEFORE,
    /** {0} undo, {1} twice, {2} known. */
    THERE_IS_NO_LOOK_NOTHING_WAS,
    /** {0} of, {1} of. */
    NO_LOOK_AT_IS_KEPT_YET,
    NOTHING_WAS_KEPT,
    NOTHING_WAS_SAID_OF_THE_BARS,
    /** {0} e message. */
    YOUR_ANSWERS_CANNOT_BE_READ,
    /** {0} the look. */
    KEPT_AS_PRACTICE,
    /** {0} the look. */
    KEPT_ALONE,
    /** {0} of. */
    ONE_LOOK_FOUND_MARKS_AND_A,
    PRACTICE,
    /** {0} practice. */
    WHAT_YOUR_BATCHES_SAY_TOGETHER,
    /** {0} note length, {1} longest note. */
    NOTE_HAS_CHARACTERS_NOTHING,
    FROM_NOW,
    AGO,
    /** {0} look age abs, {1} hours. */
    BY_THIS_COMPUTERS_CLOCK_THE,
    /** {0} age. */
    AGE_WAS_NOTHING_WAS_KEPT_SAY,
    /** {0} looks path, {1} why. */
    CANNOT_BE_WRITTEN_THIS_LOOK,

    // LookOptions.
    BLOOM_SAYS_NONE_AND_SOMETHING,
    SAY_ONE_OR_THE_OTHER,
    PLACE_SAYS_WHERE_BUT_NO_BLOOM,
    NAME_IT_TOO_FOR_EXAMPLE_BLOOM,
    NOTHING_WAS_SAID_OF_THE_BARS_LOOK_OPTIONS,
    SAY_AT_LEAST_BLOOM_NONE,
    /** {0} option, {1} said. */
    WAS,
    /** {0} meant, {1} join known. */
    SAY_ONE_OF,
    /** {0} what, {1} what do. */
    NOTHING_WAS_KEPT_LOOK_OPTIONS,

    // LookQuestions.
    A_DIGIT_ANSWERS_ENTER_PASSES_Q,
    WHERE_IS_IT_SEVERAL,
    HOW_DOES_A_BAR_BREAK_NOT,
    HOW_DOES_THE_SIDE_FROM_THE,
    HOW_DID_THEY_LEAVE_THE_MOULD,
    HOW_WERE_THEY_KEPT,
    ARE_YOU_SURE_OF_IT,
    YES_SURE,
    NOT_QUITE_COUNT_IT_FOR_LESS,
    WHAT_IS_ON_THE_BARS_SEVERAL,
    NOTHING_AND_SOMETHING_CANNOT,
    ONE_DIGIT_PLEASE,
    /** {0} choices length. */
    DIGITS_FROM_1_TO_OR_ENTER
}
