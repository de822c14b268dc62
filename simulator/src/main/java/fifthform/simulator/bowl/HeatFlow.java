package fifthform.simulator.bowl;

import java.time.Duration;
import java.util.Arrays;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;

/**
 * Rates of change of the kitchen's heat while the hands stay as they are.
 *
 * <p>The vector holds heat in J for the parts (index {@link #BULK} to {@link #COLD}), temperatures in °C for the two
 * probes, which take part in nothing, and the two running sums of the ledger in J. Lives within one
 * {@link Kitchen#advance}.
 */
final class HeatFlow implements FirstOrderDifferentialEquations {
    private static final int BULK = 0;
    private static final int LAYER = 1;
    private static final int WALL = 2;
    private static final int FILM = 3;
    private static final int HOT = 4;
    private static final int WARM = 5;
    private static final int COLD = 6;
    private static final int TIP_CELSIUS = 7;
    private static final int BATH_TIP_CELSIUS = 8;
    private static final int FROM_BURNER = 9;
    private static final int TO_ROOM = 10;
    private static final int DIMENSION = 11;

    /** Between the film and the wall when no bath stirs it, W/m²K: as quick as the film in a bath. A guess. */
    private static final double CLINGING_WATTS_PER_SQUARE_METRE_KELVIN = 1100;

    /** A probe in water that moves follows within seconds; a guess (no source). */
    private static final double BATH_TIP_LAG_SECONDS = 5;

    private final Kitchen kitchen;
    private final Hands hands;
    private final Chocolate chocolate;
    private final double layerKilograms;
    private final double bulkKilograms;
    private final double area;
    private final double wallJoulesPerKelvin;
    private final double filmJoulesPerKelvin;
    private final double layerToBulk;
    private final double layerToWall;
    private final double tipLagSeconds;
    private double bulkUnmelted;
    private double layerUnmelted;

    HeatFlow(Kitchen kitchen, Hands hands, double filmKilograms) {
        this.kitchen = kitchen;
        this.hands = hands;
        Exchange exchange = kitchen.exchange();
        chocolate = kitchen.chocolate();
        layerKilograms = chocolate.kilograms() * exchange.layerFraction();
        bulkKilograms = chocolate.kilograms() - layerKilograms;
        area = chocolate.wettedSquareMetres();
        wallJoulesPerKelvin = kitchen.bowl().joulesPerKelvin(area);
        filmJoulesPerKelvin = filmKilograms * Water.JOULES_PER_KILOGRAM_KELVIN;
        layerToBulk = area * exchange.layerToBulk(hands.stirVigourFraction());
        layerToWall = area * kitchen.bowl().throughHalf(exchange.wallToLayer());
        tipLagSeconds = kitchen.tip().lagSeconds(hands.stirVigourFraction());
    }

    /** The vector of this state. */
    double[] heatOf(KitchenState state) {
        bulkUnmelted = state.bulkUnmeltedFraction();
        layerUnmelted = state.layerUnmeltedFraction();
        double[] heat = new double[DIMENSION];
        heat[BULK] = bulkKilograms * chocolate.joulesPerKilogram(state.bulkCelsius(), bulkUnmelted);
        heat[LAYER] = layerKilograms * chocolate.joulesPerKilogram(state.layerCelsius(), layerUnmelted);
        heat[WALL] = wallJoulesPerKelvin * state.wallCelsius();
        heat[FILM] = filmJoulesPerKelvin * state.filmCelsius();
        heat[HOT] = kitchen.hotBath().joulesPerKelvin() * state.hotBathCelsius();
        heat[WARM] = kitchen.warmBath().joulesPerKelvin() * state.warmBathCelsius();
        heat[COLD] = kitchen.coldWater().joulesPerKelvin() * state.coldWaterCelsius();
        heat[TIP_CELSIUS] = state.tipCelsius();
        heat[BATH_TIP_CELSIUS] = state.bathTipCelsius();
        heat[FROM_BURNER] = state.ledger().fromBurnerJoules();
        heat[TO_ROOM] = state.ledger().toRoomJoules();
        return heat;
    }

    /** The state with this vector; what the vector does not hold stays as it was before. */
    KitchenState stateAfter(KitchenState before, Duration elapsed, double[] heat) {
        HeatLedger ledger = new HeatLedger(
                heat[FROM_BURNER],
                heat[TO_ROOM],
                before.ledger().withWaterJoules(),
                before.ledger().wipedOffJoules());
        double wallCelsius = heat[WALL] / wallJoulesPerKelvin;
        return new KitchenState(
                elapsed,
                bulkCelsius(heat),
                layerCelsius(heat),
                bulkUnmelted,
                layerUnmelted,
                wallCelsius,
                filmJoulesPerKelvin == 0 ? wallCelsius : heat[FILM] / filmJoulesPerKelvin,
                before.filmKilograms(),
                hotCelsius(heat),
                warmCelsius(heat),
                coldCelsius(heat),
                heat[TIP_CELSIUS],
                heat[BATH_TIP_CELSIUS],
                ledger);
    }

    /** After a step: what was warm enough to melt has melted for good. */
    void keepMelted(double[] heat) {
        bulkUnmelted = Math.min(bulkUnmelted, chocolate.unmeltedAt(bulkCelsius(heat)));
        layerUnmelted = Math.min(layerUnmelted, chocolate.unmeltedAt(layerCelsius(heat)));
    }

    @Override
    public int getDimension() {
        return DIMENSION;
    }

    @Override
    public void computeDerivatives(double t, double[] heat, double[] rate) {
        Arrays.fill(rate, 0);
        insideTheBowl(heat, rate);
        outsideTheBowl(heat, rate);
        vessel(HOT, kitchen.hotBath(), hotCelsius(heat), rate);
        vessel(WARM, kitchen.warmBath(), warmCelsius(heat), rate);
        vessel(COLD, kitchen.coldWater(), coldCelsius(heat), rate);
        rate[TIP_CELSIUS] = (bulkCelsius(heat) - heat[TIP_CELSIUS]) / tipLagSeconds;
        rate[BATH_TIP_CELSIUS] = (probedBathCelsius(heat) - heat[BATH_TIP_CELSIUS]) / BATH_TIP_LAG_SECONDS;
    }

    private void insideTheBowl(double[] heat, double[] rate) {
        double bulkCelsius = bulkCelsius(heat);
        double layerCelsius = layerCelsius(heat);
        double wallCelsius = heat[WALL] / wallJoulesPerKelvin;
        pass(WALL, LAYER, layerToWall * Exchange.throughLumps(layerUnmelted) * (wallCelsius - layerCelsius), rate);
        pass(LAYER, BULK, layerToBulk * Exchange.throughLumps(bulkUnmelted) * (layerCelsius - bulkCelsius), rate);
        toRoom(BULK, area * kitchen.exchange().surfaceToAir() * (bulkCelsius - kitchen.roomCelsius()), rate);
    }

    private void outsideTheBowl(double[] heat, double[] rate) {
        switch (hands.spot()) {
            case TABLE -> inAir(heat, rate);
            case COOL_CLOTH -> onCloth(heat, rate);
            case HOT_BATH -> inWater(HOT, kitchen.hotBath(), hotCelsius(heat), heat, rate);
            case WARM_BATH -> inWater(WARM, kitchen.warmBath(), warmCelsius(heat), heat, rate);
            case COLD_WATER -> inWater(COLD, kitchen.coldWater(), coldCelsius(heat), heat, rate);
        }
    }

    private void inAir(double[] heat, double[] rate) {
        double wallCelsius = heat[WALL] / wallJoulesPerKelvin;
        if (filmJoulesPerKelvin == 0) {
            toRoom(WALL, area * kitchen.exchange().dryToAir() * (wallCelsius - kitchen.roomCelsius()), rate);
            return;
        }
        double filmCelsius = heat[FILM] / filmJoulesPerKelvin;
        clinging(filmCelsius, wallCelsius, CLINGING_WATTS_PER_SQUARE_METRE_KELVIN, rate);
        toRoom(FILM, area * kitchen.exchange().wetToAir() * (filmCelsius - kitchen.roomCelsius()), rate);
    }

    private void onCloth(double[] heat, double[] rate) {
        double wallCelsius = heat[WALL] / wallJoulesPerKelvin;
        if (filmJoulesPerKelvin != 0) {
            double filmCelsius = heat[FILM] / filmJoulesPerKelvin;
            clinging(filmCelsius, wallCelsius, CLINGING_WATTS_PER_SQUARE_METRE_KELVIN, rate);
        }
        double throughCloth = kitchen.bowl().throughHalf(kitchen.exchange().clothToWall());
        pass(WALL, COLD, area * throughCloth * (wallCelsius - coldCelsius(heat)), rate);
    }

    /** Bath, film and wall in a row: half of the bath's resistance on either side of the film. */
    private void inWater(int vessel, Vessel water, double waterCelsius, double[] heat, double[] rate) {
        double wallCelsius = heat[WALL] / wallJoulesPerKelvin;
        double contact = water.contactWattsPerSquareMetreKelvin();
        if (filmJoulesPerKelvin == 0) {
            pass(vessel, WALL, area * kitchen.bowl().throughHalf(contact) * (waterCelsius - wallCelsius), rate);
            return;
        }
        double filmCelsius = heat[FILM] / filmJoulesPerKelvin;
        pass(vessel, FILM, area * 2 * contact * (waterCelsius - filmCelsius), rate);
        clinging(filmCelsius, wallCelsius, 2 * contact, rate);
    }

    private void clinging(double filmCelsius, double wallCelsius, double wattsPerSquareMetreKelvin, double[] rate) {
        double through = area * kitchen.bowl().throughHalf(wattsPerSquareMetreKelvin);
        pass(FILM, WALL, through * (filmCelsius - wallCelsius), rate);
    }

    private void vessel(int index, Vessel vessel, double celsius, double[] rate) {
        double burnerWatts = vessel.burnerWattsAt(celsius);
        rate[index] += burnerWatts;
        rate[FROM_BURNER] += burnerWatts;
        toRoom(index, vessel.lossWattsPerKelvin() * (celsius - kitchen.roomCelsius()), rate);
    }

    private static void pass(int from, int to, double watts, double[] rate) {
        rate[from] -= watts;
        rate[to] += watts;
    }

    private static void toRoom(int from, double watts, double[] rate) {
        pass(from, TO_ROOM, watts, rate);
    }

    /** The bath probe hangs in the pot while the bowl is over it, and waits in the warm water from then on. */
    private double probedBathCelsius(double[] heat) {
        return hands.spot() == Spot.HOT_BATH ? hotCelsius(heat) : warmCelsius(heat);
    }

    private double bulkCelsius(double[] heat) {
        return chocolate.celsius(heat[BULK] / bulkKilograms, bulkUnmelted);
    }

    private double layerCelsius(double[] heat) {
        return chocolate.celsius(heat[LAYER] / layerKilograms, layerUnmelted);
    }

    private double hotCelsius(double[] heat) {
        return heat[HOT] / kitchen.hotBath().joulesPerKelvin();
    }

    private double warmCelsius(double[] heat) {
        return heat[WARM] / kitchen.warmBath().joulesPerKelvin();
    }

    private double coldCelsius(double[] heat) {
        return heat[COLD] / kitchen.coldWater().joulesPerKelvin();
    }
}
