package fifthform.simulator.bench;

import fifthform.curves.engine.Event;
import fifthform.curves.input.Input;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/** A program that advises, at one moment: a value, so that a batch can be gone on from twice. */
public interface Program {
    /** One that never says a word. */
    Program SILENT = new Program() {
        @Override
        public Heard hear(Input input) {
            return new Heard(this, List.of());
        }

        @Override
        public OptionalDouble turnIfLiftedCelsius() {
            return OptionalDouble.empty();
        }

        @Override
        public String toString() {
            return "silent";
        }
    };

    /** What one input leads to. */
    Heard hear(Input input);

    /** Where it now says that the chocolate would turn if the bowl were lifted at once, °C; empty where it does not. */
    OptionalDouble turnIfLiftedCelsius();

    /**
     * What an input led to.
     *
     * @param after the program from then on
     * @param events what it says
     */
    record Heard(Program after, List<Event> events) {
        public Heard {
            Objects.requireNonNull(after, "after");
            events = List.copyOf(events);
        }
    }
}
