package fifthform.simulator.bench;

import fifthform.curves.engine.Event;
import fifthform.curves.input.Input;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;

/** A {@link Program} at the end of a line of bytes, and what it forecast when. */
final class ProgramAtWork implements Function<Input, List<Event>> {
    /** What it said of a lift after the input of that time. */
    record Said(Instant at, OptionalDouble turnIfLiftedCelsius) {}

    private final List<Said> said = new ArrayList<>();
    private Program program;

    ProgramAtWork(Program program) {
        this.program = program;
    }

    @Override
    public List<Event> apply(Input input) {
        Program.Heard heard = program.hear(input);
        program = heard.after();
        said.add(new Said(input.at(), program.turnIfLiftedCelsius()));
        return heard.events();
    }

    List<Said> said() {
        return said;
    }
}
