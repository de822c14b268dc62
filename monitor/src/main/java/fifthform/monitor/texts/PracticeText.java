package fifthform.monitor.texts;

/** What training says: the simulated bowl in the maker’s hands, and the debrief after it. */
public enum PracticeText implements Text {
    // DebriefText.
    ONCE,
    DEBRIEF_THESE_ARE_THE_TRUE,
    /** {0} advice. */
    NEXT_TIME,
    /** {0} peak as double, {1} plain work low, {2} plain work high. */
    HOTTEST_AFTER_THE_COOL_WANTED,
    IT_ENDED_BEFORE_IT_WAS_WARMED,
    /** {0} hottest. */
    IT_STAYED_UNDER_THE_WORKING,
    /** {0} hottest. */
    IT_LANDED_IN_THE_WORKING_RANGE,
    /** {0} hottest. */
    IT_WENT_OVER_THE_WORKING_RANGE,
    /** {0} hottest. */
    IT_MELTED_OUT,
    /** {0} lowest as double, {1} plain recipe cool, {2} plain recipe cool. */
    COOLEST_BEFORE_THE_REWARM,
    IT_NEVER_WAS_IN_COLD_WATER,
    NOT_REACHED,
    /** {0} times debrief melt. */
    REACHED,
    /** {0} seconds debrief ending, {1} seconds debrief under, {2} debrief melt outs. */
    OVER_THE_RANGE_FOR_UNDER_IT,
    /** {0} debrief answers stream. */
    CUES_ANSWERED_IN_THE_KITCHENS,
    /** {0} debrief stirred fraction, {1} times debrief dried. */
    STIRRED_FOR_OF_THE_TIME_DRIED,
    /** {0} span. */
    IT_HAD_SAID_THAT_HEAT_COST,
    /** {0} survived percent fat, {1} survived percent fat. */
    REALLY_THERE_WERE_OF_THE_FAT,
    /** {0} crystals in words, {1} lost, {2} really. */
    CRYSTALS_THE_SCREENS_LAST_WORD,
    /** {0} one decimal shown. */
    THE_SCREEN_HAD_SAID,
    THE_SCREEN_HAD_SAID_NOTHING,
    /** {0} number, {1} lift, {2} difference lift coast, {3} one decimal lift, {4} said. */
    LIFT_AT_COASTED_TO,
    OFF_THE_HOT_WATER,
    OUT_OF_THE_COLD,
    BACK_TO_HOT_WATER,
    BACK_TO_WARM_WATER,
    LIFT_ALONE,
    OFF_AFTER_A_TOUCH,
    PUT_BACK,
    TOUCH_OF_WARMTH,
    NOT_ANSWERED,
    /** {0} count. */
    TIMES,
    /** {0} units withunit celsius. */
    IT_SANK_TO_BELOW_THE_COOL,
    WARMER_TAP_WATER_MAKES_IT_SINK,
    /** {0} sank, {1} water. */
    HAVE_IT_OUT_A_LITTLE_BEFORE,
    /** {0} sank, {1} water. */
    OUT_OF_THE_WATER_WAS_SAID,
    /** {0} sank, {1} water. */
    YOU_HAD_IT_OUT_IN_TIME,
    /** {0} sank, {1} late took, {2} water. */
    IT_WAS_OUT_AFTER_THE_CUE,
    GO_THROUGH_TO_THE_END_THE,
    COOL_FURTHER_BEFORE_YOU_WARM,
    LIFT_WHEN_THE_BAND_SAYS_SO,
    /** {0} late slowest. */
    HAVE_A_HAND_AT_THE_BOWL,
    DRY_THE_BOWL_AFTER_THE_LIFT,
    STIR_MORE_WHAT_IS_NOT_STIRRED,
    LIFT_A_LITTLE_SOONER_AND_PUT,
    PUT_IT_BACK_FOR_A_FEW,
    THE_SAME_IN_A_HARDER_KITCHEN,

    // OwnHands.
    HOT_WATER,
    WARM_WATER,
    COLD_WATER,
    OFF_THE_WATER,
    STIRRED,
    NOT_STIRRED,

    // TrainingPicture.
    QUIT_CLOSES,

    // Batches that are no whole ones, and holds.
    CAME_IN_TEMPER,
    HOLD_NOT_REACHED,
    /** {0} time, {1} planned, {2} what warmed it, {3} share. */
    HELD_REALLY,
    ADVICE_KEPT_MELTED,

    // OwnHands.
    IN_THE_WARM_BOX
}
