package fifthform.monitor.app;

import fifthform.curves.alarm.Priority;
import fifthform.curves.engine.State;
import fifthform.monitor.model.Key;
import fifthform.monitor.model.KeyMap;
import fifthform.monitor.model.LookBack;
import fifthform.monitor.model.Spans;
import fifthform.monitor.texts.LiveText;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;

/** The keys that look at the earlier curve; an alarm that nobody has seen ends it at once. */
final class LookingBack {
    private final InstantSource hands;
    private final KeyMap keys;
    private final AtomicReference<LookBack> look = new AtomicReference<>(LookBack.NOW);

    LookingBack(InstantSource hands, KeyMap keys) {
        this.hands = Objects.requireNonNull(hands, "hands");
        this.keys = Objects.requireNonNull(keys, "keys");
    }

    /** How far back the curve is looked at in this state. */
    LookBack now(State state) {
        if (isCalled(state)) look.set(LookBack.NOW);
        return look.updateAndGet(l -> l.at(hands.instant()));
    }

    /** What the maker is told all the time meanwhile. */
    Optional<String> line(State state) {
        LookBack now = now(state);
        return now.isBack()
                ? Optional.of(LiveText.LOOKING_BACK_KEYS.say(Spans.words(now.by()), keys.cap(Key.NOW)))
                : Optional.empty();
    }

    /** Any key shows that somebody is there. */
    void touched() {
        look.updateAndGet(l -> l.touched(hands.instant()));
    }

    /** A key of its own; answers with what is to be said where it does nothing. */
    Optional<String> pressed(Key key, State state) {
        Instant at = hands.instant();
        if (key == Key.EARLIER) {
            if (isCalled(state)) return Optional.of(LiveText.ALARM_FIRST.say());
            look.updateAndGet(l -> l.earlier(Duration.between(state.started(), state.at()), at));
            return look.get().isBack() ? Optional.empty() : Optional.of(LiveText.NOTHING_EARLIER.say());
        }
        boolean was = look.get().isBack();
        look.updateAndGet(l -> key == Key.LATER ? l.later(at) : LookBack.NOW);
        return was && look.get().isBack() ? Optional.empty() : Optional.of(LiveText.IS_NOW.say());
    }

    private static boolean isCalled(State state) {
        return state.alarms().standing().stream()
                .map(id -> state.alarms().of(id))
                .anyMatch(s -> s.state().isNew() && s.priority() != Priority.ADVISE);
    }
}
