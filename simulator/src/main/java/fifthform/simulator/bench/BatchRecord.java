package fifthform.simulator.bench;

import fifthform.curves.engine.Event;
import fifthform.curves.input.Input;
import fifthform.simulator.device.Truth;
import java.util.List;
import java.util.Objects;

/**
 * A whole batch: what the program was told, what it said, and how it really was.
 *
 * @param inputs in the order in which the program took them
 * @param events all that it said, in order
 * @param truth how it really stood, eight times a second
 * @param outcome how it really went
 */
public record BatchRecord(List<Input> inputs, List<Event> events, List<Truth> truth, Outcome outcome) {
    public BatchRecord {
        inputs = List.copyOf(inputs);
        events = List.copyOf(events);
        truth = List.copyOf(truth);
        Objects.requireNonNull(outcome, "outcome");
    }
}
