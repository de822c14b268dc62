package fifthform.simulator.bench;

import fifthform.curves.cue.CueId;
import fifthform.curves.engine.Event;
import fifthform.curves.engine.Event.CueGiven;
import fifthform.curves.recipe.Recipe;
import fifthform.simulator.bowl.Spot;
import fifthform.simulator.scenario.Landed;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Follows a batch, moment by moment: what was said, what was done, how it really stood. */
public final class BatchWatch {
    /** The cues that take the bowl out of some water, and which. */
    private static final Map<CueId, Spot> OUT_OF = new EnumMap<>(
            Map.of(CueId.MELTED, Spot.HOT_BATH, CueId.STOP_COOLING, Spot.COLD_WATER, CueId.LIFT_NOW, Spot.WARM_BATH));

    private final Recipe recipe;
    private final OutcomeWatch really = new OutcomeWatch();
    private final List<Answer> answers = new ArrayList<>();
    private final Map<CueId, Instant> waiting = new EnumMap<>(CueId.class);
    private final List<OptionalDouble> forecasts = new ArrayList<>();
    private OptionalDouble forecast = OptionalDouble.empty();
    private Duration overFor = Duration.ZERO;
    private Optional<Instant> last = Optional.empty();
    private Spot spot = Spot.TABLE;

    public BatchWatch(Recipe recipe) {
        this.recipe = recipe;
    }

    /** What the program says of a lift now; the last before a lift counts. */
    public void forecast(OptionalDouble turnIfLiftedCelsius) {
        forecast = turnIfLiftedCelsius;
    }

    public void saw(Instant at, double bulkCelsius, Spot now) {
        boolean lifted = really.rewarmed() && spot == Spot.WARM_BATH && now != Spot.WARM_BATH;
        if (lifted) forecasts.add(forecast);
        really.saw(at, bulkCelsius, now);
        if (now != spot) answered(at);
        boolean over = really.rewarmed() && bulkCelsius > recipe.work().range().highCelsius();
        if (over) overFor = overFor.plus(Duration.between(last.orElse(at), at));
        last = Optional.of(at);
        spot = now;
    }

    /** For each lift off the warm water what the program had said of it just before; empty where it had said nothing. */
    public List<OptionalDouble> forecasts() {
        return List.copyOf(forecasts);
    }

    private void answered(Instant at) {
        OUT_OF.forEach((cue, water) -> {
            Instant given = spot == water ? waiting.remove(cue) : null;
            if (given != null) answers.add(new Answer(cue, given, Optional.of(Duration.between(given, at))));
        });
    }

    /** A cue that comes when the bowl has left that water already asks for nothing. */
    public void heard(Event event) {
        if (event instanceof CueGiven given && OUT_OF.get(given.cue()) == spot) {
            waiting.putIfAbsent(given.cue(), given.at());
        }
    }

    public Ending ending() {
        waiting.forEach((cue, at) -> answers.add(new Answer(cue, at, Optional.empty())));
        Outcome outcome = really.outcome();
        OptionalDouble highest = outcome.highestAfterCoolCelsius();
        double over =
                highest.orElse(Double.NEGATIVE_INFINITY) - recipe.work().range().highCelsius();
        return new Ending(
                outcome, Landed.at(highest, recipe), Math.max(0, over), overFor, answers, errors(outcome.lifts()));
    }

    private List<Double> errors(List<Lift> lifts) {
        List<Double> errors = new ArrayList<>();
        for (int i = 0; i < Math.min(lifts.size(), forecasts.size()); i++) {
            double turned = lifts.get(i).turnedCelsius();
            forecasts.get(i).ifPresent(said -> errors.add(said - turned));
        }
        return errors;
    }
}
