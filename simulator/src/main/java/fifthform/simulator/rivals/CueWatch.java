package fifthform.simulator.rivals;

import fifthform.curves.cue.CueId;
import fifthform.curves.engine.Event;
import fifthform.curves.engine.Event.CueGiven;
import fifthform.curves.recipe.Phase;
import fifthform.simulator.bench.Moment;
import fifthform.simulator.maker.Judging;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a rival says of the turning point while the bowl is over the water, every few seconds and at the cue, and the truth. */
final class CueWatch implements Watch {
    private static final int EVERY_STEPS = 8;
    /** Farther below the range nobody thinks of lifting, K. Our own choice. */
    private static final double BELOW_KELVIN = 3;

    private final JudgedKitchen kitchen;
    private final Turning turning;
    private final List<Told> rows = new ArrayList<>();
    private Optional<Told> cue = Optional.empty();
    private boolean cued;

    /**
     * A forecast and what it was of.
     *
     * @param said the forecast
     * @param truthCelsius where it would really have turned, in the readings' scale, °C
     */
    record Told(Rival.Said said, double truthCelsius) {
        double errorKelvin() {
            return said.celsius() - truthCelsius;
        }

        boolean held() {
            return said.holds(truthCelsius);
        }
    }

    CueWatch(JudgedKitchen kitchen, Turning turning) {
        this.kitchen = kitchen;
        this.turning = turning;
    }

    @Override
    public void saw(Moment before, Moment after, List<Event> events) {
        if (cued || ((Judging) after.maker()).phase() != Phase.REWARM) return;
        cued = events.stream().anyMatch(e -> e instanceof CueGiven given && given.cue() == CueId.LIFT_NOW);
        boolean near =
                after.kitchen().bulkCelsius() >= kitchen.recipe().work().range().lowCelsius() - BELOW_KELVIN;
        boolean asked = near && after.steps() % EVERY_STEPS == 0;
        if (!cued && !asked) return;
        Optional<Told> told = ((Rival) after.program()).said().map(said -> told(said, after));
        if (cued) cue = told;
        if (asked) told.ifPresent(rows::add);
    }

    private Told told(Rival.Said said, Moment moment) {
        return new Told(said, kitchen.scale().shows(turning.ifLiftedCelsius(moment)));
    }

    /** At the first cue to lift; empty where none came. */
    Optional<Told> cue() {
        return cue;
    }

    /** Up to the cue, every four seconds. */
    List<Told> rows() {
        return List.copyOf(rows);
    }
}
