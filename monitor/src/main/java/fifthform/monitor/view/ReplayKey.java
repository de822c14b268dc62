package fifthform.monitor.view;

import fifthform.monitor.texts.ReplayText;
import fifthform.monitor.texts.ViewText;

/** The keys of the Replay screen, as its help lists them. */
enum ReplayKey {
    PLAY(ViewText.CAP_SPACE, ReplayText.KEY_SPACE),
    MOVE(ViewText.CAP_ARROWS, ReplayText.KEY_ARROWS),
    EVENTS(ViewText.CAP_PAGES, ReplayText.KEY_PAGES),
    ENDS(ViewText.CAP_ENDS, ReplayText.KEY_ENDS),
    PACE(ViewText.CAP_PACE, ReplayText.KEY_PACE),
    ZOOM(ViewText.CAP_ZOOM, ReplayText.KEY_ZOOM),
    WHOLE(ViewText.CAP_WHOLE, ReplayText.KEY_WHOLE),
    HEIGHT(ViewText.CAP_HEIGHT, ReplayText.KEY_HEIGHT),
    CURSORS(ViewText.CAP_CURSORS, ReplayText.KEY_CURSORS),
    DROP(ViewText.CAP_DROP, ReplayText.KEY_DROP),
    MARK(ViewText.CAP_MARK, ReplayText.KEY_MARK),
    NOTE(ViewText.CAP_NOTE, ReplayText.KEY_NOTE),
    NOTES(ViewText.CAP_NOTE_LIST, ReplayText.KEY_NOTE_LIST),
    BESIDE(ViewText.CAP_BESIDE, ReplayText.KEY_BESIDE),
    EXPORT(ViewText.CAP_EXPORT, ReplayText.KEY_EXPORT),
    PANES(ViewText.CAP_PANES, ReplayText.KEY_PANES),
    THEME(ViewText.CAP_THEME, ReplayText.KEY_THEME),
    SIZE(ViewText.CAP_SIZE, ReplayText.KEY_SIZE),
    FULL(ViewText.CAP_FULL, ReplayText.KEY_FULL),
    QUIT(ViewText.CAP_QUIT, ReplayText.KEY_QUIT);

    private final ViewText cap;
    private final ReplayText does;

    ReplayKey(ViewText cap, ReplayText does) {
        this.cap = cap;
        this.does = does;
    }

    /** What stands on the key. */
    String cap() {
        return cap.say();
    }

    /** What it does. */
    String does() {
        return does.say();
    }
}
