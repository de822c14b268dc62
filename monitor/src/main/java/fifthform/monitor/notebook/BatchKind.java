package fifthform.monitor.notebook;

import fifthform.curves.setup.Origin;
import fifthform.curves.setup.Setup;
import java.util.Locale;

/** Whether chocolate was in the bowl. The two are never counted together. */
public enum BatchKind {
    REAL,
    /** Simulated, or from recorded bytes: no batch of their own. */
    PRACTICE;

    /** What the place of a probe begins with where its bytes came from a file. */
    public static final String RECORDED_PLACE = "file: ";

    public static BatchKind of(Setup setup) {
        boolean real =
                setup.origin() == Origin.REAL && !setup.bowlProbe().place().startsWith(RECORDED_PLACE);
        return real ? REAL : PRACTICE;
    }

    /** The word in files and answers. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
