package fifthform.monitor.texts;

/** The words of the Notebook screen and of its lines. */
public enum NotebookText implements Text {
    // What a column is called.
    COLUMN_WHEN,
    COLUMN_CHOCOLATE,
    COLUMN_BOWL,
    COLUMN_AMOUNT,
    COLUMN_LENGTH,
    COLUMN_CURVE,
    COLUMN_PEAK,
    COLUMN_END,
    COLUMN_LOOKS,

    // What stands in them.
    PRACTICE,
    REAL,
    /** {0} the chocolate. */
    PRACTICE_OF,
    NOT_SAID,
    /** {0} the chocolate. */
    ROW_AGAIN,
    /** {0} the chocolate. */
    ROW_IN_TEMPER,
    /** {0} grams. */
    GRAMS,
    /** {0} minutes. */
    MINUTES,
    /** {0} the end, {1} the word about the crystals. */
    END_WITH_CRYSTALS,
    /** {0} the end. */
    END_CUT_OFF,
    /** {0} the end. */
    END_IN_PART,
    END_UNREADABLE,
    END_UNREAD,
    END_GOING_ON,
    END_SEED_LOST,
    END_MELT_OUT,
    END_OVER_RANGE,
    END_NOT_COOLED,
    END_UNFINISHED,
    END_IN_RANGE,
    NO_LOOKS,
    /** {0} age, {1} what was seen. */
    LOOK_AT,
    SEEN_CLEAN,
    SEEN_NOTHING_SAID,

    // Figures of one batch.
    FIGURE_BATCH,
    FIGURE_WHEN,
    FIGURE_CHOCOLATE,
    FIGURE_BEGAN,
    BEGAN_IN_TEMPER,
    /** {0} the session. */
    MADE_AGAIN_FROM,
    FIGURE_AGAIN_IN,
    FIGURE_HOLD,
    /** {0} minutes, {1} what keeps it warm. */
    HOLD_PLANNED,
    /** {0} the batch, {1} the one before it. */
    SENTENCE_FROM,
    /** {0} the batch, {1} those after it. */
    SENTENCE_IN,
    FIGURE_BOWL,
    FIGURE_AMOUNT,
    FIGURE_LENGTH,
    FIGURE_LOWEST,
    FIGURE_PEAK,
    FIGURE_OVER,
    FIGURE_END,
    FIGURE_LOOKS,
    FIGURE_RANGE,
    /** {0} from, {1} to. */
    FROM_TO,
    NOT_REACHED,
    /** {0} what cannot be read. */
    TROUBLE,

    // The curve as a screen reader says it.
    /** {0} minutes, {1} lowest in the cool, {2} peak after it. */
    CURVE_SPOKEN,
    CURVE_EMPTY,
    /** {0} the letter, {1} the curve. */
    COMPARED_AS,
    /** {0} how many. */
    CURVES_SPOKEN,

    // Reminders.
    /** {0} the batches. */
    DUE_DAY,
    /** {0} the batches. */
    DUE_TWO_DAYS,
    /** {0} the batches. */
    DUE_WEEK,
    /** {0} the batches. */
    DUE_FOUR_WEEKS,
    /** {0} how many more. */
    AND_MORE,
    DUE_HERE,

    // What the batches say together.
    TOGETHER_TITLE,
    /** {0} how many are needed. */
    TOGETHER_TOO_FEW,
    /** {0} how many, {1} how many in range, {2} how many over. */
    TOGETHER_ENDS,
    /** {0} over the warning temperature, {1} of them marked, {2} under it, {3} of them marked. */
    TOGETHER_HEAT,
    /** {0} ended with enough, {1} of them marked, {2} ended without, {3} of them marked. */
    TOGETHER_CRYSTALS,
    /** {0} bowl, {1} its batches, {2} over in it, {3} of others, {4} over in those. */
    TOGETHER_BOWL,
    /** {0} how many last, {1} their middle minutes, {2} how many before, {3} their middle minutes. */
    TOGETHER_TIME,
    TOGETHER_CAUTION,

    // Lists and lines.
    /** {0} shown, {1} of how many. */
    COUNT,
    /** {0} how many. */
    COUNT_ALL,
    /** {0} how many. */
    PRACTICE_LEFT_OUT,
    /** {0} how many. */
    READING_ON,
    EMPTY_TITLE,
    EMPTY_WHAT_TO_DO,
    NONE_FITS,

    // The filter.
    FILTER_SEARCH,
    FILTER_SEARCH_HINT,
    FILTER_CHOCOLATE,
    FILTER_BOWL,
    FILTER_KIND,
    FILTER_END,
    FILTER_LOOKS,
    ANY_CHOCOLATE,
    ANY_BOWL,
    ANY_END,
    ANY_LOOKS,
    KIND_REAL,
    KIND_PRACTICE,
    KIND_BOTH,
    LOOKED,
    NOT_LOOKED,
    LOOK_DUE,
    BUTTON_SHOW_ALL,

    // What can be done.
    BUTTON_REPLAY,
    BUTTON_COMPARE,
    BUTTON_LOOK,
    BUTTON_WHY,
    BUTTON_PAGE,
    BUTTON_PUT_AWAY,
    BUTTON_BIN,
    BUTTON_RESTORE,
    BUTTON_EMPTY,
    /** {0} how many. */
    BUTTON_EMPTY_YES,
    BUTTON_NO,
    BUTTON_KEEP,
    BUTTON_BACK,
    KEYS,

    // The side.
    SIDE_NOTHING,
    COMPARE_TITLE,
    COMPARE_HOW,
    COMPARE_MATCHED,
    COMPARE_NOT_COOLED,
    BIN_TITLE,
    BIN_EMPTY,
    /** {0} how many. */
    BIN_QUESTION,
    /** {0} name, {1} files. */
    BIN_ROW,
    /** {0} the batch. */
    LOOK_TITLE,
    LOOK_BLOOM,
    LOOK_PLACES,
    LOOK_SURE,
    LOOK_NOTE,
    LOOK_PHOTO,
    LOOK_PHOTO_HINT,
    /** {0} age. */
    LOOK_AGE,
    CHOICE_NOT_SAID,
    PHOTO_GONE,
    PHOTO_SPOKEN,
    PHOTO_UNREADABLE,
    TYPE_THIS,

    /** {0} the batch. */
    WHY_TITLE,
    WHY_READING,

    // What was done.
    /** {0} the batch. */
    SAID_PAGE_BEGUN,
    /** {0} the file. */
    SAID_PAGE_WRITTEN,
    /** {0} the batch. */
    SAID_PUT_AWAY,
    /** {0} the batch. */
    SAID_RESTORED,
    /** {0} how many. */
    SAID_EMPTIED,
    /** {0} why. */
    SAID_NOT_DONE,
    SAID_THREE_AT_MOST,
    /** {0} which look and what it said. */
    SAID_LOOK_KEPT,
    SAID_LOOK_SAYS_NOTHING,
    SAID_LOOK_TWO_WAYS,
    /** {0} why. */
    SAID_NOT_LISTED,
    /** {0} why. */
    SAID_INDEX,
    /** {0} letters in percent. */
    SAID_SIZE,
    /** {0} why. */
    SAID_FAULT,

    // Bin.
    /** {0} session. */
    THERE_IS_NONE_ANY_MORE,
    /** {0} home. */
    IT_IS_THERE_ALREADY,

    // RowWords.
    /** {0} max hours day. */
    DAYS_SHORT,

    // NotebookBinCommand.
    /** {0} e message. */
    THE_BIN_COULD_NOT_BE_USED,
    /** {0} batch name, {1} files batch, {2} batch name. */
    IS_IN_THE_BIN_BRING_IT,
    /** {0} batch files. */
    FILES,

    // NotebookCommand.
    /** {0} unread. */
    READING_BATCHES_THE_NEXT_TIME,
    /** {0} e message. */
    THE_BATCHES_CANNOT_BE_LISTED,
    /** {0} notebook practice left. */
    SHOW_THEM_WITH_PRACTICE,

    // NotebookEmptyBinCommand.
    THE_BIN_IS_EMPTY_NOTHING_WAS,
    NOTHING_WAS_DELETED,
    /** {0} gone. */
    DELETED,
    /** {0} e message. */
    THE_BIN_COULD_NOT_BE_EMPTIED,
    THERE_IS_NO_TERMINAL_TO_ASK,
    /** {0} asked size. */
    DELETE_FOR_GOOD_THIS_CANNOT_BE,

    // NotebookRestoreCommand.
    /** {0} name, {1} file. */
    IS_BACK,
    /** {0} name, {1} e message. */
    COULD_NOT_BE_BROUGHT_BACK,
    /** {0} join all stream. */
    IN_THE_BIN,
    /** {0} name, {1} there. */
    THERE_IS_NO_IN_THE_BIN
}
