package fifthform.monitor.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.monitor.model.Moments;
import fifthform.monitor.model.ScreenFeed;
import fifthform.monitor.settings.Motion;
import fifthform.monitor.view.Theme;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** A screen that stumbles says so and takes nothing with it. */
@Timeout(20)
class ScreensTest {
    @Test
    void whatAScreenThrowsIsTheReasonForTheNextOne() {
        assertEquals(Optional.empty(), Screens.tried(Optional::empty));
        String said = Screens.tried(() -> {
                    throw new IllegalStateException("demo");
                })
                .orElseThrow();
        assertTrue(said.contains("demo"), said);
        assertTrue(Screens.tried(() -> {
                    throw new NoClassDefFoundError("demo");
                })
                .isPresent());
    }

    @Test
    void linesThatFailLeaveTheSessionRunning() throws Exception {
        AtomicBoolean finished = new AtomicBoolean();
        StringWriter err = new StringWriter();
        ScreenFeed feed = new ScreenFeed(
                Moments::cooling, System::nanoTime, System::nanoTime, key -> {}, () -> {}, finished::get, () -> true);
        Screens screens = new Screens(
                new PrintWriter(new StringWriter()), new PrintWriter(err, true), Theme.BRIGHT, Motion.BLINKING);
        Thread showing = new Thread(() -> {
            try {
                screens.show(Optional.of(ScreenChoice.LINES), feed, () -> {
                    throw new IllegalStateException("demo");
                });
            } catch (InterruptedException end) {
                Thread.currentThread().interrupt();
            }
        });
        showing.start();
        while (!err.toString().contains("Recording goes on")) Thread.sleep(5);
        showing.join(Duration.ofMillis(150).toMillis());
        assertTrue(showing.isAlive(), "the session is not over");
        finished.set(true);
        showing.join(5000);
        assertTrue(!showing.isAlive());
    }
}
