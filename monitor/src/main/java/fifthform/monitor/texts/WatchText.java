package fifthform.monitor.texts;

/** What stands on Watch besides its cues and alarms. */
public enum WatchText implements Text {
    // BandModel.
    NEW,
    PASSED,
    KNOWN,

    // BowlLine.
    /** {0} named bowl. */
    ANOTHER_BOWL_THAN_WHAT_THAT,
    /** {0} coasts, {1} coast from lifts seen. */
    THIS_BOWL_COASTS,
    /** {0} coasts. */
    A_BOWL_NOT_MET_BEFORE_A,
    /** {0} bowl material word, {1} coasts. */
    A_BOWL_NOT_MET_BEFORE_ONE,
    /** {0} like word, {1} named bowl. */
    THIS_BEHAVES_LIKE_A_BOWL_THAN,

    // CalmModel.
    /** {0} duration between out state. */
    FOR,
    PROBE_IS_OUT_NOTHING_IS,
    WAITING_FOR_THE_FIRST_READING,
    /** {0} about left dip. */
    OFF_IN_ABOUT,
    OVER_THE_BATH_COUNT,
    /** {0} about dip seconds. */
    OF_OVER_THE_BATH,
    /** {0} about left dip, {1} asked. */
    A_DIP_IS_BEING_COUNTED_OFF,
    /** {0} asked. */
    A_DIP_OF_ABOUT_GOES_ON,
    UNSURE_SHORT_DIPS_LIFT_AT_THE,
    /** {0} band turn. */
    TURNS_AT,
    STIR_AND_LOOK_WHERE_IT_TURNS,
    /** {0} f if lifted celsius. */
    ABOUT,
    /** {0} turn lower celsius, {1} turn upper celsius. */
    FROM_TO,
    /** {0} minutes. */
    ABOUT_MIN_LEFT_TO_POUR,
    OUT_IN_ABOUT,
    LIFT_IN_ABOUT,
    THE_PROBE_WAS_SAID_TO_BE,
    NOTHING_IS_DUE_YET,
    /** {0} cool dwell, {1} range cool, {2} held and still to be held. */
    CRYSTALS_TAKE_AT,
    /** {0} cool dwell, {1} range cool, {2} held and still to be held. */
    CRYSTALS_TAKE_LONGER,
    /** {0} cool dwell, {1} range cool, {2} held and still to be held. */
    CRYSTALS_TAKE_LESS,
    /** {0} melt range low celsius, {1} melt dwell, {2} state batch progress dwell. */
    IT_IS_TO_BE_HELD_AT,
    OUT_OF_THE_WATER,
    LIFTED,
    THE_BATCH_IS_DONE,
    /** {0} about dip seconds. */
    THE_DIP_LASTED_ABOUT_WHERE_IT,
    /** {0} act. */
    NOW_IT_TURNS,
    IT_TURNS,
    /** {0} wet act, {1} f if lifted celsius, {2} band f if lifted. */
    TURNS_ABOUT_BAND,
    /** {0} range. */
    RANGE,
    /** {0} difference turn upper celsius. */
    THE_BAND_IS_WIDE_TOO_UNSURE,
    NO_LIFT_SEEN_YET_AS_A,
    /** {0} from, {1} coast band spread, {2} lifts coast from. */
    THIS_BOWLS_COAST,

    // CheckAge.
    PROBE_NOT_CHECKED,
    /** {0} ago age. */
    CHECK_AGAIN_LAST_CHECK,
    /** {0} ago age. */
    CHECKED,
    TODAY,
    A_DAY_AGO,
    /** {0} days. */
    DAYS_AGO,
    /** {0} days a month. */
    MONTHS_AGO,

    // CrystalModel.
    ESTIMATE_FROM_TEMPERATURE,
    /** {0} max temper watch thickness. */
    THAT_MUCH_MAKES_IT_ABOUT_TIMES,
    DOUBTFUL_SINCE_NOBODY_SAID,
    DOUBTFUL_SINCE_HALF_A_DEGREE,
    /** {0} digit copies least seed. */
    A_TEMPER_NEEDS_PERCENT,
    /** {0} needed. */
    CRYSTALS_THE_MODEL_FINDS_NO,
    /** {0} digit percent least, {1} digit percent most, {2} digit percent best guess, {3} needed. */
    CRYSTALS_TO_PERCENT_OF_THE_FAT,
    UNDER_0_01,
    /** {0} digit percent most, {1} needed. */
    CRYSTALS_AT_MOST_PERCENT,
    /** {0} digit percent. */
    JUST_UNDER,
    /** {0} digit percent. */
    JUST_OVER,
    STIRRED,
    LEFT_ALONE,
    /** {0} is. */
    IT_COUNTS_AS_AS_YOU_SAID,
    /** {0} is. */
    IT_COUNTS_AS_THE_HEAT_FROM,
    /** {0} is. */
    IT_COUNTS_AS_AS_THE_WATER,
    /** {0} is. */
    IT_COUNTS_AS_THAT_IS_ASSUMED,
    DOUBTFUL_UNTIL_THE_NEXT_FULL,
    DOUBTFUL_SINCE_THE_LAST,
    TOO_FEW_CANNOT_BE_SAID_NOBODY,
    TOO_FEW_CANNOT_BE_SAID_HOW,
    TOO_FEW_CANNOT_BE_SAID_IT,

    // LadderModel.
    MELTED,
    COOL,
    WORKING,
    TOO_HOT,
    MELT_OUT,
    TOO_COLD,
    GUARD,
    /** {0} limit celsius. */
    AT,
    PAST_IT,
    AWAY,

    // NotUpdating.
    /** {0} seconds. */
    NOT_UPDATING_FOR_S,
    LIFT_THE_BOWL_USE_A_SECOND,
    /** {0} seconds. */
    OVER_S_OLD,
    NO_FORECAST_FROM_AN_OLD,

    // OtherWords.
    OTHER_THERMOMETER,
    /** {0} beginning, {1} other celsius, {2} clock other at zone. */
    OTHER_AT,
    THE_SAME,
    ABOVE,
    BELOW,
    CHECK_THE_PROBE_IN_ICE_WATER,

    // TrustWords.
    /** {0} difference budget expanded kelvin, {1} budget parts stream map, {2} symbol. */
    WITHIN_95_IN_100_TWICE_THE,
    WIRE,
    CONVERTER_AND_ITS_JUNCTION,
    WHAT_THE_CHECK_LEFT,
    LAST_DIGIT,
    NOISE,
    /** {0} seconds bowl lag. */
    THE_TIP_LAGS_ASSUMED_UNTIL_IT,
    /** {0} measured map trust dip. */
    WHAT_IT_LAGS_BY_IS_TAKEN,
    /** {0} seconds lag, {1} seconds lag sigma. */
    THE_DIP_SHOWS_THAT_THE_TIP,
    /** {0} seconds. */
    SECONDS,

    // WatchModel.
    TEMPERATURE_DOES_NOT_PROVE,
    /** {0} phase word, {1} minutes duration between state, {2} minutes elapsed. */
    OF_THE_BATCH,
    /** {0} bowl material word. */
    BOWL,
    SAVED,
    NOT_SAVED,
    READING,
    NO_READING,
    RAW_READING,
    PROBE_IS_OUT,
    SETTLING,
    IN_DOUBT,
    /** {0} duration between e at. */
    OLD,
    /** {0} difference budget expanded kelvin. */
    WITHIN,
    STEADY,
    NO_FORECAST,
    WHILE_THERE_IS_NO_GOOD_READING,
    OFF_THE_WATER_IT_TURNS_AT,
    LIFTED_NOW_IT_TURNS_AT,
    LEFT_TO_ITSELF,
    LEFT_ON_THE_BATH,
    LEFT_IN_THE_WATER,
    IN_THREE_MINUTES,
    NOT_SETTLED_YET,
    /** {0} about f if lifted. */
    IN,
    UNSURE,
    ROOM,
    BATH,
    WARM_BATH,
    TO_POUR,
    MIN,
    /** {0} planned, {1} melt out limit celsius. */
    THE_PLANNED_SEED_G_WAS_NOT,
    FAULT_OF_THE_PROGRAM_USE_THE,
    READINGS_ARE_RECORDED_ALL_THE,

    // WatchPicture.
    CRYSTALS,
    TO_KNOW,

    // WatchModel, the key of a notice.
    IT_IS_THE_BOWL,

    // SessionLoop.
    MARK,
    SEED_ADDED,

    // CalmModel.
    PROBE_OUT_PUTS_IT_BACK,

    // CrystalModel.
    IS_IT_BEING_STIRRED_STIR_YES,

    // Help.
    NOTHING_WAS_READ_YET,
    HELP_HIDE_THIS,
    NOTHING_WAS_READ_YET_SO,
    WHY_HIDE_THIS,
    SEEN_I_HAVE_SEEN_IT_BE,
    THESE_KEYS_ARE_YOUR_HANDS_WHY
}
