package fifthform.monitor.app;

import java.util.Locale;

/** Where a session is shown. */
enum ScreenChoice {
    WINDOW,
    TERMINAL,
    LINES,
    NONE;

    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}
