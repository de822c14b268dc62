package fifthform.monitor.model;

import java.util.Objects;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import java.util.function.Supplier;

/**
 * All that ties a screen to a session. A screen pulls; it is never pushed, so a slow screen cannot hold up a reading.
 *
 * @param picture the newest picture, from any thread, at once
 * @param publishedNanos when that picture was published, on {@code nanoClock}
 * @param nanoClock a clock that only runs forward, ns
 * @param letters takes a typed character before it counts as a key, and says whether it did: only while a number is
 *     being typed; on the screen's own thread as well
 * @param assigned which key does what
 * @param keys takes every key; called on the screen's own thread and must return at once
 * @param closeRequested the maker wants to end: window closed or stop signal
 * @param finished whether the session is over and the screen shall go
 * @param silent whether no sound can be made: then the window's edge blinks with an urgent alarm
 */
public record ScreenFeed(
        Supplier<WatchPicture> picture,
        LongSupplier publishedNanos,
        LongSupplier nanoClock,
        CharTaker letters,
        KeyMap assigned,
        Consumer<Key> keys,
        Runnable closeRequested,
        BooleanSupplier finished,
        BooleanSupplier silent) {
    public ScreenFeed {
        Objects.requireNonNull(picture, "picture");
        Objects.requireNonNull(publishedNanos, "publishedNanos");
        Objects.requireNonNull(nanoClock, "nanoClock");
        Objects.requireNonNull(letters, "letters");
        Objects.requireNonNull(assigned, "assigned");
        Objects.requireNonNull(keys, "keys");
        Objects.requireNonNull(closeRequested, "closeRequested");
        Objects.requireNonNull(finished, "finished");
        Objects.requireNonNull(silent, "silent");
    }

    /** Somebody for whom a typed character may be meant. */
    @FunctionalInterface
    public interface CharTaker {
        /** Nobody types numbers here. */
        CharTaker NOBODY = typed -> false;

        /** Whether the character was taken. */
        boolean takes(char typed);
    }

    /** Without anything to type, and with the keys as the program comes. */
    public ScreenFeed(
            Supplier<WatchPicture> picture,
            LongSupplier publishedNanos,
            LongSupplier nanoClock,
            Consumer<Key> keys,
            Runnable closeRequested,
            BooleanSupplier finished,
            BooleanSupplier silent) {
        this(
                picture,
                publishedNanos,
                nanoClock,
                CharTaker.NOBODY,
                KeyMap.USUAL,
                keys,
                closeRequested,
                finished,
                silent);
    }

    /** The picture to draw now: the newest one, or the last one marked as old where no new one has come for a while. */
    public WatchPicture pictureNow() {
        return NotUpdating.mark(picture.get(), nanoClock.getAsLong() - publishedNanos.getAsLong());
    }
}
