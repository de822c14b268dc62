package fifthform.monitor.texts;

/** The words of the plan's screen. */
public enum PlanText implements Text {
    TITLE,
    LEAD,
    CHOCOLATE,
    BOWL,
    AMOUNT,
    BOWL_WEIGHT,
    PAN_WEIGHT,
    PAN,
    BATH_WATER,
    /** {0} the unit. */
    TAP,
    /** {0} the unit. */
    ROOM,
    HUMIDITY,
    /** {0} the unit. */
    QUICK_BATH,
    BAR,
    START,
    CHECKED,
    USUAL,
    BUTTON_WHY,
    BUTTON_SAVE,
    BUTTON_PRINT,
    BUTTON_WATCH,
    WHY_TITLE,
    /** {0} what must be known. */
    NOTE,
    CAUTION,
    KEYS,
    /** {0} label, {1} least, {2} most. */
    PROBLEM_NUMBER,
    PROBLEM_NO_AMOUNT,
    PROBLEM_START,
    /** {0} the file. */
    SAID_SAVED,
    /** {0} why. */
    SAID_NOT_SAVED,
    SAID_NO_PLAN,
    SAID_NO_PRINTER,
    SAID_PRINTED,
    /** {0} percent. */
    SAID_SIZE,
    /** {0} the command. */
    SAID_WATCH,
    /** {0} why. */
    SAID_FAULT,

    // PlanCard.
    /** {0} request grams, {1} recipe name. */
    G_BY_THERMOMETER,
    /** {0} range recipe melt, {1} melt hold. */
    MELT_TO_HOLD,
    /** {0} f. */
    OF_IT_ICE,
    /** {0} cold water, {1} figure cold ice. */
    COLD_BATH_STIR,
    /** {0} cold lift, {1} cold time. */
    LIFT_AT_ABOUT_DRY_IT,
    /** {0} range recipe cool, {1} cool hold. */
    HOLD_FOR_STIR,
    /** {0} warm water. */
    PAN_OFF_THE_HOB_A_TOWEL,
    /** {0} bowl, {1} bath. */
    BOWL_BATH_AT_MOST,
    /** {0} warm time. */
    STIR_ABOUT_UNTIL_IT_HAS_NOT,
    BOWL_OUT_BOILING_WATER_INTO,
    /** {0} bowl, {1} millilitres water grams. */
    BOWL_STILL_AT_POUR,
    /** {0} top up peak. */
    IT_COMES_TO_BY_ITSELF_NEVER,
    SMEAR_ON_A_COOL_KNIFE_SET,
    /** {0} range recipe work, {1} mould. */
    POUR_AT_MOULDS,
    /** {0} recipe melt out. */
    ABOVE_CRYSTALS_GONE_COOL_AGAIN,
    HOT_WATER_AND_STEAM_SCALD_TILT,

    // PlanPage.
    IN_BRACKETS_NINE_TIMES_IN_TEN,
    WHY_FORMULAS_IN_C_KG_J,
    /** {0} request grams, {1} request recipe name, {2} request bowl material. */
    PLAN_FOR_G_OF_BOWL_OF,
    /** {0} request grams, {1} request recipe name. */
    PLAN_FOR_G_OF_ANY_BOWL,
    MELT_HEAD,
    /** {0} range recipe melt, {1} recipe scorch, {2} banded melt time, {3} melt hold. */
    TO_NEVER_ABOVE_ABOUT_THEN_HOLD,
    COLD_BATH_HEAD,
    /** {0} ice. */
    OF_IT_AS_ICE,
    /** {0} cold water, {1} figure cold ice, {2} cold lift, {3} banded cold time. */
    OF_TAP_WATER_STIR_LIFT_AT,
    /** {0} banded cold fall, {1} banded cold forgotten, {2} cold stops itself. */
    IT_FALLS_ON_BY_FORGOTTEN_IT,
    HOLD_HEAD,
    /** {0} range recipe cool, {1} cool hold. */
    FOR_STIRRING,
    WARM_BATH_HEAD,
    /** {0} warm water, {1} warm bath, {2} bowl, {3} banded warm peak, {4} banded warm time. */
    SLOW_AND_SAFE_AT_AT_MOST,
    /** {0} table. */
    IF_THE_BOWL_STANDS_AT,
    /** {0} banded top up, {1} banded top up. */
    SECOND_STEP_WHEN_IT_HAS_NOT,
    /** {0} top ups. */
    IF_THE_BOWL_STANDS_STILL_AT,
    OR_HEAD,
    /** {0} quick bath, {1} quick lift, {2} banded quick time, {3} banded quick coast, {4} quick latest. */
    QUICK_WATCHED_LIFT_AT_AFTER,
    ITS_PAN_ALONE_HOLDS_TOO_MUCH,
    /** {0} quick most water. */
    AT_MOST_OF_IT_COULD_BE,
    SEED_HEAD,
    /** {0} banded seed, {1} seed at, {2} banded seed still, {3} seed out. */
    INSTEAD_OF_THE_COLD_BATHS,
    /** {0} banded quarter at, {1} quarter still solid. */
    A_QUARTER_KEEPS_ENOUGH_ONLY,
    SLAB_HEAD,
    /** {0} slab, {1} slab at, {2} banded slab rest. */
    TO_BACK_WHEN_THE_REST_STANDS,
    POUR_HEAD,
    /** {0} banded f. */
    NEEDS_A_TOUCH_OF_WARMTH_AFTER,
    /** {0} range recipe work, {1} banded working time, {2} banded hold add. */
    THICKENS_AFTER_AT_ITS_LOWER,
    MOULDS_HEAD,
    /** {0} banded f. */
    BARS,
    COOL_HEAD,
    /** {0} banded f. */
    BARS_COLDER_THAN_GET_WET_WHEN,
    /** {0} f source. */
    SOURCE,
    /** {0} bowl, {1} bath. */
    BOWL_AND_BATH,
    TIMES_EARLIEST_AND_LATEST_IN,
    TIMES_H_MIN_FROM_THE_START,
    /** {0} early, {1} late. */
    EARLIEST_TO_LATEST,
    DONE,

    // PlanWords.
    /** {0} figure, {1} bare figure low, {2} bare figure high. */
    VALUE_WITH_BAND,
    STEP_MELT,
    STEP_MELT_HOLD,
    STEP_COLD_BATH,
    STEP_COOL_HOLD,
    STEP_WARM_BATH,
    STEP_TOP_UP,
    STEP_PROVE,
    STEP_POUR,
    STEP_SET,
    THE_THERMOMETER_WAS_NOT,
    EVEN_WITH_THE_SECOND_STEP_THE,
    THE_TAP_IS_TOO_WARM_FOR,
    THE_HOTTER_BATH_LEAVES_HARDLY,
    THE_BOWL_WAS_NOT_WEIGHED_A,
    THE_PAN_WAS_NOT_WEIGHED_0,
    NOBODY_SAID_HOW_WARM_THE_TAP,
    NOBODY_SAID_HOW_WARM_THE_ROOM,
    HOW_FAR_THIS_BOWL_COASTS_IS,
    THE_ROOM_IS_SO_WARM_THAT,

    // PlanCommand.
    HOW_MANY_GRAMS_OF_CHOCOLATE,
    ITS_EMPTY_WEIGHT_IN_GRAMS,
    HOW_COLD_IS_THE_TAP_WATER,
    /** {0} watch line warm. */
    THEN_TYPE,
    /** {0} watch line quick. */
    OR_QUICK,
    HOW_MUCH_CHOCOLATE_WAS_NOT,
    YOUR_BOWLS_NAME_OR_STEEL_GLASS,
    IS_THE_THERMOMETER_FOR_THE,
    /** {0} start. */
    START_WAS_NOTHING_WAS_DONE_SAY,
    /** {0} card, {1} e message. */
    THE_CARD_COULD_NOT_BE_WRITTEN,

    // PlanNotices.
    HOT_WATER_AND_STEAM_SCALD_LIFT,
    BOILING_WATER_INTO_THE_BATH,
    NO_HOT_GLASS_INTO_COLD_WATER,

    // PlanQuestions.
    /** {0} question. */
    ENTER_LEAVE_IT_TO_THE_PLAN,
    /** {0} decimal low, {1} decimal high. */
    A_NUMBER_FROM_TO_PLEASE,
    /** {0} question, {1} usual. */
    ENTER,
    THE_ANSWERS_ENDED_TOO_SOON,
    /** {0} e message. */
    THE_ANSWER_COULD_NOT_BE_READ
}
