package fifthform.simulator.bench;

import fifthform.curves.plan.BatchPlan;
import fifthform.curves.plan.BatchPlan.TopUpFor;
import fifthform.curves.plan.BatchPlan.WarmBathFor;
import fifthform.curves.plan.Caveat;
import fifthform.curves.plan.PlanKey;
import fifthform.curves.plan.PlanRequest;
import fifthform.curves.plan.Planned;
import fifthform.curves.recipe.CelsiusRange;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.BowlMaterial;
import fifthform.simulator.bowl.Hands;
import fifthform.simulator.bowl.Hands.Towel;
import fifthform.simulator.bowl.Kitchen;
import fifthform.simulator.bowl.KitchenState;
import fifthform.simulator.bowl.KitchenState.Baths;
import fifthform.simulator.bowl.Spot;
import fifthform.simulator.bowl.Vessel;
import fifthform.simulator.maker.Luck;
import fifthform.simulator.scenario.Scenario;
import java.time.Duration;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Predicate;

/**
 * A kitchen of the fleet in which somebody does what the plan says: amounts within 5 % (any value alike), every thermometer
 * off by σ 0.3 K, the room known to σ 1 K. How well they stir, how much the pan loses and how it is covered is not told to the
 * plan. Only means of the chocolate are looked at, and no crystal.
 *
 * @param range the working range
 * @param plannedPeakCelsius the highest as planned from the middle of the cool range
 * @param stirredPeakCelsius the highest in the planned warm bath, stirred
 * @param forgottenPeakCelsius the highest there, forgotten after the first half minute
 * @param secondPeakCelsius where it came after the second step, stirred
 * @param secondForgottenCelsius the same, forgotten half a minute after the pouring
 * @param endCelsius where it came after two further pourings
 * @param toppedUpPeakCelsius the highest of all these that were stirred
 * @param quickPeakCelsius the highest after the hotter bath, lifted by the thermometer
 * @param latestPeakCelsius the highest after the hotter bath, lifted by the clock at the latest time
 * @param cold time of the cold bath against its band
 * @param fall how far it fell after that, K
 * @param warm time of the warm bath
 * @param quick time of the hotter bath
 * @param hold time on the table until below the range
 */
record PlannedEvening(
        CelsiusRange range,
        double plannedPeakCelsius,
        double stirredPeakCelsius,
        double forgottenPeakCelsius,
        double secondPeakCelsius,
        double secondForgottenCelsius,
        double endCelsius,
        double toppedUpPeakCelsius,
        double quickPeakCelsius,
        double latestPeakCelsius,
        Against cold,
        Against fall,
        Against warm,
        Against quick,
        Against hold) {
    private static final Duration LOOK = Duration.ofSeconds(1);
    private static final int LONGEST_SECONDS = 3 * 3600;

    /** A figure that came out against the one that was planned. */
    record Against(Planned planned, double value) {
        boolean inBand() {
            return value >= planned.low() && value <= planned.high();
        }

        double ratio() {
            return value / planned.value();
        }
    }

    /** Where a stretch of the evening ended, and its extremes. */
    private record Stretch(KitchenState state, double seconds, double highest, double lowest) {}

    static PlannedEvening of(Fleet fleet, long number) {
        Scenario scenario = fleet.draw(number);
        Recipe recipe = RecipeShelf.recipe(scenario.chocolate());
        return new PlannedEvening.Host(
                        scenario, recipe, new Luck(fleet.seed()).branch(number).branch(7))
                .evening();
    }

    boolean passes(double celsius) {
        return celsius > range.highCelsius();
    }

    boolean reaches(double celsius) {
        return celsius >= range.lowCelsius();
    }

    boolean inRange(double celsius) {
        return reaches(celsius) && !passes(celsius);
    }

    List<Against> times() {
        return List.of(cold, warm, quick, hold);
    }

    /** Whoever tempers here. */
    private static final class Host {
        private final Scenario scenario;
        private final Recipe recipe;
        private final Luck luck;
        private int draws;

        Host(Scenario scenario, Recipe recipe, Luck luck) {
            this.scenario = scenario;
            this.recipe = recipe;
            this.luck = luck;
        }

        PlannedEvening evening() {
            Kitchen drawn = scenario.kitchen();
            BowlMaterial material = scenario.bowl().material();
            double bowlKilograms = drawn.bowl().joulesPerKelvin(drawn.wettedSquareMetres())
                    / drawn.bowl().material().heatCapacityJoulesPerKilogramKelvin();
            double panKilograms = 0.5 + uniform();
            double tap = scenario.begins().coldWaterCelsius();
            double bowlTold = Math.max(20, 1000 * weighed(bowlKilograms));
            PlanRequest request = new PlanRequest(
                    recipe,
                    1000 * weighed(drawn.chocolate().kilograms()),
                    new fifthform.curves.setup.Bowl(
                            "any", material, OptionalDouble.empty(), java.util.Optional.empty()),
                    OptionalDouble.of(bowlTold),
                    OptionalDouble.of(1000 * weighed(panKilograms)),
                    BowlMaterial.STEEL,
                    OptionalDouble.empty(),
                    OptionalDouble.of(Math.max(0, read(tap))),
                    OptionalDouble.empty(),
                    true,
                    new PlanRequest.Room(OptionalDouble.of(drawn.roomCelsius() + normal()), OptionalDouble.empty()),
                    OptionalDouble.empty());
            BatchPlan plan = BatchPlan.of(request);
            double bath = weighed(plan.value(PlanKey.WARM_WATER) / 1000);
            double root = Math.cbrt(bath / 2);
            // From wrapped in a towel to bare: 0.03 to 0.1 m² at 10 W/m²K for 2 kg.
            double loss = (0.3 + 0.7 * uniform()) * root * root;
            Kitchen kitchen = new Kitchen(
                    drawn.chocolate(),
                    drawn.bowl(),
                    drawn.exchange(),
                    drawn.hotBath(),
                    Vessel.offTheHeat(
                            bath, 500 * panKilograms, drawn.warmBath().contactWattsPerSquareMetreKelvin(), loss),
                    Vessel.offTheHeat(
                                    weighed(plan.value(PlanKey.COLD_WATER) / 1000),
                                    200,
                                    drawn.coldWater().contactWattsPerSquareMetreKelvin(),
                                    1.2)
                            .open(0.05),
                    drawn.room(),
                    drawn.tip(),
                    drawn.spoon());
            double vigour = 0.65 + 0.35 * uniform();
            double cold = plan.caveats().contains(Caveat.TAP_TOO_WARM) ? read(16) : tap;
            CelsiusRange melt = recipe.melt().range();
            KitchenState melted = KitchenState.melted(
                    melt.lowCelsius() + uniform() * melt.widthKelvin(), new Baths(70, 40, Math.max(0, cold)));
            double shown = 0.3 * normal();
            double liftAt = plan.value(PlanKey.COLD_LIFT) - shown;
            Stretch cooled = until(
                    kitchen,
                    melted,
                    stirring(Spot.COLD_WATER, vigour),
                    s -> s.bulkCelsius() <= liftAt,
                    LONGEST_SECONDS);
            Stretch rested = until(kitchen, cooled.state(), stirring(Spot.TABLE, vigour), s -> false, 90);
            KitchenState at = rested.state();

            double safe = read(bathFor(plan, at.bulkCelsius() + 0.3 * normal()));
            Stretch stirred = risen(kitchen, kitchen.withWarmWaterAt(at, safe), vigour);
            double rise = stirred.highest() - at.bulkCelsius();
            double most = at.bulkCelsius() + 0.9 * rise;
            Stretch warmed = until(
                    kitchen,
                    kitchen.withWarmWaterAt(at, safe),
                    stirring(Spot.WARM_BATH, vigour),
                    s -> s.bulkCelsius() >= most,
                    LONGEST_SECONDS);
            Stretch first =
                    until(kitchen, kitchen.withWarmWaterAt(at, safe), stirring(Spot.WARM_BATH, vigour), s -> false, 30);
            Stretch forgotten = risen(kitchen, first.state(), 0);

            Poured pour = new Poured(plan, kitchen, shown, 4180 * bath + 500 * panKilograms);
            Stretch second = pour(pour, stirred.state(), vigour);
            double toppedUp = Math.max(stirred.highest(), second.highest());
            KitchenState poured = pour.into(stirred.state(), weighed(1), 95 + 2 * normal());
            Stretch left = risen(
                    kitchen,
                    until(kitchen, poured, stirring(Spot.WARM_BATH, vigour), s -> false, 30)
                            .state(),
                    0);
            double ends = second.highest();
            KitchenState again = second.state();
            for (int times = 0; times < 2; times++) {
                Stretch more = pour(pour, again, vigour);
                again = more.state();
                ends = more.highest();
                toppedUp = Math.max(toppedUp, ends);
            }

            double quickBath = read(plan.value(PlanKey.QUICK_BATH));
            double quickAt = plan.value(PlanKey.QUICK_LIFT) - shown;
            KitchenState hot = kitchen.withWarmWaterAt(at, quickBath);
            Stretch quick = until(
                    kitchen, hot, stirring(Spot.WARM_BATH, vigour), s -> s.bulkCelsius() >= quickAt, LONGEST_SECONDS);
            Stretch after = until(kitchen, quick.state(), stirring(Spot.TABLE, vigour), s -> false, 240);
            int latest = (int) plan.value(PlanKey.QUICK_LATEST);
            Stretch byClock = until(kitchen, hot, stirring(Spot.WARM_BATH, vigour), s -> false, latest);
            Stretch then = until(kitchen, byClock.state(), stirring(Spot.TABLE, vigour), s -> false, 240);

            double low = recipe.work().range().lowCelsius();
            KitchenState working = KitchenState.melted(recipe.work().range().midCelsius(), new Baths(70, 40, 15));
            Stretch held =
                    until(kitchen, working, stirring(Spot.TABLE, vigour), s -> s.bulkCelsius() <= low, LONGEST_SECONDS);
            return new PlannedEvening(
                    recipe.work().range(),
                    plan.value(PlanKey.WARM_PEAK),
                    stirred.highest(),
                    forgotten.highest(),
                    second.highest(),
                    left.highest(),
                    ends,
                    toppedUp,
                    Math.max(quick.highest(), after.highest()),
                    Math.max(byClock.highest(), then.highest()),
                    new Against(plan.figure(PlanKey.COLD_TIME).orElseThrow(), cooled.seconds()),
                    new Against(
                            plan.figure(PlanKey.COLD_FALL).orElseThrow(),
                            cooled.state().bulkCelsius() - rested.lowest()),
                    new Against(plan.figure(PlanKey.WARM_TIME).orElseThrow(), warmed.seconds()),
                    new Against(plan.figure(PlanKey.QUICK_TIME).orElseThrow(), quick.seconds()),
                    plan.figure(PlanKey.HOLD_TIME)
                            .map(f -> new Against(f, held.seconds()))
                            .orElse(new Against(plan.figure(PlanKey.COLD_TIME).orElseThrow(), cooled.seconds())));
        }

        /** Boiling water by the plan's second table, for a bowl that reads {@code shown} too little; then until it turns. */
        private Stretch pour(Poured pour, KitchenState still, double vigour) {
            return risen(pour.kitchen(), pour.into(still, weighed(1), 95 + 2 * normal()), vigour);
        }

        /** What pouring needs to know of the evening. */
        private record Poured(BatchPlan plan, Kitchen kitchen, double shown, double bathJoulesPerKelvin) {
            KitchenState into(KitchenState still, double weighed, double kettleCelsius) {
                double heat = 4.18 * grams(still.bulkCelsius() + shown) * weighed;
                double bath = still.warm().celsius();
                double mixed = (bathJoulesPerKelvin * bath + heat * kettleCelsius) / (bathJoulesPerKelvin + heat);
                return kitchen.withWarmWaterAt(still, mixed);
            }

            /** From the warmest row at or above the bowl, in proportion; nothing above the last. */
            private double grams(double bowlCelsius) {
                TopUpFor before = null;
                for (TopUpFor row : plan.topUps()) {
                    if (row.bowlCelsius() >= bowlCelsius) {
                        if (before == null) return row.waterGrams();
                        double share =
                                (bowlCelsius - before.bowlCelsius()) / (row.bowlCelsius() - before.bowlCelsius());
                        return before.waterGrams() + share * (row.waterGrams() - before.waterGrams());
                    }
                    before = row;
                }
                return 0;
            }
        }

        private static double bathFor(BatchPlan plan, double bowlCelsius) {
            List<WarmBathFor> rows = plan.warmBaths();
            WarmBathFor before = rows.get(0);
            if (bowlCelsius <= before.bowlCelsius()) return before.bathCelsius();
            for (WarmBathFor row : rows) {
                if (row.bowlCelsius() > bowlCelsius) {
                    double share = (bowlCelsius - before.bowlCelsius()) / (row.bowlCelsius() - before.bowlCelsius());
                    return before.bathCelsius() + share * (row.bathCelsius() - before.bathCelsius());
                }
                before = row;
            }
            return before.bathCelsius();
        }

        /** Until it has turned for good: ten minutes at least, since a cold wall comes first, then a tenth of a kelvin down. */
        private static Stretch risen(Kitchen kitchen, KitchenState from, double vigour) {
            KitchenState state = from;
            double highest = from.bulkCelsius();
            double seconds = 0;
            while (seconds < 5400 && (seconds < 600 || state.bulkCelsius() > highest - 0.1)) {
                state = kitchen.advance(state, stirring(Spot.WARM_BATH, vigour), LOOK);
                seconds++;
                highest = Math.max(highest, state.bulkCelsius());
            }
            return new Stretch(state, seconds, highest, from.bulkCelsius());
        }

        private static Stretch until(
                Kitchen kitchen, KitchenState from, Hands hands, Predicate<KitchenState> enough, int longestSeconds) {
            KitchenState state = from;
            double highest = from.bulkCelsius();
            double lowest = from.bulkCelsius();
            int seconds = 0;
            while (seconds < longestSeconds && !enough.test(state)) {
                state = kitchen.advance(state, hands, LOOK);
                seconds++;
                highest = Math.max(highest, state.bulkCelsius());
                lowest = Math.min(lowest, state.bulkCelsius());
            }
            return new Stretch(state, seconds, highest, lowest);
        }

        private static Hands stirring(Spot spot, double vigour) {
            return new Hands(spot, vigour, Towel.LEFT);
        }

        private double weighed(double kilograms) {
            return kilograms * (0.95 + 0.1 * uniform());
        }

        private double read(double celsius) {
            return celsius + 0.3 * normal();
        }

        private double uniform() {
            return luck.branch(draws++).uniform();
        }

        private double normal() {
            return luck.branch(draws++).normal();
        }
    }
}
