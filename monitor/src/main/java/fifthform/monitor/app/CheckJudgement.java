package fifthform.monitor.app;

import fifthform.curves.check.Parsed;
import fifthform.curves.probecheck.AirPressure;
import fifthform.curves.probecheck.Boiling;
import fifthform.curves.probecheck.Curve;
import fifthform.curves.probecheck.Drift;
import fifthform.curves.probecheck.Finding;
import fifthform.curves.probecheck.Point;
import fifthform.curves.setup.Correction;
import fifthform.monitor.texts.CheckText;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** From the points that were taken to what they mean for the probe. */
final class CheckJudgement {
    private final CheckSubject subject;
    private final int channel;
    private final Curve curve;

    CheckJudgement(CheckSubject subject, int channel, Curve curve) {
        this.subject = Objects.requireNonNull(subject, "subject");
        this.channel = channel;
        this.curve = Objects.requireNonNull(curve, "curve");
    }

    /** A check whose point was not taken, and why. */
    CheckOutcome failed(List<Point> points, String why) {
        return outcome(points, Optional.empty(), Optional.empty(), Optional.of(why));
    }

    CheckOutcome ofIce(Point ice) {
        return corrected(List.of(ice), Finding.onePoint(ice, subject.sensor(), curve), Optional.empty());
    }

    /** A boiling point alone corrects nothing; it shows whether the correction in use can be right. */
    CheckOutcome ofBoil(Point boil) {
        Boiling boiling = Boiling.of(boil, subject.before(), subject.sensor(), curve);
        Optional<String> no =
                boiling.isPlausible() ? Optional.empty() : Optional.of(CheckText.THE_BOILING_POINT_DOES_NOT_FIT.say());
        return outcome(List.of(boil), Optional.empty(), Optional.of(boiling), no);
    }

    /** With the pressure of the day both correct; with the altitude alone the boiling point only may object. */
    CheckOutcome ofBoth(Point ice, Point boil, AirPressure air) {
        List<Point> points = List.of(ice, boil);
        Parsed<Finding> iceOnly = Finding.onePoint(ice, subject.sensor(), curve);
        Optional<Finding> one = iceOnly.fold(Optional::of, problems -> Optional.empty());
        if (one.isEmpty()) return corrected(points, iceOnly, Optional.empty());
        Boiling boiling = Boiling.of(boil, one.get().correction(), subject.sensor(), curve);
        if (!boiling.isPlausible())
            return outcome(
                    points,
                    Optional.empty(),
                    Optional.of(boiling),
                    Optional.of(CheckText.THE_BOILING_POINT_DOES_NOT_FIT.say()));
        Parsed<Finding> found =
                air.basis().isOfTheDay() ? Finding.twoPoints(ice, boil, subject.sensor(), curve) : iceOnly;
        return corrected(points, found, Optional.of(boiling));
    }

    private CheckOutcome corrected(List<Point> points, Parsed<Finding> found, Optional<Boiling> boiling) {
        return found.fold(
                finding -> outcome(points, Optional.of(finding), boiling, Optional.empty()),
                problems -> outcome(
                        points,
                        Optional.empty(),
                        boiling,
                        Optional.of(problems.stream()
                                .flatMap(p -> Stream.of(p.what(), p.whatToDo()))
                                .collect(Collectors.joining(" ")))));
    }

    private CheckOutcome outcome(
            List<Point> points, Optional<Finding> finding, Optional<Boiling> boiling, Optional<String> failure) {
        Correction before = subject.before();
        Optional<Drift> drift = finding.filter(f -> before.isChecked()).map(f -> Drift.between(before, f.correction()));
        return new CheckOutcome(points, finding, boiling, drift, failure, channel, curve);
    }
}
