package fifthform.monitor.app;

import fifthform.monitor.model.ScreenFeed;
import fifthform.monitor.model.WatchPicture;
import fifthform.monitor.settings.Motion;
import fifthform.monitor.terminal.LineScreen;
import fifthform.monitor.terminal.TerminalScreen;
import fifthform.monitor.texts.CommandText;
import fifthform.monitor.texts.LiveText;
import fifthform.monitor.view.Theme;
import fifthform.monitor.view.WatchWindow;
import fifthform.monitor.view.WatchWindow.Windows;
import java.io.Console;
import java.io.PrintWriter;
import java.time.Duration;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Shows a session on the best screen there is: a window where there is a display, else the terminal, else plain lines.
 * Each that refuses says why in one line, and the next is tried; the session goes on meanwhile.
 */
final class Screens implements Showing {
    private static final long LOOK_EVERY_MILLIS = 50;

    private final PrintWriter out;
    private final PrintWriter err;
    private final Theme theme;
    private final Motion motion;
    private final Windows windows;

    Screens(PrintWriter out, PrintWriter err, Theme theme, Motion motion) {
        this(out, err, theme, motion, Windows.ONE);
    }

    Screens(PrintWriter out, PrintWriter err, Theme theme, Motion motion, Windows windows) {
        this.out = Objects.requireNonNull(out, "out");
        this.err = Objects.requireNonNull(err, "err");
        this.theme = Objects.requireNonNull(theme, "theme");
        this.motion = Objects.requireNonNull(motion, "motion");
        this.windows = Objects.requireNonNull(windows, "windows");
    }

    @Override
    public void show(Optional<ScreenChoice> wished, ScreenFeed feed, Supplier<Duration> elapsed)
            throws InterruptedException {
        ScreenChoice choice = wished.orElseGet(Screens::best);
        if (choice == ScreenChoice.WINDOW) {
            Optional<String> refused = tried(() -> WatchWindow.open(feed, theme, motion, windows));
            if (refused.isEmpty()) return;
            err.println(CommandText.NO_WINDOW_GOING_ON_WITHOUT_IT.say(refused.get()));
            choice = hasTerminal() ? ScreenChoice.TERMINAL : ScreenChoice.LINES;
        }
        if (choice == ScreenChoice.TERMINAL) {
            Optional<String> refused = tried(() ->
                    TerminalScreen.open(feed, TerminalScreen.inkFor(Optional.ofNullable(System.getenv("NO_COLOR")))));
            if (refused.isEmpty()) return;
            err.println(LiveText.NO_TERMINAL_SCREEN_GOING_ON.say(refused.get()));
            choice = ScreenChoice.LINES;
        }
        if (choice == ScreenChoice.LINES) {
            try {
                lines(feed, elapsed);
            } catch (RuntimeException fault) {
                err.println(LiveText.THE_LINES_FAILED_RECORDING.say(fault));
            }
        }
        while (!feed.finished().getAsBoolean()) Thread.sleep(LOOK_EVERY_MILLIS);
    }

    /** A screen that stumbles must not take the recording with it. */
    static Optional<String> tried(Supplier<Optional<String>> screen) {
        try {
            return screen.get();
        } catch (RuntimeException | LinkageError | StackOverflowError fault) {
            return Optional.of(LiveText.IT_STUMBLED_OVER_A_FAULT_OF.say(fault));
        }
    }

    private void lines(ScreenFeed feed, Supplier<Duration> elapsed) throws InterruptedException {
        LineScreen screen = LineScreen.START;
        boolean last;
        do {
            last = feed.finished().getAsBoolean();
            WatchPicture picture = feed.pictureNow();
            LineScreen.Printed printed = screen.next(picture, elapsed.get());
            printed.lines().forEach(out::println);
            screen = printed.after();
            if (!last) Thread.sleep(LOOK_EVERY_MILLIS);
        } while (!last);
    }

    static ScreenChoice best() {
        boolean linux = System.getProperty("os.name").startsWith("Linux");
        // JavaFX 21 speaks X11 only; without DISPLAY trying would only print its own complaints.
        if (!linux || System.getenv("DISPLAY") != null) return ScreenChoice.WINDOW;
        return hasTerminal() ? ScreenChoice.TERMINAL : ScreenChoice.LINES;
    }

    /** Whether a person sits at a terminal that can do more than print. */
    static boolean hasTerminal() {
        String term = System.getenv("TERM");
        return isTerminal(System.console()) && term != null && !term.equals("dumb");
    }

    /** From Java 22 on there is a console even in a pipe, and a method that tells; before, there is none. */
    static boolean isTerminal(Console console) {
        if (console == null) return false;
        try {
            return (boolean) Console.class.getMethod("isTerminal").invoke(console);
        } catch (ReflectiveOperationException olderThan22) {
            return true;
        }
    }
}
