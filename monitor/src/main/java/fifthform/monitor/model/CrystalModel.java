package fifthform.monitor.model;

import fifthform.curves.crystal.Copies;
import fifthform.curves.crystal.Misgiving;
import fifthform.curves.crystal.SeedRange;
import fifthform.curves.crystal.SeedWord;
import fifthform.curves.crystal.Spoken;
import fifthform.curves.crystal.StirWatch;
import fifthform.curves.crystal.Temper;
import fifthform.curves.engine.State;
import fifthform.curves.input.MakerAction.StirringSaid.Stirring;
import fifthform.curves.phase.Evidence;
import fifthform.curves.recipe.Phase;
import fifthform.monitor.model.Look.Asking;
import fifthform.monitor.model.WatchPicture.Crystals;
import fifthform.monitor.texts.InWords;
import fifthform.monitor.texts.WatchText;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What is said of the crystals: one word with its limits; its range, stirring and doubts for who asks. */
final class CrystalModel {
    /** How far the word goes. It stands beside the word wherever that stands. */
    static final WatchText LIMITS = WatchText.ESTIMATE_FROM_TEMPERATURE;

    /** Water shows within a minute whether it is stirred; before that there is nothing to ask. */
    private static final Duration LOOKS_FIRST = Duration.ofSeconds(90);

    private final Temper temper;
    private final State state;
    private final Asking asking;
    private final KeyMap keys;
    private final Spoken spoken;

    CrystalModel(Temper temper, State state, Asking asking, KeyMap keys) {
        this.keys = keys;
        this.asking = asking;
        this.temper = temper;
        this.state = state;
        this.spoken = temper.watch().spoken();
    }

    /** @param survived what is to be told of the last overshoot; may be empty */
    Crystals crystals(String survived) {
        return spoken.word()
                .map(word ->
                        new Crystals(InWords.crystals(word, spoken.thick()), LIMITS.say(), why(), question(), survived))
                .orElse(Crystals.NONE);
    }

    private List<String> why() {
        List<String> said = new ArrayList<>();
        said.add(range(temper.watch().seed()));
        if (spoken.thick())
            said.add(WatchText.THAT_MUCH_MAKES_IT_ABOUT_TIMES.say(
                    Math.max(2, Math.round(temper.watch().thickness()))));
        said.add(stirring(temper.stir()));
        boolean unsure = spoken.word().filter(w -> w == SeedWord.DOUBTFUL).isPresent();
        temper.watch().misgiving().ifPresentOrElse(misgiving -> said.add(doubt(misgiving)), () -> {
            if (unsure) said.add(unsureWhy());
        });
        return said;
    }

    private String unsureWhy() {
        boolean byStirring = temper.stir().isAssumed() && temper.watch().seed().word() == SeedWord.ENOUGH;
        return byStirring ? WatchText.DOUBTFUL_SINCE_NOBODY_SAID.say() : WatchText.DOUBTFUL_SINCE_HALF_A_DEGREE.say();
    }

    /** The figures of the three copies, one digit each: more would be false. */
    static String range(SeedRange seed) {
        SeedRange.Digits percent = seed.percentOfFat();
        String needed = WatchText.A_TEMPER_NEEDS_PERCENT.say(digit(100 * Copies.LEAST_SEED));
        if (percent.most() == 0) return WatchText.CRYSTALS_THE_MODEL_FINDS_NO.say(needed);
        boolean hardlyAny = percent.bestGuess() == 0 || percent.least() == 0 && percent.bestGuess() == percent.most();
        if (hardlyAny) return WatchText.CRYSTALS_AT_MOST_PERCENT.say(digit(percent.most()), needed);
        return WatchText.CRYSTALS_TO_PERCENT_OF_THE_FAT.say(
                beside(seed.least(), percent.least()),
                beside(seed.most(), percent.most()),
                beside(seed.middle(), percent.bestGuess()),
                needed);
    }

    /** A figure that would be rounded onto what a temper needs decides the word: it is said on which side it lies. */
    private static String beside(double fraction, double percent) {
        if (Math.abs(percent - 100 * Copies.LEAST_SEED) > 1e-9) return digit(percent);
        WatchText side = fraction < Copies.LEAST_SEED ? WatchText.JUST_UNDER : WatchText.JUST_OVER;
        return side.say(digit(percent));
    }

    /** Less than a hundredth is said as nothing at all would be read wrongly: there may be some. */
    static String digit(double percent) {
        if (percent == 0) return WatchText.UNDER_0_01.say();
        if (percent >= 1) return String.format(Locale.ROOT, "%.0f", percent);
        return String.format(Locale.ROOT, percent >= 0.1 ? "%.1f" : "%.2f", percent);
    }

    private static String stirring(StirWatch stir) {
        String is = stir.stirring() == Stirring.STIRRED ? WatchText.STIRRED.say() : WatchText.LEFT_ALONE.say();
        Evidence evidence = stir.evidence();
        if (evidence == Evidence.TOLD) return WatchText.IT_COUNTS_AS_AS_YOU_SAID.say(is);
        if (evidence == Evidence.INFERRED) return WatchText.IT_COUNTS_AS_THE_HEAT_FROM.say(is);
        return stir.isSeen()
                ? WatchText.IT_COUNTS_AS_AS_THE_WATER.say(is)
                : WatchText.IT_COUNTS_AS_THAT_IS_ASSUMED.say(is);
    }

    static String doubt(Misgiving misgiving) {
        return switch (misgiving) {
            case GAP -> WatchText.DOUBTFUL_UNTIL_THE_NEXT_FULL.say();
            case READINGS -> WatchText.DOUBTFUL_SINCE_THE_LAST.say();
            case START_UNKNOWN -> WatchText.TOO_FEW_CANNOT_BE_SAID_NOBODY.say();
            case SEED_UNKNOWN -> WatchText.TOO_FEW_CANNOT_BE_SAID_HOW.say();
            case MELT_UNSURE -> WatchText.TOO_FEW_CANNOT_BE_SAID_IT.say();
        };
    }

    /** Asked once a batch: an answer stands until the next melt, and so does what the water shows. */
    private String question() {
        Phase phase = state.batch().phase();
        boolean making = phase == Phase.COOL || phase == Phase.SEED;
        // On the table nothing will show it: there the question stays, or it would go and come again.
        boolean waited = phase == Phase.SEED
                || Duration.between(state.batch().progress().since(), state.at())
                                .compareTo(LOOKS_FIRST)
                        >= 0;
        boolean looked = spoken.since().isPresent() && waited;
        boolean assumed =
                temper.stir().evidence() == Evidence.ASSUMED && !temper.stir().isSeen();
        return asking == Asking.ANSWERED && making && looked && assumed
                ? keys.fill(WatchText.IS_IT_BEING_STIRRED_STIR_YES.say())
                : "";
    }
}
