package fifthform.simulator.alarms;

import fifthform.curves.engine.Event;
import fifthform.curves.engine.Event.AlarmRaised;
import fifthform.curves.input.AlarmId;
import fifthform.curves.input.Input;
import fifthform.curves.input.MakerAction.AlarmAcknowledged;
import fifthform.simulator.bench.EngineProgram;
import fifthform.simulator.bench.Program;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * The engine beside somebody who presses the key that says "seen" a few seconds after each alarm: the simulator's makers
 * press none, and an alarm that nobody ever sees stands for reasons that are not its own.
 *
 * @param engine the engine
 * @param unseen alarms raised and not yet seen, and when they will be
 */
record SeenByMaker(EngineProgram engine, Map<AlarmId, Instant> unseen) implements Program {
    /** From the sound to the key. Own choice. */
    private static final Duration SEEN_AFTER = Duration.ofSeconds(6);

    SeenByMaker {
        EnumMap<AlarmId, Instant> copy = new EnumMap<>(AlarmId.class);
        copy.putAll(unseen);
        unseen = Collections.unmodifiableMap(copy);
    }

    static SeenByMaker beginning(EngineProgram engine) {
        return new SeenByMaker(engine, Map.of());
    }

    @Override
    public Heard hear(Input input) {
        EnumMap<AlarmId, Instant> left = new EnumMap<>(AlarmId.class);
        left.putAll(unseen);
        List<Event> events = new ArrayList<>();
        Program program = engine;
        for (Map.Entry<AlarmId, Instant> each : unseen.entrySet()) {
            if (each.getValue().isAfter(input.at())) continue;
            left.remove(each.getKey());
            Heard heard = program.hear(new AlarmAcknowledged(input.at(), each.getKey()));
            program = heard.after();
            events.addAll(heard.events());
        }
        Heard heard = program.hear(input);
        events.addAll(heard.events());
        for (Event event : events) {
            if (event instanceof AlarmRaised raised)
                left.put(raised.alarm(), raised.at().plus(SEEN_AFTER));
        }
        return new Heard(new SeenByMaker((EngineProgram) heard.after(), left), events);
    }

    @Override
    public OptionalDouble turnIfLiftedCelsius() {
        return engine.turnIfLiftedCelsius();
    }
}
