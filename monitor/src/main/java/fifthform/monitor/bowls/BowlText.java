package fifthform.monitor.bowls;

import fifthform.curves.setup.BowlAnswers;
import fifthform.curves.setup.BowlMaterial;
import fifthform.curves.setup.LearnedCoast;
import fifthform.curves.setup.Usual;
import fifthform.monitor.json.JsonLine;
import fifthform.monitor.json.JsonObject;
import fifthform.monitor.json.UnreadableJson;
import fifthform.monitor.texts.BowlsText;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A bowl as the text of its file, one line what it is and one line an amount, and back. */
public final class BowlText {
    /** Goes up only when an older program would misunderstand a line. */
    private static final long FORMAT = 1;

    private BowlText() {}

    static String write(KeptBowl bowl) {
        StringBuilder text = new StringBuilder();
        text.append(new JsonLine()
                        .whole("format", FORMAT)
                        .text("bowl", bowl.id())
                        .text("name", bowl.name())
                        .text("material", bowl.material().word())
                        .end())
                .append('\n');
        for (Taught taught : bowl.taught()) text.append(line(taught).end()).append('\n');
        return text.toString();
    }

    /** The line of one amount, also as an answer to scripts. */
    public static JsonLine line(Taught taught) {
        JsonLine line = new JsonLine().number("amount_g", taught.amountGrams());
        taught.coast()
                .ifPresent(coast -> line.number("coast_s", coast.coastSeconds())
                        .number("log_spread", coast.logSpread())
                        .whole("lifts", coast.liftsSeen()));
        line.whole("batches", taught.batches()).text("at", taught.at().toString());
        taught.session().ifPresent(session -> line.text("session", session));
        answers(line, taught.answers());
        return line;
    }

    /** Adds what was answered, of what was. */
    public static void answers(JsonLine line, BowlAnswers answers) {
        usual(line, "turn", answers.turn());
        usual(line, "pull", answers.pull());
        usual(line, "pull_guessed", answers.pullGuessed());
    }

    private static void usual(JsonLine line, String key, Usual usual) {
        if (usual.batches() == 0) return;
        line.object(
                key,
                new JsonLine()
                        .whole("batches", usual.batches())
                        .number("mean", usual.mean())
                        .number("squares", usual.squares()));
    }

    /**
     * A text that was read.
     *
     * @param bowl with the amounts that could be read
     * @param complaints of the lines that could not
     */
    record Read(KeptBowl bowl, List<String> complaints) {
        Read {
            complaints = List.copyOf(complaints);
        }
    }

    /** @throws UnreadableJson its first line cannot be understood, or it is of a newer program */
    static Read read(String text) throws UnreadableJson {
        List<String> lines = text.lines().filter(line -> !line.isBlank()).toList();
        if (lines.isEmpty()) throw new UnreadableJson(BowlsText.IT_IS_EMPTY.say());
        try {
            JsonObject first = JsonObject.parse(lines.get(0));
            if (first.whole("format") != FORMAT) throw new UnreadableJson(BowlsText.IT_IS_OF_A_NEWER_PROGRAM.say());
            List<Taught> taught = new ArrayList<>();
            List<String> complaints = new ArrayList<>();
            for (int i = 1; i < lines.size(); i++) {
                try {
                    taught.add(taught(JsonObject.parse(lines.get(i))));
                } catch (UnreadableJson | IllegalArgumentException | DateTimeException e) {
                    complaints.add(BowlsText.LINE.say(i + 1, e.getMessage()));
                }
            }
            KeptBowl bowl = new KeptBowl(
                    first.text("bowl"),
                    first.text("name"),
                    first.choice("material", BowlMaterial.values(), BowlMaterial::word),
                    taught);
            return new Read(bowl, complaints);
        } catch (IllegalArgumentException | DateTimeException e) {
            throw new UnreadableJson(e.getMessage());
        }
    }

    private static Taught taught(JsonObject line) throws UnreadableJson {
        Optional<LearnedCoast> coast = line.has("coast_s")
                ? Optional.of(new LearnedCoast(line.number("coast_s"), line.number("log_spread"), whole(line, "lifts")))
                : Optional.empty();
        return new Taught(
                line.optionalNumber("amount_g"),
                coast,
                answers(line),
                whole(line, "batches"),
                Instant.parse(line.text("at")),
                line.optionalText("session"));
    }

    /** What was answered, of what stands there. */
    public static BowlAnswers answers(JsonObject line) throws UnreadableJson {
        return new BowlAnswers(usual(line, "turn"), usual(line, "pull"), usual(line, "pull_guessed"));
    }

    private static Usual usual(JsonObject line, String key) throws UnreadableJson {
        if (!line.has(key)) return Usual.NEVER;
        JsonObject usual = line.object(key);
        return new Usual(whole(usual, "batches"), usual.number("mean"), usual.number("squares"));
    }

    private static int whole(JsonObject line, String key) throws UnreadableJson {
        long value = line.whole(key);
        if (value != (int) value) throw new UnreadableJson(BowlsText.IS_TOO_LARGE.say(key));
        return (int) value;
    }
}
