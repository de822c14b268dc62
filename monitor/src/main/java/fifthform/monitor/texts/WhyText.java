package fifthform.monitor.texts;

/** Why the program says what it says, in figures. */
public enum WhyText implements Text {
    LOOK_FIRST,
    /** {0} the question, {1} the session. */
    WOULD_HELP,
    // ReasonWords.
    NOW_AT,
    /** {0} span held s, {1} stands. */
    HELD_SO_FAR,
    /** {0} the difference. */
    FALLING_A_MINUTE,
    /** {0} the difference. */
    RISING_A_MINUTE,
    /** {0} celsius chocolate c, {1} range. */
    IT_STANDS_AT_PAST_THE,
    /** {0} seconds dip s. */
    THE_OF_THIS_DIP_ARE_OVER,
    THE_BOWL_HAS_LEFT_THE_WATER,
    AT,
    /** {0} stands, {1} range, {2} rate. */
    IT_STANDS_IN_THE_AND_HARDLY,
    /** {0} grams. */
    PLANNED,
    /** {0} stands, {1} celsius range high c, {2} has seed g grams. */
    IT_STANDS_UNDER_ABOVE_WHICH,
    YOU_SAID_THAT_THE_PROBE_IS,
    THE_SESSIONS_FILE_CANNOT_BE,
    /** {0} celsius range low c. */
    AT_OR_MORE,
    ALL_OF_IT,
    /** {0} has held s span, {1} where, {2} stands. */
    THE_HOLD_IS_OVER,
    /** {0} bare turn lower c, {1} bare turn upper c. */
    BAND_TO,
    TURNING_POINT_ABOUT,
    TURNING_POINT_NOW_ABOUT,
    /** {0} difference width. */
    THAT_BAND_IS_WIDE_TOO_UNSURE,
    ITS_UPPER_END_DECIDES,
    /** {0} wide, {1} celsius range high c. */
    WHICH_REACHES_ONCE_HANDS_HAVE,
    LOWER_THE_LESS_SURE_IT_IS,
    /** {0} celsius aim c, {1} warming. */
    AIMED_AT,
    AIMED_AT_INSIDE_THAT_RANGE,
    /** {0} seconds reaction s. */
    YOUR_HANDS_TAKE_ABOUT,
    /** {0} about left, {1} hands empty. */
    LIFT_WITHIN,
    /** {0} hands empty. */
    THE_SECOND_IS_HERE,
    /** {0} coasts, {1} coast from lifts. */
    THIS_BOWL_COASTS,
    /** {0} coasts. */
    NO_LIFT_OF_THIS_BOWL_WAS,
    /** {0} stands, {1} rate. */
    IT_STANDS,
    /** {0} about left s, {1} celsius range low c. */
    SO_IT_IS_TOO_THICK_TO,
    /** {0} before, {1} bare range low c, {2} bare range high c. */
    RANGE_FROM_TO,
    /** {0} before. */
    RANGE_BARE,
    /** {0} seed g. */
    GRAMS,
    /** {0} math round figure figure. */
    SECONDS,
    ITS_LIMIT,

    // DipWords.
    SINCE_A_DIP_GROWS_ONLY_STEP,
    RATHER_SHORT_A_DIP_CAN_BE,
    OF,
    /** {0} count, {1} bath. */
    HOW_THIS_BOWL_ANSWERS_THIS,
    /** {0} dips, {1} per second, {2} spread. */
    GAVE_FOR_A_SECOND_COAST,
    /** {0} kelvin come. */
    UP_TO_MAY_STILL_COME_BY,
    /** {0} kelvin lost. */
    THE_ROOM_TAKES_ABOUT_MEANWHILE,
    AND,
    /** {0} kelvin max give. */
    A_DIP_IS_TO_GIVE,
    /** {0} about comes, {1} count, {2} step by. */
    ALL_OF_IT_WOULD_TAKE_ABOUT,
    /** {0} count, {1} repeated. */
    THAT_MAKES,
    /** {0} about wet, {1} about film. */
    THAT_MAKES_ABOUT_LESS_FOR_THE,
    /** {0} sum, {1} count. */
    ASKED_FOR_ARE_AND_NO_DIP,
    /** {0} sum, {1} count, {2} step by. */
    ASKED_FOR_ARE,
    /** {0} coast, {1} count. */
    BY_THE_RATE_AT_THE_LAST,
    /** {0} dips, {1} per minute, {2} bath. */
    GAVE_FOR_A_MINUTE_OVER_THIS,
    /** {0} stands, {1} rate, {2} bath, {3} range low c. */
    IT_STANDS_OVER_THIS_BATH,
    /** {0} range low c, {1} range high c. */
    AND_RANGE_FROM_TO,
    WHEN_IT_WAS_ASKED_FOR_IT,
    IT_STANDS_AT,
    SHORT,
    ABOVE_IT,
    /** {0} celsius aim c, {1} range, {2} stands, {3} celsius from, {4} sum known kelvin missing, {5} missing kelvin. */
    AIMED_AT_DIP,
    /** {0} dips. */
    DIPS,
    /** {0} spread. */
    GIVE_OR_TAKE_PERCENT,
    /** {0} bath. */
    OVER_BATH_OF,
    A_FEW_SECONDS,

    // TroubleWords.
    /** {0} celsius bath c. */
    THE_BATH_STANDS_AT,
    /** {0} temperature at which it ends. */
    THE_ALARM_ENDS_AT,
    /** {0} celsius turn c, {1} band. */
    OFF_THE_HEAT_IT_TURNS_AT,
    /** {0} about ahead s, {1} celsius ahead c. */
    IN_IT_WILL_BE_AT_ABOUT,
    /** {0} celsius ahead c, {1} limit. */
    BEFORE_HANDS_HAVE_ACTED_IT_IS,
    /** {0} celsius limit c. */
    WITHIN_THE_LIMIT_WHICH_IT,
    /** {0} whole cue stood s, {1} whole reaction s. */
    LIFT_NOW_HAS_STOOD_FOR_S,
    /** {0} stands. */
    THE_BOWL_IS_STILL_BEING_WARMED,
    /** {0} whole faults. */
    THE_ADAPTER_REPORTED_FAULTS_OF,
    /** {0} whole reading age allowed. */
    THIS_PROBE_IS_IN_TIME_UP,
    /** {0} whole reading age s, {1} allowed. */
    THE_LAST_GOOD_READING_IS_S,
    /** {0} difference noise k. */
    THEY_SCATTER_BY_AROUND_THEIR,
    /** {0} scatter. */
    THE_READINGS_DO_WHAT_A_TIP,
    /** {0} difference past limit k, {1} celsius limit c. */
    OVER_THE_LIMIT,
    /** {0} difference past limit k, {1} celsius limit c. */
    UNDER_THE_LIMIT,
    /** {0} celsius limit c. */
    BACK_WITHIN_THE_LIMIT,
    /** {0} celsius chocolate c, {1} rate. */
    IT_STANDS_AT_TROUBLE,

    // MeltedOut.
    /** {0} limit celsius, {1} its highest. */
    IT_WAS_PAST_MELT_OUT,
    /** {0} highest temperature. */
    AND_PEAKED_AT,
    /** {0} temperature now, {1} rate. */
    NOW_IT_STANDS_AT,
    THE_ALARM_ENDS_BY_A_CHOICE,

    // CoastWords.
    /** {0} difference coast seconds, {1} per minute. */
    ABOUT_AT,
    /** {0} about coast seconds, {1} coast seconds factor, {2} coast seconds factor. */
    WITH_BAND,
    /** {0} how many lifts. */
    FROM_LIFTS,
    /** {0} difference replace. */
    PER_MINUTE
}
