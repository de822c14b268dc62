package fifthform.monitor.texts;

/** What the terminal and the plain lines say beside the words of Watch. */
public enum TerminalText implements Text {
    // LineScreen.
    /** {0} its state, {1} alarm. */
    ALARM,
    /** {0} its state, {1} alarm. */
    ALARM_ADVISE,
    /** {0} its state, {1} alarm. */
    ALARM_PROMPT,
    /** {0} its state, {1} alarm. */
    ALARM_URGENT,
    PRACTICE_THIS_BOWL_IS,
    /** {0} picture subject. */
    WATCHING,
    A_LINE_WITH_DO_NOW_IS,
    /** {0} phase. */
    PHASE,
    /** {0} join why. */
    BECAUSE,
    /** {0} alarm. */
    OVER,
    /** {0} mark word. */
    ATTENTION,
    /** {0} words. */
    DO_NOW,
    /** {0} words. */
    ADVISE,
    /** {0} words. */
    PROMPT,
    /** {0} words. */
    URGENT,
    /** {0} alarm, {1} alarm state. */
    ADVISE_NOTICE,
    /** {0} value, {1} age. */
    NO_TRUE_TEMPERATURE_THE_LAST,
    PRACTICE_AFTER_A_LINE,

    // TerminalLayout.
    PRACTICE_SIMULATED_BOWL,
    /** {0} mark word. */
    OK,
    /** {0} mark word. */
    NOT_OK,
    ADVISE_TERMINAL_LAYOUT,
    PROMPT_RAISE,
    PROMPT_LOWER,
    PROMPT_PLAIN,
    URGENT_TERMINAL_LAYOUT,
    /** {0} value, {1} age. */
    OLD_DO_NOT_TRUST,
    STRUCK_OUT,
    TOO_HIGH,
    TOO_LOW,

    // TerminalScreen.
    THIS_TERMINAL_CANNOT_MOVE_ITS,

    // TraceText.
    CRYST,
    NOW
}
