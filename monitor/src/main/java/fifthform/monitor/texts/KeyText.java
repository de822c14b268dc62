package fifthform.monitor.texts;

/** What each key does, by the name of its act, what is printed on it, and what is wrong with a key of one's own. */
public enum KeyText implements Text {
    SEEN,
    STEP_DONE,
    BOWL_MOVED,
    COLD_WATER,
    STIR,
    SEED,
    DRY,
    MARK,
    NOTE,
    UNDO,
    PROBE_OUT,
    OTHER,
    CHOCOLATE,
    SET_ASIDE,
    LET_GO,
    IT_IS_THE_BOWL,
    PROVED,
    SLOWER,
    FASTER,
    THEME,
    FULL_SCREEN,
    EARLIER,
    LATER,
    NOW,
    WHY,
    HELP,
    QUIT,

    // Stroke.
    CAP_SPACE,
    CAP_ENTER,
    CAP_PAGE_UP,
    CAP_PAGE_DOWN,
    CAP_HOME,
    CAP_END,
    CAP_INSERT,
    CAP_DELETE,
    CAP_LEFT,
    CAP_RIGHT,
    CAP_UP,
    CAP_DOWN,

    // KeyMap.
    /** {0} stroke cap, {1} by word. */
    ALREADY_MEANS_GIVE_THAT,
    /** {0} typed, {1} key word, {2} key usual cap, {3} stroke names. */
    IS_NO_SINGLE_KEY_SO_KEEPS,
    /** {0} act, {1} meant. */
    IS_NOTHING_THAT_A_KEY_DOES,
    /** {0} all key cap, {1} key word, {2} other word, {3} key word, {4} key usual cap. */
    IS_GIVEN_TO_AND_ALSO_MEANS
}
