package fifthform.monitor.view;

import fifthform.monitor.texts.ReplayText;

/** The keys of the Replay screen, as its help lists them. */
enum ReplayKey {
    PLAY("Space", ReplayText.KEY_SPACE),
    MOVE("← →", ReplayText.KEY_ARROWS),
    EVENTS("Page Up, Page Down", ReplayText.KEY_PAGES),
    ENDS("Home, End", ReplayText.KEY_ENDS),
    PACE("– +", ReplayText.KEY_PACE),
    ZOOM("↑ ↓, wheel", ReplayText.KEY_ZOOM),
    WHOLE("0", ReplayText.KEY_WHOLE),
    HEIGHT("Y", ReplayText.KEY_HEIGHT),
    CURSORS("A, B", ReplayText.KEY_CURSORS),
    DROP("X", ReplayText.KEY_DROP),
    MARK("M", ReplayText.KEY_MARK),
    NOTE("N", ReplayText.KEY_NOTE),
    NOTES("F2, Delete", ReplayText.KEY_NOTE_LIST),
    BESIDE("L, J, K", ReplayText.KEY_BESIDE),
    EXPORT("E, D, P", ReplayText.KEY_EXPORT),
    PANES("1 to 6", ReplayText.KEY_PANES),
    THEME("T", ReplayText.KEY_THEME),
    SIZE("Ctrl + – 0", ReplayText.KEY_SIZE),
    FULL("F11", ReplayText.KEY_FULL),
    QUIT("Q", ReplayText.KEY_QUIT);

    private final String cap;
    private final ReplayText does;

    ReplayKey(String cap, ReplayText does) {
        this.cap = cap;
        this.does = does;
    }

    /** What stands on the key. */
    String cap() {
        return cap;
    }

    /** What it does. */
    String does() {
        return does.say();
    }
}
