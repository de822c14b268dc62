package fifthform.monitor.app;

import fifthform.curves.probecheck.Boiling;
import fifthform.curves.probecheck.Curve;
import fifthform.curves.probecheck.Drift;
import fifthform.curves.probecheck.Finding;
import fifthform.curves.probecheck.Point;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What a check of one probe came to.
 *
 * @param points those that were taken
 * @param finding the new correction; empty where nothing is corrected
 * @param boiling how the boiling point fits, where there is one
 * @param drift against the last check, where there was one and there is a new correction
 * @param failure why the answer is "no"; empty where the check is passed
 * @param channel the adapter's channel that was heard
 * @param curve what became of the converter's slope
 */
record CheckOutcome(
        List<Point> points,
        Optional<Finding> finding,
        Optional<Boiling> boiling,
        Optional<Drift> drift,
        Optional<String> failure,
        int channel,
        Curve curve) {
    CheckOutcome {
        points = List.copyOf(points);
        Objects.requireNonNull(finding, "finding");
        Objects.requireNonNull(boiling, "boiling");
        Objects.requireNonNull(drift, "drift");
        Objects.requireNonNull(failure, "failure");
        Objects.requireNonNull(curve, "curve");
    }

    boolean isPassed() {
        return failure.isEmpty();
    }
}
