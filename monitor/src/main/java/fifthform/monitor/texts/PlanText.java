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
    SAID_FAULT
}
