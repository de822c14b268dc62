package fifthform.simulator.bench;

import fifthform.curves.engine.Engine;
import fifthform.curves.engine.State;
import fifthform.curves.forecast.Coasting;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.Beginning;
import fifthform.curves.setup.Bowl;
import fifthform.curves.setup.Setup;
import fifthform.simulator.bowl.Spot;
import fifthform.simulator.maker.Luck;
import fifthform.simulator.scenario.Scenario;
import fifthform.simulator.scenario.ScenarioText;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * Batch after batch in one bowl of a fleet: bowl, amount, chocolate, probe, burner and the maker's ways stay; bath, room,
 * water, contact, clinging film and luck are drawn anew each day.
 */
final class BowlDays {
    private static final Set<String> KEPT = Set.of(
            "seed",
            "demo",
            "title",
            "about",
            "chocolate",
            "amount",
            "bowl",
            "wall",
            "rim",
            "shape",
            "latent heat",
            "melts from",
            "melts to",
            "burner",
            "probe lag",
            "resolution",
            "noise",
            "offset",
            "interval",
            "maker");

    private static final double MOST_GRAMS = 5000;

    private final Fleet fleet;
    private final long number;
    private final UnaryOperator<String> habit;

    /** @param habit changes each day's text, for example the maker */
    BowlDays(Fleet fleet, long number, UnaryOperator<String> habit) {
        this.fleet = fleet;
        this.number = number;
        this.habit = habit;
    }

    /** What is really on the stove, whatever the program was told. */
    enum Really {
        THE_BOWL {
            @Override
            String of(String text) {
                return text;
            }
        },
        TWICE_THE_AMOUNT {
            @Override
            String of(String text) {
                double grams = Double.parseDouble(value(text, "amount").split(" ")[0]);
                return with(text, "amount", Math.min(MOST_GRAMS, 2 * grams) + " g");
            }
        },
        OTHER_MATERIAL {
            @Override
            String of(String text) {
                boolean metal = Set.of("steel", "aluminium").contains(value(text, "bowl"));
                return with(with(text, "bowl", metal ? "glass" : "steel"), "wall", metal ? "5 mm" : "0.9 mm");
            }
        };

        abstract String of(String text);
    }

    /** How a batch ended. */
    record Day(
            Bowl told,
            Scenario scenario,
            State first,
            State last,
            OptionalDouble rateAtLift,
            Optional<State> turned,
            Ending ending) {
        /** Whether another bowl was noticed as soon as it had turned after the melting bath. */
        boolean noticedByTheTurn() {
            return turned.flatMap(s -> s.coasting().bowl().doubt()).isPresent();
        }

        Coasting coasting() {
            return last.coasting();
        }

        /** The same bowl with what this batch left. */
        Bowl leaves() {
            return new Bowl(
                    told.id(),
                    told.material(),
                    told.amountGrams(),
                    coasting().learned(),
                    coasting().bowl().after(told.answers()));
        }
    }

    /** Before its first batch. */
    Bowl fresh() {
        return scenario(text(0)).bowl();
    }

    Day day(int day, Bowl told, Really really) {
        Scenario scenario = scenario(really.of(text(day)));
        Recipe recipe = RecipeShelf.recipe(scenario.chocolate());
        Setup usual = EngineProgram.beginning(scenario, recipe, BatchRun.BEGINS).setup();
        Setup setup = new Setup(
                usual.recipe(),
                told,
                usual.probes(),
                usual.reactionTime(),
                usual.bathCelsius(),
                usual.roomCelsius(),
                usual.origin(),
                usual.approach(),
                usual.seedGrams(),
                Beginning.WHOLE,
                Optional.empty());
        EngineProgram program = new EngineProgram(setup, Engine.start(setup, BatchRun.BEGINS));
        Luck luck = new Luck(fleet.seed()).branch(number).branch(1000L + day);
        return gone(told, scenario, recipe, Batch.beginning(scenario, luck, program));
    }

    private static Day gone(Bowl told, Scenario scenario, Recipe recipe, Moment first) {
        Batch batch = new Batch(scenario.kitchen());
        BatchWatch watch = new BatchWatch(recipe);
        Moment moment = first;
        OptionalDouble rateAtLift = OptionalDouble.empty();
        double[] earlier = new double[8];
        Optional<State> turned = Optional.empty();
        while (!moment.maker().done() && moment.at().isBefore(BatchRun.BEGINS.plus(Batch.LONGEST))) {
            watch.forecast(moment.program().turnIfLiftedCelsius());
            Moment after = batch.next(moment).after();
            if (moment.hands().spot() == Spot.WARM_BATH && after.hands().spot() == Spot.TABLE && rateAtLift.isEmpty()) {
                double before = earlier[(int) (moment.steps() % earlier.length)];
                rateAtLift = OptionalDouble.of((moment.kitchen().bulkCelsius() - before) / 4);
            }
            earlier[(int) (moment.steps() % earlier.length)] = moment.kitchen().bulkCelsius();
            moment = after;
            if (turned.isEmpty()
                    && state(moment).coasting().bowl().answer().turn().isPresent()) {
                turned = Optional.of(state(moment));
            }
            watch.saw(
                    moment.at(), moment.kitchen().bulkCelsius(), moment.hands().spot());
        }
        return new Day(told, scenario, state(first), state(moment), rateAtLift, turned, watch.ending());
    }

    private static State state(Moment moment) {
        return ((EngineProgram) moment.program()).state();
    }

    private String text(int day) {
        return habit.apply(fleet.text(number, KEPT, 1_000_000 + 100 * number + day));
    }

    private Scenario scenario(String text) {
        return ScenarioText.parse("day-" + number, text).fold(scenario -> scenario, problems -> {
            throw new IllegalStateException(problems + " in " + text);
        });
    }

    static String value(String text, String key) {
        return text.lines()
                .filter(line -> line.startsWith(key + " ="))
                .map(line -> line.substring(line.indexOf('=') + 1).trim())
                .findFirst()
                .orElseThrow();
    }

    static String with(String text, String key, String value) {
        return text.lines()
                        .map(line -> line.startsWith(key + " =") ? key + " = " + value : line)
                        .collect(Collectors.joining("\n"))
                + "\n";
    }
}
