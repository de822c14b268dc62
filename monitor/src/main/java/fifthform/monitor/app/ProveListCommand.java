package fifthform.monitor.app;

import fifthform.monitor.json.JsonLine;
import fifthform.monitor.proofs.CupText;
import fifthform.monitor.proofs.Cups;
import fifthform.monitor.proofs.KeptCup;
import fifthform.monitor.proofs.KeptCurve;
import fifthform.monitor.texts.InWords;
import fifthform.monitor.texts.ProofText;
import java.io.PrintWriter;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** What was proved, by chocolate and cup. */
@Command(name = "list", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class ProveListCommand implements Callable<Integer> {
    @ParentCommand
    private ProveCommand prove;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        boolean json = prove.wantsJson();
        PrintWriter out = spec.commandLine().getOut();
        Cups.Loaded loaded = prove.cups().load();
        loaded.problems().forEach(spec.commandLine().getErr()::println);
        for (KeptCup cup : loaded.cups()) {
            if (!json)
                out.println(ProofText.IN_OF_3_GOOD_CURVES.say(
                        cup.chocolate(), cup.cup(), runs(cup), cup.goodBends().size()));
            for (KeptCurve curve : cup.curves()) out.println(json ? line(cup, curve) : row(curve));
        }
        List<KeptSmears.Kept> smears = KeptSmears.in(prove.recordings());
        if (!smears.isEmpty() && !json) out.println(ProofText.SMEAR_TESTS.say());
        for (KeptSmears.Kept smear : smears) out.println(json ? smear.line() : smear.row());
        if (loaded.cups().isEmpty() && smears.isEmpty() && !json)
            out.println(ProofText.NOTHING_WAS_PROVED_YET_TRY.say());
        return (loaded.problems().isEmpty() ? Exit.DONE : Exit.ANSWER_IS_NO).code();
    }

    private static String runs(KeptCup cup) {
        if (cup.traits().isPresent())
            return ProofText.CALIBRATED_TO.say(
                    String.format(Locale.ROOT, "%.2f", cup.traits().get().tauMinutes()));
        OptionalDouble apart = cup.difference();
        return apart.isPresent()
                ? ProofText.NOT_CALIBRATED_ITS_LAST_TWO.say(Math.round(100 * apart.getAsDouble()))
                : ProofText.NOT_CALIBRATED.say();
    }

    private static String line(KeptCup cup, KeptCurve curve) {
        return new JsonLine()
                .text("chocolate", cup.chocolate())
                .text("cup", cup.cup())
                .object("curve", CupText.line(curve))
                .end();
    }

    private static String row(KeptCurve curve) {
        String bend = curve.bend()
                .map(b -> ProofText.CURVE_BENDS.say(
                        String.format(Locale.ROOT, "%+.2f", b.kelvinPerMinute()),
                        String.format(Locale.ROOT, "%.1f", b.celsius())))
                .orElse(ProofText.NO_BEND.say());
        String mark = switch (curve.mark()) {
            case NONE -> "";
            case GOOD -> ProofText.BARS_GOOD.say();
            case BAD -> ProofText.BARS_BAD.say();
        };
        return "  " + curve.proof() + " · " + LocalDate.ofInstant(curve.at(), ZoneId.systemDefault()) + " · "
                + InWords.of(curve.told()) + " · " + bend + mark;
    }
}
