package fifthform.monitor.app;

import fifthform.monitor.model.NumberEntry;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.LiveText;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.ObjDoubleConsumer;

/** A number that is typed digit by digit while the batch goes on. */
final class NumberTyping {
    /** A number that nobody goes on typing must not swallow the next Enter. */
    private static final long WAITS_SECONDS = 20;

    private final InstantSource hands;
    private final ObjDoubleConsumer<Number> done;
    private final AtomicReference<Optional<Typing>> typing = new AtomicReference<>(Optional.empty());

    /** Which number is being typed. */
    enum Number {
        /** In the unit of the screen. */
        OTHER_THERMOMETER,
        SEED_GRAMS
    }

    private record Typing(NumberEntry entry, Instant until, Number number) {}

    /**
     * @param hands the clock of the maker's hands, which practice does not hurry
     * @param done takes a number that is whole, as it was typed
     */
    NumberTyping(InstantSource hands, ObjDoubleConsumer<Number> done) {
        this.hands = Objects.requireNonNull(hands, "hands");
        this.done = Objects.requireNonNull(done, "done");
    }

    /** Waits for the digits of this number. */
    void begin(Number number) {
        waitFor(NumberEntry.EMPTY, number);
    }

    private void waitFor(NumberEntry entry, Number number) {
        typing.set(Optional.of(new Typing(entry, hands.instant().plusSeconds(WAITS_SECONDS), number)));
    }

    /** A character for the number; answers whether it was one. */
    boolean typed(char character) {
        Optional<Typing> open = now();
        if (open.isEmpty() || !NumberEntry.takes(character)) return false;
        NumberEntry entry = open.get().entry();
        if (character == NumberEntry.LEAVE) typing.set(Optional.empty());
        else if (character == NumberEntry.DONE || character == '\n')
            keep(entry, open.get().number());
        else waitFor(entry.with(character), open.get().number());
        return true;
    }

    private void keep(NumberEntry entry, Number number) {
        typing.set(Optional.empty());
        entry.value().ifPresent(value -> done.accept(number, value));
    }

    private Optional<Typing> now() {
        return typing.get().filter(open -> hands.instant().isBefore(open.until()));
    }

    /** What is shown while a number is typed. */
    Optional<String> words(Units units) {
        return now().map(open -> {
            String text = open.entry().text();
            return switch (open.number()) {
                case OTHER_THERMOMETER -> LiveText.OTHER_THERMOMETER_ENTER_KEEPS.say(text, units.symbol());
                case SEED_GRAMS -> LiveText.SEED_G_ENTER_THROWS_IT_IN.say(text);
            };
        });
    }
}
