package fifthform.curves.probecheck;

import fifthform.curves.probecheck.PointCheck.Stage;
import java.time.Instant;
import java.util.Optional;

/** The next state of a {@link PointCheck}, changed where something changes. Used within one step only. */
final class PointDraft {
    private final Target target;
    private Stage stage;
    private Optional<Instant> begun;
    private Instant stageSince;
    private Optional<Instant> heard;
    private Steadiness window;
    private Travel way;
    private Optional<Objection> objection;
    private Instant objectionSince;
    private Optional<Point> point;

    PointDraft(PointCheck before) {
        target = before.target();
        stage = before.stage();
        begun = before.begun();
        stageSince = before.stageSince();
        heard = before.heard();
        window = before.window();
        way = before.way();
        objection = before.objection();
        objectionSince = before.objectionSince();
        point = before.point();
    }

    PointDraft stage(Stage next, Instant at) {
        stage = next;
        stageSince = at;
        return this;
    }

    PointDraft begun(Instant at) {
        begun = Optional.of(at);
        return this;
    }

    PointDraft heard(Instant at) {
        heard = Optional.of(at);
        return this;
    }

    PointDraft window(Steadiness readings) {
        window = readings;
        return this;
    }

    PointDraft way(Travel seen) {
        way = seen;
        return this;
    }

    PointDraft objection(Optional<Objection> now, Instant at) {
        objection = now;
        objectionSince = at;
        return this;
    }

    PointDraft point(Point value) {
        point = Optional.of(value);
        return this;
    }

    PointCheck done() {
        return new PointCheck(target, stage, begun, stageSince, heard, window, way, objection, objectionSince, point);
    }
}
