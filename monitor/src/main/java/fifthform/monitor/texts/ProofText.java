package fifthform.monitor.texts;

/** What is said of proofs and their files. */
public enum ProofText implements Text {
    // CupText.
    IT_IS_EMPTY,
    IT_IS_OF_A_NEWER_PROGRAM,
    /** {0} line. */
    K_IS_WHICH_IS_NOT_KNOWN,
    /** {0} i, {1} e message. */
    LINE_WITH_CAUSE,

    // Cups.
    THIS_IS_A_FILE_AND_THE,
    /** {0} why. */
    WHAT_IS_KNOWN_OF_CUPS_CANNOT,
    /** {0} cup chocolate, {1} cup. */
    IT_SAYS_TO_BE_IN,
    /** {0} join read complaints. */
    SOME_OF_WHAT_IS_KNOWN_OF,
    /** {0} why message. */
    WHAT_IS_KNOWN_OF_THIS_CUP,

    // ProofFile.
    /** {0} ending. */
    GIVE_A_RECORDING_OR_A_TABLE,
    IT_IS_EMPTY_SO_NOTHING_IS,
    /** {0} e message. */
    ITS_FIRST_LINE_CANNOT_BE,

    // KeptSmears.
    SET_AFTER,
    NOT_SET_AFTER,
    /** {0} head name, {1} local date instant, {2} result replace, {3} set, {4} proof report minutes, {5} look replace. */
    BY_THE_SMEAR,
    SMEAR,

    // ProofCooling.
    /** {0} task desk, {1} task desk. */
    FROM_TO_AS_WARM,
    /** {0} record file. */
    RECORDED_IN,
    PRACTICE_ITSELF,
    A_RECORDING,
    /** {0} origin subject equals. */
    NOTHING_IS_KEPT_THIS_WAS_WITH,
    /** {0} proof report bend. */
    BENT_AT,
    /** {0} v temper bend. */
    LEAVE_IT_IN_TO_BE_SURE,
    CALIBRATION_OF_A_CUP,
    PROOF_OF_TEMPER,
    /** {0} what. */
    PRACTICE_AN_INVENTED_BOWL_CUP,
    /** {0} s. */
    IT_BELONGS_TO_THE_SESSION,
    /** {0} e message, {1} e what do. */
    NOTHING_WAS_PROVED,

    // ProofJudge.
    /** {0} locale root fit. */
    RESULT_THIS_CUPS_TIME_CONSTANT,
    /** {0} place recipe name, {1} proof report bend. */
    WITHOUT_TEMPER_BENDS_AT,
    WITHOUT_TEMPER_IT_DOES_NOT,
    THAT_WAS_THE_FIRST_RUN_DO,
    /** {0} percent. */
    IT_AGREES_WITH_THE_RUN_BEFORE,
    /** {0} percent. */
    IT_DIFFERS_FROM_THE_RUN_BEFORE,

    // ProofNotices.
    DRY_THE_PROBE,
    /** {0} start. */
    FILL_THE_CUP_FROM_THE_STIRRED,
    HANG_THE_TIP_ON_THE_AXIS,
    WITHIN_20_S_HANG_THE_CUP,
    THROW_THE_SAMPLE_AWAY,
    MILK_OR_NUTS_IN_IT_THIS,
    TAKE_CHOCOLATE_THAT_WAS_HELD,
    /** {0} start. */
    LET_IT_COOL_IN_THE_CUP,
    THEN_HANG_THE_CUP_INTO_THE,
    THROW_THE_SAMPLE_AWAY_PROOF_NOTICES,
    DRAW_A_CLEAN_DRY_COOL_KNIFE,
    LAY_IT_DOWN_AT_18_TO,
    IT_IS_SET_WHEN_A_FINGER,

    // ProofOfFile.
    /** {0} curve. */
    IS_NO_FILE,
    /** {0} curve. */
    THERE_IS_NO_FILE,
    /** {0} files exists curve. */
    NOTHING_WAS_JUDGED_CHECK_THE,
    /** {0} curve. */
    IS_A_SMEAR_AND_HAS_NO,
    /** {0} recorded lost. */
    LINES_OF_IT_ARE_DAMAGED_AND,
    /** {0} curve file name, {1} place recipe name, {2} proof task place. */
    PROOF_OF_TEMPER_PROOF_OF_FILE,
    /** {0} task desk. */
    ITS_BATH_WAS_NOT_MEASURED_AND,
    /** {0} curve, {1} e message. */
    CANNOT_BE_READ_NOTHING_WAS,

    // ProofOfSmear.
    /** {0} place recipe name. */
    SMEAR_TEST,
    AT_A_ROOM_OF_20_C,
    /** {0} temper upper case, {1} room present. */
    RESULT_BY_THE_SMEAR,
    SET_AFTER_PROOF_OF_SMEAR,
    NOT_SET_AFTER_PROOF_OF_SMEAR,
    /** {0} task desk smear. */
    THE_ROOM_IS_WARM_ABOVE_EVEN,
    LOOK_AT_IT_AGAIN_AFTER_15,
    HOW_DOES_IT_LOOK_G_GLOSSY,
    AND_MINUTES_HOW_LONG_IT_TOOK,
    /** {0} near, {1} join, {2} said minutes empty. */
    HOW_THE_FILM_LOOKS_IS_NOT,

    // ProofPlace.
    /** {0} name. */
    CUP_WAS_NOTHING_WAS_DONE_USE,
    /** {0} e message. */
    WITH_SESSION_NONE_THE_PROOF,

    // ProofReport.
    /** {0} whole, {1} locale root whole. */
    MIN_S,
    /** {0} signed bend kelvin, {1} desk bend, {2} minutes bend after. */
    A_MINUTE_AT_AFTER_THE_DIP,
    RESULT_NOT_JUDGED,
    PROVISIONAL,
    /** {0} verdict temper upper, {1} verdict provisional. */
    RESULT,
    /** {0} bend b desk. */
    IT_BENT_AT,
    THIS_CUP_WAS_NEVER_CALIBRATED,
    /** {0} measure basis from. */
    PROVISIONAL_THESE_EDGES_ARE,
    /** {0} desk under, {1} signed under kelvin, {2} desk over, {3} signed over kelvin. */
    IN_TEMPER_FOR_THIS_CHOCOLATE,
    /** {0} good count, {1} desk good bend, {2} desk kelvin good, {3} signed good slope, {4} desk kelvin good. */
    YOUR_GOOD_CURVES_BEND_AT_WITH,
    POUR_AND_KEEP_THE_BOWL_IN,
    TOO_LITTLE_SEED_KEEP_IT_A,
    DO_NOT_POUR_COOL_AGAIN_TO,
    TOO_MANY_CRYSTALS_IT_WILL_BE,
    TAKE_ANOTHER_SAMPLE_IN_THE,

    // ProofRun.
    STEP_1_OF_2_ICE_BATH,
    /** {0} bath why desk. */
    THE_ICE_BATH_WAS_NOT_MEASURED,
    /** {0} desk reads. */
    THIS_PROBE_WAS_NEVER_CHECKED,
    IS_THERE_STILL_ICE_IN_THE,
    STEP_2_OF_2_THE_SAMPLE,
    ENTER_ENDS_IT_SOONER,
    /** {0} desk around bath, {1} desk manner check. */
    IT_BEGINS_AND_ENDS_BY_ITSELF,
    /** {0} desk dipped start. */
    IN_THE_ICE_FROM,
    /** {0} words get. */
    SO_FAR,
    /** {0} proof report minutes. */
    IN_THE_ICE,
    WAITING_FOR_THE_ICE,
    COOLING,
    BEND_PASSED_COOLING_ON,
    /** {0} subject probe place, {1} e message, {2} record file, {3} e what do. */
    THE_PROOF_IS_NOT_FINISHED_WHAT,

    // ProofSubject.
    /** {0} word, {1} stream sample cup. */
    THERE_IS_NO_PRACTICE_BOWL,

    // ProofTable.
    IT_IS_NO_TEXT_IN_UTF,

    // ProofTask.
    CALIBRATED,
    NOT_CALIBRATED,
    /** {0} cup, {1} cup traits present, {2} good, {3} good. */
    CUP,

    // ProveCommand.
    CALIBRATE_CURVE_AND_SMEAR_ARE,
    /** {0} film option. */
    BELONGS_TO_THE_SMEAR_TEST,
    /** {0} e message. */
    THE_PROOF_CANNOT_BE_WRITTEN,

    // ProveListCommand.
    /** {0} minutes. */
    CALIBRATED_TO,
    /** {0} kelvin a minute, {1} celsius. */
    CURVE_BENDS,
    /** {0} cup chocolate, {1} cup, {2} runs cup, {3} cup good bends. */
    IN_OF_3_GOOD_CURVES,
    SMEAR_TESTS,
    NOTHING_WAS_PROVED_YET_TRY,
    /** {0} apart as double. */
    NOT_CALIBRATED_ITS_LAST_TWO,
    NO_BEND,
    BARS_GOOD,
    BARS_BAD,

    // ProveMarkCommand.
    /** {0} word. */
    IS_NO_MARK_NOTHING_WAS_DONE,
    /** {0} name. */
    IS_A_SMEAR_TEST_AND_NO,
    /** {0} name. */
    NO_JUDGED_SAMPLE_IS_CALLED,
    /** {0} e message. */
    THE_MARK_COULD_NOT_BE_KEPT,
    SAMPLES_ARE_JUDGED_BY_THEM_NOW,
    /** {0} good curves enough. */
    FROM_ON_SAMPLES_ARE_JUDGED_BY,
    /** {0} name, {1} mark word, {2} marked chocolate, {3} marked cup, {4} good, {5} good, {6} good curves enough. */
    IS_MARKED_IN_HAS,
    MARK_NONE,
    MARK_GOOD,
    MARK_BAD,
    NO_SAMPLE_WAS_COOLED_AND,

    // SmearWatch.
    PRESS_ENTER_THE_MOMENT_THE,
    NOBODY_CAN_PRESS_ENTER_HERE_SO,
    PRESS_ENTER_WHEN_A_FINGER,
    TEN_MINUTES_IF_IT_IS_STILL,

    // ProofWords.
    UNFIT_TIMES_GO_BACK,
    UNFIT_TOO_FEW,
    UNFIT_COARSE,
    UNFIT_NOT_IN_ICE,
    UNFIT_START_COLD,
    UNFIT_START_HOT,
    UNFIT_WARM_BATH,
    UNFIT_ICE_GONE,
    UNFIT_GAP,
    UNFIT_STIRRED,
    UNFIT_MOVED,
    UNFIT_AT_WALL,
    UNFIT_TOO_SLOW,
    UNFIT_TOO_SHORT,
    WHY_NO_BEND,
    WHY_NEAREST_ON_LINE,
    WHY_BETWEEN_CLASSES,
    WHY_DISAGREE,
    WHY_LIKE_GOOD,
    WHY_COLDER_THAN_GOOD,
    WHY_LIKE_NO_TEMPER,
    WHY_WARMER_AND_FLATTER,
    WHY_UNLIKE_GOOD
}
