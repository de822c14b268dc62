package fifthform.simulator.rivals;

import fifthform.curves.recipe.Recipe;
import fifthform.simulator.bench.Batch;
import fifthform.simulator.bench.Fleet;
import fifthform.simulator.bench.Moment;
import fifthform.simulator.bench.Program;
import fifthform.simulator.bowl.Kitchen;
import fifthform.simulator.bowl.KitchenState;
import fifthform.simulator.bowl.Room;
import fifthform.simulator.bowl.Spot;
import fifthform.simulator.bowl.Vessel;
import fifthform.simulator.maker.Habits;
import fifthform.simulator.maker.Interruption;
import fifthform.simulator.maker.Interruption.FirstAt;
import fifthform.simulator.maker.Interruption.What;
import fifthform.simulator.maker.Keys;
import fifthform.simulator.maker.Luck;
import fifthform.simulator.maker.Makers;
import fifthform.simulator.maker.Manner;
import fifthform.simulator.maker.Plan;
import fifthform.simulator.maker.Rewarm;
import fifthform.simulator.scenario.ProbeScale;
import fifthform.simulator.scenario.Scenario;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/**
 * One kitchen of a fleet with a judge in it, and what the fleet's text cannot say of either.
 *
 * @param number in its fleet
 * @param scenario the kitchen, its probe and the numbers that its maker goes by
 * @param recipe what it is judged by
 * @param water over which the rewarm takes place
 * @param mishaps what happens to the probe meanwhile
 * @param luck for the batch in it
 */
record JudgedKitchen(long number, Scenario scenario, Recipe recipe, Spot water, List<Interruption> mishaps, Luck luck) {
    /** Somebody who is never told has had enough by then. Common practice, no source. */
    private static final Duration PATIENCE = Duration.ofMinutes(10);

    /** Who touches again and again has set out to take longer. Common practice, no source. */
    private static final Duration PATIENCE_WITH_TOUCHES = Duration.ofMinutes(15);

    /** Invented, as the fleet's text says. */
    private static final double OVER_THE_POT_FRACTION = 0.25;

    /** Method page: a third of makers, 25 s each. */
    private static final double TOUCHES_WALL_FRACTION = 1 / 3.0;

    private static final Duration WALL_TOUCH = Duration.ofSeconds(25);

    JudgedKitchen {
        Objects.requireNonNull(scenario, "scenario");
        Objects.requireNonNull(recipe, "recipe");
        Objects.requireNonNull(water, "water");
        mishaps = List.copyOf(mishaps);
        Objects.requireNonNull(luck, "luck");
    }

    static JudgedKitchen draw(Fleet fleet, long number, Function<String, Recipe> recipes) {
        Scenario drawn = fleet.draw(number);
        Scenario scenario = in(drawn, contactOfItsOwn(drawn.kitchen()), drawn.begins());
        Luck luck = new Luck(fleet.seed()).branch(number);
        Luck own = luck.branch(2);
        Spot water = own.branch(0).uniform() < OVER_THE_POT_FRACTION ? Spot.HOT_BATH : Spot.WARM_BATH;
        List<Interruption> mishaps = new ArrayList<>();
        if (own.branch(1).uniform() < TOUCHES_WALL_FRACTION) {
            Duration after = seconds(60 * own.branch(2).uniform());
            Duration every = seconds(90 + 150 * own.branch(3).uniform());
            mishaps.add(new Interruption(
                    What.PROBE_AT_WALL, new FirstAt(Spot.HOT_BATH), after, WALL_TOUCH, Optional.of(every)));
        }
        return new JudgedKitchen(number, scenario, recipes.apply(scenario.chocolate()), water, mishaps, luck.branch(1));
    }

    private static Duration seconds(double seconds) {
        return Duration.ofMillis(Math.round(1000 * seconds));
    }

    /** The same with something more that happens to the probe. */
    JudgedKitchen with(Interruption mishap) {
        List<Interruption> more = new ArrayList<>(mishaps);
        more.add(mishap);
        return new JudgedKitchen(number, scenario, recipe, water, more, luck);
    }

    /** The warm water touches the bowl as well as the hot one does: a scenario has one word for both. */
    private static Kitchen contactOfItsOwn(Kitchen kitchen) {
        Vessel warm = kitchen.warmBath();
        Vessel touching = Vessel.offTheHeat(
                warm.waterKilograms(),
                warm.potJoulesPerKelvin(),
                kitchen.hotBath().contactWattsPerSquareMetreKelvin(),
                warm.lossWattsPerKelvin());
        return with(kitchen, kitchen.hotBath(), touching, kitchen.coldWater(), kitchen.room());
    }

    /** Another day in another kitchen of the fleet with the same bowl, amount, spoon and probe. */
    JudgedKitchen onAnotherDay(JudgedKitchen other) {
        Kitchen theirs = other.scenario.kitchen();
        Kitchen kitchen =
                with(scenario.kitchen(), theirs.hotBath(), theirs.warmBath(), theirs.coldWater(), theirs.room());
        Scenario moved = in(scenario, kitchen, other.scenario.begins());
        return new JudgedKitchen(number, moved, recipe, water, mishaps, other.luck);
    }

    private static Kitchen with(Kitchen mine, Vessel hot, Vessel warm, Vessel cold, Room room) {
        return new Kitchen(
                mine.chocolate(), mine.bowl(), mine.exchange(), hot, warm, cold, room, mine.tip(), mine.spoon());
    }

    private static Scenario in(Scenario scenario, Kitchen kitchen, KitchenState begins) {
        return new Scenario(
                scenario.id(),
                scenario.title(),
                scenario.about(),
                scenario.demo(),
                scenario.chocolate(),
                scenario.seed(),
                kitchen,
                begins,
                scenario.maker(),
                scenario.habits(),
                scenario.bowlAdapter(),
                scenario.expected());
    }

    /** The first moment of a batch. */
    Moment beginning(Manner manner, Keys keys, Program program) {
        double low = recipe.work().range().lowCelsius();
        Duration patience = manner == Manner.TOUCHES ? PATIENCE_WITH_TOUCHES : PATIENCE;
        Rewarm rewarm = new Rewarm(manner, keys, water, low, patience);
        return Batch.beginning(scenario, luck, program).inHandsOf(Makers.judge(rewarm, habits(), luck.branch(3)));
    }

    private Habits habits() {
        Habits usual = scenario.habits();
        Plan plan = usual.plan();
        Plan with = new Plan(plan.stirringShare(), plan.seedGrams(), plan.seedAtCelsius(), plan.splashGrams(), mishaps);
        return new Habits(
                usual.reaction(),
                usual.reactionSpread(),
                usual.meltedCelsius(),
                usual.coolCelsius(),
                usual.hold(),
                usual.warmCelsius(),
                usual.pouring(),
                with);
    }

    Batch batch() {
        return new Batch(scenario.kitchen());
    }

    ProbeScale scale() {
        return ProbeScale.of(scenario);
    }

    /** The water of the rewarm as its thermometer and its maker know it before, °C. */
    double bathCelsius(Moment moment) {
        return water == Spot.HOT_BATH
                ? moment.kitchen().hotBathCelsius()
                : moment.kitchen().warmBathCelsius();
    }
}
