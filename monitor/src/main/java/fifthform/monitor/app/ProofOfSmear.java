package fifthform.monitor.app;

import fifthform.curves.proof.Smear;
import fifthform.curves.proof.TemperClass;
import fifthform.monitor.json.JsonLine;
import fifthform.monitor.proofs.ProofFile;
import fifthform.monitor.proofs.ProofHead;
import fifthform.monitor.texts.DidYouMean;
import fifthform.monitor.texts.InWords;
import fifthform.monitor.texts.ProofText;
import fifthform.monitor.texts.UnitText;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** A thin film, timed until it is set. */
final class ProofOfSmear {
    /** No film sets sooner: a nought is a slip of the finger. */
    private static final double LEAST_MINUTES = 0.5;

    private static final double LONGEST_MINUTES = 120;

    private final ProofTask task;
    private final Said said;

    ProofOfSmear(ProofTask task, Said said) {
        this.task = Objects.requireNonNull(task, "task");
        this.said = Objects.requireNonNull(said, "said");
    }

    /**
     * What the maker said of it; what is missing is timed and asked.
     *
     * @param minutes until it was set
     * @param look how it looks
     * @param room temperature of the room, °C
     */
    record Said(Optional<Double> minutes, Optional<String> look, Optional<Double> room) {
        /** The first of the options that stands there. */
        Optional<String> option() {
            return minutes.map(m -> "--minutes")
                    .or(() -> look.map(l -> "--look"))
                    .or(() -> room.map(r -> "--room"));
        }
    }

    /** Times it where that was not done before, and keeps the answer. */
    Exit run() throws Refusal, InterruptedException, IOException {
        ProofPlace place = task.place(true);
        OptionalDouble roomCelsius = Within.optional(said.room().orElse(null), 5, 40, "--room", "°C");
        boolean set = true;
        double took;
        if (said.minutes().isPresent())
            took = Within.number(
                    said.minutes().get(), LEAST_MINUTES, LONGEST_MINUTES, "--minutes", UnitText.MINUTES_IN_FULL.say());
        else {
            task.desk().say(ProofText.SMEAR_TEST.say(place.recipe().name()));
            ProofNotices.smear().forEach(line -> task.desk().say("  " + line));
            SmearWatch.Timed timed = new SmearWatch(task.desk()).time();
            took = timed.minutes();
            set = timed.isSet();
        }
        Smear film = new Smear(took, set, look(set), roomCelsius);
        TemperClass temper = film.temper();
        task.desk().say("");
        task.desk()
                .say(ProofText.RESULT_BY_THE_SMEAR.say(
                        InWords.of(temper).toUpperCase(Locale.ROOT),
                        roomCelsius.isPresent() ? "" : ProofText.AT_A_ROOM_OF_20_C.say()));
        task.desk()
                .say("  "
                        + (set
                                ? ProofText.SET_AFTER_PROOF_OF_SMEAR.say()
                                : ProofText.NOT_SET_AFTER_PROOF_OF_SMEAR.say())
                        + ProofReport.minutes(60 * took) + ", "
                        + InWords.of(film.look()) + ".");
        if (roomCelsius.orElse(0) > Smear.WARM_ROOM_CELSIUS)
            task.desk()
                    .say(ProofText.THE_ROOM_IS_WARM_ABOVE_EVEN.say(task.desk().celsius(Smear.WARM_ROOM_CELSIUS)));
        task.desk().say("  " + ProofReport.todo(temper));
        task.desk().say(ProofText.LOOK_AT_IT_AGAIN_AFTER_15.say());
        try (ProofFile record =
                ProofFile.begin(task.folders().sessions(), task.head(ProofHead.Kind.SMEAR, place, "real"))) {
            JsonLine line = smeared(new JsonLine().text("k", "z"), film);
            record.line(line);
            task.desk().say(ProofText.RECORDED_IN.say(record.file()));
            if (task.json())
                task.out()
                        .println(smeared(new JsonLine().text("proof", record.name()), film)
                                .end());
        }
        return temper == TemperClass.IN_TEMPER ? Exit.DONE : Exit.ANSWER_IS_NO;
    }

    private static JsonLine smeared(JsonLine line, Smear film) {
        return line.text("result", film.temper().word())
                .number("minutes", film.minutes(), 2)
                .raw("set", String.valueOf(film.isSet()))
                .text("look", film.look().word())
                .number("room_c", film.roomCelsius());
    }

    private Smear.Look look(boolean set) throws Refusal {
        Optional<String> word = said.look();
        if (word.isEmpty() && !set) return Smear.Look.WET_MIDDLE;
        if (word.isEmpty()) word = task.desk().ask(ProofText.HOW_DOES_IT_LOOK_G_GLOSSY.say());
        List<String> words =
                Stream.of(Smear.Look.values()).map(Smear.Look::word).toList();
        if (word.isPresent())
            for (Smear.Look each : Smear.Look.values())
                if (!word.get().isEmpty() && each.word().startsWith(word.get())) return each;
        String near = word.map(typed -> DidYouMean.oneOf(words, typed)).orElse("");
        throw new Refusal(
                Exit.NOT_UNDERSTOOD,
                ProofText.HOW_THE_FILM_LOOKS_IS_NOT.say(
                        near,
                        String.join(", ", words),
                        said.minutes().isEmpty() ? ProofText.AND_MINUTES_HOW_LONG_IT_TOOK.say() : "."));
    }
}
