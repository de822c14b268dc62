package fifthform.simulator.rivals;

import fifthform.curves.cue.CueId;
import fifthform.curves.engine.Event;
import fifthform.curves.engine.Event.CueGiven;
import fifthform.curves.input.Input;
import fifthform.curves.recipe.Phase;
import fifthform.simulator.bench.Batch;
import fifthform.simulator.bench.Moment;
import fifthform.simulator.bench.Program;
import fifthform.simulator.maker.Judging;
import fifthform.simulator.maker.Keys;
import fifthform.simulator.maker.Manner;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/** Went through the batch before and knows what would come of a lift at each moment of it; for trying the harness. */
record Clairvoyant(
        NavigableMap<Instant, Double> turns, double liftsAtCelsius, double wrongByKelvin, Instant now, Gate gate)
        implements Rival {
    enum Gate {
        WAITS,
        SAID
    }

    static Clairvoyant of(JudgedKitchen kitchen, double liftsAtCelsius, double wrongByKelvin) {
        Batch batch = kitchen.batch();
        Turning turning = new Turning(batch);
        NavigableMap<Instant, Double> turns = new TreeMap<>();
        Moment moment = kitchen.beginning(Manner.ONE_LIFT, Keys.NONE, Program.SILENT);
        while (!moment.maker().done() && ((Judging) moment.maker()).phase() != Phase.WORK) {
            moment = batch.next(moment).after();
            boolean near = moment.kitchen().bulkCelsius()
                    > kitchen.recipe().work().range().lowCelsius() - 4;
            boolean warm = ((Judging) moment.maker()).phase() == Phase.REWARM;
            if (warm && near) turns.put(moment.at(), kitchen.scale().shows(turning.ifLiftedCelsius(moment)));
        }
        return new Clairvoyant(turns, liftsAtCelsius, wrongByKelvin, Instant.MIN, Gate.WAITS);
    }

    @Override
    public Heard hear(Input input) {
        Clairvoyant then = new Clairvoyant(turns, liftsAtCelsius, wrongByKelvin, input.at(), gate);
        Optional<Said> said = then.said();
        if (gate == Gate.SAID || said.filter(s -> s.celsius() >= liftsAtCelsius).isEmpty()) return Rival.silent(then);
        Event lift = new CueGiven(input.at(), CueId.LIFT_NOW, OptionalDouble.empty());
        return new Heard(new Clairvoyant(turns, liftsAtCelsius, wrongByKelvin, input.at(), Gate.SAID), List.of(lift));
    }

    @Override
    public Optional<Said> said() {
        if (now.equals(Instant.MIN)) return Optional.empty();
        return Optional.ofNullable(turns.floorEntry(now))
                .map(Map.Entry::getValue)
                .map(t -> Said.at(t + wrongByKelvin));
    }
}
