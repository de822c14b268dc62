package fifthform.monitor.store;

import fifthform.curves.recipe.Recipe;
import fifthform.curves.recipe.RecipeText;
import fifthform.curves.setup.Approach;
import fifthform.curves.setup.Beginning;
import fifthform.curves.setup.Bowl;
import fifthform.curves.setup.BowlAnswers;
import fifthform.curves.setup.BowlMaterial;
import fifthform.curves.setup.Correction;
import fifthform.curves.setup.Holding;
import fifthform.curves.setup.Holding.Warmth;
import fifthform.curves.setup.LearnedCoast;
import fifthform.curves.setup.Origin;
import fifthform.curves.setup.ProbeId;
import fifthform.curves.setup.ProbeSetup;
import fifthform.curves.setup.Role;
import fifthform.curves.setup.Setup;
import fifthform.curves.thermocouple.Converter;
import fifthform.curves.thermocouple.Sensor;
import fifthform.curves.thermocouple.ThermocoupleType;
import fifthform.curves.thermocouple.ToleranceClass;
import fifthform.monitor.bowls.BowlText;
import fifthform.monitor.json.JsonLine;
import fifthform.monitor.json.JsonObject;
import fifthform.monitor.json.UnreadableJson;
import fifthform.monitor.texts.FileText;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A set-up as JSON and back. The recipe stands in it as its whole text, so that a session explains itself. */
public final class SetupCodec {
    private static final String IN_TEMPER = "in-temper";

    private SetupCodec() {}

    /**
     * The set-up with its numbers as a journal keeps them. The engine must be given this one, or a replay would start
     * from other numbers than the session did.
     */
    public static Setup asStored(Setup setup) {
        try {
            return read(JsonObject.parse(write(setup).end()));
        } catch (UnreadableJson e) {
            throw new IllegalArgumentException("setup cannot be kept in a journal: " + e.getMessage(), e);
        }
    }

    static JsonLine write(Setup setup) {
        JsonLine line = new JsonLine()
                .text("recipe", RecipeText.write(setup.recipe()))
                .object("bowl", bowl(setup.bowl()))
                .objects(
                        "probes", setup.probes().stream().map(SetupCodec::probe).toList())
                .raw("reaction_s", SessionTime.text(setup.reactionTime()))
                .number("bath_c", setup.bathCelsius())
                .number("room_c", setup.roomCelsius())
                .text("origin", setup.origin().word())
                .text("lift", setup.approach().word())
                .number("seed_g", setup.seedGrams());
        // Whole batches without a plan have no such words, and sessions of before them were all of that kind.
        setup.beginning().again().ifPresent(session -> line.text("again", session));
        if (setup.beginning().isInTemper()) line.text("begins", IN_TEMPER);
        setup.holding()
                .ifPresent(hold -> line.raw("hold_s", SessionTime.text(hold.time()))
                        .text("warm_by", hold.warmth().word()));
        return line;
    }

    static Setup read(JsonObject json) throws UnreadableJson {
        List<ProbeSetup> probes = new ArrayList<>();
        for (JsonObject probe : json.objects("probes")) probes.add(probe(probe));
        try {
            return new Setup(
                    recipe(json.text("recipe")),
                    bowl(json.object("bowl")),
                    probes,
                    SessionTime.duration(json, "reaction_s"),
                    json.optionalNumber("bath_c"),
                    json.optionalNumber("room_c"),
                    json.choice("origin", Origin.values(), Origin::word),
                    approach(json),
                    json.optionalNumber("seed_g"),
                    beginning(json),
                    holding(json));
        } catch (IllegalArgumentException e) {
            throw new UnreadableJson(e.getMessage());
        }
    }

    private static Beginning beginning(JsonObject json) throws UnreadableJson {
        if (json.has("again")) return new Beginning.Again(json.text("again"));
        if (!json.has("begins")) return Beginning.WHOLE;
        if (json.text("begins").equals(IN_TEMPER)) return new Beginning.InTemper();
        throw new UnreadableJson(FileText.BEGINS_WAS_AND_CAN_ONLY_BE.say(json.text("begins"), IN_TEMPER));
    }

    private static Optional<Holding> holding(JsonObject json) throws UnreadableJson {
        if (!json.has("hold_s")) return Optional.empty();
        return Optional.of(new Holding(
                SessionTime.duration(json, "hold_s"), json.choice("warm_by", Warmth.values(), Warmth::word)));
    }

    /** Sessions of before touches were asked for were all of one lift. */
    private static Approach approach(JsonObject json) throws UnreadableJson {
        return json.has("lift") ? json.choice("lift", Approach.values(), Approach::word) : Approach.ONE_LIFT;
    }

    private static Recipe recipe(String text) throws UnreadableJson {
        Optional<Recipe> recipe = RecipeText.parse("recipe", text).fold(Optional::of, problems -> Optional.empty());
        return recipe.orElseThrow(() -> new UnreadableJson(FileText.THE_RECIPE_IN_IT_CANNOT_BE.say()));
    }

    private static JsonLine bowl(Bowl bowl) {
        JsonLine line = new JsonLine()
                .text("id", bowl.id())
                .text("material", bowl.material().word())
                .number("amount_g", bowl.amountGrams());
        bowl.learned()
                .ifPresent(coast -> line.object(
                        "learned",
                        new JsonLine()
                                .number("coast_s", coast.coastSeconds())
                                .number("log_spread", coast.logSpread())
                                .whole("lifts", coast.liftsSeen())));
        if (!bowl.answers().equals(BowlAnswers.NONE)) {
            JsonLine answers = new JsonLine();
            BowlText.answers(answers, bowl.answers());
            line.object("answers", answers);
        }
        return line;
    }

    private static Bowl bowl(JsonObject json) throws UnreadableJson {
        Optional<LearnedCoast> learned = Optional.empty();
        if (json.has("learned")) {
            JsonObject coast = json.object("learned");
            learned = Optional.of(new LearnedCoast(
                    coast.number("coast_s"), coast.number("log_spread"), Math.toIntExact(coast.whole("lifts"))));
        }
        return new Bowl(
                json.text("id"),
                json.choice("material", BowlMaterial.values(), BowlMaterial::word),
                json.optionalNumber("amount_g"),
                learned,
                json.has("answers") ? BowlText.answers(json.object("answers")) : BowlAnswers.NONE);
    }

    private static JsonLine probe(ProbeSetup probe) {
        JsonLine line = new JsonLine()
                .text("id", probe.id().name())
                .text("role", probe.role().word())
                .text("talk", probe.talk())
                .text("place", probe.place())
                .number("gain", probe.correction().gain())
                .number("offset_k", probe.correction().offsetKelvin())
                .number("sigma_k", probe.correction().sigmaKelvin())
                .number("lag_s", probe.lagSeconds());
        probe.correction().checkedAt().ifPresent(at -> line.text("checked", at.toString()));
        probe.sensor().type().ifPresent(type -> line.text("type", type.name()));
        if (!probe.sensor().equals(Sensor.UNKNOWN)) {
            line.text("class", probe.sensor().toleranceClass().word())
                    .text("converter", probe.sensor().converter().word());
        }
        return line;
    }

    /** Sessions of before sensors were known have no such words. */
    private static Sensor sensor(JsonObject json) throws UnreadableJson {
        if (!json.has("converter")) return Sensor.UNKNOWN;
        Optional<ThermocoupleType> type = json.has("type")
                ? Optional.of(json.choice("type", ThermocoupleType.values(), ThermocoupleType::name))
                : Optional.empty();
        return new Sensor(
                type,
                json.choice("class", ToleranceClass.values(), ToleranceClass::word),
                json.choice("converter", Converter.values(), Converter::word));
    }

    private static Correction correction(JsonObject json) throws UnreadableJson {
        Optional<Instant> checked = json.has("checked") ? Optional.of(instant(json.text("checked"))) : Optional.empty();
        return new Correction(json.number("gain"), json.number("offset_k"), json.number("sigma_k"), checked);
    }

    private static Instant instant(String text) throws UnreadableJson {
        try {
            return Instant.parse(text);
        } catch (DateTimeParseException e) {
            throw new UnreadableJson(FileText.IS_NO_TIME.say(text));
        }
    }

    private static ProbeSetup probe(JsonObject json) throws UnreadableJson {
        try {
            return new ProbeSetup(
                    new ProbeId(json.text("id")),
                    json.choice("role", Role.values(), Role::word),
                    json.text("talk"),
                    json.text("place"),
                    correction(json),
                    json.number("lag_s"),
                    sensor(json));
        } catch (IllegalArgumentException e) {
            throw new UnreadableJson(e.getMessage());
        }
    }
}
