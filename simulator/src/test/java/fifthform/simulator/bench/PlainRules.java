package fifthform.simulator.bench;

import fifthform.curves.cue.CueId;
import fifthform.curves.engine.Event;
import fifthform.curves.engine.Event.CueGiven;
import fifthform.curves.input.Input;
import fifthform.curves.input.Sample;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;

/** A program of a few thresholds, for trying the bench without the real engine: lifts early by a fixed lead. */
final class PlainRules implements Function<Input, List<Event>> {
    private enum Waiting {
        FOR_MELT,
        FOR_COOL,
        FOR_CRYSTALS,
        FOR_WARM,
        FOR_TURN,
        FOR_NOTHING
    }

    private final double liftAtCelsius;
    private Waiting waiting = Waiting.FOR_MELT;
    private Instant since = Instant.MIN;

    PlainRules(double liftAtCelsius) {
        this.liftAtCelsius = liftAtCelsius;
    }

    @Override
    public List<Event> apply(Input input) {
        if (!(input instanceof Sample sample) || !sample.probe().equals(BatchRun.BOWL)) return List.of();
        double celsius = sample.tipCelsius();
        Instant at = sample.at();
        return switch (waiting) {
            case FOR_MELT -> celsius >= 47 ? say(at, CueId.MELTED, Waiting.FOR_COOL) : List.of();
            case FOR_COOL -> celsius <= 28.5 ? say(at, CueId.STOP_COOLING, Waiting.FOR_CRYSTALS) : List.of();
            case FOR_CRYSTALS -> past(at, 300) ? say(at, CueId.CRYSTALS_ENOUGH, Waiting.FOR_WARM) : List.of();
            case FOR_WARM -> celsius >= liftAtCelsius ? say(at, CueId.LIFT_NOW, Waiting.FOR_TURN) : List.of();
            case FOR_TURN -> past(at, 60) ? settle(at, celsius) : List.of();
            case FOR_NOTHING -> List.of();
        };
    }

    private List<Event> settle(Instant at, double celsius) {
        if (celsius >= 31) return say(at, CueId.IN_RANGE, Waiting.FOR_NOTHING);
        since = at;
        return List.of(new CueGiven(at, CueId.PUT_BACK, OptionalDouble.of(5)));
    }

    private boolean past(Instant at, long seconds) {
        return !at.isBefore(since.plus(Duration.ofSeconds(seconds)));
    }

    private List<Event> say(Instant at, CueId cue, Waiting next) {
        waiting = next;
        since = at;
        return List.of(new CueGiven(at, cue, OptionalDouble.empty()));
    }
}
