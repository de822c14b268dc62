package fifthform.monitor.texts;

/** What is said while bars set and are stored, and why they came out as they did. */
public enum BarsText implements Text {
    // Lines.
    /** {0} e message. */
    IT_CANNOT_BE_READ,
    /** {0} e message. */
    THIS_LINE_CANNOT_BE_READ_AND,
    THE_LINE_STAYS_AS_IT_IS,

    // SetWords.
    COMMON_PRACTICE_NO_SOURCE,
    /** {0} source. */
    IN_THE_ROOM_18_TO_20,
    SUPPLIERS_PAGE_READ_2_H_OR,
    /** {0} source. */
    IN_A_COOL_PLACE_12_TO,
    /** {0} source. */
    IN_THE_FRIDGE_8_TO_12,
    WARMER,
    COLDER,
    /** {0} place, {1} place range high. */
    IT_IS_THERE_WHICH_IS_THAN,
    /** {0} millimetres, {1} rounded t, {2} rounded look, {3} rounded longest. */
    BY_HEAT_ALONE_BARS_OF_MM,
    /** {0} place. */
    AT_THEY_DO_NOT_SET_THE,
    THEY_ARE_READY_WHEN_THEY_PULL,
    SAY_ROOM_AND_HUMIDITY_AND_THE,
    /** {0} air dew. */
    THE_DEW_POINT_OF_YOUR_ROOM,
    /** {0} dew, {1} place. */
    AT_NO_WATER_COMES_ONTO_THEM,
    /** {0} dew, {1} air safe, {2} closed air for. */
    BELOW_WATER_COMES_ONTO_BARS,
    /** {0} rounded t. */
    TAKE_THEM_OUT_IN_A_CLOSED,
    IN_THIS_AIR_THEY_MAY_NEVER,
    THEY_ARE_IN_NOTHING_TO_DO,
    /** {0} celsius. */
    IT_HAS_BEEN_ABOVE_24_C,
    /** {0} celsius. */
    IT_IS_IN_THE_FIRST_TEN,
    IT_FALLS_FASTER_THAN_3_C,
    /** {0} minutes event. */
    LOOK_NOW_AFTER_DO_THEY_PULL,
    /** {0} minutes event. */
    LONG_ENOUGH_FOR_A_FRIDGE_TAKE,
    /** {0} minutes event. */
    LONG_ENOUGH_LONGER_DOES_NO,
    THEY_PULL_AWAY_TAKE_THEM_OUT,
    /** {0} rounded t. */
    ABOUT,
    THIS_AIR_IS_TOO_DAMP_TO,
    /** {0} celsius, {1} event limit double, {2} event time t. */
    THEY_COME_OUT_AT_AND_WATER,
    /** {0} celsius. */
    THEY_COME_OUT_AT_THE_HUMIDITY,
    THEY_MAY_BE_OPENED_NO_WATER,
    NO_READING_FOR_A_MINUTE_LOOK,
    /** {0} celsius. */
    IT_READS_AGAIN,
    A_WHILE,

    // StoreWords.
    /** {0} t. */
    IF_IT_CLIMBS_AS_IN_THE,
    /** {0} celsius, {1} plain, {2} symbol, {3} event time t. */
    IT_IS_AND_BARS_BLOOM_ABOVE,
    /** {0} celsius. */
    IT_IS_BARS_BLOOM_AT_THIS,
    /** {0} celsius. */
    IT_IS_THE_GOOD_CRYSTALS,
    /** {0} celsius. */
    COOL_AGAIN,
    /** {0} difference figure, {1} difference. */
    WITHIN_A_DAY_IT_SWUNG_BY,
    /** {0} celsius. */
    IT_IS_WHAT_IS_TAKEN_OUT,
    NO_READING_FOR_TEN_MINUTES,
    NOTHING_WAS_READ_YET,
    /** {0} record watched, {1} one decimal record, {2} record highest, {3} difference record largest. */
    WATCHED_FOR_TO_WITHIN_A_DAY,
    /** {0} plain, {1} symbol, {2} hours record above, {3} plain, {4} hours record above, {5} plain, {6} hours record melting. */
    ABOVE_ABOVE_ABOVE,
    /** {0} record unread. */
    FOR_BETWEEN_READINGS_NOTHING,
    NEVER,

    // WhyWords.
    /** {0} diagnosis suspects stream. */
    IF_YOU_SEE_IT_AGAIN_THINK,
    /** {0} causes what faults. */
    THE_CURVE_WAS_NOT_IN_ORDER,
    WEIGHED_BY_RULES_AND_FIGURES,
    NOBODY_HAS_LOOKED_AT_THESE,
    /** {0} session. */
    BEGIN_WITH_A_LOOK,
    THESE_BARS_ARE_GOOD_AS_FAR,
    ONE_WEAK_SIGN_WHICH_GOOD_BARS,
    WHAT_IS_FUZZY_ON_A_BAR,
    MOST_LIKELY,
    OPEN_THESE_ARE_POSSIBLE_AND,
    /** {0} reasons suspect supports. */
    FOR_IT,
    /** {0} reasons suspect opposes. */
    AGAINST_IT,
    /** {0} entry next. */
    NEXT_TIME,
    /** {0} entry bars. */
    THESE_BARS,
    STEAM_AND_HOT_WATER_SCALD_LIFT,
    IF_ANYTHING_FUZZY_GROWS_ON,
    WHAT_IS_IN_THEM_STAYS_IN,
    VERY_LIKELY,
    LIKELY,
    POSSIBLE,
    LESS_LIKELY,

    // KeepNotices.
    THE_PROBE_LIES_BESIDE_THE,
    KEEP_RAW_FOOD_AND_DRIPS_AWAY,
    THE_PROBE_LIES_BESIDE_THE_BARS,
    WHAT_IS_FUZZY_ON_A_BAR_KEEP_NOTICES,
    THIS_IS_YOUR_OWN_NOTE_AND,

    // SetCommand.
    WITH_A_PROBE_BESIDE_THE_MOULDS,
    NOTHING_WAS_WATCHED,
    /** {0} e message. */
    THE_LOG_OF_THE_SETTING_CANNOT,
    /** {0} log path. */
    RECORDED_IN,
    THERE_IS_NO_SESSION_TO_KEEP,
    /** {0} session. */
    IT_IS_KEPT_BESIDE_THE_SESSION,
    PRACTICE_AN_INVENTED_PLACE_AND,
    ROOM_AND_HUMIDITY_MAKE_THE_DEW,

    // StoreCommand.
    /** {0} longest note. */
    BEST_BEFORE_IS_TOO_LONG,
    /** {0} best before strip, {1} keep notices best. */
    KEPT_BEST_BEFORE,
    /** {0} name. */
    THERE_IS_NO_LOG_NOTHING_WAS,
    /** {0} b, {1} keep notices best. */
    BEST_BEFORE,
    /** {0} name. */
    WATCH_IT_MONITOR_RUN_STORE,
    /** {0} log path. */
    KEPT_MINUTE_BY_MINUTE_IN_CTRL,
    NOTHING_IS_KEPT_THIS_WAS_NO,
    /** {0} log path, {1} e message. */
    CANNOT_BE_WRITTEN_WHAT_WAS,

    // WhyCommand.
    /** {0} fault book packed, {1} option clue, {2} option clue. */
    IT_WOULD_HELP_TO_KNOW_SAY,
    Y_YES_N_NO_ENTER_WHERE,
    Y_N_ENTER_OR_Q,
    /** {0} e message. */
    YOUR_ANSWERS_CANNOT_BE_READ,
    /** {0} marks path, {1} e message. */
    CANNOT_BE_WRITTEN_THIS_ANSWER
}
