package fifthform.monitor.app;

import fifthform.curves.setup.Bowl;
import fifthform.curves.setup.BowlAnswers;
import fifthform.curves.setup.LearnedCoast;
import fifthform.monitor.bowls.KeptBowl;
import fifthform.monitor.bowls.Taught;
import fifthform.monitor.json.Decimal;
import fifthform.monitor.texts.BowlsText;
import fifthform.monitor.texts.UnitText;
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
@Command(name = "set", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class BowlsSetCommand implements Callable<Integer> {
    @ParentCommand
    private BowlsCommand bowls;

    @Parameters(paramLabel = "ID")
    private String id;

    /** As sure as what some lifts taught. */
    private static final double USUAL_SHARE = 0.25;

    @Option(names = "--coast", required = true, paramLabel = "KELVIN")
    private double kelvin;

    @Option(names = "--give-or-take", paramLabel = "KELVIN")
    private Double doubt;

    @Option(names = "--amount", paramLabel = "GRAMS")
    private Double grams;

    @Override
    public Integer call() throws Refusal {
        KeptBowl bowl = BowlWords.known(id, bowls.load());
        Within.number(kelvin, 0.1, 5, "--coast", "°C");
        Within.optional(doubt, 0.01, 2 * kelvin, "--give-or-take", "°C");
        OptionalDouble amount =
                Within.optional(grams, Bowl.LEAST_GRAMS, Bowl.MOST_GRAMS, "--amount", UnitText.GRAMS_IN_FULL.say());
        double share = doubt == null ? USUAL_SHARE : Math.min(1, doubt / kelvin);
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
        return BowlsText.THIS_REPLACES.say(
                bowls.words(gone), other ? BowlsText.AMOUNTS_WITHIN_OF_EACH_OTHER.say(Taught.SAME_PERCENT) : "");
    }
}
