package fifthform.curves.engine;

import fifthform.curves.cue.CueBoard;
import fifthform.curves.cue.CueId;
import fifthform.curves.forecast.Coasting;
import fifthform.curves.forecast.Lift;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.phase.Batch;
import fifthform.curves.phase.Evidence;
import fifthform.curves.setup.Setup;
import java.time.Instant;
import java.util.Optional;

/** Measures the maker's hands: a cue to leave some water, and the bowl that leaves it. */
final class Hands {
    private Hands() {}

    /**
     * The batch once it has been looked at whether a cue was answered.
     *
     * @param before the state before, with the cues that stood
     * @param coasting what is known of the lift, where there was one
     */
    static Batch measured(Setup setup, State before, Batch batch, Coasting coasting) {
        Place was = before.batch().place();
        if (was == batch.place() || batch.place() != Place.TABLE) return batch;
        Optional<Instant> cued = cued(before.cues(), was);
        Optional<Instant> left = batch.contact().evidence() == Evidence.TOLD
                ? Optional.of(batch.contact().since())
                : coasting.lift().map(Lift::at);
        if (cued.isEmpty() || left.isEmpty()) return batch;
        return batch.answered(cued.get(), left.get(), setup.reactionTime());
    }

    private static Optional<Instant> cued(CueBoard cues, Place water) {
        return switch (water) {
            case BATH -> cues.openSince(CueId.LIFT_NOW);
            case COLD_WATER -> cues.openSince(CueId.STOP_COOLING);
            case TABLE -> Optional.empty();
        };
    }
}
