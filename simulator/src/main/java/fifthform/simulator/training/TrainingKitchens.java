package fifthform.simulator.training;

import fifthform.curves.recipe.Recipe;
import fifthform.curves.recipe.RecipeText;
import fifthform.curves.setup.LearnedCoast;
import fifthform.simulator.bench.Fleet;
import fifthform.simulator.bowl.Exchange;
import fifthform.simulator.bowl.Kitchen;
import fifthform.simulator.bowl.KitchenState;
import fifthform.simulator.bowl.KitchenState.Baths;
import fifthform.simulator.bowl.Vessel;
import fifthform.simulator.maker.Dice;
import fifthform.simulator.maker.Exploring;
import fifthform.simulator.maker.Luck;
import fifthform.simulator.maker.Makers;
import fifthform.simulator.scenario.Scenario;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.LongStream;

/**
 * Sessions to learn from, in kitchens drawn from {@code fleets/training.txt}. The session of a number depends on that
 * number, the seed and the fleet's text only: the same on every machine and JDK, on any number of threads.
 */
public final class TrainingKitchens {
    /** The fleet that comes with the program. */
    public static final String FLEET = "training";

    /** Keeps training off every judge's luck: no seed of a fleet is this large. */
    private static final long APART = 0x7472_6169_6e69_6e67L;

    private static final double MELTED_START_SHARE = 0.5;

    /** So much solid chocolate melts too slowly to be worth watching, kg. */
    private static final double MOST_SOLID_KILOGRAMS = 1.5;

    private final Fleet fleet;
    private final Luck luck;
    private final Map<String, Recipe> recipes = new ConcurrentHashMap<>();

    TrainingKitchens(long seed) {
        luck = new Luck(seed).branch(APART);
        fleet = Fleet.builtIn(FLEET).withSeed(luck.branch(0).seed());
    }

    /**
     * The first sessions of this seed, in the order of their numbers, each in a kitchen of its own.
     *
     * @param count how many, 1 or more
     * @param threads how many work at the same time, 1 or more; without influence on what comes
     */
    public static List<Session> sessions(int count, long seed, int threads) {
        TrainingKitchens kitchens = new TrainingKitchens(seed);
        ForkJoinPool pool = new ForkJoinPool(threads);
        try {
            return pool.submit(() -> LongStream.range(0, count)
                            .parallel()
                            .mapToObj(kitchens::session)
                            .toList())
                    .join();
        } finally {
            pool.shutdown();
        }
    }

    /** One session of this seed. */
    public static Session session(long number, long seed) {
        return new TrainingKitchens(seed).session(number);
    }

    private Session session(long number) {
        return gone(number).session();
    }

    /** The session with everything that led to it. */
    Gone gone(long number) {
        Prepared prepared = prepared(number);
        return Gone.through(
                number,
                prepared.kitchen(),
                prepared.recipe(),
                prepared.rehearsal().lived(),
                prepared.readings(),
                prepared.vigour());
    }

    /** A session about to begin; to be gone through once. */
    record Prepared(Kitchen kitchen, Recipe recipe, Rehearsal rehearsal, Readings readings, double vigour) {
        Prepared {
            Objects.requireNonNull(kitchen, "kitchen");
            Objects.requireNonNull(recipe, "recipe");
            Objects.requireNonNull(rehearsal, "rehearsal");
            Objects.requireNonNull(readings, "readings");
        }
    }

    Recipe recipeOf(Scenario scenario) {
        return recipes.computeIfAbsent(scenario.chocolate(), TrainingKitchens::recipe);
    }

    Prepared prepared(long number) {
        Luck own = luck.branch(1).branch(number);
        Scenario scenario = fleet.draw(number);
        Recipe recipe = recipeOf(scenario);
        Kitchen kitchen = kitchen(scenario);
        Exploring maker = Makers.explorer(scenario.habits(), own.branch(0));
        double vigour = usualVigour(kitchen.exchange(), maker);
        double low = recipe.work().range().lowCelsius();
        Optional<LearnedCoast> learned = new EarlierBatches(kitchen, vigour, low, own.branch(5)).learned();
        Told told = Told.draw(kitchen, low, learned, own.branch(1));
        Readings readings = new Readings(scenario.bowlAdapter(), own.branch(2));
        KitchenState first = first(scenario, new Dice(own.branch(3)));
        Rehearsal rehearsal = new Rehearsal(kitchen, first, maker, readings, told, new Dice(own.branch(4)));
        return new Prepared(kitchen, recipe, rehearsal, readings, vigour);
    }

    /** The warm water touches the bowl as well as the hot one does, so that every contact is seen in the rewarm too. */
    private static Kitchen kitchen(Scenario scenario) {
        Kitchen k = scenario.kitchen();
        Vessel warm = k.warmBath();
        Vessel drawn = Vessel.offTheHeat(
                warm.waterKilograms(),
                warm.potJoulesPerKelvin(),
                k.hotBath().contactWattsPerSquareMetreKelvin(),
                warm.lossWattsPerKelvin());
        return new Kitchen(
                k.chocolate(), k.bowl(), k.exchange(), k.hotBath(), drawn, k.coldWater(), k.room(), k.tip(), k.spoon());
    }

    /** Half of all begin when the chocolate has melted already, as do all with much of it. */
    private static KitchenState first(Scenario scenario, Dice dice) {
        KitchenState solid = scenario.begins();
        boolean melted = dice.happens(MELTED_START_SHARE);
        double celsius = dice.between(33, 46);
        if (!melted && scenario.kitchen().chocolate().kilograms() <= MOST_SOLID_KILOGRAMS) return solid;
        Baths baths = new Baths(solid.hotBathCelsius(), solid.warmBathCelsius(), solid.coldWaterCelsius());
        return KitchenState.melted(celsius, baths);
    }

    /** The steady vigour that carries as much heat as these hands do on average over bouts and rests. */
    static double usualVigour(Exchange exchange, Exploring maker) {
        double ratio = exchange.stirred() / exchange.still();
        double share = maker.stirringShare();
        double mean = share * StrictMath.pow(ratio, maker.stirringVigour()) + 1 - share;
        return Math.max(0, Math.min(1, StrictMath.log(mean) / StrictMath.log(ratio)));
    }

    private static Recipe recipe(String id) {
        try (InputStream in = TrainingKitchens.class.getResourceAsStream("/recipes/" + id + ".recipe")) {
            if (in == null) throw new IllegalArgumentException("there is no recipe " + id);
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return RecipeText.parse(id, text).fold(r -> r, problems -> {
                throw new IllegalStateException("the program's own recipe is not acceptable: " + problems);
            });
        } catch (IOException e) {
            throw new UncheckedIOException("the program's own recipe cannot be read", e);
        }
    }
}
