package fifthform.curves.contrast;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The values of one trait where it is known, with the test that fits it. */
record Seen(Trait trait, double[] marked, double[] fine) {
    static Seen of(Trait trait, List<LookedBatch> batches) {
        return new Seen(trait, values(trait, batches, Bars.MARKED), values(trait, batches, Bars.FINE));
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
        return isYesNo() ? counts().leastChance() : ranks().leastChance();
    }

    double chance() {
        return isYesNo() ? counts().chance() : ranks().chance();
    }

    /**
     * Put together with what the others found.
     *
     * @param corrected its chance, corrected
     * @param level below which it is claimed
     * @param doubt of its interval
     */
    Contrast contrast(double corrected, double level, double doubt) {
        Optional<Span> interval = isYesNo() ? Optional.of(counts().interval(doubt)) : ranks().interval(doubt);
        double difference = isYesNo() ? counts().difference() : ranks().shift();
        boolean inMarked = isYesNo() ? difference > 0 : ranks().isFirstHigher();
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

    private RankSum ranks() {
        return new RankSum(marked, fine);
    }

    private Counts counts() {
        return new Counts(yes(marked), marked.length, yes(fine), fine.length);
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
