package fifthform.curves.contrast;

import java.util.Objects;
import java.util.Optional;

/**
 * One trait in marked and in fine batches.
 *
 * @param trait which
 * @param marked how many marked batches it is known of
 * @param fine how many fine ones
 * @param markedMiddle its median in the marked ones; of a yes or no the share of yes, 0 to 1
 * @param fineMiddle the same of the fine ones
 * @param higher whether it is rather higher, or more often so, in the marked ones
 * @param chance how likely so much is by chance, 0 to 1
 * @param corrected the same, corrected for all that were held against each other
 * @param claimed whether it may be said that they differ
 * @param difference marked less fine: Hodges and Lehmann's, or of shares
 * @param interval where that lies, all those that were held against each other together 95 times in 100; empty where groups
 *     so small cannot say it
 */
public record Contrast(
        Trait trait,
        int marked,
        int fine,
        double markedMiddle,
        double fineMiddle,
        Higher higher,
        double chance,
        double corrected,
        Claimed claimed,
        double difference,
        Optional<Span> interval) {
    /** In which ones it is rather higher. */
    public enum Higher {
        IN_MARKED,
        IN_FINE
    }

    /** Whether it may be said. */
    public enum Claimed {
        CLAIMED,
        NOT_CLAIMED
    }

    public Contrast {
        Objects.requireNonNull(trait, "trait");
        Objects.requireNonNull(higher, "higher");
        Objects.requireNonNull(claimed, "claimed");
        Objects.requireNonNull(interval, "interval");
    }

    public boolean isClaimed() {
        return claimed == Claimed.CLAIMED;
    }
}
