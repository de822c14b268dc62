package fifthform.probe.protocol;

import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/**
 * When a device that must be asked is asked. Whoever reads the link looks in after every arrival and every silence, about
 * every 200 ms; so a question may be late by that, and its successor is due where it would have been due anyway: the
 * interval holds on average, as long as an answer and 200 ms of quiet fit into it. Turns that were missed are not made up.
 *
 * <p>Asked is into a quiet line only, that is after a look during which nothing had come: it keeps the pause that must lie
 * between two messages (3.5 characters for Modbus over a serial line), and never cuts into what a device is still saying.
 */
final class PollPace {
    /** Shorter ones cannot be held by one who looks in every 200 ms. */
    static final double SHORTEST_SECONDS = 0.25;

    /** A probe that is heard every two seconds only counts as silent. */
    static final double LONGEST_SECONDS = 1.5;

    /** Somebody who never pauses would keep us silent for ever: then the question is put anyway. */
    private static final Duration LONGEST_WAIT_FOR_QUIET = Duration.ofSeconds(1);

    private final Duration every;
    private final Duration timeout;
    private Optional<Instant> due = Optional.empty();
    private Optional<Instant> asked = Optional.empty();
    private Optional<Instant> lastHeard = Optional.empty();
    private boolean heardSinceLook;
    private boolean quiet;
    private boolean soon;

    /**
     * @param every from one question to the next
     * @param timeout from the question, or the last byte after it, until the answer is given up
     */
    PollPace(Duration every, Duration timeout) {
        this.every = Objects.requireNonNull(every, "every");
        this.timeout = Objects.requireNonNull(timeout, "timeout");
    }

    /** Bytes came. */
    void heard() {
        heardSinceLook = true;
    }

    /** They were the answer. */
    void answered() {
        asked = Optional.empty();
    }

    /** The time is {@code now}; to be called before the questions below. */
    void look(Instant now) {
        quiet = !heardSinceLook;
        if (heardSinceLook) lastHeard = Optional.of(now);
        heardSinceLook = false;
        // The link's clock may be set back; then everything is counted from here.
        due = due.map(at -> at.isAfter(now.plus(every)) ? now : at).or(() -> Optional.of(now));
        asked = asked.map(at -> at.isAfter(now) ? now : at);
        lastHeard = lastHeard.map(at -> at.isAfter(now) ? now : at);
    }

    /** Nothing came for so long that what is half there will not be completed. */
    boolean isBroken(Instant now) {
        return lastHeard.filter(at -> now.isBefore(at.plus(timeout))).isEmpty();
    }

    /** A question has waited in vain; true once a question. */
    boolean givesUp(Instant now) {
        Optional<Instant> end = asked.map(at -> at.plus(timeout));
        boolean late = end.filter(at -> !now.isBefore(at)).isPresent();
        boolean tooLate =
                end.filter(at -> !now.isBefore(at.plus(LONGEST_WAIT_FOR_QUIET))).isPresent();
        boolean vain = late && isBroken(now) || tooLate;
        if (vain) asked = Optional.empty();
        return vain;
    }

    /** Whether the next reading is to be asked for. */
    boolean isTime(Instant now) {
        boolean overdue =
                due.filter(at -> !now.isBefore(at.plus(LONGEST_WAIT_FOR_QUIET))).isPresent();
        boolean wanted = soon || due.filter(at -> !now.isBefore(at)).isPresent();
        return wanted && (mayAsk() || overdue && asked.isEmpty());
    }

    /** Whether a question between two readings may be put. */
    boolean mayAsk() {
        return quiet && asked.isEmpty();
    }

    /** The question is out. */
    void asks(Instant now) {
        asked = Optional.of(now);
    }

    /** The question for a reading is out. */
    void asksForReading(Instant now) {
        asks(now);
        soon = false;
        if (due.filter(at -> at.isAfter(now)).isPresent()) return;
        due = due.map(at -> at.plus(every)).filter(next -> next.isAfter(now)).or(() -> Optional.of(now.plus(every)));
    }

    /** The reading did not come for a reason that may pass: it is asked for again, as soon as the line is quiet. */
    void again() {
        soon = true;
    }
}
