package fifthform.curves.probecheck;

import java.time.Instant;
import java.util.Objects;

/** What came of one input to a check. */
public sealed interface CheckEvent {
    Instant at();

    /** The check has gone on, or back, to another stage. */
    record StageReached(Instant at, PointCheck.Stage stage) implements CheckEvent {
        public StageReached {
            Objects.requireNonNull(at, "at");
            Objects.requireNonNull(stage, "stage");
        }
    }

    /** Something keeps the point from being taken. */
    record Objected(Instant at, Objection objection) implements CheckEvent {
        public Objected {
            Objects.requireNonNull(at, "at");
            Objects.requireNonNull(objection, "objection");
        }
    }

    /** The point is taken. */
    record Taken(Point point) implements CheckEvent {
        public Taken {
            Objects.requireNonNull(point, "point");
        }

        @Override
        public Instant at() {
            return point.at();
        }
    }

    /** The point is not taken, and why. */
    record GivenUp(Instant at, Objection objection) implements CheckEvent {
        public GivenUp {
            Objects.requireNonNull(at, "at");
            Objects.requireNonNull(objection, "objection");
        }
    }
}
