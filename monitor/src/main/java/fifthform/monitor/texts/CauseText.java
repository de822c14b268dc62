package fifthform.monitor.texts;

/** What went wrong, what survived and what might have been. */
public enum CauseText implements Text {
    // CauseWords.
    WHAT_WENT_WRONG_FIRST,
    THEN,
    WHAT_WENT_WRONG_FIRST_NOTHING,
    /** {0} line c. */
    ALSO,
    /** {0} celsius cause, {1} limit cause. */
    MELTED_TOO_COOL_AT_MOST_OLD,
    /** {0} off cause. */
    MELTED_TOO_SHORTLY_HOT_FOR,
    /** {0} celsius cause, {1} limit cause. */
    MELT_TOO_HOT_IT_SCORCHES_ABOVE,
    /** {0} celsius cause, {1} limit cause. */
    COOLED_TOO_LITTLE_WAS_THE,
    /** {0} off cause. */
    HELD_IN_THE_COOL_TOO_SHORTLY,
    /** {0} celsius cause, {1} lasted cause, {2} limit cause. */
    COOLED_TOO_DEEP_AT_THE_COOLEST,
    /** {0} off cause. */
    COOLED_TOO_LONG_AND_THICK_BY,
    /** {0} still for cause. */
    NOT_STIRRED_WHILE_IT_COOLED,
    /** {0} celsius cause, {1} limit cause. */
    BATH_TOO_HOT_PLANNED_WAS,
    /** {0} off cause, {1} celsius cause, {2} limit cause. */
    LIFTED_LATE_IT_WENT_TO_THE,
    /** {0} celsius cause, {1} lasted cause, {2} limit cause. */
    TOO_WARM_AT_MOST_ABOVE,
    /** {0} celsius cause. */
    SEED_LIKELY_LOST_UP_TO_THEN,
    /** {0} celsius cause, {1} lasted cause, {2} limit cause. */
    TOO_COOL_TO_WORK_WELL_BELOW,
    /** {0} lasted cause. */
    PROBE_OUT_OF_THE_CHOCOLATE_FOR,
    /** {0} lasted cause. */
    PROBE_OR_WIRE_FAULTY_FOR,
    /** {0} lasted cause. */
    READINGS_NOT_TO_BE_TRUSTED_FOR,
    /** {0} lasted cause. */
    NO_READINGS_FOR,
    /** {0} lasted cause. */
    A_CUE_THAT_NOBODY_FOLLOWED_FOR,
    ENDED_BEFORE_IT_CAME_TO_THE,
    NOT_PROVED_NOBODY_TOLD_OF_A,
    THE_SCREEN_HAD_NOT_SAID_IT,
    /** {0} told word replace, {1} clock told at. */
    STOOD_SINCE,
    /** {0} d. */
    SEEN_AT_REST_FOR,

    // WhatIfWords.
    SIMULATED,
    /** {0} why refused. */
    NO_WHAT_IF,
    /** {0} mark, {1} change s, {2} lift s. */
    WHAT_IF,
    AS_IT_WAS,
    /** {0} was word. */
    AS_IT_WAS_WITH_WAS_WORD,
    /** {0} clock s until, {1} word, {2} s measured seed map, {3} crystal model limits. */
    CRYSTALS_AT,
    /** {0} clock s until, {1} end s, {2} difference s fit residual, {3} symbol, {4} s fit bath celsius, {5} symbol. */
    FOLLOWED_TO_THE_FITTED_KITCHEN,
    EARLIER,
    LATER,
    /** {0} later, {1} later. */
    LIFTED_S,
    COOLER,
    HOTTER,
    /** {0} difference hotter, {1} hotter. */
    THE_WATER_LIFTED_WHEN_IT_WAS,
    COLD_WATER,
    THE_BATH,
    /** {0} lift number, {1} from, {2} clock lift at, {3} lift celsius. */
    LIFT_OFF_AT_AND,
    /** {0} s measured turn celsius. */
    MEASURED_WAS,
    COLDEST,
    HOTTEST,
    /** {0} how, {1} turn celsius, {2} clock turn at, {3} turn lower celsius, {4} turn upper celsius, {5} measured. */
    THE_AFTER_IT_AT_NINE_TIMES,
    /** {0} work low celsius, {1} work high celsius, {2} symbol. */
    WORKING_RANGE_TO,
    /** {0} name. */
    KEPT,
    /** {0} name. */
    PASSED,
    /** {0} name. */
    NOT_REACHED,
    /** {0} name. */
    IT_CANNOT_BE_TOLD_AN_END,
    THERE_CAME_YOUR_NEXT_ACT_WITH,
    TEN_MINUTES_NO_GUESS_REACHES,
    THE_READINGS_END_THERE,
    NO_LIFT_OFF_ANY_WATER_WAS,
    /** {0} refused change lift, {1} units format figure. */
    THERE_IS_NO_LIFT_THIS_SESSION,
    /** {0} units format figure. */
    THE_BOWL_WAS_NOT_IN_THE,
    /** {0} units format figure. */
    THERE_IS_A_GAP_OF_S,
    TOO_FEW_READINGS_AROUND_THIS,
    /** {0} difference, {1} symbol. */
    ARE_LEFT_OVER,
    /** {0} na n difference symbol. */
    NO_KITCHEN_THAT_WE_KNOW,

    // SurvivedWords.
    /** {0} over highest celsius, {1} over above, {2} setup melt out warn, {3} share over left fraction. */
    WHAT_SURVIVED_ABOVE,
    STOP_WARMING_GO_ON_ENOUGH_IS,
    /** {0} new setup range cool, {1} reason advice word. */
    COOL_AGAIN,
    /** {0} grams advice, {1} setup melt out limit, {2} symbol, {3} reason advice word. */
    SEED_IT_UNDER,
    /** {0} advice seed grams. */
    ABOUT_G,
    TOO_FEW_ARE_LEFT,
    NOBODY_CAN_TELL_WHETHER_ENOUGH,
    NEARLY_ALL,
    ABOUT_THREE_QUARTERS,
    ABOUT_HALF,
    ABOUT_A_THIRD,
    ABOUT_A_FIFTH,
    ABOUT_A_TENTH,
    ALMOST_NONE,
    /** {0} share. */
    OF_THE_CRYSTALS_AS_THE_MODEL,
    /** {0} clock lost at zone, {1} lost highest celsius. */
    SEED_LIKELY_LOST,
    /** {0} crystals in words, {1} crystal model limits. */
    CRYSTALS_THE_LAST_WORD,
    /** {0} clock lost at zone, {1} duration between started lost, {2} lost highest celsius, {3} duration millis lost above, {4} setup melt out warn, {5} crystal model digit lost, {6} crystal model digit copies. */
    SEED_LIKELY_LOST_AT_FROM_THE,

    // ClosingLine.
    PRACTICE_BATCH_SIMULATED,
    BATCH,
    COOLED_LONG_ENOUGH_AND_STAYED,
    WENT_OVER_THE_WORKING_RANGE,
    REACHED_MELT_OUT_PROVE_A,
    CAME_TO_THE_WORKING_RANGE,
    ENDED_BEFORE_THE_WORKING_RANGE,
    /** {0} tally lowest cool celsius, {1} tally highest work celsius, {2} tally over range. */
    LOWEST_IN_THE_COOL_HIGHEST,
    NOT_REACHED_CLOSING_LINE,

    // Beginnings and holds.
    CAME_IN_TEMPER_AND_STAYED,
    /** {0} temperature, {1} time. */
    HIGHEST_AND_OVER
}
