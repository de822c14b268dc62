package fifthform.curves.contrast;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The values of one trait where it is known, with the test that fits it. */
final class Seen {
    private final Trait trait;
    private final double[] marked;
    private final double[] fine;

    /** One of the two, where both groups have any. */
    private final Optional<RankSum> ranks;

    private final Optional<Counts> counts;

    Seen(Trait trait, List<LookedBatch> batches) {
        this.trait = trait;
        marked = values(trait, batches, Bars.MARKED);
        fine = values(trait, batches, Bars.FINE);
        boolean both = marked.length > 0 && fine.length > 0;
        ranks = both && !isYesNo() ? Optional.of(new RankSum(marked, fine)) : Optional.empty();
        counts = both && isYesNo()
                ? Optional.of(new Counts(yes(marked), marked.length, yes(fine), fine.length))
                : Optional.empty();
    }

    private static double[] values(Trait trait, List<LookedBatch> batches, Bars bars) {
        return batches.stream()
                .filter(batch -> batch.bars() == bars)
                .map(batch -> batch.traits().of(trait))
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .toArray();
    }

    boolean isKnownOf(int leastEach) {
        return marked.length >= leastEach && fine.length >= leastEach;
    }

    double leastChance() {
        return isYesNo()
                ? counts.orElseThrow().leastChance()
                : ranks.orElseThrow().leastChance();
    }

    double chance() {
        return isYesNo() ? counts.orElseThrow().chance() : ranks.orElseThrow().chance();
    }

    /**
     * Put together with what the others found.
     *
     * @param corrected its chance, corrected
     * @param level below which it is claimed
     * @param doubt of its interval
     */
    Contrast contrast(double corrected, double level, double doubt) {
        Optional<Span> interval = isYesNo()
                ? Optional.of(counts.orElseThrow().interval(doubt))
                : ranks.orElseThrow().interval(doubt);
        double difference = isYesNo()
                ? counts.orElseThrow().difference()
                : ranks.orElseThrow().shift();
        boolean inMarked = isYesNo() ? difference > 0 : ranks.orElseThrow().isFirstHigher();
        return new Contrast(
                trait,
                marked.length,
                fine.length,
                middle(marked),
                middle(fine),
                inMarked ? Contrast.Higher.IN_MARKED : Contrast.Higher.IN_FINE,
                chance(),
                corrected,
                corrected <= level ? Contrast.Claimed.CLAIMED : Contrast.Claimed.NOT_CLAIMED,
                difference,
                interval);
    }

    private boolean isYesNo() {
        return trait.unit() == Trait.Unit.YES_NO;
    }

    private static int yes(double[] values) {
        return (int) Arrays.stream(values).filter(v -> v > 0.5).count();
    }

    private double middle(double[] values) {
        if (isYesNo()) return (double) yes(values) / values.length;
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int half = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    }
}
