package fifthform.simulator.scenario;

import fifthform.curves.check.Parsed;
import fifthform.curves.check.Problem;
import fifthform.curves.setup.Approach;
import fifthform.curves.setup.Holding;
import fifthform.probe.Talk;
import fifthform.simulator.bowl.BowlWall;
import fifthform.simulator.bowl.Chocolate;
import fifthform.simulator.bowl.Exchange;
import fifthform.simulator.bowl.Fat;
import fifthform.simulator.bowl.Forms;
import fifthform.simulator.bowl.Kitchen;
import fifthform.simulator.bowl.KitchenState;
import fifthform.simulator.bowl.KitchenState.Baths;
import fifthform.simulator.bowl.Room;
import fifthform.simulator.bowl.Spoon;
import fifthform.simulator.bowl.Tip;
import fifthform.simulator.bowl.Vessel;
import fifthform.simulator.bowl.WallMaterial;
import fifthform.simulator.device.AdapterSettings;
import fifthform.simulator.device.Language;
import fifthform.simulator.device.RunningKitchen;
import fifthform.simulator.device.Trouble;
import fifthform.simulator.maker.Habits;
import fifthform.simulator.maker.Interruption;
import fifthform.simulator.maker.Plan;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** From the figures and words of a scenario to its kitchen; every word is there by now, every figure in its range. */
final class ScenarioBuild {
    /** A kitchen pot of about 0.8 kg steel; a guess. */
    private static final double POT_JOULES_PER_KELVIN = 400;
    /** The sides of a pot: 0.09 m² at 10 W/m²K; its open water loses more by itself. A guess. */
    private static final double POT_LOSS_WATTS_PER_KELVIN = 0.9;
    /** A wider basin; a guess. */
    private static final double BASIN_LOSS_WATTS_PER_KELVIN = 1.2;
    /** A pot 20 cm and a basin 30 cm across. */
    private static final double POT_SQUARE_METRES = 0.031;

    private static final double BASIN_SQUARE_METRES = 0.07;
    /** The bottom of a pot, 0.031 m², at 2000 W/m²K; a guess. */
    private static final double POT_TO_WATER_WATTS_PER_KELVIN = 60;
    /** The warm water waits under a lid; a guess. */
    private static final double COVERED_LOSS_WATTS_PER_KELVIN = 0.4;
    /** Water moving freely around a bowl; the middle of the method page's range. */
    private static final double WATER_CONTACT = 550;
    /** A probe in chocolate left alone follows half again as slowly; a guess. */
    private static final double STILL_TIP_FACTOR = 1.5;

    /** All crystal forms, as they come and go. */
    private static final String FORMS = "forms";
    /** Only those that are there at first, which melt. */
    private static final String MELT_ONCE = "melt-once";

    private final Map<Figure, Double> figures;
    private final Map<Wording, String> words;
    private final Map<Wording, Integer> wordLines;
    private final List<FaultText> faults;
    private final List<Interruption> interruptions;
    private final List<Problem> problems = new ArrayList<>();

    ScenarioBuild(
            Map<Figure, Double> figures,
            Map<Wording, String> words,
            Map<Wording, Integer> wordLines,
            List<FaultText> faults,
            List<Interruption> interruptions) {
        this.figures = figures;
        this.words = words;
        this.wordLines = wordLines;
        this.faults = faults;
        this.interruptions = interruptions;
    }

    Parsed<Scenario> build(String id) {
        Optional<WallMaterial> material = WallMaterial.fromWord(words.get(Wording.BOWL));
        Optional<MakerKind> maker = MakerKind.fromWord(words.get(Wording.MAKER));
        if (material.isEmpty()) refuse(Wording.BOWL, "Use steel, glass, plastic or aluminium.");
        if (approach().isEmpty()) refuse(Wording.LIFT, "Use touches or one.");
        if (maker.isEmpty()) refuse(Wording.MAKER, "Use " + MakerKind.words() + ".");
        Optional<KitchenState> begins = begins();
        Optional<Holding> holding = holding();
        Expected expected = new ExpectedText(words, wordLines, problems).read();
        if (!words.get(Wording.CHOCOLATE).matches("[a-z0-9][a-z0-9-]*")) {
            refuse(Wording.CHOCOLATE, "Use a recipe's id, for example dark.");
        }
        if (!words.get(Wording.DEMO).contains("invented")) {
            refuse(Wording.DEMO, "Say that it is invented; only invented batches belong here.");
        }
        if (!(of(Figure.MELTS_FROM) < of(Figure.MELTS_TO))) {
            problems.add(new Problem(id, "\"melts from\" is not below \"melts to\".", "Change one of them."));
        }
        if (!wholeTicks()) {
            String step = RunningKitchen.TICK.toMillis() / 1000.0 + " s";
            problems.add(
                    new Problem(id, "\"interval\" is not a multiple of " + step + ".", "Use 0.125, 0.25, 0.5, 1 …"));
        }
        Optional<Language> language = language();
        language.ifPresent(this::checkFaults);
        if (!problems.isEmpty()) return Parsed.refused(problems);
        return Parsed.accepted(scenario(
                id,
                material.orElseThrow(),
                begins.orElseThrow(),
                maker.orElseThrow(),
                language.orElseThrow(),
                holding,
                expected));
    }

    private Optional<KitchenState> begins() {
        Baths baths = new Baths(of(Figure.HOT_BATH), of(Figure.WARM_BATH), of(Figure.COLD_BATH));
        String said = words.getOrDefault(Wording.BEGINS, BeginsText.SOLID);
        return BeginsText.parse("line " + wordLines.get(Wording.BEGINS), said, of(Figure.ROOM), baths)
                .fold(Optional::of, found -> {
                    problems.addAll(found);
                    return Optional.<KitchenState>empty();
                })
                .map(this::withItsCrystals);
    }

    private Optional<Holding> holding() {
        if (!words.containsKey(Wording.HELD)) return Optional.empty();
        return HeldText.parse("line " + wordLines.get(Wording.HELD), words.get(Wording.HELD))
                .fold(Optional::of, found -> {
                    problems.addAll(found);
                    return Optional.<Holding>empty();
                });
    }

    private KitchenState withItsCrystals(KitchenState state) {
        String said = words.getOrDefault(Wording.CRYSTALS, FORMS);
        if (said.equals(MELT_ONCE) || state.bulk().crystals() instanceof Forms) return state;
        if (!said.equals(FORMS)) refuse(Wording.CRYSTALS, "Use " + FORMS + " or " + MELT_ONCE + ".");
        boolean solid = state.bulk().crystals().solidFraction() > 0;
        return state.withCrystals(solid ? Forms.SOLID : Forms.MELTED);
    }

    private Scenario scenario(
            String id,
            WallMaterial material,
            KitchenState begins,
            MakerKind maker,
            Language language,
            Optional<Holding> holding,
            Expected expected) {
        return new Scenario(
                id,
                words.get(Wording.TITLE),
                words.get(Wording.ABOUT),
                words.get(Wording.DEMO),
                words.get(Wording.CHOCOLATE),
                (long) of(Figure.SEED),
                kitchen(material),
                begins,
                maker,
                habits(holding),
                adapter(language),
                expected);
    }

    private Kitchen kitchen(WallMaterial material) {
        return new Kitchen(
                new Chocolate(
                        of(Figure.AMOUNT) / 1000,
                        of(Figure.LATENT_HEAT) * 1000,
                        of(Figure.MELTS_FROM),
                        of(Figure.MELTS_TO),
                        new Fat(of(Figure.NUCLEATION), of(Figure.CRYSTAL_GROWTH), of(Figure.CRYSTAL_MELTING))),
                new BowlWall(material, of(Figure.WALL), of(Figure.RIM), of(Figure.FILM), of(Figure.SHAPE)),
                exchange(),
                hotBath(),
                Vessel.offTheHeat(
                        of(Figure.WARM_WATER), POT_JOULES_PER_KELVIN, WATER_CONTACT, COVERED_LOSS_WATTS_PER_KELVIN),
                Vessel.offTheHeat(
                                of(Figure.COLD_WATER),
                                POT_JOULES_PER_KELVIN,
                                WATER_CONTACT,
                                BASIN_LOSS_WATTS_PER_KELVIN)
                        .open(BASIN_SQUARE_METRES),
                new Room(of(Figure.ROOM), of(Figure.HUMIDITY) / 100, of(Figure.FRIDGE)),
                new Tip(
                        of(Figure.PROBE_LAG),
                        STILL_TIP_FACTOR,
                        0.15,
                        of(Figure.PROBE_DEPTH),
                        5,
                        0.4,
                        of(Figure.PROBE_WALL)),
                new Spoon(
                        of(Figure.SPOON), Spoon.STEEL.toChocolateWattsPerKelvin(), Spoon.STEEL.toAirWattsPerKelvin()));
    }

    private Exchange exchange() {
        double draught = of(Figure.DRAUGHT);
        return new Exchange(
                of(Figure.LAYER) / 100,
                of(Figure.WALL_CONTACT),
                of(Figure.STIRRED),
                of(Figure.STILL),
                draught,
                draught,
                draught,
                Exchange.USUAL.clothToWall());
    }

    private Vessel hotBath() {
        return new Vessel(
                of(Figure.HOT_WATER),
                of(Figure.POT),
                of(Figure.HOT_CONTACT),
                POT_LOSS_WATTS_PER_KELVIN,
                of(Figure.BURNER),
                of(Figure.HELD),
                POT_SQUARE_METRES,
                of(Figure.HOT_DIP),
                POT_TO_WATER_WATTS_PER_KELVIN);
    }

    private Habits habits(Optional<Holding> holding) {
        return new Habits(
                NumberText.duration(of(Figure.REACTION)),
                of(Figure.REACTION_SPREAD),
                of(Figure.MELTED_AT),
                of(Figure.COOL_AT),
                NumberText.duration(60 * of(Figure.HOLD)),
                of(Figure.WARM_AT),
                NumberText.duration(60 * of(Figure.POUR)),
                new Plan(
                        of(Figure.STIRRING),
                        of(Figure.SEED_ADDED),
                        of(Figure.SEED_AT),
                        of(Figure.SPLASH),
                        interruptions,
                        approach().orElseThrow(),
                        BeginsText.beginning(words.getOrDefault(Wording.BEGINS, BeginsText.SOLID)),
                        holding,
                        of(Figure.BOX)));
    }

    private Optional<Approach> approach() {
        return Optional.ofNullable(words.get(Wording.LIFT))
                .map(Approach::fromWord)
                .orElse(Optional.of(Approach.TOUCHES_WHERE_UNSURE));
    }

    private Optional<Language> language() {
        if (!words.containsKey(Wording.ADAPTER)) return Optional.of(Language.TEXT_LINES);
        String where = "line " + wordLines.get(Wording.ADAPTER);
        return Talk.parse(words.get(Wording.ADAPTER))
                .fold(Language::of, Parsed::<Language>refused)
                .fold(Optional::of, refused -> {
                    refused.forEach(p -> problems.add(new Problem(where, p.what(), p.whatToDo())));
                    return Optional.empty();
                });
    }

    private void checkFaults(Language language) {
        for (FaultText fault : faults) {
            Trouble trouble = fault.fault().trouble();
            if (language.troubles().contains(trouble)) continue;
            problems.add(new Problem(
                    "line " + fault.line(),
                    "An adapter that speaks " + language.talk().protocol() + " cannot have the fault \""
                            + trouble.word() + "\".",
                    "Take another fault, or another adapter."));
        }
    }

    private AdapterSettings adapter(Language language) {
        return new AdapterSettings(
                language,
                of(Figure.RESOLUTION),
                of(Figure.NOISE),
                of(Figure.GAIN),
                of(Figure.OFFSET),
                of(Figure.DRIFT),
                of(Figure.JUNCTION),
                interval(),
                faults.stream().map(FaultText::fault).toList());
    }

    private Duration interval() {
        return NumberText.duration(of(Figure.INTERVAL));
    }

    private boolean wholeTicks() {
        return interval().toMillis() % RunningKitchen.TICK.toMillis() == 0;
    }

    private double of(Figure figure) {
        return figures.getOrDefault(figure, figure.usual());
    }

    private void refuse(Wording wording, String whatToDo) {
        String what = "\"" + wording.word() + "\" cannot be \"" + words.get(wording) + "\".";
        problems.add(new Problem("line " + wordLines.get(wording), what, whatToDo));
    }
}
