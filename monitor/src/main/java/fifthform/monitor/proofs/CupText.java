package fifthform.monitor.proofs;

import fifthform.curves.proof.Bend;
import fifthform.curves.proof.TemperClass;
import fifthform.monitor.json.JsonLine;
import fifthform.monitor.json.JsonObject;
import fifthform.monitor.json.UnreadableJson;
import fifthform.monitor.texts.ProofText;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A cup as the text of its file: one line what it is, one line a run or a curve; and back. */
public final class CupText {
    /** Goes up only when an older program would misunderstand a line. */
    private static final long FORMAT = 1;

    private CupText() {}

    static String write(KeptCup cup) {
        StringBuilder text = new StringBuilder();
        JsonLine first = new JsonLine()
                .whole("format", FORMAT)
                .text("chocolate", cup.chocolate())
                .text("cup", cup.cup())
                .number("grams", cup.grams());
        text.append(first.end()).append('\n');
        for (CupRun run : cup.runs()) text.append(line(run).end()).append('\n');
        for (KeptCurve curve : cup.curves()) text.append(line(curve).end()).append('\n');
        return text.toString();
    }

    private static JsonLine line(CupRun run) {
        JsonLine line = new JsonLine()
                .text("k", "run")
                .text("at", run.at().toString())
                .text("proof", run.proof())
                .number("tau_min", run.tauMinutes())
                .number("excess", run.axisExcess());
        return bend(line, run.bend());
    }

    /** The line of one judged sample, also as an answer to scripts. */
    public static JsonLine line(KeptCurve curve) {
        JsonLine line = new JsonLine()
                .text("k", "curve")
                .text("at", curve.at().toString())
                .text("proof", curve.proof());
        curve.session().ifPresent(session -> line.text("session", session));
        line.text("told", curve.told().word());
        return bend(line, curve.bend()).text("mark", curve.mark().word());
    }

    /** Adds a bend where there is one. */
    public static JsonLine bend(JsonLine line, Optional<Bend> bend) {
        bend.ifPresent(b -> line.number("slope_k_per_min", b.kelvinPerMinute(), 4)
                .number("bend_c", b.celsius(), 3)
                .number("bend_after_s", b.afterSeconds(), 1));
        return line;
    }

    /**
     * A text that was read.
     *
     * @param cup with the lines that could be read
     * @param complaints of those that could not
     */
    record Read(KeptCup cup, List<String> complaints) {
        Read {
            complaints = List.copyOf(complaints);
        }
    }

    /** @throws UnreadableJson its first line cannot be understood, or it is of a newer program */
    static Read read(String text) throws UnreadableJson {
        List<String> lines = text.lines().filter(line -> !line.isBlank()).toList();
        if (lines.isEmpty()) throw new UnreadableJson(ProofText.IT_IS_EMPTY.say());
        try {
            JsonObject first = JsonObject.parse(lines.get(0));
            if (first.whole("format") != FORMAT) throw new UnreadableJson(ProofText.IT_IS_OF_A_NEWER_PROGRAM.say());
            List<CupRun> runs = new ArrayList<>();
            List<KeptCurve> curves = new ArrayList<>();
            List<String> complaints = new ArrayList<>();
            for (int i = 1; i < lines.size(); i++) {
                try {
                    JsonObject line = JsonObject.parse(lines.get(i));
                    switch (line.text("k")) {
                        case "run" -> runs.add(run(line));
                        case "curve" -> curves.add(curve(line));
                        default -> throw new UnreadableJson(ProofText.K_IS_WHICH_IS_NOT_KNOWN.say(line.text("k")));
                    }
                } catch (UnreadableJson | IllegalArgumentException | DateTimeException e) {
                    complaints.add(ProofText.LINE_WITH_CAUSE.say(i + 1, e.getMessage()));
                }
            }
            KeptCup cup = new KeptCup(
                    first.text("chocolate"), first.text("cup"), first.optionalNumber("grams"), runs, curves);
            return new Read(cup, complaints);
        } catch (IllegalArgumentException | DateTimeException e) {
            throw new UnreadableJson(e.getMessage());
        }
    }

    private static CupRun run(JsonObject line) throws UnreadableJson {
        return new CupRun(
                Instant.parse(line.text("at")),
                line.number("tau_min"),
                line.number("excess"),
                bend(line),
                line.text("proof"));
    }

    private static KeptCurve curve(JsonObject line) throws UnreadableJson {
        return new KeptCurve(
                Instant.parse(line.text("at")),
                line.text("proof"),
                line.optionalText("session"),
                line.choice("told", TemperClass.values(), TemperClass::word),
                bend(line),
                line.choice("mark", KeptCurve.Mark.values(), KeptCurve.Mark::word));
    }

    private static Optional<Bend> bend(JsonObject line) throws UnreadableJson {
        if (!line.has("bend_c")) return Optional.empty();
        return Optional.of(
                new Bend(line.number("slope_k_per_min"), line.number("bend_c"), line.number("bend_after_s")));
    }
}
