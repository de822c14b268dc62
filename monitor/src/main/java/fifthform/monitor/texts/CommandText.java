package fifthform.monitor.texts;

/** What commands say that have no words of their own elsewhere. */
public enum CommandText implements Text {
    // AnalyseCommand.
    /** {0} every. */
    EVERY_WAS_NOTHING_WAS_DONE,
    /** {0} file, {1} reason e. */
    IT_WAS_NOT_ANALYSED_NAME_A,
    THERE_IS_NO_SUCH_FILE,
    YOU_MAY_NOT_READ_THIS_FILE,
    THIS_IS_NOT_TEXT_IN_UTF,
    /** {0} e message. */
    IT_CANNOT_BE_READ,

    // BackupCommand.
    /** {0} archive. */
    IS_THERE_ALREADY_IT_WAS_LEFT,
    /** {0} archive, {1} made files, {2} made sessions. */
    KEPT_IN_FILES_OF_THEM_BATCHES,
    /** {0} made practice left. */
    PRACTICE_BATCHES_LEFT_OUT_THEY,
    /** {0} archive file name. */
    ON_ANOTHER_COMPUTER_MONITOR,
    /** {0} e message. */
    THE_BACKUP_COULD_NOT_BE_MADE,

    // BatchOptions.
    /** {0} id, {1} usual chocolate. */
    THE_LAST_CHOCOLATE_IS_NOT,
    /** {0} join. */
    JOIN_WAS_NOTHING_WAS_DONE_SAY,
    /** {0} option, {1} value, {2} lowest, {3} highest, {4} unit. */
    WAS_NOTHING_WAS_DONE_GIVE_TO,
    /** {0} option, {1} what was said, {2} what was most likely meant, {3} all words. */
    WAS_NOTHING_WAS_DONE_SAY_ONE_OF,

    // BeginningOptions.
    AGAIN_MELTS_EVERYTHING,
    TEMPERED_BEGINS_WITH_WARMING,
    AGAIN_BEGINS_WITH_MELTING,
    /** {0} option. */
    AND_JOIN_IN_THE_MIDDLE_NOTHING,
    WARM_BY_NEEDS_HOLD_NOTHING_WAS,
    /** {0} warm by. */
    WARM_BY_WAS_NOTHING_WAS_DONE,
    /** {0} hold. */
    HOLD_WAS_NOTHING_WAS_DONE_GIVE,

    // Chocolates.
    /** {0} p. */
    PASSED_OVER,

    // CommonOptions.
    /** {0} units. */
    UNITS_WAS_NOTHING_WAS_DONE_SAY,

    // EarlierBatch.
    /** {0} session files name. */
    IS_A_PRACTICE_BATCH_OF_WHICH,
    /** {0} session files name. */
    IS_STILL_BEING_WATCHED_NOTHING,

    // ExportCommand.
    /** {0} file. */
    HOLDS_NO_READING_NOTHING_WAS,
    /** {0} from, {1} recording end nanos. */
    FROM_WAS_AND_THE_SESSION_ENDS,
    /** {0} from, {1} to. */
    FROM_WAS_AND_TO_NOTHING_WAS,
    /** {0} wanted, {1} kinds size. */
    OUT_WAS_WHICH_IS_NO_FOLDER,
    /** {0} file. */
    IS_THERE_ALREADY_AND_WAS_LEFT,
    /** {0} file, {1} e message. */
    CANNOT_BE_WRITTEN_NAME_ANOTHER,
    /** {0} file. */
    WRITTEN,
    /** {0} e message. */
    STANDARD_OUTPUT_DOES_NOT_TAKE,

    // ImportCommand.
    /** {0} beside size. */
    WITH_FILES_BESIDE_IT,
    /** {0} name, {1} beside empty size, {2} name. */
    TAKEN_IN_SEE_IT_WITH_MONITOR,
    /** {0} file, {1} to, {2} e message. */
    COULD_NOT_BE_COPIED_TO_CHECK,
    /** {0} session files name. */
    HERE_ALREADY,
    /** {0} home, {1} file, {2} session files ending. */
    ANOTHER_BATCH_IS_HERE_AS_WAS,

    // LiftOption.
    /** {0} way. */
    LIFT_WAS_NOTHING_WAS_DONE_SAY,

    // Main.
    THE_RESULTS_COULD_NOT_BE,
    /** {0} too much. */
    THAT_WAS_MORE_THAN_THIS,
    /** {0} e, {1} cause e. */
    THIS_IS_A_FAULT_OF_THE,
    WHAT_HAS_BEEN_RECORDED_IS_KEPT,
    /** {0} e command line. */
    NOTHING_WAS_DONE_TRY_HELP,
    OR,
    /** {0} join near. */
    DID_YOU_MEAN,

    // ParameterWords.
    A_NUMBER_FOR_EXAMPLE_31_5,
    DEGREES_CELSIUS_FOR_EXAMPLE_31_5,
    A_SMALLER_NUMBER,
    A_WHOLE_NUMBER,
    /** {0} subject number, {1} number group, {2} whole. */
    WAS_GIVE,
    /** {0} choice group, {1} choice group, {2} choice group lower. */
    WAS_SAY_ONE_OF,
    /** {0} extra group. */
    IS_NOT_EXPECTED_HERE,
    SOMETHING_MUST_FOLLOW,

    // PracticeCommand.
    SCENARIOS_ALL_INVENTED,
    MAKERS,
    /** {0} scenarios first. */
    YOUR_OWN_HANDS_MONITOR_RUN,
    THERE_IS_NO_MAKER_OF_THIS,
    /** {0} known. */
    KNOWN,

    // PracticeRunCommand.
    /** {0} times, {1} most. */
    TIMES_WAS_NOTHING_WAS_DONE,
    /** {0} asked title, {1} asked id, {2} report chocolate, {3} report maker word, {4} report maker about. */
    TEMPERED_BY,
    ALL_OF_IT_IS_INVENTED,

    // PracticeServeCommand.
    /** {0} language, {1} language line, {2} port, {3} served title, {4} times. */
    SPEAKING_AT_THROUGH_SIMULATED,
    THE_BATCH_IS_POURED,
    STOPPED_BEFORE_THE_BATCH_WAS,
    /** {0} talk. */
    TALK_WAS_NOTHING_WAS_DONE_THAT,
    /** {0} speed, {1} practice server fastest. */
    SPEED_WAS_NOTHING_WAS_DONE_A,

    // PracticeTrainCommand.
    /** {0} choice. */
    TRAINING_NEEDS_KEYS_AND_THERE,
    /** {0} speed, {1} fastest. */
    SPEED_WAS_NOTHING_WAS_DONE,

    // QuietSubjects.
    /** {0} word, {1} places stream p. */
    THERE_IS_NO_PRACTICE_PLACE,

    // RawBytes.
    /** {0} e message. */
    THE_RAW_BYTES_CANNOT_BE_KEPT,

    // RecipesCommand.
    /** {0} id, {1} name, {2} melt, {3} cool, {4} work, {5} melt-out, {6} whose. */
    RECIPE_ROW,
    RECIPE_BUILT_IN,
    RECIPE_OWN,
    /** {0} file, {1} known recipe name. */
    IS_A_GOOD_RECIPE,
    /** {0} remark. */
    MIND,

    // RecipesFromCommand.
    /** {0} file, {1} write. */
    WRITTEN_TO_TO_USE_IT_MONITOR,
    /** {0} file. */
    IS_THERE_ALREADY_NOTHING_WAS,
    /** {0} file, {1} e message. */
    CANNOT_BE_WRITTEN_NOTHING_WAS,

    // ReplayCommand.
    /** {0} bowl line notice. */
    OF_THE_BOWL,
    /** {0} lift. */
    OF_LIFT_WAS_NOTHING_WAS_DONE,
    /** {0} from seconds, {1} to. */
    FROM_WAS_AND_TO_NOTHING_WAS_REPLAY_COMMAND,
    FASTER_FASTER_SLOWER_SLOWER,
    REPLAY_MARK,
    /** {0} session header. */
    REPLAY_OF_WHAT_THE_ENGINE_SAYS,

    // ReplayOnDesk.
    /** {0} refused. */
    NO_WINDOW_GOING_ON_WITHOUT_IT,

    // RestoreCommand.
    /** {0} archive. */
    THERE_IS_NO_FILE_NOTHING_WAS,
    /** {0} done added, {1} done same, {2} done grown. */
    RESTORED_FILES_WERE_HERE,
    /** {0} done apart files, {1} folder. */
    OF_FILES_ANOTHER_VERSION_IS,
    /** {0} archive, {1} e message. */
    COULD_NOT_BE_RESTORED_WHAT_WAS,

    // SessionNames.
    A_SAMPLE_THAT_WAS_PROVED,
    LOOKS_AT_THE_BARS,
    NOTES_BESIDE,
    HOW_BARS_SET,
    HOW_BARS_WERE_KEPT,
    ANSWERS_ABOUT_BARS,
    /** {0} name, {1} sessions, {2} question what was meant, or nothing. */
    THERE_IS_NO_SESSION_NOTHING,
    /** {0} name, {1} companion, {2} session files ending. */
    HOLDS_AND_NO_SESSION_NOTHING,
    /** {0} sessions. */
    THERE_IS_NO_SESSION_IN_YET,

    // WhatIfQuestion.
    /** {0} text. */
    WHAT_IF_WAS_NOTHING_WAS_DONE,

    // ImportCommand.
    /** {0} file, {1} session files ending. */
    IS_NO_SESSION_ITS_NAME_DOES,

    // RestoreCommand.
    /** {0} join done twins. */
    OF_THESE_NAMES_THAT_DIFFER,
    /** {0} join done unlisted. */
    LEFT_OUT_SINCE_THEY_ARE_NOT,

    // TableImport.
    /** {0} file. */
    SAYS_SECONDS_AND_NOT_WHEN_THEY,
    /** {0} file. */
    OF_NOTHING_WAS_TAKEN_IN_MEND,
    /** {0} file. */
    WAS_NOT_READ_TO_ITS_END,
    /** {0} file. */
    HAS_NO_READING_OF_THE,
    /** {0} file. */
    IS_NOT_TEXT_IN_UTF_8,
    /** {0} file, {1} e message. */
    CANNOT_BE_READ_NOTHING_WAS,
    /** {0} problems stream problem. */
    NOTHING_WAS_TAKEN_IN_COLUMNS,
    /** {0} problems size most. */
    AND_MORE,
    /** {0} file name, {1} read rows size, {2} read bad. */
    TAKEN_IN_FROM_ROWS_OF_THEM,
    /** {0} session files name, {1} read rows size, {2} session files name. */
    TAKEN_IN_ROWS_OF_A_TABLE,

    // TableOptions.
    /** {0} amount grams. */
    AMOUNT_WAS_NOTHING_WAS_TAKEN,
    /** {0} scale. */
    SCALE_WAS_NOTHING_WAS_TAKEN_IN,
    /** {0} start. */
    START_WAS_NOTHING_WAS_TAKEN_IN,

    // ExportCommand.
    /** {0} session files name. */
    IS_OLDER_THAN_FOUR_WEEKS_AND
}
