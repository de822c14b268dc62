package fifthform.simulator.bowl;

import static fifthform.simulator.bowl.Kitchens.BATHS;
import static fifthform.simulator.bowl.Kitchens.minutes;
import static fifthform.simulator.bowl.Kitchens.usual;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The books balance, and the step does not matter. */
class BalanceTest {
    private record Part(Hands hands, double minutes) {}

    private static final List<Part> BATCH = List.of(
            new Part(Hands.stirringAt(Spot.HOT_BATH), 20),
            new Part(Hands.leaving(Spot.COLD_WATER), 3),
            new Part(Hands.stirringAt(Spot.COLD_WATER), 3),
            new Part(Hands.stirringAt(Spot.TABLE), 5),
            new Part(Hands.stirringAt(Spot.WARM_BATH), 1),
            new Part(new Hands(Spot.TABLE, 1, Hands.Towel.WIPING), 1),
            new Part(Hands.stirringAt(Spot.COOL_CLOTH), 0.5),
            new Part(Hands.stirringAt(Spot.TABLE).blowing(Blower.HEAT_GUN), 0.1),
            new Part(Hands.stirringAt(Spot.WARM_CLOTH).probeAt(ProbePlace.OUT), 1),
            new Part(Hands.leaving(Spot.FRIDGE), 4),
            new Part(Hands.stirringAt(Spot.TABLE).blowing(Blower.HAIR_DRYER), 0.3),
            new Part(Hands.leaving(Spot.TABLE).probeAt(ProbePlace.AT_WALL), 10));

    /** Stored heat changes by what crossed the border, over a whole batch with everything in it, to a millionth. */
    @ParameterizedTest
    @EnumSource(WallMaterial.class)
    void theBooksBalanceOverAWholeBatch(WallMaterial material) {
        Kitchen kitchen = usual(material, 2, 0.5);
        KitchenState start = KitchenState.solid(20, BATHS);
        KitchenState state = start;
        double worst = 0;
        for (Part part : BATCH) {
            state = kitchen.advance(state, part.hands(), minutes(part.minutes()));
            if (part.hands().spot() == Spot.COLD_WATER) {
                state = kitchen.seeded(state, 0.03, 20);
                state = kitchen.pouredInto(state, Spot.WARM_BATH, 0.5, 60);
                state = kitchen.splashed(state, 0.001);
            }
            double stored = kitchen.storedJoules(state) - kitchen.storedJoules(start);
            double residual = Math.abs(stored - state.ledger().netJoules())
                    / state.ledger().movedJoules();
            worst = Math.max(worst, residual);
        }
        System.out.println("energy residual, " + material.word() + ": " + worst);
        assertTrue(worst < 1e-6, "residual " + worst);
        HeatLedger ledger = state.ledger();
        assertTrue(ledger.fromBurnerJoules() > 50_000, "the burner did nothing");
        assertTrue(ledger.fromBlowerJoules() > 100, "nothing was blown");
        assertTrue(ledger.toRoomJoules() > 10_000, "nothing was lost");
        assertTrue(ledger.withVapourJoules() > 1000, "nothing evaporated");
        assertTrue(ledger.wipedOffJoules() > 100, "nothing was wiped off");
    }

    @Test
    void halvingTheStepMovesNoPeak() {
        for (WallMaterial material : WallMaterial.values()) {
            double millimetres = material == WallMaterial.STEEL || material == WallMaterial.ALUMINIUM ? 1 : 3.5;
            Kitchen kitchen = usual(material, millimetres, 0.25);
            double usual = peak(kitchen, Kitchen.LONGEST_STEP);
            double finer = peak(kitchen, Kitchen.LONGEST_STEP.dividedBy(2));
            double coarser = peak(kitchen, Kitchen.LONGEST_STEP.multipliedBy(2));
            System.out.printf(
                    "%s: peak %.4f, half the step %+.5f K, twice the step %+.5f K%n",
                    material.word(), usual, finer - usual, coarser - usual);
            assertEquals(finer, usual, 0.02);
        }
    }

    /** Half a minute over hot water and a coast, from solid pieces on. */
    private static double peak(Kitchen kitchen, Duration longestStep) {
        KitchenState state = kitchen.advance(
                KitchenState.solid(20, BATHS), Hands.stirringAt(Spot.HOT_BATH), minutes(20), longestStep);
        state = kitchen.advance(state, Hands.stirringAt(Spot.COLD_WATER), minutes(4), longestStep);
        state = kitchen.advance(state, Hands.stirringAt(Spot.WARM_BATH), Duration.ofSeconds(40), longestStep);
        double peak = state.bulkCelsius();
        for (int second = 0; second < 120; second++) {
            state = kitchen.advance(state, Hands.stirringAt(Spot.TABLE), Duration.ofSeconds(1), longestStep);
            peak = Math.max(peak, state.bulkCelsius());
        }
        return peak;
    }

    /** Common practice, no source: a burst and half a minute of stirring warm a bowl by 0.3 to 1 K (reference schedule). */
    @Test
    void aBurstOfHotAirWarmsAsMakersSay() {
        Kitchen kitchen = usual(WallMaterial.STEEL, 0.8, 0.5);
        KitchenState start = KitchenState.melted(30, BATHS);
        for (Blower blower : List.of(Blower.HAIR_DRYER, Blower.HEAT_GUN)) {
            KitchenState with = after(kitchen, start, blower);
            KitchenState without = after(kitchen, start, Blower.OFF);
            double warmed = with.bulkCelsius() - without.bulkCelsius();
            System.out.printf("%s for 5 s: %+.2f K%n", blower, warmed);
            assertTrue(warmed > 0.2 && warmed < 1.2, blower + " " + warmed);
        }
    }

    private static KitchenState after(Kitchen kitchen, KitchenState start, Blower blower) {
        Hands stirring = Hands.stirringAt(Spot.TABLE);
        KitchenState blown = kitchen.advance(start, stirring.blowing(blower), Duration.ofSeconds(5));
        return kitchen.advance(blown, stirring, Duration.ofSeconds(25));
    }

    /** The clinging film dries away on the table within hours, and cools the bowl meanwhile. */
    @Test
    void theFilmDriesAway() {
        Kitchen kitchen = usual(WallMaterial.STEEL, 0.8, 0.5);
        KitchenState wet = kitchen.advance(
                KitchenState.melted(31, BATHS), Hands.stirringAt(Spot.WARM_BATH), Duration.ofSeconds(1));
        assertTrue(wet.filmKilograms() > 0.003, "film " + wet.filmKilograms());
        KitchenState later = kitchen.advance(wet, Hands.stirringAt(Spot.TABLE), minutes(10));
        assertTrue(later.filmKilograms() < 0.9 * wet.filmKilograms() && later.filmKilograms() > 0, "" + later);
        KitchenState dry = kitchen.advance(later, Hands.stirringAt(Spot.TABLE), minutes(300));
        assertEquals(0, dry.filmKilograms());
        Hands wiping = new Hands(Spot.TABLE, 1, Hands.Towel.WIPING);
        assertTrue(kitchen.advance(wet, wiping, minutes(10)).bulkCelsius() > later.bulkCelsius() + 0.1);
    }

    /** Seed at 20 °C cools what it comes to by its own warming and melting: calorimetry with Beckett's values. */
    @Test
    void seedCoolsTheBulk() {
        Kitchen kitchen = usual(WallMaterial.STEEL, 0.8, 1);
        KitchenState before = KitchenState.melted(39.9, BATHS);
        KitchenState after = kitchen.seeded(before, 0.1, 20);
        double bulk = 1 - 0.08 - 0.05;
        double allMelted = (bulk * 1590 * 39.9 + 0.1 * (1590 * 20 - 46_000)) / (1590 * (bulk + 0.1));
        assertEquals(allMelted, after.bulkCelsius(), 1e-9);
        assertEquals(0, after.bulkUnmeltedFraction());
        KitchenState cool = kitchen.seeded(KitchenState.melted(31, BATHS), 0.1, 20);
        assertTrue(cool.bulkUnmeltedFraction() > 0.05, "seed that is not too warm must stay: " + cool);
    }

    /** Forgotten under a heat gun the top scorches; the kitchen goes on. */
    @Test
    void whatIsLeftUnderAHeatGunScorches() {
        Kitchen kitchen = usual(WallMaterial.PLASTIC, 3, 0.2);
        Hands forgotten = Hands.leaving(Spot.TABLE).blowing(Blower.HEAT_GUN);
        KitchenState later = kitchen.advance(KitchenState.melted(31, BATHS), forgotten, minutes(30));
        assertTrue(later.surfaceCelsius() > 100, "surface " + later.surfaceCelsius());
    }
}
