package fifthform.probe.find;

import java.time.Duration;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What listening to a port came to.
 *
 * @param decision how the adapter talks; empty where that stayed undecided
 * @param reason what decided, or why nothing could be decided and what to do, in whole sentences
 * @param candidates every protocol at every setting that was listened to, the best first
 * @param took of the link's time
 */
public record Recognition(Optional<Decision> decision, String reason, List<Candidate> candidates, Duration took) {
    public Recognition {
        Objects.requireNonNull(decision, "decision");
        Objects.requireNonNull(reason, "reason");
        candidates = List.copyOf(candidates);
        Objects.requireNonNull(took, "took");
    }
}
