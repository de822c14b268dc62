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
import fifthform.monitor.model.WatchPicture.Stretch;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What is said of the crystals: one word with its limits; its range, stirring and doubts for who asks. */
final class CrystalModel {
    /** How far the word goes. It stands beside the word wherever that stands. */
    static final String LIMITS =
            "estimate from temperature alone, no measurement of crystals; prove on a sample before pouring";

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
                .map(word -> new Crystals(Stretch.words(word, spoken.thick()), LIMITS, why(), question(), survived))
                .orElse(Crystals.NONE);
    }

    private List<String> why() {
        List<String> said = new ArrayList<>();
        said.add(range(temper.watch().seed()));
        if (spoken.thick())
            said.add("That much makes it about "
                    + Math.max(2, Math.round(temper.watch().thickness())) + " times as thick as without crystals.");
        said.add(stirring(temper.stir()));
        boolean unsure = spoken.word().filter(w -> w == SeedWord.DOUBTFUL).isPresent();
        temper.watch().misgiving().ifPresentOrElse(misgiving -> said.add(doubt(misgiving)), () -> {
            if (unsure) said.add(unsureWhy());
        });
        return said;
    }

    private String unsureWhy() {
        boolean byStirring = temper.stir().isAssumed() && temper.watch().seed().word() == SeedWord.ENOUGH;
        return byStirring
                ? "Doubtful, since nobody said that it is stirred: left alone it makes far fewer."
                : "Doubtful, since half a degree more or less in the reading decides.";
    }

    /** The figures of the three copies, one digit each: more would be false. */
    static String range(SeedRange seed) {
        SeedRange.Digits percent = seed.percentOfFat();
        String needed = "; a temper needs " + digit(100 * Copies.LEAST_SEED) + " %.";
        if (percent.most() == 0) return "Crystals: the model finds no stable ones yet" + needed;
        return "Crystals: " + digit(percent.least()) + " to " + digit(percent.most())
                + " % of the fat in stable ones, best guess " + digit(percent.bestGuess()) + " %" + needed;
    }

    /** Less than a hundredth is said as nothing at all would be read wrongly: there may be some. */
    static String digit(double percent) {
        if (percent == 0) return "under 0.01";
        if (percent >= 1) return String.format(Locale.ROOT, "%.0f", percent);
        return String.format(Locale.ROOT, percent >= 0.1 ? "%.1f" : "%.2f", percent);
    }

    private static String stirring(StirWatch stir) {
        String is = stir.stirring() == Stirring.STIRRED ? "stirred" : "left alone";
        Evidence evidence = stir.evidence();
        if (evidence == Evidence.TOLD) return "It counts as " + is + ", as you said.";
        if (evidence == Evidence.INFERRED) return "It counts as " + is + ": the heat from the water shows it.";
        return stir.isSeen()
                ? "It counts as " + is + ", as the water showed it before."
                : "It counts as " + is + "; that is assumed, nobody said it and no water shows it.";
    }

    static String doubt(Misgiving misgiving) {
        return switch (misgiving) {
            case GAP -> "Doubtful until the next full melt, since for minutes nothing was read.";
            case READINGS -> "Doubtful, since the last reading was none that chocolate can have.";
            case START_UNKNOWN -> "Too few cannot be said: nobody saw it melt, so more may be there.";
            case SEED_UNKNOWN -> "Too few cannot be said: how much seed went in is not known.";
            case MELT_UNSURE -> "Too few cannot be said: it was not held hot long enough to erase every crystal.";
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
                ? keys.fill("Is it being stirred? {stir}: yes · {stir} twice: left alone")
                : "";
    }
}
