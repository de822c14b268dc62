package fifthform.monitor.app;

import fifthform.curves.recipe.Phase;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.Bowl;
import fifthform.curves.setup.Origin;
import fifthform.curves.setup.Setup;
import fifthform.monitor.bowls.Bowls;
import fifthform.monitor.model.AgainWords;
import fifthform.monitor.settings.Folders;
import fifthform.monitor.settings.Settings;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.CommandText;
import fifthform.monitor.texts.UnitText;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What is in the bowl, and how far it is. */
final class BatchOptions {
    private static final String USUAL_CHOCOLATE = "dark";

    @Option(names = "--chocolate", paramLabel = "ID")
    private String chocolate;

    @Option(names = "--bowl", paramLabel = "ID")
    private String bowl;

    @Option(names = "--amount", paramLabel = "GRAMS")
    private Double amountGrams;

    @Option(names = "--bath", paramLabel = "CELSIUS")
    private Double bathCelsius;

    @Mixin
    private LiftOption lift;

    @Option(names = "--seed", paramLabel = "GRAMS")
    private Double seedGrams;

    @Mixin
    private BeginningOptions beginning;

    @Option(names = "--join", paramLabel = "PHASE")
    private String join;

    /** The set-up of a new batch; practice knows its own bowl and chocolate unless others are asked for. */
    Setup setup(
            ProbeChoice choice, Settings settings, Folders folders, Bowls.Loaded bowls, Units units, PrintWriter err)
            throws Refusal {
        boolean practice = choice.origin() == Origin.SIMULATED;
        Optional<EarlierBatch> earlier = beginning.again(folders, choice.origin());
        Optional<Setup> then = earlier.map(EarlierBatch::setup);
        String usual = practice ? USUAL_CHOCOLATE : settings.lastChocolate().orElse(USUAL_CHOCOLATE);
        String id = chocolate != null ? chocolate : choice.chocolate().orElse(usual);
        boolean sameChocolate =
                then.isPresent() && chocolate == null && choice.chocolate().isEmpty();
        Recipe recipe = sameChocolate ? then.get().recipe() : recipe(id, folders, err);
        OptionalDouble amount = or(
                Within.optional(
                        amountGrams, Bowl.LEAST_GRAMS, Bowl.MOST_GRAMS, "--amount", UnitText.GRAMS_IN_FULL.say()),
                then.map(s -> s.bowl().amountGrams()));
        OptionalDouble bath = or(Within.optional(bathCelsius, 20, 99, "--bath", "°C"), then.map(Setup::bathCelsius));
        String sameBowl = then.map(s -> s.bowl().id())
                .filter(b -> !b.equals(Bowl.ANY.id()))
                .orElse(null);
        String inBowl = bowl == null ? sameBowl : bowl;
        Bowl named = inBowl == null ? Setups.bowl(Bowl.ANY.id(), amount) : BowlWords.named(inBowl, amount, bowls);
        OptionalDouble seed = Within.optional(seedGrams, 1, 20_000, "--seed", UnitText.GRAMS_IN_FULL.say());
        new SetupRemarks(recipe).of(bath, amount, seed).forEach(err::println);
        Setup setup = new Setup(
                recipe,
                choice.bowl().orElse(named),
                choice.probes(),
                Setup.USUAL_REACTION,
                bath.isPresent() ? bath : choice.bathCelsius(),
                choice.roomCelsius(),
                choice.origin(),
                lift.or(choice.approach()),
                seed,
                beginning.beginning(earlier, choice),
                beginning.holding(choice));
        earlier.map(e -> e.lines(units)).orElse(List.of()).forEach(err::println);
        AgainWords.before(setup, units).forEach(err::println);
        return setup;
    }

    /** Whether chocolate and bowl were left to be chosen, and the batch begins as any does. */
    boolean isUntold() {
        return chocolate == null && bowl == null && amountGrams == null && join == null && beginning.isUntold();
    }

    /** Takes what was chosen on the start page; {@code recipe} is empty where practice has its own. */
    void take(Optional<String> recipe, Optional<String> named, OptionalDouble grams) {
        chocolate = recipe.orElse(null);
        bowl = named.orElse(null);
        amountGrams = grams.isPresent() ? grams.getAsDouble() : null;
    }

    private static OptionalDouble or(OptionalDouble said, Optional<OptionalDouble> then) {
        return said.isPresent() ? said : then.orElse(OptionalDouble.empty());
    }

    /** The recipe; one that is only remembered, and is gone, must not keep the maker from starting. */
    private Recipe recipe(String id, Folders folders, PrintWriter err) throws Refusal {
        try {
            return Chocolates.find(id, folders, err);
        } catch (Refusal gone) {
            if (chocolate != null) throw gone;
            err.println(CommandText.THE_LAST_CHOCOLATE_IS_NOT.say(id, USUAL_CHOCOLATE));
            return Chocolates.find(USUAL_CHOCOLATE, folders, err);
        }
    }

    /** The phase that a batch is in already when the watching begins. */
    Optional<Phase> joining() throws Refusal {
        beginning.checkJoin(join != null);
        if (join == null) return Optional.empty();
        Optional<Phase> phase = Phase.fromWord(join);
        if (phase.isPresent()) return phase;
        throw new Refusal(Exit.NOT_UNDERSTOOD, CommandText.JOIN_WAS_NOTHING_WAS_DONE_SAY.say(join));
    }
}
