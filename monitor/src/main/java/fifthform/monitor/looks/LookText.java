package fifthform.monitor.looks;

import fifthform.curves.learning.BarLook;
import fifthform.curves.learning.BarLook.Sureness;
import fifthform.curves.learning.BarPlace;
import fifthform.curves.learning.Bloom;
import fifthform.curves.learning.Gloss;
import fifthform.curves.learning.Kept;
import fifthform.curves.learning.Release;
import fifthform.curves.learning.Snap;
import fifthform.monitor.json.JsonLine;
import fifthform.monitor.json.JsonObject;
import fifthform.monitor.json.UnreadableJson;
import fifthform.monitor.texts.LooksText;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/** Looks as lines of their file, and back. */
public final class LookText {
    static final String KIND = "k";
    static final String LOOK = "look";
    static final String UNDO = "undo";

    private static final String UNSURE = "unsure";
    private static final String SURE = "sure";

    private LookText() {}

    /** The line of a look, also as an answer to scripts. */
    public static JsonLine line(String session, KeptLook kept) {
        BarLook look = kept.look();
        JsonLine line = new JsonLine()
                .text(KIND, LOOK)
                .whole("n", kept.number())
                .text("session", session)
                .text("at", kept.at().toString())
                .number("age_h", look.ageHours(), 3);
        if (!look.bloom().isEmpty())
            line.texts("bloom", look.bloom().stream().map(Bloom::word).toList());
        if (!look.places().isEmpty())
            line.texts("places", look.places().stream().map(BarPlace::word).toList());
        look.snap().ifPresent(snap -> line.text("snap", snap.word()));
        look.gloss().ifPresent(gloss -> line.text("gloss", gloss.word()));
        look.release().ifPresent(release -> line.text("release", release.word()));
        look.kept().ifPresent(keptSo -> line.text("kept", keptSo.word()));
        line.text("word", look.sureness() == Sureness.UNSURE ? UNSURE : SURE);
        if (!kept.photos().isEmpty()) line.texts("photos", kept.photos());
        kept.note().ifPresent(note -> line.text("note", note));
        return line;
    }

    static String undo(String session, int number, int of, Instant at) {
        return new JsonLine()
                .text(KIND, UNDO)
                .whole("n", number)
                .text("session", session)
                .text("at", at.toString())
                .whole("of", of)
                .end();
    }

    /** The look that a line tells. */
    public static KeptLook look(JsonObject line) throws UnreadableJson {
        try {
            BarLook look = new BarLook(
                    line.number("age_h"),
                    words(line, "bloom", Bloom.values(), Bloom::word),
                    words(line, "places", BarPlace.values(), BarPlace::word),
                    word(line, "snap", Snap.values(), Snap::word),
                    word(line, "gloss", Gloss.values(), Gloss::word),
                    word(line, "release", Release.values(), Release::word),
                    word(line, "kept", Kept.values(), Kept::word),
                    line.choice("word", Sureness.values(), s -> s.name().toLowerCase(Locale.ROOT)));
            return new KeptLook(
                    whole(line, "n"),
                    Instant.parse(line.text("at")),
                    look,
                    line.texts("photos"),
                    line.optionalText("note"));
        } catch (DateTimeException | IllegalArgumentException e) {
            throw new UnreadableJson(e.getMessage());
        }
    }

    static int whole(JsonObject line, String key) throws UnreadableJson {
        long value = line.whole(key);
        if (value < 1 || value > Integer.MAX_VALUE) throw new UnreadableJson(LooksText.IS_OUT_OF_RANGE.say(key));
        return (int) value;
    }

    private static <T> Optional<T> word(JsonObject line, String key, T[] choices, Function<T, String> word)
            throws UnreadableJson {
        return line.has(key) ? Optional.of(line.choice(key, choices, word)) : Optional.empty();
    }

    private static <T> List<T> words(JsonObject line, String key, T[] choices, Function<T, String> word)
            throws UnreadableJson {
        List<T> found = new ArrayList<>();
        for (String said : line.texts(key)) {
            int before = found.size();
            for (T choice : choices) if (word.apply(choice).equals(said)) found.add(choice);
            if (found.size() == before) throw new UnreadableJson(LooksText.IS_NOT_KNOWN.say(said));
        }
        return found;
    }
}
