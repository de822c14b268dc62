package fifthform.monitor.app;

import fifthform.monitor.json.JsonLine;
import fifthform.monitor.proofs.CupText;
import fifthform.monitor.proofs.Cups;
import fifthform.monitor.proofs.KeptCup;
import fifthform.monitor.proofs.KeptCurve;
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
@Command(
        name = "list",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "Lists your cups, the samples that were judged in them, and the smear tests.",
        footer = {"", "Example: monitor/run prove list"})
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
                out.println(cup.chocolate() + " in " + cup.cup() + " · " + runs(cup) + " · "
                        + cup.goodBends().size() + " of 3 good curves");
            for (KeptCurve curve : cup.curves()) out.println(json ? line(cup, curve) : row(curve));
        }
        List<KeptSmears.Kept> smears = KeptSmears.in(prove.recordings());
        if (!smears.isEmpty() && !json) out.println("Smear tests");
        for (KeptSmears.Kept smear : smears) out.println(json ? smear.line() : smear.row());
        if (loaded.cups().isEmpty() && smears.isEmpty() && !json)
            out.println("Nothing was proved yet. Try: monitor/run prove --probe practice");
        return (loaded.problems().isEmpty() ? Exit.DONE : Exit.ANSWER_IS_NO).code();
    }

    private static String runs(KeptCup cup) {
        if (cup.traits().isPresent())
            return String.format(
                    Locale.ROOT, "calibrated, %.2f min", cup.traits().get().tauMinutes());
        OptionalDouble apart = cup.difference();
        return apart.isPresent()
                ? "not calibrated: its last two runs differ by " + Math.round(100 * apart.getAsDouble()) + " %"
                : "not calibrated";
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
                .map(b -> String.format(Locale.ROOT, "%+.2f °C a minute at %.1f °C", b.kelvinPerMinute(), b.celsius()))
                .orElse("no bend");
        String mark = switch (curve.mark()) {
            case NONE -> "";
            case GOOD -> " · bars good";
            case BAD -> " · bars bad";
        };
        return "  " + curve.proof() + " · " + LocalDate.ofInstant(curve.at(), ZoneId.systemDefault()) + " · "
                + curve.told().words() + " · " + bend + mark;
    }
}
