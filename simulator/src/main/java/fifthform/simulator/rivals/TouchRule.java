package fifthform.simulator.rivals;

import fifthform.curves.cue.CueId;
import fifthform.curves.engine.Event;
import fifthform.curves.engine.Event.CueGiven;
import fifthform.curves.input.Input;
import fifthform.curves.input.MakerAction.BowlMoved;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.input.Sample;
import fifthform.curves.recipe.Recipe;
import fifthform.simulator.bench.BatchRun;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Touches by a rule without a model, as the method page has it: off at the first rise, look at the peak, back on for
 * {@code share · (aim − peak)/(rise seen per second on)}, never more than twice the last, until the peak is a little
 * inside the range. It is told by key when the cooled bowl first goes over the water.
 *
 * @param recipe what is aimed at
 * @param share of what the last touch says is missing
 * @param part what it waits for
 * @param since when that began
 * @param lowest where the last rise began, °C
 * @param highest the highest since, °C
 * @param highestAt when that was
 * @param touchSeconds how long the last touch was, s
 * @param smoothCelsius the reading without most of its noise, °C; not a number before the first
 */
record TouchRule(
        Recipe recipe,
        double share,
        Part part,
        Instant since,
        double lowest,
        double highest,
        Instant highestAt,
        double touchSeconds,
        double smoothCelsius)
        implements Rival {
    private static final double FIRST_RISE_KELVIN = 0.2;
    private static final double FIRST_SECONDS = 5;
    private static final double LONGEST_SECONDS = 120;
    private static final double SMOOTHING = 0.25;
    private static final double INSIDE_KELVIN = 0.3;
    private static final double REACTION_SECONDS = 2.5;
    private static final Duration PEAK_PASSED = Duration.ofSeconds(20);
    private static final Duration NEVER_COMES = Duration.ofSeconds(180);

    /** What it waits for. */
    enum Part {
        WATER,
        RISE,
        PEAK,
        DONE
    }

    TouchRule {
        Objects.requireNonNull(recipe, "recipe");
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(since, "since");
        Objects.requireNonNull(highestAt, "highestAt");
    }

    /** In the cool range. */
    static TouchRule waiting(Recipe recipe, double share) {
        return new TouchRule(
                recipe,
                share,
                Part.WATER,
                Instant.MIN,
                Double.POSITIVE_INFINITY,
                Double.NEGATIVE_INFINITY,
                Instant.MIN,
                FIRST_SECONDS,
                Double.NaN);
    }

    @Override
    public Heard hear(Input input) {
        if (input instanceof BowlMoved moved && moved.to() == Place.BATH && part == Part.WATER && cooled()) {
            return Rival.silent(with(Part.RISE, moved.at(), highest, highest, moved.at(), touchSeconds));
        }
        if (!(input instanceof Sample sample) || !sample.probe().equals(BatchRun.BOWL)) return Rival.silent(this);
        Instant at = sample.at();
        double celsius = Double.isNaN(smoothCelsius)
                ? sample.tipCelsius()
                : smoothCelsius + SMOOTHING * (sample.tipCelsius() - smoothCelsius);
        TouchRule read = new TouchRule(recipe, share, part, since, lowest, highest, highestAt, touchSeconds, celsius);
        return read.look(at, celsius);
    }

    private Heard look(Instant at, double celsius) {
        return switch (part) {
            case WATER -> Rival.silent(with(part, at, celsius, celsius, at, touchSeconds));
            case RISE -> waitForRise(at, celsius);
            case PEAK -> waitForPeak(at, celsius);
            case DONE -> Rival.silent(this);
        };
    }

    private boolean cooled() {
        return highest > 0 && highest < recipe.work().range().lowCelsius();
    }

    private Heard waitForRise(Instant at, double celsius) {
        double from = Math.min(lowest, celsius);
        if (celsius < from + FIRST_RISE_KELVIN) {
            return Rival.silent(with(Part.RISE, at, from, celsius, at, touchSeconds));
        }
        return say(with(Part.PEAK, at, from, celsius, at, touchSeconds), at, CueId.LIFT_NOW, celsius);
    }

    private Heard waitForPeak(Instant at, double celsius) {
        boolean higher = celsius > highest;
        TouchRule seen = higher ? with(part, since, lowest, celsius, at, touchSeconds) : this;
        Duration settling = Duration.ofMillis(Math.round(1000 * (touchSeconds + REACTION_SECONDS)));
        boolean earliest = !at.isBefore(since.plus(settling).plus(PEAK_PASSED));
        boolean passed = earliest && !at.isBefore(seen.highestAt.plus(PEAK_PASSED));
        if (!passed && at.isBefore(since.plus(NEVER_COMES))) return Rival.silent(seen);
        double low = recipe.work().range().lowCelsius();
        if (seen.highest >= low + INSIDE_KELVIN) {
            return say(seen.with(Part.DONE, at, lowest, seen.highest, at, touchSeconds), at, CueId.IN_RANGE, celsius);
        }
        double seconds = seen.nextSeconds(recipe.work().range().midCelsius() - celsius);
        return say(seen.with(Part.PEAK, at, celsius, celsius, at, seconds), at, CueId.PUT_BACK, seconds);
    }

    private double nextSeconds(double missingKelvin) {
        double rise = highest - lowest;
        double wanted = rise > 0.05 ? share * missingKelvin * touchSeconds / rise : 2 * touchSeconds;
        return Math.max(2, Math.min(Math.min(LONGEST_SECONDS, 2 * touchSeconds), wanted));
    }

    private TouchRule with(Part next, Instant from, double low, double high, Instant highAt, double seconds) {
        return new TouchRule(recipe, share, next, from, low, high, highAt, seconds, smoothCelsius);
    }

    private static Heard say(TouchRule after, Instant at, CueId cue, double figure) {
        Event event = new CueGiven(at, cue, OptionalDouble.of(figure));
        return new Heard(after, List.of(event));
    }

    @Override
    public Optional<Said> said() {
        return Optional.empty();
    }
}
