package fifthform.monitor.texts;

/** What the screens read at a desk have in common. */
public enum DeskText implements Text {
    REPLAY,
    NOTEBOOK,
    SETUP,
    /** {0} the screen's name. */
    WINDOW_TITLE
}
