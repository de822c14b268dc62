package fifthform.monitor.terminal;

import fifthform.monitor.model.Help;
import fifthform.monitor.model.Key;
import fifthform.monitor.model.NumberEntry;
import fifthform.monitor.model.ScreenFeed;
import fifthform.monitor.model.WatchPicture;
import fifthform.monitor.texts.TerminalText;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.jline.terminal.Attributes;
import org.jline.terminal.Attributes.LocalFlag;
import org.jline.terminal.Size;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;
import org.jline.utils.Display;
import org.jline.utils.InfoCmp.Capability;
import org.jline.utils.NonBlockingReader;

/** The Watch screen in a terminal, on the alternate screen; what stood there before comes back at the end. */
public final class TerminalScreen {
    private static final long REDRAW_NANOS = TimeUnit.MILLISECONDS.toNanos(200);
    private static final long WAIT_MILLIS = 40;

    private final Terminal terminal;
    private final ScreenFeed feed;
    private final TerminalLayout layout;
    private final Display display;
    private final Keystrokes keystrokes = new Keystrokes();
    private final AtomicBoolean restored = new AtomicBoolean();
    private Size size = new Size(0, 0);
    private Help help = Help.CLOSED;

    private TerminalScreen(Terminal terminal, ScreenFeed feed, TerminalLayout layout) {
        this.terminal = terminal;
        this.feed = feed;
        this.layout = layout;
        display = new Display(terminal, true);
    }

    /**
     * Shows the screen until the session is over. Blocks.
     *
     * @return why this terminal cannot show it: then the caller prints lines; empty where it did its work
     */
    public static Optional<String> open(ScreenFeed feed, Ink ink) {
        try (Terminal terminal = TerminalBuilder.builder()
                .system(true)
                .dumb(true)
                .nativeSignals(true)
                .build()) {
            if (terminal.getType().startsWith(Terminal.TYPE_DUMB))
                return Optional.of(TerminalText.THIS_TERMINAL_CANNOT_MOVE_ITS.say());
            Charset charset = terminal.encoding();
            Letters letters = charset.equals(StandardCharsets.UTF_8) ? Letters.UNICODE : Letters.ASCII;
            run(terminal, feed, new TerminalLayout(ink, letters));
            return Optional.empty();
        } catch (IOException | IllegalStateException refused) {
            return Optional.of(String.valueOf(refused.getMessage()));
        }
    }

    /** The ink that the environment asks for: {@code NO_COLOR}, set to anything but nothing, takes the colours away. */
    public static Ink inkFor(Optional<String> noColor) {
        return noColor.filter(value -> !value.isEmpty()).isPresent() ? Ink.PLAIN : Ink.COLOUR;
    }

    static void run(Terminal terminal, ScreenFeed feed, TerminalLayout layout) throws IOException {
        TerminalScreen screen = new TerminalScreen(terminal, feed, layout);
        Attributes before = terminal.enterRawMode();
        Attributes raw = new Attributes(terminal.getAttributes());
        // As a signal, Ctrl-C would end the build tool above us as well and cut our closing work off.
        raw.setLocalFlag(LocalFlag.ISIG, false);
        terminal.setAttributes(raw);
        terminal.handle(Terminal.Signal.INT, signal -> feed.closeRequested().run());
        Thread atExit = new Thread(() -> screen.restore(before), "terminal-restore");
        Runtime.getRuntime().addShutdownHook(atExit);
        try {
            terminal.puts(Capability.enter_ca_mode);
            terminal.puts(Capability.cursor_invisible);
            screen.loop();
        } finally {
            screen.restore(before);
            forget(atExit);
        }
    }

    private static void forget(Thread atExit) {
        try {
            Runtime.getRuntime().removeShutdownHook(atExit);
        } catch (IllegalStateException ending) {
            // The process ends already and has run it, or will; restoring twice does nothing.
        }
    }

    private void loop() throws IOException {
        NonBlockingReader reader = terminal.reader();
        long drawn = feed.nanoClock().getAsLong() - REDRAW_NANOS;
        boolean open = true;
        while (!feed.finished().getAsBoolean()) {
            long now = feed.nanoClock().getAsLong();
            if (now - drawn >= REDRAW_NANOS) {
                draw();
                drawn = now;
            }
            if (!open) {
                pause();
                continue;
            }
            int letter = reader.read(WAIT_MILLIS);
            if (letter == NonBlockingReader.READ_EXPIRED) {
                if (keystrokes.pause()) feed.letters().takes(NumberEntry.LEAVE);
            } else if (letter == Keystrokes.STOP) feed.closeRequested().run();
            else if (letter == NonBlockingReader.EOF) {
                open = false;
                feed.closeRequested().run();
            } else if (!isTyped(letter))
                keystrokes.letter(letter).flatMap(feed.assigned()::typed).ifPresent(this::take);
        }
    }

    private static void pause() {
        try {
            TimeUnit.MILLISECONDS.sleep(WAIT_MILLIS);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    private boolean isTyped(int letter) {
        return letter != NumberEntry.LEAVE
                && keystrokes.expectsNothing()
                && feed.letters().takes((char) letter);
    }

    private void take(Key key) {
        help = help.after(key);
        feed.keys().accept(key);
    }

    private void draw() {
        Size wanted = terminal.getSize();
        int columns = wanted.getColumns() > 0 ? wanted.getColumns() : 80;
        int rows = wanted.getRows() > 0 ? wanted.getRows() : 24;
        if (!wanted.equals(size)) {
            size = wanted;
            display.resize(rows, columns);
            display.clear();
        }
        WatchPicture picture = help.over(feed.pictureNow(), feed.assigned());
        display.update(layout.lay(picture, columns, rows), 0);
        terminal.flush();
    }

    private void restore(Attributes before) {
        if (!restored.compareAndSet(false, true)) return;
        // A terminal that was resized meanwhile may keep scraps of this screen when it brings the old one back.
        terminal.puts(Capability.clear_screen);
        terminal.puts(Capability.cursor_normal);
        terminal.puts(Capability.exit_ca_mode);
        terminal.flush();
        terminal.setAttributes(before);
    }
}
