package fifthform.monitor.texts;

/** What Watch says while the maker looks back, and when something in the program stumbles. */
public enum LiveText implements Text {
    /** {0} how long ago. */
    LOOKING_BACK,
    /** {0} how long ago, {1} key back to now. */
    LOOKING_BACK_KEYS,
    NOTHING_EARLIER,
    ALARM_FIRST,
    IS_NOW,
    WARM_AIR_NEEDS_NO_KEY,
    NOTHING_MORE_TO_SAY,
    /** {0} seconds. */
    BLOWING,
    HOT_WATER_INTO_THE_BATH,
    /** {0} the key's cap. */
    KEY_STUMBLED,
    SOUND_STUMBLED,
    FAR_TITLE,
    /** {0} distance. */
    FAR_READABLE,

    // CutOff.
    THERE_IS_NO_BATCH_TO_GO,
    /** {0} session header. */
    THE_BATCH_OF_WAS_MEASURED_WITH,
    A_BATCH,
    A_PRACTICE_BATCH,
    /** {0} real, {1} session header start, {2} readings, {3} session file. */
    THAT_BEGAN_AT_WAS_CUT_OFF,
    TO_GO_ON_WITH_IT_MONITOR,

    // KeyDesk.
    /** {0} text, {1} symbol. */
    OTHER_THERMOMETER_ENTER_KEEPS,
    /** {0} text. */
    SEED_G_ENTER_THROWS_IT_IN,
    MARK_PLACED,
    NOTE_TO_WRITE,
    MARKED_FOR_A_NOTE,
    THAT_KEY_IS_FOR_TRAINING_ONLY,
    PROVED_AGAIN,
    /** {0} verdict, {1} keys fill, {2} next. */
    SAMPLE_PROVED,
    NOBODY_DOUBTS_THAT_IT_IS_THE,
    IT_IS_THE_BOWL_KEPT,
    IT_IS_LEFT_ALONE_STIR_AGAIN,
    IT_IS_STIRRED_STIR_AGAIN_LEFT,
    STIRRING,
    LEFT_ALONE,
    DRYING_THE_BOWL,
    /** {0} grams. */
    G_OF_SEED_IN,
    G_SEED_TO_TYPE_AGAIN,
    /** {0} most, {1} keys fill. */
    NOT_THROWN_IN_SEED_IS_1,
    OTHER_TO_TYPE_AGAIN,
    /** {0} plain sample lowest, {1} plain sample highest, {2} symbol, {3} keys fill. */
    NOT_KEPT_A_THERMOMETER_IN_A,
    /** {0} units withunit celsius. */
    OTHER_THERMOMETER_SAYS_KEPT,
    MELTING_AGAIN,
    COOLING_AGAIN,
    SAMPLE_PROVED_IN_TEMPER,
    D_DRIES_THE_BOWL_S_STIRS,
    GOOD_THE_CURVE_SHOWS_THE_REST,
    BELOW_THE_WORKING_RANGE_PRESS,
    /** {0} next word. */
    NOW,
    BOWL_ON_THE_BATH,
    BOWL_OFF_THE_WATER,
    BOWL_IN_COLD_WATER,
    PROBE_BACK_IN,
    PROBE_IS_OUT,
    /** {0} next name. */
    CHOCOLATE,
    NOTHING_TO_TAKE_BACK,
    TAKEN_BACK,
    PRESS_QUIT_AGAIN_TO_STOP,
    THERE_IS_NO_PORT_TO_LET,
    THE_PROBES_PORT_IS_TAKEN_BACK,
    THE_PROBES_PORT_IS_FREE_FOR,
    PRESS_LET_GO_AGAIN_TO_LET,
    UNDO_TAKES_IT_BACK,

    // LiveBatch.
    THIS_COMPUTER_MAY_GO_TO_SLEEP,
    /** {0} journal file. */
    KEPT_IN,

    // Notices.
    NOTICE_OF_PRACTICE,
    NOTICE_OF_TRAINING,
    NOTICE_OF_A_REAL_BATCH,

    // Screens.
    /** {0} refused. */
    NO_TERMINAL_SCREEN_GOING_ON,
    /** {0} fault. */
    THE_LINES_FAILED_RECORDING,
    /** {0} fault. */
    IT_STUMBLED_OVER_A_FAULT_OF,

    // Told.
    /** {0} joined before. */
    OF_THE_CRYSTALS_TOLD_THEN,
    /** {0} first. */
    COMPUTED_NOW_THE_SAME,
    /** {0} joined today. */
    OF_THE_CRYSTALS_COMPUTED_NOW,
    NOTHING,
    /** {0} judged word thick, {1} at. */
    AT,
    /** {0} at. */
    SEED_LOST_AT,
    SOMETHING_THAT_ONLY_A_NEWER,
    /** {0} then size. */
    TOLD_THEN_AND_COMPUTED_NOW_THE,
    /** {0} now sub list. */
    IT_WAS_CUT_OFF_WHILE_ITS,
    /** {0} i, {1} then size, {2} now size. */
    TOLD_THEN_AND_COMPUTED_NOW,
    /** {0} i then size. */
    THEN,
    /** {0} i now size. */
    NOW_TOLD,

    // WatchCommand.
    /** {0} e message. */
    PORT_ADAPTER_AND_CHOCOLATE,
    /** {0} e message. */
    THE_LAG_OF_THE_PROBES_TIP,

    // WatchSpeed.
    /** {0} text. */
    SPEED_WAS_NOTHING_WAS_DONE,

    // Watching.
    /** {0} id, {1} fault. */
    FAULT_AT_KEY,
    /** {0} times as fast as life. */
    SPEED_MARK,
    SOUND_MARK,
    SOUND_NOT_HEARD_AT_THE_STOVE,
    KEYS_OF_TRAINING,
    KEYS_OF_WATCH,

    /** {0} the alarm, {1} the key's cap. */
    ASIDE_SET,
    /** {0} the alarm. */
    ASIDE_BACK,
    ASIDE_TWO,
    /** {0} time left. */
    ASIDE_LEFT,
    ASIDE_NONE
}
