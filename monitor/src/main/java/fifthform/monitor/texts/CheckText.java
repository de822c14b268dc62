package fifthform.monitor.texts;

/** What the check of a probe says. */
public enum CheckText implements Text {
    // CheckAirOptions.
    THE_PRESSURE_OR_ALTITUDE,

    // CheckJudgement.
    THE_BOILING_POINT_DOES_NOT_FIT,

    // CheckKeeper.
    /** {0} e message. */
    THE_CHECK_COULD_NOT_BE_KEPT,
    /** {0} adapter file, {1} e message. */
    COULD_NOT_BE_SET_ASIDE_THE,

    // CheckLineOptions.
    /** {0} channel. */
    CHANNEL_WAS_NOTHING_WAS_DONE,

    // CheckNotices.
    LAPTOP_AND_WATER,
    FILL_A_CUP_WITH_CRUSHED_ICE,
    PUT_THE_TIP_IN_THE_MIDDLE,
    BRING_PLAIN_WATER_TO_A_ROLLING,
    BOILING_WATER_AND_STEAM_SCALD,
    KEEP_THE_LEAD_OFF_FLAME_AND,
    PUT_BOTH_TIPS_SIDE_BY_SIDE,

    // CheckProbeCommand.
    ICE_POINT,
    BOILING_POINT,
    /** {0} taken size, {1} targets size, {2} name. */
    STEP_OF,
    /** {0} name, {1} ended why desk. */
    THE_WAS_NOT_TAKEN,
    THE_TWO_PROBES_NEVER_STOOD,
    /** {0} place. */
    NOTHING_IS_KNOWN_OF_SO_THERE,
    /** {0} place, {1} aside. */
    IS_FORGOTTEN_FROM_NOW_ON_IT,
    CHECKED_BEFORE,
    NEVER_CHECKED,
    /** {0} subject place, {1} subject spoken talk, {2} subject before checked. */
    PROBE_CHECK,
    /** {0} subject place. */
    PROBE_CHECK_RECORDED_EARLIER,
    PROBE_CHECK_PRACTICE_AN,
    /** {0} kept. */
    KEPT_WITH_THE_ADAPTER_IN_IT,
    /** {0} kept. */
    NOTED_WITH_THE_ADAPTER_IN_THE,
    NOTHING_WAS_KEPT,
    NOTHING_WAS_KEPT_WHOSE_PROBE,
    NOTHING_WAS_KEPT_THIS_WAS,
    /** {0} e message, {1} e what do. */
    NOTHING_WAS_CHECKED,

    // CheckReport.
    /** {0} gain. */
    GAIN,
    /** {0} signed b off, {1} desk kelvin b. */
    CORRECTED_THE_BOILING_POINT_IS,
    PLAUSIBLE_A_BOILING_POINT,
    RESULT,
    /** {0} why. */
    NOT_PASSED,
    ICE_POINT_CHECK_REPORT,
    BOILING_POINT_CHECK_REPORT,
    /** {0} name, {1} desk point read, {2} desk point target, {3} signed point error, {4} desk kelvin point. */
    READS_WHERE_IS_TRUE_SO,
    /** {0} desk finding work, {1} signed c apply, {2} gain. */
    CORRECTION_AT,
    /** {0} desk kelvin sigma, {1} desk kelvin c. */
    THERE_A_READING_WAS_GOOD,
    /** {0} finding parts stream. */
    WHAT_IS_LEFT_ONE_STANDARD,
    /** {0} day subject before, {1} signed d kelvin, {2} locale root d, {3} d. */
    AGAINST_THE_LAST_CHECK_TIMES,
    /** {0} again c outcome. */
    CHECK_AGAIN_BY_AND_WHENEVER_IT,
    WHICH_CONVERTER_THE_ADAPTER,
    ITS_CONVERTER_TAKES_THE_WIRES,
    /** {0} desk agreement one, {1} desk agreement other, {2} desk kelvin abs, {3} desk kelvin agreement, {4} desk kelvin agreement. */
    CORRECTED_AND_APART_BY_UP_TO,
    /** {0} agreement. */
    SO,
    WHOSE_DAY_IS_NOT_KNOWN,

    // CheckRun.
    /** {0} desk last as. */
    IT_READ,
    /** {0} step, {1} desk target true, {2} desk kelvin target. */
    TRUE_HERE,
    ENTER_BEGINS_AND_TAKES_IT,
    /** {0} desk manner check. */
    IT_BEGINS_AND_ENDS_BY_ITSELF,
    /** {0} taken point readings. */
    TAKEN_READINGS,
    WAITING_FOR_THE_TIP_TO_GO,
    STILL_FALLING,
    STILL_RISING,
    NOT_YET,
    SETTLING,
    STEADY_BEING_AVERAGED,
    /** {0} one place, {1} other place. */
    TWO_PROBES_IN_ONE_BATH_AND,
    /** {0} desk reading one, {1} desk reading other. */
    AND_AS_READ,
    /** {0} subject place, {1} e message, {2} e what do. */
    THE_CHECK_IS_NOT_FINISHED_AND,

    // CheckSensorOptions.

    // CheckSubjects.
    PRACTICE_SECOND_PROBE,

    // CheckWords.
    OBJECTION_NO_READING,
    OBJECTION_NOT_IN,
    OBJECTION_STILL_FALLING,
    OBJECTION_STILL_RISING,
    OBJECTION_RESTLESS,
    OBJECTION_TOO_FAR,
    OBJECTION_STUCK,
    PART_ICE_POINT,
    PART_BOILING_POINT,
    PART_WIRE,
    PART_BETWEEN,
    PART_CHIP,
    PART_JUNCTION,
    AGREE_CLOSELY,
    AGREE_WITHIN_DOUBT,
    AGREE_NOT,
    DRIFT_NONE,
    DRIFT_MAYBE,
    DRIFT_SEEN
}
