package fifthform.monitor.app;

import fifthform.curves.setup.Approach;
import picocli.CommandLine.Option;

/** How the working range is to be reached, where somebody says so. */
final class LiftOption {
    @Option(
            names = "--lift",
            paramLabel = "WAY",
            description = "touches: short dips where the forecast is unsure (usual); one: stay on until told to lift")
    private String way;

    /** What was said, else the usual. */
    Approach or(Approach usual) throws Refusal {
        if (way == null) return usual;
        return Approach.fromWord(way)
                .orElseThrow(() -> new Refusal(
                        Exit.NOT_UNDERSTOOD, "--lift was " + way + ". Nothing was done. Say touches or one."));
    }
}
