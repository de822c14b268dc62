package fifthform.simulator.bowl;

import static fifthform.simulator.bowl.Kitchens.BATHS;
import static fifthform.simulator.bowl.Kitchens.closed;
import static fifthform.simulator.bowl.Kitchens.usual;
import static fifthform.simulator.bowl.Kitchens.with;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.simulator.bowl.KitchenState.Baths;
import java.time.Duration;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The kitchen against solutions in closed form, a handbook's correlation, and a library's integrator. */
class AnalyticTest {
    /**
     * Two bodies with one exchange between them come together as {@code e^(−t G (1/C1 + 1/C2))} (calorimetry and Newton's
     * law; textbook): bowl and chocolate as one body against a litre of water.
     */
    @Test
    void twoBodiesComeTogetherExponentially() {
        Kitchen slow = with(
                closed(0.5, WallMaterial.ALUMINIUM, 150, Vessel.offTheHeat(1, 0, 50, 0)),
                Exchange.USUAL.withoutRoom().withContact(100_000, 100_000, 100_000));
        double chocolate = 0.5 * 1590 + 150;
        double water = 4180;
        double conductance = slow.wettedSquareMetres() * slow.bowl().throughHalf(50);
        KitchenState later = slow.advance(
                KitchenState.melted(38, new Baths(70, 48, 20)),
                Hands.stirringAt(Spot.COLD_WATER),
                Duration.ofMinutes(8));
        double mean = (chocolate * 38 + water * 20) / (chocolate + water);
        double left = StrictMath.exp(-480 * conductance * (1 / chocolate + 1 / water));
        assertEquals(mean + (38 - mean) * left, later.bulkCelsius(), 0.01);
        assertEquals(mean + (20 - mean) * left, later.coldWaterCelsius(), 0.002);
        assertTrue(left > 0.2 && left < 0.8, "left " + left);
    }

    /**
     * A wall between water kept warm and chocolate stirred in the cold: the temperature falls along the resistances in
     * series, 1/h_w, half the wall, half the wall, 1/h_c. Source: Incropera and DeWitt, plane wall; from memory.
     */
    @ParameterizedTest
    @EnumSource(WallMaterial.class)
    void aWallComesToRestBetweenItsResistances(WallMaterial material) {
        Kitchen usual = usual(material, 3, 5);
        Kitchen kitchen = new Kitchen(
                usual.chocolate(),
                new BowlWall(material, 3, 1, 0),
                Exchange.USUAL.withoutRoom().withContact(200, 100_000, 100_000),
                usual.hotBath(),
                Vessel.offTheHeat(50, 0, 550, 0),
                usual.coldWater(),
                Room.at(21),
                usual.tip(),
                Spoon.NONE);
        KitchenState state = kitchen.advance(
                KitchenState.melted(28, BATHS), Hands.stirringAt(Spot.WARM_BATH), Duration.ofSeconds(90));
        KitchenState next = kitchen.advance(state, Hands.stirringAt(Spot.WARM_BATH), Duration.ofSeconds(1));
        double half = 0.0015 / material.conductivityWattsPerMetreKelvin();
        double outside = 1.0 / 550 + half;
        double inside = 1.0 / 200 + half;
        double warming =
                (next.wallCelsius() - state.wallCelsius()) * kitchen.bowl().joulesPerKelvin(1);
        // what the wall keeps for itself while all slowly warms shifts it by that flux times the parallel resistance
        double kept = warming / (1 / outside + 1 / inside);
        double expected = (48 / outside + state.layerCelsius() / inside) / (1 / outside + 1 / inside) - kept;
        double water = state.warmBathCelsius() - 48;
        assertEquals(expected, state.wallCelsius(), 0.03 + Math.abs(water));
    }

    /** Two lags in a row: {@code 1 − (τ1 e^(−t/τ1) − τ2 e^(−t/τ2))/(τ1 − τ2)} of a step; textbook. */
    @ParameterizedTest
    @CsvSource({"1, 4, 1", "4, 4, 1", "12, 4, 1", "4, 4, 0.5", "20, 15, 0"})
    void aTipAnswersAStepAsTwoLagsInARow(double seconds, double lag, double vigour) {
        Kitchen kitchen = with(
                closed(1, WallMaterial.STEEL, 150, Vessel.offTheHeat(2, 0, 550, 0)),
                new Tip(lag, 1.5, 0.2, 150, 1, 0, 0));
        KitchenState s = KitchenState.melted(30, BATHS);
        KitchenState cold = new KitchenState(
                s.elapsed(),
                s.spot(),
                s.bulk(),
                s.layer(),
                s.surface(),
                0,
                0,
                30,
                30,
                0,
                s.hot(),
                70,
                s.warm(),
                s.cold(),
                30,
                30,
                new Probes(20, 20, 70),
                HeatLedger.EMPTY);
        Hands hands = new Hands(Spot.TABLE, vigour, Hands.Towel.LEFT);
        double tip = kitchen.advance(cold, hands, Duration.ofMillis(Math.round(seconds * 1000)))
                .tipCelsius();
        double sheath = 0.8 * lag * StrictMath.pow(1.5, 1 - vigour);
        double junction = 0.2 * lag;
        double left = (sheath * StrictMath.exp(-seconds / sheath) - junction * StrictMath.exp(-seconds / junction))
                / (sheath - junction);
        assertEquals(30 - 10 * left, tip, 0.02);
    }

    /** A stem dipped λ deep reads 1/cosh 1 = 0.648 of the way to the room; six λ deep 0.5 %. Incropera, fins. */
    @ParameterizedTest
    @CsvSource({"5, 0.648054", "10, 0.265802", "30, 0.004958"})
    void aShortStemReadsTowardsTheRoom(double depth, double share) {
        Kitchen kitchen = with(
                closed(1, WallMaterial.STEEL, 150, Vessel.offTheHeat(2, 0, 550, 0)),
                new Tip(4, 1.5, 0.15, depth, 5, 0, 0));
        KitchenState later =
                kitchen.advance(KitchenState.melted(31, BATHS), Hands.stirringAt(Spot.TABLE), Duration.ofMinutes(5));
        assertEquals(31 - share * 10, later.tipCelsius(), 1e-4);
    }

    /** What leans on the wall reads between the chocolate, the layer and the wall; what is out reads the room. */
    @Test
    void aProbeFeelsWhatItTouches() {
        Kitchen kitchen = with(usual(WallMaterial.STEEL, 1, 0.5), new Tip(1, 1.5, 0.15, 150, 5, 0.4, 0));
        KitchenState before = KitchenState.melted(29, BATHS);
        Hands warming = Hands.stirringAt(Spot.WARM_BATH);
        Duration time = Duration.ofSeconds(40);
        KitchenState free = kitchen.advance(before, warming, time);
        KitchenState leaning = kitchen.advance(before, warming.probeAt(ProbePlace.AT_WALL), time);
        KitchenState out = kitchen.advance(before, warming.probeAt(ProbePlace.OUT), time);
        double more = leaning.tipCelsius() - free.tipCelsius();
        double expected = 0.4 * (0.6 * free.wallCelsius() + 0.4 * free.layerCelsius() - free.bulkCelsius());
        assertEquals(expected, more, 0.1 * expected);
        assertTrue(more > 1, "the wall is no warmer than the chocolate");
        assertEquals(21 + 8 * StrictMath.exp(-40 / 10.2), out.tipCelsius(), 0.05, "in air twelve times as slow");
        assertEquals(free.bulkCelsius(), out.bulkCelsius());
    }

    /** From memory of steam tables: 1.2281, 2.3392, 7.3844, 19.946, 47.414, 101.42 kPa. */
    @ParameterizedTest
    @CsvSource({"10, 1228.1", "20, 2339.2", "40, 7384.4", "60, 19946", "80, 47414", "100, 101420"})
    void saturationPressureAgreesWithTheSteamTable(double celsius, double pascals) {
        assertEquals(pascals, Vapour.pascals(celsius), 0.003 * pascals);
        assertEquals(pascals / 461.5 / (celsius + 273.15), Vapour.saturated(celsius), 0.003 * pascals / 150_000);
    }

    /**
     * Evaporation from a warm bath. ASHRAE Handbook, HVAC Applications, natatoriums: {@code w = A (p_w − p_a)(0.089 +
     * 0.0782 V)/Y} in kg/s, kPa, m/s and kJ/kg; from memory. In still kitchen air, V = 0 to 0.15 m/s.
     */
    @ParameterizedTest
    @CsvSource({"30", "40", "50", "60", "70"})
    void aBathEvaporatesAsTheHandbookSays(double celsius) {
        Room room = Room.at(21);
        double drive = (Vapour.pascals(celsius) - 0.5 * Vapour.pascals(21)) / 1000;
        double latent = Vapour.latentJoulesPerKilogram(celsius) / 1000;
        double still = drive * 0.089 / latent;
        double moving = drive * (0.089 + 0.0782 * 0.15) / latent;
        double ours = Vapour.fromOpenWater(celsius, room);
        System.out.printf(
                "evaporation at %.0f C: %.2f g/m2s, handbook %.2f to %.2f%n",
                celsius, 1000 * ours, 1000 * still, 1000 * moving);
        assertTrue(ours > 0.8 * still && ours < 1.25 * moving, ours + " against " + still + " to " + moving);
    }

    /** What evaporates is missing afterwards, and took its heat with it. */
    @Test
    void anOpenPotLosesTheWaterItsHeatSays() {
        Kitchen usual = usual(WallMaterial.STEEL, 0.8, 0.5);
        Kitchen kitchen = new Kitchen(
                usual.chocolate(),
                usual.bowl(),
                usual.exchange(),
                new Vessel(2, 400, 550, 0, 0, 0),
                Vessel.offTheHeat(2, 0, 550, 0).open(0.04),
                usual.coldWater(),
                21,
                usual.tip());
        KitchenState start = KitchenState.melted(30, new Baths(21, 60, 21));
        KitchenState later = kitchen.advance(start, Hands.leaving(Spot.TABLE), Duration.ofMinutes(10));
        double gone = later.warm().goneKilograms();
        double cooled = 2 * 4180 * (60 - later.warmBathCelsius());
        assertTrue(gone > 0.01 && gone < 0.06, "gone " + gone);
        assertEquals(gone * Vapour.latentJoulesPerKilogram(57), cooled, 0.02 * cooled);
    }

    /** A boiling pot turns what the burner gives into steam and stays at 100 °C. */
    @Test
    void aPotBoilsAtAHundred() {
        Kitchen usual = usual(WallMaterial.STEEL, 0.8, 0.5);
        Kitchen kitchen = new Kitchen(
                usual.chocolate(),
                usual.bowl(),
                usual.exchange(),
                new Vessel(1, 400, 550, 0, 1500, 110, 0, 0.5, 60),
                usual.warmBath(),
                usual.coldWater(),
                21,
                usual.tip());
        Hands away = Hands.leaving(Spot.TABLE);
        KitchenState hot = kitchen.advance(KitchenState.melted(30, new Baths(95, 40, 15)), away, Duration.ofMinutes(5));
        KitchenState later = kitchen.advance(hot, away, Duration.ofMinutes(5));
        double burnt = later.ledger().fromBurnerJoules() - hot.ledger().fromBurnerJoules();
        double gone = later.hot().goneKilograms() - hot.hot().goneKilograms();
        assertEquals(100, later.hotBathCelsius(), 1);
        assertEquals(burnt / Vapour.latentJoulesPerKilogram(100), gone, 0.03 * gone);
        assertTrue(later.potCelsius() > later.hotBathCelsius() + 1, "the metal is no warmer than the water");
    }

    /** The same rates solved by a library's explicit method of eighth order with its own small steps. */
    @ParameterizedTest
    @EnumSource(
            value = Spot.class,
            names = {"TABLE", "WARM_BATH", "HOT_BATH", "FRIDGE"})
    void aLibrarysIntegratorComesToTheSame(Spot spot) {
        Kitchen kitchen = usual(WallMaterial.GLASS, 4, 0.5);
        Hands hands = Hands.stirringAt(spot);
        KitchenState wet = kitchen.advance(
                KitchenState.melted(29, BATHS), Hands.stirringAt(Spot.WARM_BATH), Duration.ofSeconds(20));
        Passage passage = new Passage(kitchen, hands, wet, 1);
        double[] heat = passage.heat();
        HeatFlow flow = passage.flow();
        FirstOrderDifferentialEquations equations = new FirstOrderDifferentialEquations() {
            @Override
            public int getDimension() {
                return Part.DIMENSION;
            }

            @Override
            public void computeDerivatives(double t, double[] y, double[] rate) {
                flow.freeze(y);
                flow.rates(y, rate);
            }
        };
        new DormandPrince853Integrator(1e-6, 0.05, 1e-9, 1e-9).integrate(equations, 0, heat, 60, heat);
        double[] expected = flow.celsius(heat);
        KitchenState state = kitchen.advance(wet, hands, Duration.ofSeconds(60));
        assertEquals(expected[Part.BULK], state.bulkCelsius(), 0.01);
        assertEquals(expected[Part.WALL], state.wallCelsius(), 0.01);
        assertEquals(expected[Part.FILM], state.filmCelsius(), 0.01);
        assertEquals(expected[Part.HOT], state.hotBathCelsius(), 0.01);
        assertEquals(expected[Part.SURFACE], state.surfaceCelsius(), 0.01);
    }
}
