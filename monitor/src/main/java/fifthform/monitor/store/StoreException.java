package fifthform.monitor.store;

import fifthform.curves.check.Problem;
import fifthform.monitor.texts.FileText;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Objects;

/** A session's file cannot be made, opened or written. */
public final class StoreException extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient Problem problem;

    public StoreException(Problem problem, Throwable cause) {
        super(Objects.requireNonNull(problem, "problem").toString(), cause);
        this.problem = problem;
    }

    public StoreException(String where, String what, String whatToDo) {
        this(new Problem(where, what, whatToDo), null);
    }

    static StoreException cannotOpen(Path file, IOException why) {
        return new StoreException(
                new Problem(
                        file.toString(),
                        FileText.THE_FILE_CANNOT_BE_OPENED.say(why.getClass().getSimpleName(), why.getMessage()),
                        FileText.FREE_SPACE_OR_CHOOSE_ANOTHER.say()),
                why);
    }

    /** What happened, what it means, what to do. */
    public Problem problem() {
        return problem;
    }
}
