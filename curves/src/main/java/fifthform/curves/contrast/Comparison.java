package fifthform.curves.contrast;

import fifthform.curves.recipe.Recipe;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What differs between marked and fine batches of one chocolate: what goes with marks, not what causes them.
 *
 * <p>The traits are fixed beforehand ({@link Trait}), each is tested exactly, and the chances are corrected so that in all
 * of them together a false claim is no more likely than {@link #LEVEL}.
 *
 * @param says what may be said
 * @param fine fine batches
 * @param marked marked ones
 * @param contrasts what was held against each other, the surest first
 * @param untold what was not: known of too few, or so alike that nothing could show
 * @param suggestion one thing to try
 */
public record Comparison(
        Says says,
        int fine,
        int marked,
        List<Contrast> contrasts,
        List<Trait> untold,
        Optional<Suggestion> suggestion) {
    /** How likely a false claim may be, in all traits together. */
    public static final double LEVEL = 0.05;

    /**
     * So many marked and so many fine batches are needed before anything is claimed: the smallest number at which six tests
     * together can reach the level. Of five and five the ranks can fall in 252 ways, so the least chance is 2/252, times six
     * 0.048; of four and four it is 2/70, times six 0.17.
     */
    public static final int LEAST_EACH = 5;

    /** Of more the latest count: a kitchen changes, and counting all ways takes its time. */
    public static final int MOST_BATCHES = 100;

    /** What may be said. */
    public enum Says {
        TOO_FEW,
        /** Nothing differs by more than chance would make it. */
        NOTHING,
        DIFFERS;

        /** The word in files. */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    public Comparison {
        Objects.requireNonNull(says, "says");
        contrasts = List.copyOf(contrasts);
        untold = List.copyOf(untold);
        Objects.requireNonNull(suggestion, "suggestion");
        if (suggestion.isPresent() && says != Says.DIFFERS)
            throw new IllegalArgumentException("suggestion needs a claim, was " + suggestion);
    }

    /**
     * What these batches say.
     *
     * @param recipe the chocolate, by whose targets a suggestion must hold
     * @param inOrder from the oldest to the latest; the latest {@link #MOST_BATCHES} count
     */
    public static Comparison of(Recipe recipe, List<LookedBatch> inOrder) {
        List<LookedBatch> batches = inOrder.subList(Math.max(0, inOrder.size() - MOST_BATCHES), inOrder.size());
        int marked = (int) batches.stream().filter(b -> b.bars() == Bars.MARKED).count();
        int fine = batches.size() - marked;
        if (marked < LEAST_EACH || fine < LEAST_EACH) {
            return new Comparison(Says.TOO_FEW, fine, marked, List.of(), List.of(Trait.values()), Optional.empty());
        }
        List<Contrast> contrasts = contrasts(batches);
        List<Trait> untold = Stream.of(Trait.values())
                .filter(trait -> contrasts.stream().noneMatch(c -> c.trait() == trait))
                .toList();
        Optional<Suggestion> suggestion = contrasts.stream()
                .filter(Contrast::isClaimed)
                .map(contrast -> Suggestion.from(contrast, recipe))
                .flatMap(Optional::stream)
                .findFirst();
        boolean differs = contrasts.stream().anyMatch(Contrast::isClaimed);
        return new Comparison(differs ? Says.DIFFERS : Says.NOTHING, fine, marked, contrasts, untold, suggestion);
    }

    /** How many more batches must be looked at, at the least, before anything can be claimed; 0 where there are enough. */
    public int looksNeeded() {
        return markedNeeded() + fineNeeded();
    }

    public int markedNeeded() {
        return Math.max(0, LEAST_EACH - marked);
    }

    public int fineNeeded() {
        return Math.max(0, LEAST_EACH - fine);
    }

    private static List<Contrast> contrasts(List<LookedBatch> batches) {
        List<Seen> known = Stream.of(Trait.values())
                .map(trait -> new Seen(trait, batches))
                .filter(seen -> seen.isKnownOf(LEAST_EACH))
                .toList();
        double[] least = known.stream().mapToDouble(Seen::leastChance).toArray();
        double worth = ManyTests.worthCounting(least, LEVEL);
        List<Seen> tested = known.stream()
                .filter(seen -> least[known.indexOf(seen)] <= worth)
                .toList();
        double[] corrected =
                ManyTests.holm(tested.stream().mapToDouble(Seen::chance).toArray());
        List<Contrast> contrasts = new ArrayList<>();
        for (int i = 0; i < tested.size(); i++)
            contrasts.add(tested.get(i).contrast(corrected[i], LEVEL, LEVEL / tested.size()));
        contrasts.sort(Comparator.comparingDouble(Contrast::chance).thenComparing(Contrast::trait));
        return contrasts;
    }
}
