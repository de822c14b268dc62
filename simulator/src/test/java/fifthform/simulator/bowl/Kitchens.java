package fifthform.simulator.bowl;

import fifthform.simulator.bowl.KitchenState.Baths;
import java.time.Duration;
import java.util.function.Predicate;

/** Kitchens to try things in. */
final class Kitchens {
    static final Baths BATHS = new Baths(70, 48, 15);

    private Kitchens() {}

    static Kitchen usual(WallMaterial material, double millimetres, double kilograms) {
        return new Kitchen(
                Chocolate.dark(kilograms),
                new BowlWall(material, millimetres, 1.3, 0.2),
                Exchange.USUAL,
                new Vessel(2, 400, 550, 1.5, 1500, 70, 0.03, 0.5, 60),
                Vessel.offTheHeat(2, 400, 550, 1.5),
                Vessel.offTheHeat(4, 300, 550, 1),
                21,
                new Tip(4, 1.5));
    }

    /** Bodies that exchange heat with each other only, and no film. */
    static Kitchen closed(double kilograms, WallMaterial material, double wallJoulesPerKelvin, Vessel coldWater) {
        Chocolate chocolate = Chocolate.dark(kilograms);
        double rimFactor = 1.2;
        double onePerMillimetre = new BowlWall(material, 1, 1, 0).joulesPerKelvin(chocolate.wettedSquareMetres());
        double millimetres = wallJoulesPerKelvin / onePerMillimetre / rimFactor;
        return new Kitchen(
                chocolate,
                new BowlWall(material, millimetres, rimFactor, 0),
                Exchange.USUAL.withoutRoom(),
                Vessel.offTheHeat(2, 0, 550, 0),
                Vessel.offTheHeat(2, 0, 550, 0),
                coldWater,
                Room.at(21),
                new Tip(4, 1.5),
                Spoon.NONE);
    }

    static Kitchen with(Kitchen k, Exchange exchange) {
        return new Kitchen(
                k.chocolate(),
                k.bowl(),
                exchange,
                k.hotBath(),
                k.warmBath(),
                k.coldWater(),
                k.room(),
                k.tip(),
                k.spoon());
    }

    static Kitchen with(Kitchen k, Spoon spoon) {
        return new Kitchen(
                k.chocolate(),
                k.bowl(),
                k.exchange(),
                k.hotBath(),
                k.warmBath(),
                k.coldWater(),
                k.room(),
                k.tip(),
                spoon);
    }

    static Kitchen with(Kitchen k, Tip tip) {
        return new Kitchen(
                k.chocolate(),
                k.bowl(),
                k.exchange(),
                k.hotBath(),
                k.warmBath(),
                k.coldWater(),
                k.room(),
                tip,
                k.spoon());
    }

    /** Goes on until the condition holds, two hours at most. */
    static KitchenState until(Kitchen kitchen, KitchenState from, Hands hands, Predicate<KitchenState> enough) {
        KitchenState state = from;
        for (int quarters = 0; quarters < 4 * 7200; quarters++) {
            if (enough.test(state)) return state;
            state = kitchen.advance(state, hands, Kitchen.LONGEST_STEP);
        }
        throw new AssertionError("not within two hours; " + state);
    }

    /** The highest the bulk gets within five minutes. */
    static double highestCelsius(Kitchen kitchen, KitchenState from, Hands hands) {
        KitchenState state = from;
        double highest = state.bulkCelsius();
        for (int quarters = 0; quarters < 4 * 300; quarters++) {
            state = kitchen.advance(state, hands, Kitchen.LONGEST_STEP);
            highest = Math.max(highest, state.bulkCelsius());
        }
        return highest;
    }

    static Duration minutes(double minutes) {
        return Duration.ofMillis(Math.round(minutes * 60_000));
    }
}
