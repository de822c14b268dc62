package fifthform.monitor.app;

import fifthform.curves.proof.GoodCurves;
import fifthform.monitor.proofs.Cups;
import fifthform.monitor.proofs.KeptCup;
import fifthform.monitor.proofs.KeptCurve;
import fifthform.monitor.proofs.KeptCurve.Mark;
import fifthform.monitor.texts.ProofText;
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
@Command(name = "mark", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class ProveMarkCommand implements Callable<Integer> {
    private static final String LAST = "last";

    @ParentCommand
    private ProveCommand prove;

    @Parameters(index = "0", paramLabel = "PROOF")
    private String proof;

    @Parameters(index = "1", paramLabel = "good|bad|none")
    private String word;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Refusal {
        Mark mark = Stream.of(Mark.values())
                .filter(m -> m.word().equals(word))
                .findFirst()
                .orElseThrow(() -> new Refusal(Exit.NOT_UNDERSTOOD, ProofText.IS_NO_MARK_NOTHING_WAS_DONE.say(word)));
        Cups cups = prove.cups();
        Cups.Loaded loaded = cups.load();
        loaded.problems().forEach(spec.commandLine().getErr()::println);
        String name = proof.equals(LAST) ? last(loaded) : proof;
        Optional<KeptCup> cup = loaded.holding(name);
        if (cup.isEmpty()
                && KeptSmears.in(prove.recordings()).stream()
                        .anyMatch(s -> s.head().name().equals(name)))
            throw new Refusal(Exit.NOT_UNDERSTOOD, ProofText.IS_A_SMEAR_TEST_AND_NO.say(name));
        if (cup.isEmpty()) throw new Refusal(Exit.NOT_UNDERSTOOD, ProofText.NO_JUDGED_SAMPLE_IS_CALLED.say(name));
        KeptCup marked;
        try {
            marked = cups.change(cup.get(), kept -> kept.marked(name, mark));
        } catch (IOException e) {
            throw new Refusal(Exit.FILE, ProofText.THE_MARK_COULD_NOT_BE_KEPT.say(e.getMessage()));
        }
        int good = marked.goodBends().size();
        spec.commandLine()
                .getOut()
                .println(ProofText.IS_MARKED_IN_HAS.say(
                        name,
                        words(mark),
                        marked.chocolate(),
                        marked.cup(),
                        good,
                        good >= GoodCurves.ENOUGH
                                ? ProofText.SAMPLES_ARE_JUDGED_BY_THEM_NOW.say()
                                : ProofText.FROM_ON_SAMPLES_ARE_JUDGED_BY.say(GoodCurves.ENOUGH)));
        return Exit.DONE.code();
    }

    private static String words(Mark mark) {
        return switch (mark) {
            case NONE -> ProofText.MARK_NONE.say();
            case GOOD -> ProofText.MARK_GOOD.say();
            case BAD -> ProofText.MARK_BAD.say();
        };
    }

    private static String last(Cups.Loaded loaded) throws Refusal {
        return loaded.cups().stream()
                .flatMap(c -> c.curves().stream())
                .max(Comparator.comparing(KeptCurve::at))
                .map(KeptCurve::proof)
                .orElseThrow(() -> new Refusal(Exit.ANSWER_IS_NO, ProofText.NO_SAMPLE_WAS_COOLED_AND.say()));
    }
}
