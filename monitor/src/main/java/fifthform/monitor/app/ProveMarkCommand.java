package fifthform.monitor.app;

import fifthform.curves.proof.GoodCurves;
import fifthform.monitor.proofs.Cups;
import fifthform.monitor.proofs.KeptCup;
import fifthform.monitor.proofs.KeptCurve;
import fifthform.monitor.proofs.KeptCurve.Mark;
import java.io.IOException;
import java.util.Comparator;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** How the bars of a proved batch turned out. */
@Command(
        name = "mark",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = {
            "Says how the bars were, a day and a week later.",
            "From three good curves on, samples are judged by them."
        },
        footer = {"", "Example: monitor/run prove mark last good"})
final class ProveMarkCommand implements Callable<Integer> {
    private static final String LAST = "last";

    @ParentCommand
    private ProveCommand prove;

    @Parameters(index = "0", paramLabel = "PROOF", description = "its name, see: monitor/run prove list; or last")
    private String proof;

    @Parameters(index = "1", paramLabel = "good|bad|none", description = "how the bars were")
    private String word;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Refusal {
        Mark mark = Stream.of(Mark.values())
                .filter(m -> m.word().equals(word))
                .findFirst()
                .orElseThrow(() -> new Refusal(
                        Exit.NOT_UNDERSTOOD, "\"" + word + "\" is no mark. Nothing was done. Say good, bad or none."));
        Cups cups = prove.cups();
        Cups.Loaded loaded = cups.load();
        loaded.problems().forEach(spec.commandLine().getErr()::println);
        String name = proof.equals(LAST) ? last(loaded) : proof;
        Optional<KeptCup> cup = loaded.holding(name);
        if (cup.isEmpty()
                && KeptSmears.in(prove.recordings()).stream()
                        .anyMatch(s -> s.head().name().equals(name)))
            throw new Refusal(
                    Exit.NOT_UNDERSTOOD,
                    name
                            + " is a smear test, and no later sample is judged by it. Nothing was done. How the bars were is"
                            + " kept with: monitor/run look");
        if (cup.isEmpty())
            throw new Refusal(
                    Exit.NOT_UNDERSTOOD,
                    "No judged sample is called " + name + ". Nothing was done. Their names: monitor/run prove list");
        KeptCup marked;
        try {
            marked = cups.change(cup.get(), kept -> kept.marked(name, mark));
        } catch (IOException e) {
            throw new Refusal(
                    Exit.FILE,
                    "The mark could not be kept (" + e.getMessage()
                            + "). What was kept before stands. Make room, or name another folder with --data.");
        }
        int good = marked.goodBends().size();
        spec.commandLine()
                .getOut()
                .println(
                        name + " is marked " + mark.word() + ". " + marked.chocolate() + " in " + marked.cup() + " has "
                                + good + (good == 1 ? " good curve" : " good curves")
                                + (good >= GoodCurves.ENOUGH
                                        ? ": samples are judged by them now."
                                        : "; from " + GoodCurves.ENOUGH + " on samples are judged by them."));
        return Exit.DONE.code();
    }

    private static String last(Cups.Loaded loaded) throws Refusal {
        return loaded.cups().stream()
                .flatMap(c -> c.curves().stream())
                .max(Comparator.comparing(KeptCurve::at))
                .map(KeptCurve::proof)
                .orElseThrow(
                        () -> new Refusal(
                                Exit.ANSWER_IS_NO,
                                "No sample was cooled and judged yet, so there is none to mark. Prove one: monitor/run prove --probe PORT"));
    }
}
