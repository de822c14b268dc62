package fifthform.simulator.training;

import fifthform.curves.input.Input;
import fifthform.curves.input.MakerAction.BowlMoved;
import fifthform.curves.network.Blocks;
import fifthform.curves.network.Moment;
import fifthform.simulator.bench.Batch;
import fifthform.simulator.bench.BatchRun;
import fifthform.simulator.bowl.Kitchen;
import fifthform.simulator.bowl.KitchenState;
import fifthform.simulator.bowl.Spot;
import fifthform.simulator.maker.Acts;
import fifthform.simulator.maker.Dice;
import fifthform.simulator.maker.Exploring;
import fifthform.simulator.maker.KitchenView;
import fifthform.simulator.maker.Maker;
import fifthform.simulator.maker.Next;
import fifthform.simulator.training.Told.Press;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Goes through one session: half seconds of kitchen, readings at their own pace, inputs every 2 s. For one thread. */
final class Rehearsal {
    private static final int HALVES_A_STEP = (int) (2 * Blocks.STEP_SECONDS);

    private final Kitchen kitchen;
    private final Spot rewarm;
    private final Readings readings;
    private final Told told;
    private final Dice pressing;
    private final List<Press> waiting = new ArrayList<>();
    private final List<Lived> lived = new ArrayList<>();
    private KitchenState state;
    private Maker maker;
    private Blocks blocks = Blocks.START;
    private OptionalDouble shown = OptionalDouble.empty();
    private OptionalDouble planned = OptionalDouble.empty();
    private Spot spot = Spot.TABLE;
    private double movedSeconds;

    Rehearsal(Kitchen kitchen, KitchenState first, Exploring maker, Readings readings, Told told, Dice pressing) {
        this.kitchen = kitchen;
        this.rewarm = maker.rewarm();
        this.readings = readings;
        this.told = told;
        this.pressing = pressing;
        this.maker = maker;
        state = first;
    }

    /** All steps from the first reading on. */
    List<Lived> lived() {
        return livedUntil(Double.POSITIVE_INFINITY);
    }

    /** The same, broken off then. */
    List<Lived> livedUntil(double seconds) {
        for (long half = 0; !maker.done() && half <= 2 * seconds; half++) half(half);
        return lived;
    }

    private void half(long half) {
        long millis = 500 * half;
        double seconds = half / 2.0;
        for (Press press : Told.due(waiting, seconds)) blocks = blocks.told(press.place(), press.atSeconds());
        if (half % HALVES_A_STEP == 0) finish(seconds);
        KitchenView view = new KitchenView(BatchRun.BEGINS.plusMillis(millis), shown);
        Next next = maker.next(view);
        Acts acts = next.acts();
        read(millis, state.tipCelsius(), acts);
        move(seconds, acts);
        maker = next.after();
        KitchenState before = state;
        state = acts.on(kitchen, state, Batch.STEP);
        read(millis + 250, (before.tipCelsius() + state.tipCelsius()) / 2, acts);
    }

    private void finish(double seconds) {
        Blocks.Run run = blocks.until(seconds, told.given(state, planned));
        blocks = run.after();
        for (Moment moment : run.moments()) lived.add(new Lived(moment, state, spot, movedSeconds));
    }

    private void read(long millis, double tipCelsius, Acts acts) {
        if (!readings.due(millis)) return;
        OptionalDouble reading = readings.at(millis / 1000.0, tipCelsius, acts.probe());
        if (reading.isEmpty()) return;
        blocks = blocks.reading(millis / 1000.0, reading.getAsDouble());
        shown = reading;
    }

    private void move(double seconds, Acts acts) {
        Spot to = acts.hands().spot();
        if (to == spot) return;
        spot = to;
        movedSeconds = seconds;
        if (to == Spot.COLD_WATER && planned.isEmpty()) {
            planned = OptionalDouble.of(rewarm == Spot.HOT_BATH ? state.hotBathCelsius() : state.warmBathCelsius());
        }
        for (Input press : acts.presses()) {
            if (press instanceof BowlMoved moved)
                told.press(seconds, moved.to(), pressing).ifPresent(waiting::add);
        }
    }
}
