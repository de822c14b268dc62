package fifthform.monitor.texts;

/** The words of Setup, its window and its lines. Figures, names and folders stand at {0} and on, in the order of the words. */
public enum SetupText implements Text {
    WHAT_THEME,
    WHAT_MOTION,
    WHAT_UNITS,
    WHAT_VOLUME,
    WHAT_HEARD,
    WHAT_DISTANCE,
    WHAT_SCREEN,
    WHAT_KEY,
    WHAT_SESSIONS,
    WHAT_LANGUAGE,
    WHAT_CHOCOLATE,
    WHAT_PROBE,
    THIS_RECIPE,
    SECTION_SCREEN,
    SECTION_KEYS,
    SECTION_SOUND,
    SECTION_CHOCOLATES,
    SECTION_BOWLS,
    SECTION_PROBES,
    SECTION_FOLDERS,
    SECTIONS,
    KEYS,
    KEYS_SHORT,
    SAID_SET,
    SAID_AS_IT_WAS,
    SAID_NOTHING_TO_UNDO,
    SAID_CHANGED_ELSEWHERE,
    SAID_SIZE,
    SAID_FAULT,
    SAID_NOT_DONE,
    USUAL,
    PROMPT_USUAL,
    USUAL_SPOKEN,
    ROW_SPOKEN,
    NETWORK,
    NETWORK_TITLE,
    CARD_TITLE,
    CARD_WORDS,
    CARD_SLIDER,
    CARD_VALUE,
    CARD_NOT_MEASURED,
    CARD_NEEDED,
    CARD_FAR,
    CARD_INSIDE,
    SCREEN_TITLE,
    DISTANCE_TITLE,
    KEYS_TITLE,
    KEYS_WORDS,
    KEYS_PRESS,
    SOUND_TITLE,
    SOUND_SCREEN_ONLY,
    SOUND_TRIAL_TITLE,
    /** {0} before seconds, {1} every seconds, {2} times. */
    SOUND_TRIAL_WORDS,
    SOUND_PLAY,
    SOUND_STOP,
    SOUND_QUESTION,
    SOUND_YES,
    SOUND_NO,
    SOUND_NEVER,
    SOUND_HEARD,
    SOUND_NOT_HEARD,
    SOUND_OTHER_VOLUME,
    VALUE_BRIGHT,
    VALUE_DARK,
    VALUE_BLINKING,
    VALUE_STILL,
    VALUE_CELSIUS,
    VALUE_FAHRENHEIT,
    VALUE_SCREEN_ONLY,
    VALUE_SOFT,
    VALUE_MEDIUM,
    VALUE_FULL,
    /** {0} before seconds. */
    SOUND_PLAYING,
    SOUND_PLAYED,
    SOUND_STOPPED,
    CHOCOLATES_TITLE,
    CHOCOLATE_BUILT_IN,
    CHOCOLATE_OWN,
    CHOCOLATE_NEXT,
    CHOCOLATE_USE,
    CHOCOLATE_COPY,
    CHOCOLATE_CHANGE,
    CHOCOLATE_FROM,
    CHOCOLATE_NO_SOURCE,
    TARGET_MELT,
    TARGET_COOL,
    TARGET_WORK,
    TARGET_WARN,
    TARGET_MELT_OUT,
    TARGET_SCORCH,
    TARGET_BATH,
    COMPOSITION_COCOA_BUTTER,
    COMPOSITION_MILK_FAT,
    COMPOSITION_OTHER_FAT,
    COMPOSITION_OTHER_FAT_KIND,
    COMPOSITION_SUGAR,
    COMPOSITION_LECITHIN,
    COMPOSITION_WORK_OUT,
    COMPOSITION_ALLERGENS,
    COMPOSITION_NO_NUMBER,
    EDIT_TITLE,
    EDIT_TEXT,
    EDIT_GOOD,
    EDIT_KEEP,
    EDIT_LEAVE,
    EDIT_KEPT,
    BOWLS_TITLE,
    BOWLS_NONE,
    BOWL_UNTAUGHT,
    BOWL_NAME,
    BOWL_MATERIAL,
    BOWL_RESET,
    BOWL_FORGET,
    BOWL_KEPT,
    BOWL_RESET_DONE,
    BOWL_FORGOTTEN,
    BOWL_NO_NAME,
    SURE,
    PROBES_TITLE,
    PROBES_NONE,
    PROBE_LINE,
    PROBE_CHECKED,
    PROBE_NOT_CHECKED,
    PROBE_CHECK_LINE,
    PROBE_CHECK_PASSED,
    PROBE_CHECK_PLAUSIBLE,
    PROBE_CHECK,
    PROBE_FORGET,
    PROBE_FORGOTTEN,
    FOLDERS_TITLE,
    FOLDER_SESSIONS,
    FOLDER_DATA,
    FOLDER_SETTINGS,
    FOLDER_SESSIONS_WORDS,

    // Chocolates.
    /** {0} line. */
    MY_OWN,
    /** {0} recipe id. */
    THE_ID_IS_THAT_OF_A,
    /** {0} recipe id. */
    GIVE_YOUR_OWN_ANOTHER_ID_FOR,
    /** {0} e message. */
    IT_CANNOT_BE_KEPT,
    CHECK_THAT_YOU_MAY_WRITE_IN,

    // SettingTable.
    NOTHING_OF_THIS_NAME_CAN_BE,
    /** {0} said. */
    IS_NONE_OF_ITS_VALUES,
    /** {0} join. */
    SAY_ONE_OF,
    /** {0} said. */
    IS_NO_ANSWER,
    SAY_YES_NO_OR_NONE,
    /** {0} said. */
    THERE_ARE_NO_TEXTS_IN,
    /** {0} said. */
    IS_NO_DISTANCE_FOR_READING,
    /** {0} number screen sizes, {1} number screen sizes. */
    GIVE_METRES_FROM_TO,
    /** {0} said. */
    IS_NO_NUMBER_OF_PIXELS_PER,
    /** {0} number screen scale, {1} number screen scale, {2} number screen scale. */
    GIVE_TO_OR_NONE_HOW_MANY,
    /** {0} said. */
    IS_NO_SINGLE_KEY,
    /** {0} stroke names. */
    GIVE_ONE_CHARACTER_OR_ONE_OF,
    /** {0} stroke cap, {1} taken by word. */
    ALREADY_MEANS,
    GIVE_THAT_ANOTHER_KEY_FIRST_OR,
    /** {0} said. */
    IS_NO_WHOLE_PATH_OF_A,
    GIVE_ONE_FROM_THE_TOP_AS,

    // SetupDesk.
    /** {0} e message. */
    THE_SETTINGS_CANNOT_BE_KEPT,
    CHECK_THAT_YOU_MAY_WRITE_THERE,

    // SetupCommand.
    THAT_WAS_THE_URGENT_SOUND_CAN,
    /** {0} problems where, {1} problems what, {2} problems what do. */
    NOTHING_WAS_DONE,
    /** {0} setting usual. */
    USUALLY,
    /** {0} named recipes load. */
    CHOCOLATES_SEE_THEM_MONITOR,
    /** {0} named new bowls. */
    BOWLS_SEE_AND_CHANGE_THEM,
    /** {0} named new adapters. */
    PROBES_CHECK_OR_FORGET_ONE,
    NONE_YET,

    // SetupRemarks.
    /** {0} plain recipe rewarm. */
    USUALLY_ABOUT_C,
    /** {0} plain, {1} plain work low, {2} plain work high, {3} usual. */
    BATH_WAS_C_WATER_SO_COOL,
    /** {0} plain, {1} usual. */
    BATH_WAS_C_OVER_WATER_SO,
    /** {0} plain grams. */
    AMOUNT_WAS_G_SO_LITTLE_HARDLY,
    /** {0} plain grams. */
    AMOUNT_WAS_G_SO_MUCH_WAS,
    /** {0} plain amount grams. */
    FOR_G_OF_CHOCOLATE,
    /** {0} plain grams, {1} of. */
    SEED_WAS_G_SO_MUCH_SEED
}
