package fifthform.monitor.app;

import fifthform.curves.proof.Bend;
import fifthform.curves.proof.GoodCurves;
import fifthform.curves.proof.Measure;
import fifthform.curves.proof.TemperClass;
import fifthform.curves.proof.TemperScale;
import fifthform.curves.proof.Unfit;
import fifthform.curves.proof.Verdict;
import fifthform.monitor.json.JsonLine;
import fifthform.monitor.proofs.CupText;
import fifthform.monitor.texts.InWords;
import fifthform.monitor.texts.ProofText;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/** What a proof came to, in words and for scripts. */
final class ProofReport {
    private final CheckDesk desk;

    ProofReport(CheckDesk desk) {
        this.desk = Objects.requireNonNull(desk, "desk");
    }

    static String minutes(double seconds) {
        long whole = Math.round(seconds);
        return ProofText.MIN_S.say(whole / 60, String.format(Locale.ROOT, "%02d", whole % 60));
    }

    static String bend(Bend bend, CheckDesk desk) {
        return ProofText.A_MINUTE_AT_AFTER_THE_DIP.say(
                signed(bend.kelvinPerMinute(), desk), desk.celsius(bend.celsius()), minutes(bend.afterSeconds()));
    }

    private static String signed(double kelvin, CheckDesk desk) {
        return (kelvin < 0 ? "−" : "+") + desk.kelvin(Math.abs(kelvin));
    }

    /** A curve that is not judged. */
    List<String> refused(List<Unfit> unfit) {
        List<String> lines = new ArrayList<>(List.of("", ProofText.RESULT_NOT_JUDGED.say()));
        unfit.forEach(u -> lines.add("  " + ProofWords.of(u)));
        return lines;
    }

    List<String> judged(Verdict verdict, Measure measure) {
        List<String> lines = new ArrayList<>();
        lines.add("");
        lines.add(ProofText.RESULT.say(
                InWords.of(verdict.temper()).toUpperCase(Locale.ROOT),
                verdict.provisional() ? ProofText.PROVISIONAL.say() : ""));
        verdict.bend().ifPresent(b -> lines.add(ProofText.IT_BENT_AT.say(bend(b, desk))));
        lines.add("  " + ProofWords.of(verdict.reason()));
        lines.add("  " + todo(verdict.temper()));
        if (measure.good().isPresent()) lines.add("  " + good(measure.good().get()));
        else {
            lines.add("  " + edges(measure.scale()));
            lines.add(ProofText.PROVISIONAL_THESE_EDGES_ARE.say(
                    measure.basis() == Measure.Basis.FROM_MASS ? ProofText.THIS_CUP_WAS_NEVER_CALIBRATED.say() : ""));
        }
        return lines;
    }

    private String edges(TemperScale scale) {
        TemperScale.Mark under = scale.at(0.005);
        TemperScale.Mark over = scale.at(0.06);
        return ProofText.IN_TEMPER_FOR_THIS_CHOCOLATE.say(
                desk.celsius(under.celsius()),
                signed(under.kelvinPerMinute(), desk),
                desk.celsius(over.celsius()),
                signed(over.kelvinPerMinute(), desk));
    }

    private String good(GoodCurves good) {
        return ProofText.YOUR_GOOD_CURVES_BEND_AT_WITH.say(
                good.count(),
                desk.celsius(good.bendCelsius()),
                desk.kelvin(good.bendReach()),
                signed(good.slopeKelvinPerMinute(), desk),
                desk.kelvin(good.slopeReach()));
    }

    static String todo(TemperClass temper) {
        return switch (temper) {
            case IN_TEMPER -> ProofText.POUR_AND_KEEP_THE_BOWL_IN.say();
            case UNDER -> ProofText.TOO_LITTLE_SEED_KEEP_IT_A.say();
            case NO_TEMPER -> ProofText.DO_NOT_POUR_COOL_AGAIN_TO.say();
            case OVER -> ProofText.TOO_MANY_CRYSTALS_IT_WILL_BE.say();
            case UNCLEAR -> ProofText.TAKE_ANOTHER_SAMPLE_IN_THE.say();
        };
    }

    static JsonLine json(JsonLine line, Verdict verdict) {
        line.text("result", verdict.temper().word())
                .raw("provisional", String.valueOf(verdict.provisional()))
                .text("why", ProofWords.of(verdict.reason()));
        return CupText.bend(line, verdict.bend());
    }

    static JsonLine json(JsonLine line, List<Unfit> unfit) {
        return line.text("result", "not-judged")
                .raw(
                        "unfit",
                        unfit.stream().map(u -> "\"" + u.word() + "\"").toList().toString())
                .text("why", ProofWords.of(unfit.get(0)));
    }
}
