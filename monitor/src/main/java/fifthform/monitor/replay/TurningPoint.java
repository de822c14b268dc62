package fifthform.monitor.replay;

import fifthform.curves.engine.Event;
import fifthform.curves.engine.Event.BowlSeen;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.recipe.Phase;
import java.util.OptionalLong;

/** Something that happens once in every batch, by which two can be laid over each other. */
public enum TurningPoint {
    /** The lowest reading between the cold water and the way up. */
    FIRST_TROUGH {
        @Override
        OptionalLong in(Recording recording) {
            long from = -1;
            long to = recording.endNanos();
            for (Recording.Told told : recording.told()) {
                if (!(told.event() instanceof Event.PhaseChanged changed)) continue;
                if (from < 0 && changed.to() == Phase.COOL) from = recording.nanos(changed.at());
                // The reading goes on falling for a moment after the bowl is back on the bath.
                if (from >= 0 && changed.to() == Phase.REWARM) {
                    to = recording.nanos(changed.at()) + SecondPass.MINUTE_NANOS;
                    break;
                }
            }
            if (from < 0) return OptionalLong.empty();
            int lowest = recording.bowl().lowest(from, to);
            return lowest < 0
                    ? OptionalLong.empty()
                    : OptionalLong.of(recording.bowl().nanos(lowest));
        }
    },

    /** The first time that the bowl leaves the bath on the way up. */
    LIFT {
        @Override
        OptionalLong in(Recording recording) {
            boolean up = false;
            boolean bath = false;
            for (Recording.Told told : recording.told()) {
                if (told.event() instanceof Event.PhaseChanged changed) up |= changed.to() == Phase.REWARM;
                if (!(told.event() instanceof BowlSeen seen)) continue;
                if (bath && up && seen.place() == Place.TABLE) return OptionalLong.of(recording.nanos(seen.at()));
                bath = seen.place() == Place.BATH;
            }
            return OptionalLong.empty();
        }
    };

    /** When it came, ns since the session's start; empty where it did not. */
    abstract OptionalLong in(Recording recording);

    TurningPoint other() {
        return this == FIRST_TROUGH ? LIFT : FIRST_TROUGH;
    }
}
