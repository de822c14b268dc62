package fifthform.simulator.bowl;

import static fifthform.simulator.bowl.Kitchens.BATHS;
import static fifthform.simulator.bowl.Kitchens.closed;
import static fifthform.simulator.bowl.Kitchens.highestCelsius;
import static fifthform.simulator.bowl.Kitchens.until;
import static fifthform.simulator.bowl.Kitchens.usual;
import static fifthform.simulator.bowl.Kitchens.with;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.simulator.bowl.KitchenState.Baths;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The kitchen against closed solutions, reference tables and its own books. */
class KitchenTest {
    private static final Vessel TWO_LITRES = Vessel.offTheHeat(2, 0, 550, 0);

    /** Newton's law of cooling: T = room + (T0 − room) exp(−t k/C). Incropera & DeWitt, lumped capacitance; from memory. */
    @Test
    void aPotOffTheHeatCoolsAsNewtonSays() {
        Kitchen kitchen = usual(WallMaterial.STEEL, 0.8, 0.5);
        KitchenState start = KitchenState.melted(45, BATHS);
        double capacity = 2 * 4180 + 400;
        for (int minute : new int[] {1, 10, 60}) {
            KitchenState later = kitchen.advance(start, Hands.leaving(Spot.TABLE), Duration.ofMinutes(minute));
            double expected = 21 + (48 - 21) * StrictMath.exp(-minute * 60 * 1.5 / capacity);
            assertEquals(expected, later.warmBathCelsius(), 1e-6, minute + " min");
        }
    }

    /**
     * A dry bowl on the table, inside as quick as the model allows: one lump to a Biot number of 19/2000. Source as
     * above.
     */
    @Test
    void aStirredBowlInAirCoolsNearlyAsOneLump() {
        Exchange quick = new Exchange(0.12, 20_000, 20_000, 20_000, 11, 20, 10, 60, 0.05, 1, 0);
        Kitchen kitchen = with(with(usual(WallMaterial.STEEL, 0.8, 0.5), quick), Spoon.NONE);
        KitchenState start = KitchenState.melted(39, BATHS);
        double area = kitchen.wettedSquareMetres();
        double capacity = 0.5 * 1590 + kitchen.bowl().joulesPerKelvin(area);
        KitchenState later = kitchen.advance(start, Hands.stirringAt(Spot.TABLE), Duration.ofMinutes(10));
        double expected = 21 + (39 - 21) * StrictMath.exp(-600 * (10 + 0.8 * 11) * area / capacity);
        assertEquals(expected, later.bulkCelsius(), 0.01);
    }

    static Stream<List<String>> equilibriumRows() throws IOException {
        try (InputStream in = KitchenTest.class.getResourceAsStream("/reference/bath_examples.csv")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                            .lines()
                            .filter(line -> line.startsWith("E"))
                            .map(line -> List.of(line.split(",", -1)))
                            .filter(row -> Double.parseDouble(row.get(10)) == 0)
                            .toList()
                            .stream();
        }
    }

    /**
     * Chocolate and bowl left in cold water end where calorimetry says. Source: rows E of the reference table of bath
     * examples; the two rows in which crystals form wait for crystals in the simulator.
     */
    @ParameterizedTest
    @MethodSource("equilibriumRows")
    void twoBodiesEndAtTheCalorimetricMean(List<String> row) {
        double kilograms = Double.parseDouble(row.get(2));
        double chocolateCelsius = Double.parseDouble(row.get(4));
        double bowlJoulesPerKelvin = Double.parseDouble(row.get(6)) * Double.parseDouble(row.get(7));
        double waterKilograms = Double.parseDouble(row.get(8));
        double waterCelsius = Double.parseDouble(row.get(9));
        double expected = Double.parseDouble(row.get(15));
        WallMaterial material = row.get(7).equals("840.0") ? WallMaterial.GLASS : WallMaterial.STEEL;
        Kitchen kitchen =
                closed(kilograms, material, bowlJoulesPerKelvin, Vessel.offTheHeat(waterKilograms, 0, 550, 0));
        KitchenState start = KitchenState.melted(chocolateCelsius, new Baths(70, 48, waterCelsius));
        KitchenState end = kitchen.advance(start, Hands.stirringAt(Spot.COLD_WATER), Duration.ofHours(5));
        assertEquals(expected, end.bulkCelsius(), 1e-7 * expected, row.get(0));
        assertEquals(expected, end.coldWaterCelsius(), 1e-7 * expected, row.get(0));
    }

    @Test
    void theTableHasFourRowsWithoutCrystals() throws IOException {
        assertEquals(4, equilibriumRows().count());
    }

    /** Off the bath and without losses everything ends at (c_C C + c_L L + c_W W)/sum: calorimetry. */
    @ParameterizedTest
    @MethodSource("materials")
    void theCoastEndsWhereTheStoredHeatSays(WallMaterial material) {
        Kitchen kitchen = closed(0.5, material, 150, TWO_LITRES);
        KitchenState cool = KitchenState.melted(27.5, BATHS);
        Hands warming = Hands.stirringAt(Spot.WARM_BATH);
        KitchenState lifted = until(kitchen, cool, warming, s -> s.bulkCelsius() >= 31);
        double layer = 0.5 * kitchen.exchange().layerFraction() * 1590;
        double surface = 0.5 * kitchen.exchange().surfaceFraction() * 1590;
        double bulk = 0.5 * 1590 - layer - surface;
        double expected = (bulk * lifted.bulkCelsius()
                        + layer * lifted.layerCelsius()
                        + surface * lifted.surfaceCelsius()
                        + 150 * lifted.wallCelsius())
                / (bulk + layer + surface + 150);
        KitchenState end = kitchen.advance(lifted, Hands.stirringAt(Spot.TABLE), Duration.ofHours(1));
        assertEquals(expected, end.bulkCelsius(), 1e-9);
        assertTrue(expected > lifted.bulkCelsius() + 0.1, "nothing coasted");
    }

    static Stream<WallMaterial> materials() {
        return Stream.of(WallMaterial.values());
    }

    private static KitchenState afterADip(Kitchen kitchen, Duration step) {
        KitchenState start = KitchenState.melted(27.5, BATHS);
        KitchenState warm = kitchen.advance(start, Hands.stirringAt(Spot.WARM_BATH), Duration.ofSeconds(80), step);
        return kitchen.advance(warm, Hands.stirringAt(Spot.TABLE), Duration.ofSeconds(40), step);
    }

    /** Melting costs 46 kJ/kg on top of the warming. Source: Beckett ed. 2009, pp. 667–668. */
    @Test
    void meltingTakesTheLatentHeatOnce() {
        Chocolate chocolate = Chocolate.dark(1);
        double warmed = new Portion(39, Melting.MELTED).joulesPerKilogram(chocolate)
                - new Portion(20, Melting.SOLID).joulesPerKilogram(chocolate);
        assertEquals(46_000 + 19 * 1590, warmed, 1e-9);
        for (double joules = -46_000; joules < 100_000; joules += 500) {
            Crystals settled = Melting.SOLID.settled(chocolate, joules, 1, 1);
            double celsius = Chocolate.celsiusOfSensible(joules + settled.boundJoulesPerKilogram(chocolate));
            assertEquals(chocolate.unmeltedAt(celsius), settled.solidFraction(), 1e-9);
        }
        Crystals half = new Melting(0.5);
        double cooler = new Portion(26, half).joulesPerKilogram(chocolate);
        assertEquals(half, half.settled(chocolate, cooler, 1, 1), "what has melted must not give its heat back");
    }

    @Test
    void aWipedBowlCoastsLess() {
        Kitchen usual = usual(WallMaterial.STEEL, 0.8, 0.5);
        Kitchen kitchen = new Kitchen(
                usual.chocolate(),
                new BowlWall(WallMaterial.STEEL, 0.8, 1.3, 0.5),
                usual.exchange(),
                usual.hotBath(),
                usual.warmBath(),
                usual.coldWater(),
                21,
                usual.tip());
        KitchenState lifted = until(
                kitchen,
                KitchenState.melted(27.5, BATHS),
                Hands.stirringAt(Spot.WARM_BATH),
                s -> s.bulkCelsius() >= 31);
        double wet = highestCelsius(kitchen, lifted, Hands.stirringAt(Spot.TABLE));
        double wiped = highestCelsius(kitchen, lifted, new Hands(Spot.TABLE, 1, Hands.Towel.WIPING));
        assertTrue(wiped < wet - 0.05, wiped + " wiped, " + wet + " wet");
    }

    /** The spans of the reference schedule, which knows neither film nor layers: about these rates and coasts. */
    @Test
    void theBowlsBehaveAsMakersKnowThem() {
        double steel = coast(WallMaterial.STEEL, 0.8, 0.5);
        double more = coast(WallMaterial.STEEL, 0.8, 1);
        double glass = coast(WallMaterial.GLASS, 5, 0.5);
        assertTrue(steel > 0.5 && steel < 1.8, "steel " + steel);
        assertTrue(more > 0.3 && more < steel, "1 kg " + more);
        assertTrue(glass > 1.3 * steel && glass < 3 * steel, "glass " + glass + ", steel " + steel);
        double rate = rateKelvinPerMinute(WallMaterial.STEEL, 0.8, 0.5);
        assertTrue(rate > 1.5 && rate < 4.2, "rate " + rate);
    }

    private static KitchenState liftedAt31(Kitchen kitchen) {
        return until(
                kitchen,
                KitchenState.melted(27.5, BATHS),
                Hands.stirringAt(Spot.WARM_BATH),
                s -> s.bulkCelsius() >= 31);
    }

    private static double coast(WallMaterial material, double millimetres, double kilograms) {
        Kitchen kitchen = usual(material, millimetres, kilograms);
        KitchenState lifted = liftedAt31(kitchen);
        double coast = highestCelsius(kitchen, lifted, Hands.stirringAt(Spot.TABLE)) - lifted.bulkCelsius();
        return coast;
    }

    private static double rateKelvinPerMinute(WallMaterial material, double millimetres, double kilograms) {
        Kitchen kitchen = usual(material, millimetres, kilograms);
        KitchenState at = liftedAt31(kitchen);
        KitchenState later = kitchen.advance(at, Hands.stirringAt(Spot.WARM_BATH), Duration.ofSeconds(6));
        return (later.bulkCelsius() - at.bulkCelsius()) * 10;
    }

    /** Recorded once on JDK 17; JDK 25 and every other machine must come to the same last bit. */
    @Test
    void theSameKitchenGivesTheSameBitsOnEveryMachine() {
        KitchenState end = afterADip(usual(WallMaterial.GLASS, 4, 0.7), Kitchen.LONGEST_STEP);
        assertEquals("0x1.e4c88df7bcbafp4", Double.toHexString(end.bulkCelsius()));
        assertEquals("0x1.9cb73038ae507p13", Double.toHexString(end.ledger().toRoomJoules()));
    }
}
