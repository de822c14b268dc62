package fifthform.simulator.maker;

import fifthform.curves.engine.Event;
import fifthform.curves.recipe.Phase;
import java.time.Duration;
import java.time.Instant;

/** Somebody who judges a forecast; see {@link Makers#judge}. */
public interface Judging extends Maker {
    @Override
    Judging told(Event event);

    /** The same somebody, who lifts at once for good: what would come of a lift now. */
    Judging lifting(Instant at);

    /** The same somebody, who puts the bowl over the water of the rewarm now and forgets it there. */
    Judging forgetting(Instant at);

    /** Which part of the batch it is in truth; the work begins with the last lift. */
    Phase phase();

    /** How long it has been in the present stage of it. */
    Duration inPhaseFor(Instant at);
}
