package fifthform.monitor.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.monitor.model.Key;
import fifthform.monitor.model.Moments;
import fifthform.monitor.model.ScreenFeed;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.jline.terminal.Attributes.LocalFlag;
import org.jline.terminal.Size;
import org.jline.terminal.Terminal;
import org.jline.terminal.impl.LineDisciplineTerminal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** The loop over a pretend terminal: bytes in, bytes out. */
@Timeout(30)
class TerminalScreenTest {
    private static final String DUE = Moments.liftNow().band().headline();

    private final List<Key> taken = new CopyOnWriteArrayList<>();
    private final AtomicBoolean finished = new AtomicBoolean();
    private final AtomicBoolean closeRequested = new AtomicBoolean();

    @Test
    void keysGoInAndTheOldScreenComesBack() throws Exception {
        String shown = shownWhile(terminal -> {
            terminal.processInputBytes(" m\u001b[B\u001b[Dq".getBytes(StandardCharsets.UTF_8));
            await(() -> taken.contains(Key.QUIT));
        });
        assertEquals(List.of(Key.SEEN, Key.MARK, Key.EARLIER, Key.QUIT), taken);
        assertTrue(shown.contains(DUE), shown);
        assertTrue(shown.contains("\u001b[?1049h") && shown.contains("\u001b[?25l"), "alternate screen, no cursor");
        assertTrue(shown.lastIndexOf("\u001b[?1049l") > shown.indexOf("\u001b[?1049h"), "the old screen is back");
        assertTrue(shown.lastIndexOf("\u001b[?25h") > shown.indexOf("\u001b[?25l"), "the cursor is back");
    }

    @Test
    void controlCIsAWishNotASignal() throws Exception {
        shownWhile(terminal -> {
            assertFalse(terminal.getAttributes().getLocalFlag(LocalFlag.ISIG), "Ctrl-C would end the build tool too");
            terminal.processInputBytes(new byte[] {3});
            await(closeRequested::get);
        });
        assertTrue(closeRequested.get());
        assertEquals(List.of(), taken);
    }

    @Test
    void aNewSizeIsDrawnAnew() throws Exception {
        String shown = shownWhile(terminal -> {
            TimeUnit.MILLISECONDS.sleep(400);
            terminal.setSize(new Size(120, 40));
            TimeUnit.MILLISECONDS.sleep(600);
        });
        assertTrue(shown.split(DUE, -1).length > 2, "drawn twice");
    }

    @Test
    void inkFollowsTheEnvironment() {
        assertEquals(Ink.PLAIN, TerminalScreen.inkFor(Optional.of("1")));
        assertEquals(Ink.COLOUR, TerminalScreen.inkFor(Optional.of("")));
        assertEquals(Ink.COLOUR, TerminalScreen.inkFor(Optional.empty()));
    }

    private interface Doing {
        void with(LineDisciplineTerminal terminal) throws Exception;
    }

    private interface Condition {
        boolean holds();
    }

    private static void await(Condition condition) throws InterruptedException {
        while (!condition.holds()) TimeUnit.MILLISECONDS.sleep(10);
    }

    private String shownWhile(Doing doing) throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (LineDisciplineTerminal terminal =
                new LineDisciplineTerminal("pretend", "xterm", out, StandardCharsets.UTF_8)) {
            terminal.setSize(new Size(80, 24));
            ScreenFeed feed = new ScreenFeed(
                    Moments::liftNow,
                    System::nanoTime,
                    System::nanoTime,
                    taken::add,
                    () -> closeRequested.set(true),
                    finished::get,
                    () -> true);
            CompletableFuture<Void> loop = CompletableFuture.runAsync(() -> run(terminal, feed));
            await(() -> out.size() > 500);
            doing.with(terminal);
            finished.set(true);
            loop.get(10, TimeUnit.SECONDS);
        }
        return out.toString(StandardCharsets.UTF_8);
    }

    private static void run(Terminal terminal, ScreenFeed feed) {
        try {
            TerminalScreen.run(terminal, feed, new TerminalLayout(Ink.COLOUR, Letters.UNICODE));
        } catch (java.io.IOException failed) {
            throw new java.io.UncheckedIOException(failed);
        }
    }
}
