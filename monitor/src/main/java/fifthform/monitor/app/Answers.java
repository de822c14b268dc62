package fifthform.monitor.app;

import fifthform.curves.check.Parsed;
import fifthform.curves.check.Problem;
import java.util.List;
import java.util.Optional;

/** Takes a parsed value out, or ends the command with its problems. */
final class Answers {
    private Answers() {}

    static <T> T orRefuse(Parsed<T> parsed, Exit exit) throws Refusal {
        Optional<T> value = parsed.fold(Optional::of, problems -> Optional.empty());
        if (value.isPresent()) return value.get();
        List<Problem> problems = parsed.fold(v -> List.of(), p -> List.copyOf(p));
        throw new Refusal(exit, problems);
    }
}
