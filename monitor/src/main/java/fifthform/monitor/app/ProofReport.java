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
        return whole / 60 + " min " + String.format(Locale.ROOT, "%02d", whole % 60) + " s";
    }

    static String bend(Bend bend, CheckDesk desk) {
        return signed(bend.kelvinPerMinute(), desk) + " a minute at " + desk.celsius(bend.celsius()) + ", "
                + minutes(bend.afterSeconds()) + " after the dip";
    }

    private static String signed(double kelvin, CheckDesk desk) {
        return (kelvin < 0 ? "−" : "+") + desk.kelvin(Math.abs(kelvin));
    }

    /** A curve that is not judged. */
    List<String> refused(List<Unfit> unfit) {
        List<String> lines = new ArrayList<>(List.of("", "Result: not judged"));
        unfit.forEach(u -> lines.add("  " + u.words()));
        return lines;
    }

    List<String> judged(Verdict verdict, Measure measure) {
        List<String> lines = new ArrayList<>();
        lines.add("");
        lines.add("Result: " + verdict.temper().words().toUpperCase(Locale.ROOT)
                + (verdict.provisional() ? " (provisional)" : ""));
        verdict.bend().ifPresent(b -> lines.add("  It bent at " + bend(b, desk) + "."));
        lines.add("  " + verdict.reason().words());
        lines.add("  " + todo(verdict.temper()));
        if (measure.good().isPresent()) lines.add("  " + good(measure.good().get()));
        else {
            lines.add("  " + edges(measure.scale()));
            lines.add("  Provisional: these edges are our own model's, no published ones were read."
                    + (measure.basis() == Measure.Basis.FROM_MASS
                            ? " This cup was never calibrated; monitor/run prove --calibrate does it."
                            : "")
                    + " From three good curves of your own on, those take their place.");
        }
        return lines;
    }

    private String edges(TemperScale scale) {
        TemperScale.Mark under = scale.at(0.005);
        TemperScale.Mark over = scale.at(0.06);
        return "In temper, for this chocolate in this cup: a bend between " + desk.celsius(under.celsius()) + " ("
                + signed(under.kelvinPerMinute(), desk) + " a minute) and " + desk.celsius(over.celsius()) + " ("
                + signed(over.kelvinPerMinute(), desk) + " a minute).";
    }

    private String good(GoodCurves good) {
        return "Your " + good.count() + " good curves bend at " + desk.celsius(good.bendCelsius()) + " ±"
                + desk.kelvin(good.bendReach()) + " with " + signed(good.slopeKelvinPerMinute(), desk) + " ±"
                + desk.kelvin(good.slopeReach()) + " a minute.";
    }

    static String todo(TemperClass temper) {
        return switch (temper) {
            case IN_TEMPER -> "Pour, and keep the bowl in its range. Look at the bars after a day and a week.";
            case UNDER ->
                "Too little seed: keep it a little longer at the cool end, stirring, or add seed; then prove again.";
            case NO_TEMPER -> "Do not pour. Cool again to the cool range and stir, or melt out and begin anew.";
            case OVER ->
                "Too many crystals, it will be thick: warm by half a degree within the range, stir, and prove again.";
            case UNCLEAR -> "Take another sample in the same way, and try a smear beside it: monitor/run prove --smear";
        };
    }

    static JsonLine json(JsonLine line, Verdict verdict) {
        line.text("result", verdict.temper().word())
                .raw("provisional", String.valueOf(verdict.provisional()))
                .text("why", verdict.reason().words());
        return CupText.bend(line, verdict.bend());
    }

    static JsonLine json(JsonLine line, List<Unfit> unfit) {
        return line.text("result", "not-judged")
                .raw(
                        "unfit",
                        unfit.stream().map(u -> "\"" + u.word() + "\"").toList().toString())
                .text("why", unfit.get(0).words());
    }
}
