package fifthform.curves.learning;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * What a maker's batches of one chocolate say together: at which dose half of those that heat can harm are harmed, in this
 * kitchen, by this probe. It moves no alarm and no target; it is said beside the published limit.
 *
 * @param says what may be said
 * @param publishedCelsius melt-out of the published recipe, °C
 * @param batches how many it rests on
 * @param marked how many of them had marks of lost temper
 * @param band where the limit lies, from the published one and these batches together
 * @param before where it lay before any batch
 * @param coolestMarkedCelsius smallest dose with marks, °C
 * @param hottestCleanCelsius greatest dose without, °C
 */
public record OwnLimit(
        Says says,
        double publishedCelsius,
        int batches,
        int marked,
        Band band,
        Band before,
        OptionalDouble coolestMarkedCelsius,
        OptionalDouble hottestCleanCelsius) {
    /** Below this nothing is claimed: with fewer, the band is the one from before, moved by chance. */
    public static final int LEAST_BATCHES = 6;

    /** Of more the latest count: a kitchen changes, and a product of very many likelihoods would end in zero. */
    public static final int MOST_BATCHES = 150;

    /** A band that is still so wide, as a share of the one before, has learned nothing worth saying. Own choice. */
    private static final double STILL_WIDE = 0.6;

    /** What may be said. */
    public enum Says {
        TOO_FEW_BATCHES,
        /** None had marks: the limit is known from below only. */
        ALL_CLEAN,
        /** All had marks: it is known from above only, if it was the heat at all. */
        ALL_MARKED,
        /** Both were seen, but the doses do not tell them apart. */
        HARDLY_ANYTHING,
        LIMIT;

        /** The word in files. */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    public OwnLimit {
        Objects.requireNonNull(says, "says");
        Objects.requireNonNull(band, "band");
        Objects.requireNonNull(before, "before");
        Objects.requireNonNull(coolestMarkedCelsius, "coolestMarkedCelsius");
        Objects.requireNonNull(hottestCleanCelsius, "hottestCleanCelsius");
    }

    /**
     * The limit as these batches show it.
     *
     * @param publishedCelsius melt-out of the published recipe, °C
     * @param inOrder from the oldest to the latest; the latest {@link #MOST_BATCHES} count
     */
    public static OwnLimit learned(double publishedCelsius, List<TriedBatch> inOrder) {
        List<TriedBatch> tried = inOrder.subList(Math.max(0, inOrder.size() - MOST_BATCHES), inOrder.size());
        Band band = new DoseResponse(publishedCelsius, tried).band();
        Band before = new DoseResponse(publishedCelsius, List.of()).band();
        int marked = (int) tried.stream().filter(t -> t.outcome().isMarked()).count();
        return new OwnLimit(
                says(tried.size(), marked, band.widthKelvin() / before.widthKelvin()),
                publishedCelsius,
                tried.size(),
                marked,
                band,
                before,
                tried.stream()
                        .filter(t -> t.outcome().isMarked())
                        .mapToDouble(TriedBatch::doseCelsius)
                        .min(),
                tried.stream()
                        .filter(t -> !t.outcome().isMarked())
                        .mapToDouble(TriedBatch::doseCelsius)
                        .max());
    }

    private static Says says(int batches, int marked, double width) {
        if (batches < LEAST_BATCHES) return Says.TOO_FEW_BATCHES;
        if (marked == 0) return Says.ALL_CLEAN;
        if (marked == batches) return Says.ALL_MARKED;
        return width > STILL_WIDE ? Says.HARDLY_ANYTHING : Says.LIMIT;
    }
}
