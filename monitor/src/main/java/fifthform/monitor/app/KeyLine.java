package fifthform.monitor.app;

import fifthform.monitor.model.Key;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;

/** The words that are shown for a while after a key, and which key does more when it is pressed again. */
final class KeyLine {
    /** How long an act can be taken back by a glance at the screen, s. */
    private static final long SHOWN_SECONDS = 10;

    /** A wet hand that brushes a key must not end a recording: the second press within this time does. */
    private static final long AGAIN_SECONDS = 5;

    private static final Said NOTHING = new Said("", Instant.MIN, Optional.empty(), Instant.MIN);

    private final InstantSource hands;
    private final AtomicReference<Said> said = new AtomicReference<>(NOTHING);

    private record Said(String words, Instant until, Optional<Key> again, Instant againUntil) {}

    /** @param hands the clock of the maker's hands, which practice does not hurry */
    KeyLine(InstantSource hands) {
        this.hands = Objects.requireNonNull(hands, "hands");
    }

    void say(String words) {
        said.set(new Said(words, hands.instant().plusSeconds(SHOWN_SECONDS), Optional.empty(), Instant.MIN));
    }

    /** Says what a second press of this key would do. */
    void ask(String words, Key again) {
        Instant now = hands.instant();
        said.set(new Said(words, now.plusSeconds(SHOWN_SECONDS), Optional.of(again), now.plusSeconds(AGAIN_SECONDS)));
    }

    /** Whether this key is pressed the second time. */
    boolean wasAsked(Key key) {
        Said now = said.get();
        return now.again().equals(Optional.of(key)) && hands.instant().isBefore(now.againUntil());
    }

    void clear() {
        said.set(NOTHING);
    }

    /** The key whose second press is waited for, as long as the words about it stand: longer than the press counts. */
    Optional<Key> again() {
        Said now = said.get();
        return hands.instant().isBefore(now.until()) ? now.again() : Optional.empty();
    }

    /** What is shown now. */
    Optional<String> words() {
        Said now = said.get();
        return hands.instant().isBefore(now.until()) ? Optional.of(now.words()) : Optional.empty();
    }
}
