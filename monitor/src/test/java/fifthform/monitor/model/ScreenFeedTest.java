package fifthform.monitor.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.monitor.model.WatchPicture.Tone;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

/** The screen's watchdog, without a screen. */
class ScreenFeedTest {
    private static final WatchPicture PICTURE = Moments.liftNow();

    private final AtomicLong now = new AtomicLong();
    private final ScreenFeed feed =
            new ScreenFeed(() -> PICTURE, () -> 0, now::get, key -> {}, () -> {}, () -> false, () -> false);

    @Test
    void aFreshPictureIsShownAsItIs() {
        now.set(TimeUnit.MILLISECONDS.toNanos(2999));
        assertSame(PICTURE, feed.pictureNow());
    }

    @Test
    void anOldPictureIsStruckOutAndForetellsNothing() {
        now.set(TimeUnit.SECONDS.toNanos(5));
        WatchPicture old = feed.pictureNow();
        assertEquals("Not updating for 5 s", old.band().headline());
        assertEquals(Tone.URGENT, old.band().tone());
        assertTrue(old.numeral().stale().isPresent());
        assertTrue(old.outlooks().isEmpty());
        assertTrue(old.trace().fan().isEmpty());
        assertEquals(OptionalDouble.empty(), old.ladder().peakShown());
        assertEquals(PICTURE.trace().points(), old.trace().points());
        assertTrue(old.simulated());
    }
}
