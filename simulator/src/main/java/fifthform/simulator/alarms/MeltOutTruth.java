package fifthform.simulator.alarms;

import fifthform.curves.recipe.Recipe;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Melt-outs that really were, and whether the program said so.
 *
 * <p>A melt-out is a stretch of {@link #AT_LEAST} or more in which the bulk, as this probe would show it without lag, noise
 * and rounding, lies at or above the recipe's limit, after it has been below the working range since the melt, with the
 * probe in the chocolate throughout. It is told if the alarm {@code melt-out} stands at any moment from its beginning until
 * {@link #LATEST} after its end; else it is missed.
 */
final class MeltOutTruth {
    /** A shorter stretch is over before any probe has shown it. Own choice. */
    static final Duration AT_LEAST = Duration.ofSeconds(10);

    /** Two probe lags of the slowest kind. Own choice. */
    static final Duration LATEST = Duration.ofSeconds(20);

    private final Recipe recipe;
    private final List<Stretch> stretches = new ArrayList<>();
    private boolean cooled;
    private Optional<Stretch> open = Optional.empty();

    MeltOutTruth(Recipe recipe) {
        this.recipe = recipe;
    }

    /**
     * One moment.
     *
     * @param leftTheMelt whether the chocolate has left the melt
     * @param readable whether the probe is in the chocolate
     * @param told whether the alarm stands
     */
    void saw(Instant at, double shownCelsius, Melt melt, Probe probe, Alarm alarm) {
        if (melt == Melt.GOES_ON) cooled = false;
        else if (shownCelsius < recipe.work().range().lowCelsius()) cooled = true;
        boolean hot = cooled
                && probe == Probe.READS
                && shownCelsius >= recipe.meltOut().limitCelsius();
        if (hot)
            open = Optional.of(
                    open.map(s -> s.until(at, shownCelsius)).orElse(new Stretch(at, at, shownCelsius, false)));
        else open.ifPresent(this::close);
        if (!hot) open = Optional.empty();
        if (alarm == Alarm.STANDS) tell(at);
    }

    private void close(Stretch stretch) {
        if (Duration.between(stretch.from(), stretch.to()).compareTo(AT_LEAST) >= 0) stretches.add(stretch);
    }

    private void tell(Instant at) {
        open = open.map(Stretch::toldSo);
        if (stretches.isEmpty()) return;
        int last = stretches.size() - 1;
        if (!at.isAfter(stretches.get(last).to().plus(LATEST)))
            stretches.set(last, stretches.get(last).toldSo());
    }

    List<Stretch> ended() {
        open.ifPresent(this::close);
        open = Optional.empty();
        return List.copyOf(stretches);
    }

    /** Whether the chocolate is still being melted on purpose. */
    enum Melt {
        GOES_ON,
        LEFT
    }

    /** Whether there is anything to read. */
    enum Probe {
        READS,
        ELSEWHERE
    }

    /** Whether the alarm is new or known. */
    enum Alarm {
        STANDS,
        QUIET
    }

    /** One melt-out: from when to when, how hot, and whether it was told. */
    record Stretch(Instant from, Instant to, double highestCelsius, boolean told) {
        Stretch until(Instant at, double celsius) {
            return new Stretch(from, at, Math.max(highestCelsius, celsius), told);
        }

        Stretch toldSo() {
            return new Stretch(from, to, highestCelsius, true);
        }
    }
}
