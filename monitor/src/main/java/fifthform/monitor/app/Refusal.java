package fifthform.monitor.app;

import fifthform.curves.check.Problem;
import java.util.List;
import java.util.stream.Collectors;

/** A command that cannot be done, with what happened, what it means and what to do; ends the program in good order. */
final class Refusal extends Exception {
    private static final long serialVersionUID = 1L;

    private final Exit exit;

    Refusal(Exit exit, String message) {
        super(message);
        this.exit = exit;
    }

    Refusal(Exit exit, List<Problem> problems) {
        this(exit, problems.stream().map(Problem::toString).collect(Collectors.joining(System.lineSeparator())));
    }

    Exit exit() {
        return exit;
    }
}
