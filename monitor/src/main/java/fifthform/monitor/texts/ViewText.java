package fifthform.monitor.texts;

/** What the windows say of themselves: to a screen reader, and beside the words of the other rooms. */
public enum ViewText implements Text {
    // AlarmStrip.
    /** {0} alarm, {1} its state. */
    ALARM_WITH_STATE,
    /** {0} left. */
    AND_MORE,

    // BandBar.
    URGENT,
    PROMPT,
    ADVISE,

    // KeyRow.
    /** {0} word, {1} printed. */
    KEY_WITH_ITS_CAP,

    // NumeralPane.
    /** {0} words. */
    NOT_GOOD_ANY_MORE,

    // TileColumn.
    /** {0} limit low. */
    UNDER,
    /** {0} limit high. */
    OVER,
    /** {0} limit low, {1} limit high. */
    TO,

    // TopLine.
    PRACTICE_SIMULATED_BOWL,

    // WatchWindow.
    /** {0} fx start reason. */
    THE_WINDOW_FAILED,

    // ReplayKey.
    CAP_WHOLE,
    CAP_HEIGHT,
    CAP_DROP,
    CAP_MARK,
    CAP_NOTE,
    CAP_THEME,
    CAP_FULL,
    CAP_QUIT,
    CAP_SPACE,
    CAP_PAGES,
    CAP_ENDS,
    CAP_ARROWS,
    CAP_PACE,
    CAP_ZOOM,
    CAP_CURSORS,
    CAP_NOTE_LIST,
    CAP_BESIDE,
    CAP_EXPORT,
    CAP_PANES,
    CAP_SIZE
}
