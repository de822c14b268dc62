package fifthform.monitor.app;

import fifthform.curves.plan.BatchPlan;
import fifthform.curves.plan.PlanKey;
import fifthform.curves.plan.PlanRequest;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.Bowl;
import fifthform.curves.setup.BowlMaterial;
import fifthform.monitor.bowls.Bowls;
import fifthform.monitor.catalogue.Recipes;
import fifthform.monitor.json.Decimal;
import fifthform.monitor.plan.PlanCard;
import fifthform.monitor.plan.PlanDesk;
import fifthform.monitor.plan.PlanField;
import fifthform.monitor.plan.PlanLines;
import fifthform.monitor.plan.PlanPage;
import fifthform.monitor.settings.Folders;
import fifthform.monitor.settings.Settings;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.CommandText;
import fifthform.monitor.texts.PlanText;
import fifthform.monitor.texts.UnitText;
import fifthform.monitor.view.PlanWindow;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Before the bowl: baths, seed and times. */
@Command(name = "plan", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class PlanCommand implements Callable<Integer> {
    private static final String USUAL_CHOCOLATE = "dark";

    @Mixin
    private CommonOptions common;

    @Option(names = "--chocolate", paramLabel = "ID")
    private String chocolate;

    @Option(names = "--amount", paramLabel = "GRAMS")
    private Double amountGrams;

    @Option(names = "--bowl", paramLabel = "ID")
    private String bowl;

    @Option(names = "--bowl-weight", paramLabel = "GRAMS")
    private Double bowlGrams;

    @Option(names = "--pan-weight", paramLabel = "GRAMS")
    private Double panGrams;

    @Option(names = "--pan", paramLabel = "MATERIAL")
    private String pan;

    @Option(names = "--bath-water", paramLabel = "GRAMS")
    private Double bathGrams;

    @Option(names = "--tap", paramLabel = "CELSIUS")
    private Double tapCelsius;

    @Option(names = "--quick-bath", paramLabel = "CELSIUS")
    private Double quickCelsius;

    @Option(names = "--thermometer", paramLabel = "STATE")
    private String thermometer;

    @Option(names = "--room", paramLabel = "CELSIUS")
    private Double roomCelsius;

    @Option(names = "--humidity", paramLabel = "PERCENT")
    private Double humidityPercent;

    @Option(names = "--bar", paramLabel = "GRAMS")
    private Double barGrams;

    @Option(names = "--start", paramLabel = "HH:MM")
    private String start;

    @Option(names = "--why")
    private boolean why;

    @Option(names = "--card", paramLabel = "FILE")
    private Path card;

    @Option(names = "--screen")
    private ScreenChoice screen;

    @Option(names = "--json")
    private boolean json;

    @Override
    public Integer call() throws Refusal {
        Folders folders = common.folders();
        Settings settings = common.settings();
        Units units = common.units(settings);
        Optional<LocalTime> begins = begins();
        if (!json && screen == ScreenChoice.WINDOW) {
            Optional<String> refused =
                    PlanWindow.open(desk(folders, settings, units), Choices.theme(settings), this::watchLine);
            if (refused.isEmpty()) return Exit.DONE.code();
            common.err().println(CommandText.NO_WINDOW_GOING_ON_WITHOUT_IT.say(refused.get()));
        }
        if (amountGrams == null) ask();
        Bowls.Loaded bowls = new Bowls(folders.bowls()).load();
        bowls.problems().forEach(common.err()::println);
        Recipe recipe = Chocolates.find(
                chocolate != null ? chocolate : settings.lastChocolate().orElse(USUAL_CHOCOLATE),
                folders,
                common.err());
        BatchPlan plan = BatchPlan.of(request(recipe, bowls));
        if (json) {
            PlanLines.of(plan).forEach(common.out()::println);
        } else {
            PlanNotices.lines().forEach(common.err()::println);
            new PlanPage(plan, units).lines(begins, why).forEach(common.out()::println);
            common.out().println();
            common.out().println(PlanText.THEN_TYPE.say(watchLine(plan, PlanKey.WARM_BATH, Optional.ofNullable(bowl))));
            common.out().println(PlanText.OR_QUICK.say(watchLine(plan, PlanKey.QUICK_BATH, Optional.ofNullable(bowl))));
        }
        if (card != null) writeCard(new PlanCard(plan, units));
        return Exit.DONE.code();
    }

    private PlanRequest request(Recipe recipe, Bowls.Loaded bowls) throws Refusal {
        OptionalDouble amount = within(amountGrams, PlanField.AMOUNT, "--amount", UnitText.GRAMS_IN_FULL.say());
        if (bowl != null) BowlWords.doubtful(bowl, bowls).map(String::strip).ifPresent(common.err()::println);
        Bowl named = bowl == null ? Bowl.ANY : BowlWords.named(bowl, amount, bowls);
        return new PlanRequest(
                recipe,
                amount.orElseThrow(),
                named,
                within(bowlGrams, PlanField.BOWL_WEIGHT, "--bowl-weight", UnitText.GRAMS_IN_FULL.say()),
                within(panGrams, PlanField.PAN_WEIGHT, "--pan-weight", UnitText.GRAMS_IN_FULL.say()),
                panMaterial(),
                within(bathGrams, PlanField.BATH_WATER, "--bath-water", UnitText.GRAMS_IN_FULL.say()),
                within(tapCelsius, PlanField.TAP, "--tap", "°C"),
                within(quickCelsius, PlanField.QUICK_BATH, "--quick-bath", "°C"),
                checked(),
                new PlanRequest.Room(
                        within(roomCelsius, PlanField.ROOM, "--room", "°C"),
                        within(humidityPercent, PlanField.HUMIDITY, "--humidity", "%")),
                within(barGrams, PlanField.BAR, "--bar", UnitText.GRAMS_IN_FULL.say()));
    }

    private void ask() throws Refusal {
        if (json || !Screens.isTerminal(System.console())) {
            throw new Refusal(Exit.NOT_UNDERSTOOD, PlanText.HOW_MUCH_CHOCOLATE_WAS_NOT.say());
        }
        ask(new PlanQuestions(
                new BufferedReader(new InputStreamReader(System.in, Charset.defaultCharset())), common.out()));
    }

    void ask(PlanQuestions ask) throws Refusal {
        while (amountGrams == null) amountGrams = asked(ask, PlanText.HOW_MANY_GRAMS_OF_CHOCOLATE, PlanField.AMOUNT);
        if (bowl == null) bowl = ask.words(PlanText.YOUR_BOWLS_NAME_OR_STEEL_GLASS.say(), "steel");
        if (bowlGrams == null) bowlGrams = asked(ask, PlanText.ITS_EMPTY_WEIGHT_IN_GRAMS, PlanField.BOWL_WEIGHT);
        if (tapCelsius == null) tapCelsius = asked(ask, PlanText.HOW_COLD_IS_THE_TAP_WATER, PlanField.TAP);
        if (thermometer == null) {
            thermometer = ask.words(PlanText.IS_THE_THERMOMETER_FOR_THE.say(), "unchecked");
        }
    }

    /** The form and the command take the same numbers. */
    private static OptionalDouble within(Double value, PlanField field, String option, String unit) throws Refusal {
        return Within.optional(value, field.low(), field.high(), option, unit);
    }

    private static Double asked(PlanQuestions ask, PlanText question, PlanField field) throws Refusal {
        return ask.number(question.say(), field.low(), field.high());
    }

    private boolean checked() throws Refusal {
        if (thermometer == null) return false;
        return OneOf.named("--thermometer", thermometer, List.of("checked", "unchecked"), word -> word)
                .equals("checked");
    }

    private BowlMaterial panMaterial() throws Refusal {
        if (pan == null) return BowlMaterial.STEEL;
        return OneOf.named("--pan", pan, PlanDesk.pans(), BowlMaterial::word);
    }

    private Optional<LocalTime> begins() throws Refusal {
        if (start == null) return Optional.empty();
        try {
            return Optional.of(LocalTime.parse(start.length() == 4 ? "0" + start : start));
        } catch (DateTimeParseException e) {
            throw new Refusal(Exit.NOT_UNDERSTOOD, PlanText.START_WAS_NOTHING_WAS_DONE_SAY.say(start));
        }
    }

    /** What the plan hands on to the watching; one stay over the bath, since that is what the times are for. */
    private String watchLine(BatchPlan plan, PlanKey bath, Optional<String> bowlName) {
        String named = chocolate != null && Recipes.namesFile(chocolate)
                ? chocolate
                : plan.request().recipe().id();
        return PlanDesks.watchLine(plan, bath, bowlName, named);
    }

    private String watchLine(PlanDesk desk) {
        BatchPlan plan = desk.plan().orElseThrow();
        return watchLine(plan, PlanKey.WARM_BATH, Optional.of(desk.bowl().id()));
    }

    /** The form with what was said already in it. */
    private PlanDesk desk(Folders folders, Settings settings, Units units) throws Refusal {
        Bowls.Loaded bowls = new Bowls(folders.bowls()).load();
        bowls.problems().forEach(common.err()::println);
        Recipe first = Chocolates.find(
                chocolate != null ? chocolate : settings.lastChocolate().orElse(USUAL_CHOCOLATE),
                folders,
                common.err());
        Optional<Bowl> said =
                bowl == null ? Optional.empty() : Optional.of(BowlWords.named(bowl, OptionalDouble.empty(), bowls));
        PlanDesk desk = PlanDesks.of(first, said, folders, units, bowls);
        desk.check(checked());
        desk.choosePan(panMaterial());
        type(desk, PlanField.AMOUNT, amountGrams);
        type(desk, PlanField.BOWL_WEIGHT, bowlGrams);
        type(desk, PlanField.PAN_WEIGHT, panGrams);
        type(desk, PlanField.BATH_WATER, bathGrams);
        type(desk, PlanField.TAP, tapCelsius);
        type(desk, PlanField.ROOM, roomCelsius);
        type(desk, PlanField.HUMIDITY, humidityPercent);
        type(desk, PlanField.QUICK_BATH, quickCelsius);
        type(desk, PlanField.BAR, barGrams);
        if (start != null) desk.type(PlanField.START, start);
        return desk;
    }

    private static void type(PlanDesk desk, PlanField field, Double said) {
        if (said != null) desk.type(field, Decimal.of(field.shown(said, desk.units())));
    }

    private void writeCard(PlanCard made) throws Refusal {
        boolean drawn = card.toString().toLowerCase(Locale.ROOT).endsWith(".svg");
        try {
            Files.writeString(
                    card,
                    drawn ? made.svg() : String.join(System.lineSeparator(), made.lines()) + System.lineSeparator());
        } catch (IOException e) {
            throw new Refusal(Exit.FILE, PlanText.THE_CARD_COULD_NOT_BE_WRITTEN.say(card, e.getMessage()));
        }
    }
}
