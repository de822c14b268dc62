package fifthform.monitor.texts;

/** What the program says of cues and alarms, and beside them. */
public enum CueText implements Text {
    // Phrases.
    ALL_MELTED_INTO_THE_COLD_WATER,
    OUT_OF_THE_WATER_NOW,
    /** {0} minutes open. */
    STIR_HERE_MORE,
    /** {0} grams open. */
    ADD_SEED_NOW,
    /** {0} seconds open. */
    HELD_LONG_ENOUGH_OVER_THE_BATH,
    HELD_LONG_ENOUGH_BACK_OVER,
    /** {0} countdown open. */
    GET_READY_LIFT,
    LIFT_THE_BOWL_NOW,
    OFF_NOW,
    WIPE_THE_BOWL_AND_STIR,
    THIS_BATH_IS_TOO_WEAK_WARM,
    /** {0} seconds open. */
    ABOUT_OVER_THE_BATH_THEN_STIR,
    /** {0} seconds open. */
    ABOUT_LEFT_TO_POUR,
    /** {0} seconds open. */
    BACK_IN_COLD_WATER_FOR_ABOUT,
    /** {0} seconds open. */
    BACK_ON_FOR_ABOUT_THEN_STIR,
    IN_RANGE_PROVE_A_SAMPLE_THEN,
    GLASS_CAN_CRACK_LUKEWARM_WATER,
    TOO_COLD_WARM_IT_A_LITTLE,
    TOO_HOT_SOON_OFF_THE_HEAT,
    OVER_THE_WORKING_RANGE_OFF_THE,
    GOOD_CRYSTALS_SOON_MELT_COOL,
    NEAR_MELT_OUT_COOL_NOW,
    MELT_OUT_COOL_NOW_STOP_POURING,
    WILL_THICKEN_SOON_A_TOUCH_OF,
    THICKENING_WARM_IT_IN_SHORT,
    TOO_COLD_OUT_OF_THE_WATER,
    TOO_HOT_FOR_THIS_CHOCOLATE,
    BATH_TOO_HOT_COOL_IT_OR,
    BATH_TOO_HOT_COOL_IT,
    NO_TRUE_TEMPERATURE_CHECK_THE,
    NO_READING_CHECK_THE_USB_PLUG,
    READING_IN_DOUBT_LOOK_AT_THE,
    NOT_SAVED_FREE_SOME_SPACE,
    PROBE_IS_STILL_OUT_PUT_IT,
    SAVING_WAS_IN_TROUBLE,
    SAVING_IS_LATE_CHECK_THE_DISK,
    LITTLE_SPACE_LEFT_FREE_SOME,
    SAVING_WORKS_AGAIN,
    EVERYTHING_IS_SAVED_SO_FAR,
    READINGS_ARE_KEPT_IN_MEMORY,
    /** {0} over work range high. */
    OVER,
    /** {0} celsius. */
    COOL_WATER_UNDER_THE_BOWL_WAS,
    /** {0} celsius. */
    IN_3_MIN,
    /** {0} over work range low. */
    UNDER,
    /** {0} celsius. */
    STIR,
    /** {0} celsius. */
    BATH_STEAM_AND_WATER_SCALD,
    MELT_GENTLY_STIR_NOW_AND_THEN,
    COOL_IT_KEEP_STIRRING,
    KEEP_STIRRING,
    POUR_AND_STIR_BETWEEN_MOULDS,
    PROVE_A_SAMPLE_THEN_POUR,
    IN_RANGE_BUT_TOO_FEW_CRYSTALS,
    BATCH_DONE,
    /** {0} range melt, {1} melt dwell. */
    FOR,
    /** {0} range cool. */
    AIM,
    /** {0} range setting. */
    SET_AT_LOOK_AFTER_A_DAY,
    /** {0} dwell, {1} melt dwell. */
    HELD_OF,
    /** {0} range low celsius, {1} range high celsius. */
    FROM_TO,
    COOL_CLOTH_STIR,
    /** {0} celsius. */
    LIFT_IT_NOW_IT_STILL_TURNS,
    /** {0} celsius. */
    IT_HEADS_FOR,
    PLUG_AND_LEAD_SECOND,
    WE_KEEP_TRYING_SECOND,
    TOUCHING_THE_BOWL_OR_OUT,
    /** {0} math round figure get. */
    G_OF,
    THE,
    ANY_SECOND,
    /** {0} seconds. */
    IN_ABOUT,
    A_FEW_SECONDS,
    /** {0} ceil minutes. */
    MINUTES,

    // Asides.
    /** {0} melt dwell. */
    HELD,
    /** {0} celsius. */
    IT_SINKS_ON_TO,
    CRYSTALS_ARE_FORMING,
    /** {0} celsius keeps reason. */
    IT_KEEPS_ITS_CRYSTALS_UNDER,
    GENTLY_AND_KEEP_STIRRING,
    LIFTED_IT_TURNS_AT,
    /** {0} seconds. */
    ARE_OVER,
    /** {0} seconds. */
    LOOK_WHERE_IT_TURNS,
    HEAT_IS_UNDER_WAY,
    A_TOUCH_OF_WARMTH_OR_POUR,
    UNSURE_OF_THIS_BOWL_SHORT_DIPS,
    SHORT_THEN_LOOK_WHERE_IT_TURNS,
    /** {0} celsius upper. */
    UNSURE_UP_TO_THEN_SHORT_DIPS,
    /** {0} celsius. */
    IT_GOES_ON_TO,
    HANDS_AT_THE_BOWL,
    /** {0} words, {1} lower, {2} celsius upper. */
    WORDS_FROM_TO,
    IT_SINKS_ON_TO_ABOUT,
    IT_GOES_ON_TO_ABOUT,
    SHORT_DIPS_HARDLY_MOVE_IT,
    /** {0} celsius bath. */
    OVER_BATH_OF,
    /** {0} difference, {1} bath celsius. */
    DIPS_GAVE_ONLY,
    /** {0} difference, {1} bath celsius. */
    RISES_ONLY,
    BEFORE_IT_THICKENS,
    /** {0} temperature, {1} the difference in a minute. */
    BEFORE_IT_THICKENS_FALLING,
    /** {0} temperature, {1} the difference in a minute. */
    BEFORE_IT_THICKENS_RISING,
    IT_FELL_SHORT,
    IT_IS,
    IT_TURNED,
    ABOVE_AIM,
    SHORT_OF_AIM,

    // ProbePhrases.
    ONLY_ZEROS_COME_CHECK_THE,
    READING_STANDS_STILL_REPLUG,
    SENDS_F_SWITCH_THE_DEVICE_TO,
    FALLS_WHEN_WARMED_SWAP_THE_TWO,
    ADAPTER_TOO_HOT_OR_COLD_MOVE,
    OUT_OF_THE_CHOCOLATE_PUT_THE,
    TIP_AT_THE_BOWL_MOVE_IT,
    TIP_SETTLES_WAIT_A_FEW_SECONDS,
    READING_JUMPS_LOOK_AT_THE_TIP,
    TOO_QUICK_TO_BE_TRUE_LOOK,
    READING_IS_NOISY_HOLD_THE_TIP,
    HOLD_THE_TIP_DOES_IT_MOVE,
    SECOND_THERMOMETER_MEANWHILE,
    NOTHING_IS_WATCHED_UNTIL_THEN,
    PLUS_AND_MINUS_AT_THE_PLUG,
    OFF_THE_STOVE_OUT_OF_THE,
    CLEAR_OF_THE_WALL_AND_THE,
    JUST_DIPPED,
    LOOSE_PLUG_SPOON_ON_THE_LEAD,
    IN_THE_CHOCOLATE_OFF_THE_WALL,
    LOOSE_PLUG_LEAD_BESIDE_MAINS,
    NO_CONTACT_PUSH_IN_THE_PROBES,
    SHORT_CIRCUIT_DRY_THE_PLUG,
    IMPOSSIBLE_NUMBER_CHECK_THE,
    UNREADABLE_CHECK_THE_ADAPTERS,
    ADAPTER_GONE_PLUG_IT_IN_AGAIN,
    ADAPTER_FLOODS_UNPLUG_IT_PLUG,
    OR_THE_WIRE_IS_BROKEN_SECOND,
    WET_OR_BARE_WIRE_ON_METAL,
    RIGHT_TYPE_SET_SECOND,
    SPEED_AND_PROTOCOL_WE_KEEP,
    IT_IS_FOUND_BY_ITSELF,
    ONLY_ITS_NEWEST_READINGS_ARE,

    // Phrases.
    THEN_PROBE_OUT_NOTHING_IS,

    // ProbePhrases.
    PROBE_OUT_IF_IT_IS_OUT,

    // Beginnings and holds.
    /** {0} temperature. */
    HOLD_IT_AT,
    /** {0} temperature. */
    NEVER_OVER,
    LUMPS_MELT_NO_MORE,
    KEEP_IT_MOVING_THEN_STIR,
    OR_A_LITTLE_MELTED_CHOCOLATE,
    NOT_MELTED_BACK_ON_HOT_WATER,
    /** {0} seconds. */
    OVER_THE_BATH_ABOUT_THEN_OFF,
    IN_TEMPER_OVER_MILD_WATER,
    TAKE_OUT_THE_LUMPS_OF_SEED,
    /** {0} seconds. */
    ABOUT_OF_WARM_AIR,
    /** {0} difference. */
    BOX_IS_WARMER,
    /** {0} difference. */
    BOX_IS_COOLER,
    /** {0} temperature. */
    GROWING_THICK_UP_TO,
    /** {0} minutes. */
    HELD_AS_PLANNED,
    A_LITTLE,

    // Alarms that are over, MeltedOut.
    MELTED_OUT_COOL_AGAIN_SEED_OR,
    /** {0} highest temperature. */
    IT_PEAKED_AT,
    /** {0} limit celsius. */
    IT_WAS_PAST,
    COOLS_AGAIN_PROVED,
    /** {0} temperature now. */
    COOL_WATER_UNDER_THE_BOWL_NOW,
    /** {0} limit celsius, {1} time of day. */
    NEAR_MELT_OUT_WAS_OVER,
    /** {0} time of day. */
    NO_TRUE_TEMPERATURE_UNTIL,
    /** {0} time of day. */
    SAVING_WAS_IN_TROUBLE_UNTIL
}
