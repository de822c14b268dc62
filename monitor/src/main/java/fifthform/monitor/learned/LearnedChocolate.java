package fifthform.monitor.learned;

import fifthform.curves.contrast.Bars;
import fifthform.curves.contrast.BatchTraits;
import fifthform.curves.contrast.Comparison;
import fifthform.curves.contrast.LookedBatch;
import fifthform.curves.learning.HeatDose;
import fifthform.curves.learning.LeftOut;
import fifthform.curves.learning.Outcome;
import fifthform.curves.learning.OwnLimit;
import fifthform.curves.learning.TriedBatch;
import fifthform.curves.recipe.Recipe;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What the looked-at batches of one chocolate say.
 *
 * @param id of the chocolate
 * @param published the recipe that the limit is compared with and the heat counted by
 * @param inForceCelsius melt-out of the recipe that a batch of this id begins with today, °C
 * @param batches all with looks, oldest first
 * @param limit what those that count say together of heat
 * @param comparison what differs between marked and fine ones
 */
public record LearnedChocolate(
        String id,
        Recipe published,
        double inForceCelsius,
        List<Batch> batches,
        OwnLimit limit,
        Comparison comparison) {
    /**
     * One batch.
     *
     * @param session its name
     * @param start when it began
     * @param dose its heat; empty where none was seen
     * @param outcome how its bars came out; empty where the looks do not say
     * @param leftOut why it says nothing of the limit; empty where it does
     * @param traits by which it is held against others
     * @param bars how its bars stand by the latest look; empty where no look tells
     */
    public record Batch(
            String session,
            Instant start,
            Optional<HeatDose> dose,
            Optional<Outcome> outcome,
            Optional<LeftOut> leftOut,
            BatchTraits traits,
            Optional<Bars> bars) {
        public Batch {
            Objects.requireNonNull(session, "session");
            Objects.requireNonNull(start, "start");
            Objects.requireNonNull(dose, "dose");
            Objects.requireNonNull(outcome, "outcome");
            Objects.requireNonNull(leftOut, "leftOut");
            Objects.requireNonNull(traits, "traits");
            Objects.requireNonNull(bars, "bars");
        }

        Optional<TriedBatch> tried() {
            if (leftOut.isPresent() || dose.isEmpty()) return Optional.empty();
            return outcome.map(o -> new TriedBatch(dose.get().equivalentCelsius(), o));
        }
    }

    public LearnedChocolate {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(published, "published");
        batches = List.copyOf(batches);
        Objects.requireNonNull(limit, "limit");
        Objects.requireNonNull(comparison, "comparison");
    }

    static LearnedChocolate of(Recipe published, double inForceCelsius, List<Batch> batches) {
        List<TriedBatch> tried =
                batches.stream().map(Batch::tried).flatMap(Optional::stream).toList();
        List<LookedBatch> looked = batches.stream()
                .flatMap(batch -> batch.bars().map(bars -> new LookedBatch(batch.traits(), bars)).stream())
                .toList();
        return new LearnedChocolate(
                published.id(),
                published,
                inForceCelsius,
                batches,
                OwnLimit.learned(published.meltOut().limitCelsius(), tried),
                Comparison.of(published, looked));
    }
}
