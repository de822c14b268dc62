package fifthform.monitor.texts;

/** What is said of files and tables that cannot be read or written as they should be. */
public enum FileText implements Text {
    // DidYouMean.
    /** {0} the word that was most likely meant. */
    DID_YOU_MEAN,

    // Recipes.
    THERE_IS_NO_SUCH_FILE,
    CHOCOLATE,
    CHECK_THE_PATH,
    THE_FILE_IS_NOT_TEXT_IN,
    SAVE_IT_AS_PLAIN_TEXT_WITH,
    /** {0} e message. */
    THE_FILE_CANNOT_BE_READ,
    CHECK_THAT_IT_IS_A_TEXT,
    BUILT_IN,
    BUILT_IN_RECIPES,
    /** {0} e message. */
    THEY_CANNOT_BE_READ_ONLY_YOUR,
    BUILD_OR_INSTALL_THE_PROGRAM,
    /** {0} e message. */
    YOUR_OWN_RECIPES_CANNOT_BE,
    CHECK_THAT_YOU_MAY_READ_THIS,
    /** {0} own recipe id, {1} before place. */
    ITS_ID_IS_THAT_OF_TOO,
    GIVE_ONE_OF_THE_TWO_ANOTHER,
    /** {0} own recipe id, {1} own place. */
    IS_YOUR_OWN_RECIPE_AND_NOT,
    THIS_IS_NO_PATH_OF_A,
    CHECK_THE_PATH_OR_NAME_A,
    /** {0} id. */
    IS_NOT_A_CHOCOLATE_I_KNOW,
    /** {0} meant, {1} join ids. */
    KNOWN_A_RECIPE_FILE_IS_NAMED,

    // CsvColumns.
    BEGIN_WITH_A_LINE_LIKE,
    /** {0} column word. */
    THE_COLUMN_IS_THERE_TWICE,
    GIVE_ONE_OF_THE_TWO_ANOTHER_CSV_COLUMNS,
    THERE_ARE_BOTH_TEMPERATURE_C,
    KEEP_ONE_OF_THE_TWO,
    /** {0} word. */
    THERE_IS_NO_COLUMN_IN_ITS,
    /** {0} join header. */
    NAME_ONE_OF_THESE,
    /** {0} column word, {1} line. */
    THERE_IS_NO_COLUMN_IN_ITS_CSV_COLUMNS,
    IT_IS_SEPARATED_BY_SEMICOLONS,
    /** {0} near, {1} column word. */
    IF_IS_IT_NAME_IT,

    // CsvRowReader.
    /** {0} name, {1} line. */
    LINE,
    NO_TIME,
    NO_NUMBER_OF_SECONDS,
    /** {0} timed word, {1} time cell, {2} timed column time. */
    IS_WHICH_IS_THE_ROW_IS,
    WRITE_DATE_AND_TIME_AS_2026,
    WRITE_SECONDS_SINCE_THE_START,
    /** {0} cells size, {1} columns count. */
    IT_HAS_CELLS_AND_THE_HEADER,
    WRITE_DECIMALS_WITH_A_POINT_30,
    /** {0} time cell, {1} last seconds plain. */
    ITS_TIME_S_IS_BEFORE_THAT,
    PUT_THE_ROWS_IN_THE_ORDER,
    /** {0} word. */
    EVENT_IS_NOT_KNOWN_AND_LEFT,
    /** {0} nearest word csv, {1} join csv events. */
    KNOWN,
    /** {0} column word, {1} cell. */
    IS_WHICH_IS_NO_NUMBER_IT,
    /** {0} cell replace. */
    WRITE_DECIMALS_AFTER_A_POINT,
    WRITE_A_NUMBER_OR_NOTHING,
    /** {0} column word, {1} cell. */
    IS_WHICH_NO_KITCHEN_HAS_IT,
    WRITE_WHAT_WAS_MEASURED_FROM,

    // CsvTape.
    IT_IS_EMPTY_NOTHING_TO_ANALYSE,
    BEGIN_IT_WITH_A_LINE_LIKE,
    IT_CANNOT_BE_READ_AS_A,
    CHECK_THAT_IT_IS_TEXT_WITH,

    // AdapterText.
    TALK_IS_NO_WAY_OF_TALKING,
    /** {0} key. */
    IS_OUT_OF_RANGE,

    // Adapters.
    THIS_IS_A_FILE_AND_THE,
    /** {0} why. */
    THE_PROBES_THAT_WERE_CHECKED,
    THIS_ADAPTER_WAS_WRITTEN_DOWN,
    USE_THE_NEWER_PROGRAM,
    IT_IS_TAKEN_AS_UNKNOWN,
    THE_LINES_THAT_CAN_BE_READ,
    /** {0} meaning, {1} aside file name. */
    WHAT_IS_KNOWN_OF_THIS_ADAPTER,
    CHECK_THE_PROBE_AGAIN_MONITOR,
    /** {0} e message. */
    WHAT_IS_KNOWN_OF_THIS_ADAPTER_ADAPTERS,
    CHECK_THAT_YOU_MAY_READ_AND,

    // KeptFiles.
    MOVE_THE_FILE_TO_ANOTHER_PLACE,
    /** {0} name, {1} aside file name. */
    THE_IS_KEPT_AS,
    /** {0} copy file name, {1} otherwise. */
    THE_REST_STAYS_KNOWN_THE_FILE,

    // SettingsFile.
    /** {0} e message. */
    WHETHER_THE_SOUND_WAS_HEARD,
    TRY_THE_SOUND_AGAIN_MONITOR,
    /** {0} key, {1} number as double. */
    IS,
    /** {0} what. */
    IT_IS_LEFT_ASIDE,
    /** {0} least, {1} most. */
    WRITE_A_NUMBER_FROM_TO,
    /** {0} key, {1} said, {2} word apply usual. */
    IS_IS_USED,
    /** {0} code. */
    LANGUAGE_IS_WITHOUT_TEXTS,
    /** {0} meant, {1} join. */
    POSSIBLE,
    WRITE_IT_IN_QUOTES,
    /** {0} why message. */
    THE_SETTINGS_CANNOT_BE_READ_SO,
    OLD_FILE,

    // AddedLines.
    IT_IS_A_FOLDER,
    YOU_HAVE_NO_RIGHT_TO_IT,
    /** {0} folder. */
    THERE_IS_NO_FOLDER,
    CHECK_THAT_THIS_IS_A_FILE,
    /** {0} the session. */
    IT_IS_OF_ANOTHER_SESSION,
    /** {0} the kind. */
    ITS_KIND_IS_OF_A_NEWER,

    // ActionCodec.
    /** {0} what. */
    DO_IS_WHICH_IS_NOT_KNOWN,

    // EventCodec.
    /** {0} name. */
    E_IS_WHICH_IS_NOT_KNOWN,

    // JournalPass.
    A_LINE_IS_TOO_LONG,
    LINE_1,
    THE_SESSION_IS_READ_AS_WELL,
    A_SECOND_HEADER,
    WALL_IS_NO_TIME_OF_DAY,

    // JournalProblems.
    /** {0} line bytes length. */
    THE_FILE_ENDS_IN_THE_MIDDLE,
    NOTHING_NEEDS_TO_BE_DONE,
    /** {0} why. */
    IT_IS_DAMAGED_AND_LEFT_OUT,
    THE_REST_OF_THE_SESSION_IS,
    /** {0} missing. */
    MISSING_BEFORE_IT,
    /** {0} sequence, {1} before. */
    ITS_NUMBER_IS_NOT_ABOVE_THE,
    WHAT_IS_THERE_IS_USED_A,
    /** {0} first line, {1} last line. */
    LINES_TO,
    THEY_ARE_NOT_AS_THEY_WERE,
    WHAT_CAN_BE_READ_IS_USED,
    /** {0} lines, {1} join kinds. */
    LINES_OF_UNKNOWN_KIND_WERE,
    READ_THE_SESSION_WITH_A_NEWER,
    /** {0} format. */
    THIS_SESSION_WAS_WRITTEN_BY_A,
    READ_IT_WITH_A_NEWER_PROGRAM,

    // JournalReader.
    /** {0} what. */
    NO_SESSION_IS_SHOWN,
    CHECK_THE_PATH_AND_THAT_YOU,
    THE_FILE_IS_EMPTY_THE_SESSION,
    IT_CAN_BE_DELETED,
    /** {0} e message. */
    THE_FIRST_LINE_CANNOT_BE_USED,
    CHECK_THAT_THIS_IS_A_SESSION,

    // JournalWriter.
    THERE_IS_A_SESSION_ALREADY,
    START_AGAIN,
    /** {0} session time gap. */
    NOTHING_WAS_RECORDED_FOR_S,
    THE_DISK_DOES_NOT_ANSWER,
    CHECK_THE_DISK,
    /** {0} left over length, {1} rest. */
    THE_END_IS_KEPT_ELSEWHERE,
    APPEND_THAT_FILE,
    /** {0} left over length. */
    THE_END_WAS_REFUSED_TWICE,
    FREE_SPACE_WHAT_IS_WRITTEN_IS_WHOLE,

    // RawLine.
    /** {0} number. */
    LINE_RAW_LINE,

    // SessionHeader.
    ITS_FIRST_LINE_IS_NOT_A,

    // SessionLock.
    ANOTHER_PROGRAM_WRITES_THIS,
    GO_ON_THERE_OR_END_IT,

    // SessionTime.
    T_IS_NO_TIME_OF_THIS,
    /** {0} key. */
    IS_NO_NUMBER_OF_SECONDS_TO,

    // SetupCodec.
    /** {0} json, {1} in temper. */
    BEGINS_WAS_AND_CAN_ONLY_BE,
    THE_RECIPE_IN_IT_CANNOT_BE,
    /** {0} text. */
    IS_NO_TIME,

    // StoreException.
    /** {0} why class simple, {1} why message. */
    THE_FILE_CANNOT_BE_OPENED,
    FREE_SPACE_OR_CHOOSE_ANOTHER,

    // Archive.
    IT_IS_NO_BACKUP_OR_DAMAGED,
    IT_HAS_NO_LIST_OF_CONTENTS,
    A_NEWER_PROGRAM_WROTE_IT,
    ITS_LIST_IS_CUT_OFF,
    ITS_LIST_CANNOT_BE_READ,
    /** {0} content name. */
    IS_MISSING_IN_IT,
    /** {0} content name. */
    IS_SAID_TO_BE_TOO_LONG,
    /** {0} content name. */
    IN_IT_IS_DAMAGED,
    /** {0} entry name. */
    IN_IT_IS_LONGER,

    // Restore.
    /** {0} printable content name. */
    A_PLACE_IS_NONE_OF_OURS,
    /** {0} bytes, {1} free. */
    IT_NEEDS_AND_ARE_FREE
}
