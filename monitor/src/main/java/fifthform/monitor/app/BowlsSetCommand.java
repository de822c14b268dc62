package fifthform.monitor.app;

import fifthform.curves.setup.BowlAnswers;
import fifthform.curves.setup.LearnedCoast;
import fifthform.monitor.bowls.KeptBowl;
import fifthform.monitor.bowls.Taught;
import fifthform.monitor.json.Decimal;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** A coast from the maker's own experience. */
@Command(
        name = "set",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "Sets by hand how far a bowl coasts; batches go on learning from there.",
        footer = {
            "",
            "Example, for a bowl that was added as steel:",
            "  monitor/run bowls set steel --amount 800 --coast 0.7"
        })
final class BowlsSetCommand implements Callable<Integer> {
    @ParentCommand
    private BowlsCommand bowls;

    @Parameters(paramLabel = "ID", description = "id or name of the bowl")
    private String id;

    /** As sure as what some lifts taught. */
    private static final double USUAL_SHARE = 0.25;

    @Option(
            names = "--coast",
            required = true,
            paramLabel = "KELVIN",
            description = "°C of coast where it rose by 1 °C a minute, 0.1 to 5")
    private double kelvin;

    @Option(
            names = "--give-or-take",
            paramLabel = "KELVIN",
            description = "how unsure that is; otherwise a quarter of it")
    private Double doubt;

    @Option(
            names = "--amount",
            paramLabel = "GRAMS",
            description = "with so much chocolate in it; otherwise with any amount")
    private Double grams;

    @Override
    public Integer call() throws Refusal {
        KeptBowl bowl = BowlWords.known(id, bowls.load());
        BowlWords.within(kelvin, 0.1, 5, "--coast", "°C");
        if (doubt != null) BowlWords.within(doubt, 0.01, 2 * kelvin, "--give-or-take", "°C");
        if (grams != null) BowlWords.within(grams, 10, 20_000, "--amount", "grams");
        double share = doubt == null ? USUAL_SHARE : Math.min(1, doubt / kelvin);
        OptionalDouble amount = grams == null ? OptionalDouble.empty() : OptionalDouble.of(grams);
        LearnedCoast coast = new LearnedCoast(Decimal.rounded(60 * kelvin), Decimal.rounded(share), 1);
        BowlAnswers answers = bowl.taughtWith(amount).map(Taught::answers).orElse(BowlAnswers.NONE);
        int kept = bowls.keep(bowl.taught(new Taught(
                amount,
                Optional.of(coast),
                answers,
                0,
                Instant.now().truncatedTo(ChronoUnit.SECONDS),
                Optional.empty())));
        for (Taught gone : bowl.inPlaceOf(amount)) bowls.said(bowl, replaced(gone, amount));
        return kept;
    }

    /** Near amounts are one: who means another must learn what is gone. */
    private String replaced(Taught gone, OptionalDouble amount) throws Refusal {
        boolean other = !gone.amountGrams().equals(amount);
        return "This replaces " + bowls.words(gone) + "."
                + (other ? " Amounts within " + Taught.SAME_PERCENT + " % of each other count as one." : "");
    }
}
