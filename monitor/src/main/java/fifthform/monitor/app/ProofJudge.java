package fifthform.monitor.app;

import fifthform.curves.proof.Bend;
import fifthform.curves.proof.Circumstances;
import fifthform.curves.proof.CoolingCurve;
import fifthform.curves.proof.Course;
import fifthform.curves.proof.CurvePoint;
import fifthform.curves.proof.Fitness;
import fifthform.curves.proof.Measure;
import fifthform.curves.proof.TauFit;
import fifthform.curves.proof.Unfit;
import fifthform.curves.proof.Verdict;
import fifthform.monitor.proofs.KeptCup;
import fifthform.monitor.texts.ProofText;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/** Judges a cooling that has ended, and says what it came to. */
final class ProofJudge {
    private final CheckDesk desk;

    ProofJudge(CheckDesk desk) {
        this.desk = Objects.requireNonNull(desk, "desk");
    }

    /** Readings that make no curve. */
    ProofAnswer refused(Unfit why) {
        new ProofReport(desk).refused(List.of(why)).forEach(desk::say);
        return ProofAnswer.unfit(List.of(why));
    }

    /** A sample. */
    ProofAnswer judged(List<CurvePoint> readings, Circumstances around, ProofPlace place) {
        ProofReport report = new ProofReport(desk);
        Circumstances with = place.cup().traits().map(around::withCup).orElse(around);
        CoolingCurve cooled = curve(readings);
        List<Unfit> unfit = unfit(readings, with);
        if (!unfit.isEmpty()) {
            report.refused(unfit).forEach(desk::say);
            return ProofAnswer.unfit(unfit);
        }
        Measure measure = place.cup().measure(place.fat(), with.bathOrIceCelsius());
        Verdict verdict = Verdict.of(Course.of(cooled, with.bathOrIceCelsius()).orElseThrow(), measure);
        report.judged(verdict, measure).forEach(desk::say);
        return ProofAnswer.of(verdict);
    }

    /** Melted chocolate. */
    ProofAnswer calibrated(List<CurvePoint> readings, Circumstances around, ProofPlace place) {
        List<Unfit> unfit = unfit(readings, around);
        Optional<Course> course =
                unfit.isEmpty() ? Course.of(curve(readings), around.bathOrIceCelsius()) : Optional.empty();
        Optional<TauFit> fit = course.flatMap(c -> TauFit.of(curve(readings), c, around.bathOrIceCelsius()));
        if (unfit.isEmpty() && (fit.isEmpty() || fit.get().cup().isEmpty())) unfit = List.of(Unfit.TOO_SLOW);
        if (!unfit.isEmpty()) {
            new ProofReport(desk).refused(unfit).forEach(desk::say);
            return ProofAnswer.unfit(unfit);
        }
        desk.say("");
        desk.say(ProofText.RESULT_THIS_CUPS_TIME_CONSTANT.say(
                String.format(Locale.ROOT, "%.2f", fit.orElseThrow().tauMinutes())));
        Optional<Bend> bend = course.flatMap(Course::bend);
        desk.say(bend.map(b ->
                        ProofText.WITHOUT_TEMPER_BENDS_AT.say(place.recipe().name(), ProofReport.bend(b, desk)))
                .orElse(ProofText.WITHOUT_TEMPER_IT_DOES_NOT.say()));
        return ProofAnswer.of(fit.get(), bend);
    }

    /** Whether the last two runs agree. */
    void tellTwoRuns(KeptCup after) {
        OptionalDouble apart = after.difference();
        if (apart.isEmpty()) {
            desk.say(ProofText.THAT_WAS_THE_FIRST_RUN_DO.say());
            return;
        }
        String percent = Math.round(100 * apart.getAsDouble()) + " %";
        desk.say(
                after.traits().isPresent()
                        ? ProofText.IT_AGREES_WITH_THE_RUN_BEFORE.say(percent)
                        : ProofText.IT_DIFFERS_FROM_THE_RUN_BEFORE.say(percent));
    }

    private static List<Unfit> unfit(List<CurvePoint> readings, Circumstances around) {
        Optional<Unfit> spoilt = Fitness.ofReadings(readings);
        return spoilt.isPresent() ? List.of(spoilt.get()) : Fitness.of(curve(readings), around);
    }

    private static CoolingCurve curve(List<CurvePoint> readings) {
        return CoolingCurve.of(readings, Fitness.stepKelvin(readings));
    }
}
