package fifthform.monitor.app;

import fifthform.curves.setup.Approach;
import fifthform.monitor.texts.CommandText;
import picocli.CommandLine.Option;

/** How the working range is to be reached, where somebody says so. */
final class LiftOption {
    @Option(names = "--lift", paramLabel = "WAY")
    private String way;

    /** What was said, else the usual. */
    Approach or(Approach usual) throws Refusal {
        if (way == null) return usual;
        return Approach.fromWord(way)
                .orElseThrow(
                        () -> new Refusal(Exit.NOT_UNDERSTOOD, CommandText.LIFT_WAS_NOTHING_WAS_DONE_SAY.say(way)));
    }
}
