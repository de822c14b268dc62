package fifthform.monitor.app;

import fifthform.curves.proof.Bend;
import fifthform.curves.proof.TauFit;
import fifthform.curves.proof.TemperClass;
import fifthform.curves.proof.Unfit;
import fifthform.curves.proof.Verdict;
import fifthform.monitor.json.JsonLine;
import fifthform.monitor.proofs.CupRun;
import fifthform.monitor.proofs.CupText;
import fifthform.monitor.proofs.KeptCup;
import fifthform.monitor.proofs.KeptCurve;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What came of a cooling.
 *
 * @param unfit why it was not judged
 * @param verdict the class of a sample
 * @param run how the cup cooled melted chocolate
 * @param bend where that bent
 */
record ProofAnswer(List<Unfit> unfit, Optional<Verdict> verdict, Optional<TauFit> run, Optional<Bend> bend) {
    ProofAnswer {
        unfit = List.copyOf(unfit);
        Objects.requireNonNull(verdict, "verdict");
        Objects.requireNonNull(run, "run");
        Objects.requireNonNull(bend, "bend");
    }

    static ProofAnswer unfit(List<Unfit> unfit) {
        return new ProofAnswer(unfit, Optional.empty(), Optional.empty(), Optional.empty());
    }

    static ProofAnswer of(Verdict verdict) {
        return new ProofAnswer(List.of(), Optional.of(verdict), Optional.empty(), Optional.empty());
    }

    static ProofAnswer of(TauFit run, Optional<Bend> bend) {
        return new ProofAnswer(List.of(), Optional.empty(), Optional.of(run), bend);
    }

    /** Adds it to an answer for scripts or a recording. */
    void tell(JsonLine line) {
        if (!unfit.isEmpty()) ProofReport.json(line, unfit);
        verdict.ifPresent(v -> ProofReport.json(line, v));
        run.ifPresent(r -> CupText.bend(
                line.text("result", "calibrated")
                        .number("tau_min", r.tauMinutes(), 3)
                        .number("excess", r.axisExcess(), 3),
                bend));
    }

    /** Whether there is something to keep of it. */
    boolean isOne() {
        return run.isPresent() || verdict.isPresent();
    }

    /** The cup with it; the same where there is nothing to keep. */
    KeptCup keep(KeptCup cup, String proof, Optional<String> session, Instant at) {
        if (run.isPresent())
            return cup.with(new CupRun(at, run.get().tauMinutes(), run.get().axisExcess(), bend, proof));
        if (verdict.isEmpty()) return cup;
        return cup.with(new KeptCurve(
                at, proof, session, verdict.get().temper(), verdict.get().bend(), KeptCurve.Mark.NONE));
    }

    Exit exit() {
        boolean good = run.isPresent()
                || verdict.filter(v -> v.temper() == TemperClass.IN_TEMPER).isPresent();
        return good ? Exit.DONE : Exit.ANSWER_IS_NO;
    }
}
