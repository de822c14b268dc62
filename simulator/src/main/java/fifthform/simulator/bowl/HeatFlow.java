package fifthform.simulator.bowl;

import static fifthform.simulator.bowl.Part.BULK;
import static fifthform.simulator.bowl.Part.CLOTH;
import static fifthform.simulator.bowl.Part.COLD;
import static fifthform.simulator.bowl.Part.COLD_KILOGRAMS;
import static fifthform.simulator.bowl.Part.DIMENSION;
import static fifthform.simulator.bowl.Part.FILM;
import static fifthform.simulator.bowl.Part.FILM_KILOGRAMS;
import static fifthform.simulator.bowl.Part.FROM_BLOWER;
import static fifthform.simulator.bowl.Part.FROM_BURNER;
import static fifthform.simulator.bowl.Part.HOT;
import static fifthform.simulator.bowl.Part.HOT_KILOGRAMS;
import static fifthform.simulator.bowl.Part.LAYER;
import static fifthform.simulator.bowl.Part.POT;
import static fifthform.simulator.bowl.Part.SPOON;
import static fifthform.simulator.bowl.Part.STORING;
import static fifthform.simulator.bowl.Part.SURFACE;
import static fifthform.simulator.bowl.Part.TO_ROOM;
import static fifthform.simulator.bowl.Part.WALL;
import static fifthform.simulator.bowl.Part.WARM;
import static fifthform.simulator.bowl.Part.WARM_KILOGRAMS;
import static fifthform.simulator.bowl.Part.WITH_VAPOUR;

/**
 * Rates of change of the kitchen's heat while the hands stay as they are: linear in the temperatures between two calls of
 * {@link #freeze}, which sets what changes slowly (radiation, evaporation, lumps, amounts of water).
 *
 * <p>Bath, film, wall, layer, bulk and surface stand in a row, each exchanging heat with its neighbours; {@link #chain}
 * and {@link #links} say which and how well. All else hangs on them loosely. Lives within one {@link Kitchen#advance}.
 */
final class HeatFlow {
    /** Water that clings to a bowl, warm water seen from the room: 0.95; chocolate: 0.9. Handbook, from memory. */
    private static final double WET_EMISSIVITY = 0.95;

    private static final double CHOCOLATE_EMISSIVITY = 0.9;

    /** The top of a spherical cap of usual depth over its bottom. Geometry of the reference schedule's bowls. */
    private static final double TOP_FRACTION = 0.8;

    /** Moist air between hot water and a bowl above it, W/m²K; gives 120 with condensation as the method page has it. */
    private static final double STEAM_WATTS_PER_SQUARE_METRE_KELVIN = 8;

    /** A bowl on a pot leaves a gap, a bowl in a basin some open water. Guesses. */
    private static final double OPEN_UNDER_A_LID_FRACTION = 0.15;

    private static final double OPEN_AROUND_A_BOWL_FRACTION = 0.5;

    /** Above the boiling point all heat goes into steam within about this time. Only has to be short. */
    private static final double BOIL_SECONDS = 1;

    /** With less than this a pot counts as dry, and whoever stands there has turned the burner off. */
    private static final double DRY_KILOGRAMS = 0.02;

    private static final double SEIZED_BY_WATER_FRACTION = 0.02;
    private static final double DRAUGHT_FACTOR_IN_FRIDGE = 1.5;
    private static final double FRIDGE_HUMIDITY_FRACTION = 0.7;
    private static final int NOWHERE = -1;

    private final Kitchen kitchen;
    private final Hands hands;
    private final Chocolate chocolate;
    private final Exchange exchange;
    private final BowlWall bowl;
    private final double area;
    private final double airCelsius;
    private final double airVapour;
    private final double stirring;
    private final double wallJoulesPerKelvin;
    private final int contact;

    private final double[] kilograms = new double[STORING];
    private final double[] bound = new double[STORING];
    private final double[] capacity = new double[STORING];
    private final double[] celsius = new double[STORING];
    private final int[] chain = new int[6];
    private final double[] links = new double[5];
    private int chained;
    private int inside;

    private Crystals layer = Melting.MELTED;
    private Crystals bulk = Melting.MELTED;
    private Crystals surface = Melting.MELTED;
    private int outer = WALL;
    private double directToWall;
    private double outerToAir;
    private double surfaceToAir;
    private double jet;
    private double clothToWall;
    private double filmEvaporates;
    private double hotEvaporates;
    private double warmEvaporates;
    private double coldEvaporates;

    HeatFlow(Kitchen kitchen, Hands hands, double seedKilograms, double splashKilograms) {
        this.kitchen = kitchen;
        this.hands = hands;
        chocolate = kitchen.chocolate();
        exchange = kitchen.exchange();
        bowl = kitchen.bowl();
        area = kitchen.wettedSquareMetres();
        boolean inFridge = hands.spot() == Spot.FRIDGE;
        airCelsius = switch (hands.spot()) {
            case FRIDGE -> kitchen.room().fridgeCelsius();
            case WARM_BOX -> hands.boxCelsius();
            default -> kitchen.room().celsius();
        };
        airVapour = inFridge
                ? FRIDGE_HUMIDITY_FRACTION * Vapour.saturated(airCelsius)
                : kitchen.room().vapour();
        double seized = Math.min(1, splashKilograms / (SEIZED_BY_WATER_FRACTION * chocolate.kilograms()));
        stirring = exchange.layerToBulk(hands.stirVigourFraction() * (1 - seized));
        wallJoulesPerKelvin = bowl.joulesPerKelvin(area);
        kilograms[LAYER] = chocolate.kilograms() * exchange.layerFraction();
        kilograms[SURFACE] = chocolate.kilograms() * exchange.surfaceFraction();
        kilograms[BULK] = chocolate.kilograms() - kilograms[LAYER] - kilograms[SURFACE] + seedKilograms;
        contact = switch (hands.spot()) {
            case HOT_BATH -> HOT;
            case WARM_BATH -> WARM;
            case COLD_WATER -> COLD;
            case TABLE, COOL_CLOTH, WARM_CLOTH, WARM_BOX, FRIDGE -> NOWHERE;
        };
    }

    /** Sets everything that is held still during a step. */
    void freeze(double[] heat) {
        freezeCapacities(heat);
        temperatures(heat);
        for (int i = LAYER; i <= SURFACE; i++) {
            capacity[i] = kilograms[i] * Chocolate.joulesPerKilogramKelvin(celsius[i]);
        }
        chained = 0;
        filmEvaporates = 0;
        outerToAir = 0;
        directToWall = 0;
        outside(heat[FILM_KILOGRAMS] / (Water.KILOGRAMS_PER_CUBIC_METRE * area));
        inside = chained;
        chain[chained++] = WALL;
        chain[chained++] = LAYER;
        chain[chained++] = BULK;
        chain[chained++] = SURFACE;
        inside(layer, bulk);
        above();
        vessels(heat);
    }

    /** The crystals that temperatures are reckoned with from now on. */
    void keep(Crystals inLayer, Crystals inBulk, Crystals inSurface) {
        layer = inLayer;
        bulk = inBulk;
        surface = inSurface;
        bound[LAYER] = layer.boundJoulesPerKilogram(chocolate);
        bound[BULK] = bulk.boundJoulesPerKilogram(chocolate);
        bound[SURFACE] = surface.boundJoulesPerKilogram(chocolate);
    }

    /** As {@link #keep} with what will have melted or formed after a while at these heats: keeps a step second order. */
    void lookAhead(double[] heat, double seconds) {
        Crystals layerThen = ahead(layer, LAYER, heat, seconds);
        Crystals bulkThen = ahead(bulk, BULK, heat, seconds);
        bound[LAYER] = layerThen.boundJoulesPerKilogram(chocolate);
        bound[BULK] = bulkThen.boundJoulesPerKilogram(chocolate);
        bound[SURFACE] = ahead(surface, SURFACE, heat, seconds).boundJoulesPerKilogram(chocolate);
        inside(layerThen, bulkThen);
    }

    private Crystals ahead(Crystals crystals, int part, double[] heat, double seconds) {
        return crystals.ahead(chocolate, heat[part] / kilograms[part], seconds, hands.stirVigourFraction());
    }

    /** From the wall to the layer, on to the bulk and to the surface. */
    private void inside(Crystals inLayer, Crystals inBulk) {
        double lumps = Exchange.throughLumps(inBulk.solidFraction());
        links[inside] =
                area * bowl.throughHalf(exchange.wallToLayer()) * Exchange.throughLumps(inLayer.solidFraction());
        links[inside + 1] = area * stirring * lumps;
        links[inside + 2] = TOP_FRACTION * area * stirring * lumps;
    }

    /** The capacities of everything but the chocolate at these amounts of water. */
    void freezeCapacities(double[] heat) {
        outer = heat[FILM_KILOGRAMS] > 0 ? FILM : WALL;
        capacity[HOT] = kitchen.hotBath().joulesPerKelvin(heat[HOT_KILOGRAMS]);
        capacity[POT] = Math.max(1, kitchen.hotBath().potJoulesPerKelvin());
        capacity[WARM] = kitchen.warmBath().joulesPerKelvin(heat[WARM_KILOGRAMS]);
        capacity[COLD] = kitchen.coldWater().joulesPerKelvin(heat[COLD_KILOGRAMS]);
        capacity[FILM] = heat[FILM_KILOGRAMS] * Water.JOULES_PER_KILOGRAM_KELVIN;
        capacity[WALL] = wallJoulesPerKelvin;
        capacity[SPOON] = kitchen.spoon().joulesPerKelvin();
        capacity[CLOTH] = Kitchen.CLOTH_JOULES_PER_KELVIN;
    }

    private double[] temperatures(double[] heat) {
        for (int i = 0; i < STORING; i++) {
            celsius[i] = i >= LAYER && i <= SURFACE
                    ? Chocolate.celsiusOfSensible(heat[i] / kilograms[i] + bound[i])
                    : heat[i] / capacity[i];
        }
        if (outer == WALL) celsius[FILM] = celsius[WALL];
        return celsius;
    }

    /** From this part to the next in the row. */
    private void link(int part, double wattsPerKelvin) {
        links[chained] = wattsPerKelvin;
        chain[chained++] = part;
    }

    private void outside(double filmMetres) {
        boolean wet = outer == FILM;
        double halfFilm = filmMetres / 2 / Water.WATTS_PER_METRE_KELVIN;
        if (contact != NOWHERE) {
            Vessel vessel =
                    contact == HOT ? kitchen.hotBath() : contact == WARM ? kitchen.warmBath() : kitchen.coldWater();
            double dipped = vessel.dippedFraction();
            double water = 1 / vessel.contactWattsPerSquareMetreKelvin();
            double steam = dipped == 1 ? 0 : (1 - dipped) * steam(celsius[contact], celsius[outer]);
            if (wet) link(contact, area * (dipped / Math.max(0.3 * water, water - halfFilm) + steam));
            else directToWall = area * (bowl.throughHalf(dipped / water + steam));
        } else {
            inAir(wet);
        }
        if (wet) link(FILM, area * bowl.throughHalf(1 / halfFilm));
    }

    private void inAir(boolean wet) {
        boolean onCloth = hands.spot() == Spot.COOL_CLOTH || hands.spot() == Spot.WARM_CLOTH;
        clothToWall = onCloth ? area * bowl.throughHalf(exchange.clothToWall()) : 0;
        if (onCloth) return;
        boolean onTable = hands.spot() == Spot.TABLE;
        double free = area * (onTable ? exchange.exposedFraction() : 1);
        double convection = (wet ? exchange.wetToAir() : exchange.dryToAir())
                * (hands.spot() == Spot.FRIDGE ? DRAUGHT_FACTOR_IN_FRIDGE : 1);
        double emissivity = wet ? WET_EMISSIVITY : bowl.material().emissivity();
        double toAir = convection + radiation(emissivity, celsius[outer]);
        outerToAir = free * (wet ? toAir : toAir == 0 ? 0 : bowl.throughHalf(toAir));
        if (wet) {
            double drive = Vapour.saturated(celsius[FILM]) - airVapour;
            filmEvaporates = free * Vapour.metresPerSecond(convection) * drive;
        }
    }

    private double radiation(double emissivity, double surfaceCelsius) {
        double share = exchange.radiationFraction() * emissivity;
        return share == 0 ? 0 : Radiation.wattsPerSquareMetreKelvin(share, surfaceCelsius, airCelsius);
    }

    /** Condensation and convection from vapour over hot water to a colder bowl above it, W/m²K. */
    private static double steam(double waterCelsius, double bowlCelsius) {
        double kelvin = waterCelsius - bowlCelsius;
        double sure = Math.abs(kelvin) < 0.1 ? 0.1 : kelvin;
        double slope = (Vapour.saturated(bowlCelsius + sure) - Vapour.saturated(bowlCelsius)) / sure;
        return STEAM_WATTS_PER_SQUARE_METRE_KELVIN
                + Vapour.metresPerSecond(STEAM_WATTS_PER_SQUARE_METRE_KELVIN)
                        * Vapour.latentJoulesPerKilogram(bowlCelsius)
                        * slope;
    }

    private void above() {
        double top = TOP_FRACTION * area;
        jet = top * hands.blower().wattsPerSquareMetreKelvin();
        double convection = hands.spot() == Spot.FRIDGE
                ? DRAUGHT_FACTOR_IN_FRIDGE * exchange.surfaceToAir()
                : exchange.surfaceToAir();
        double radiated = top * radiation(CHOCOLATE_EMISSIVITY, celsius[SURFACE]);
        surfaceToAir = radiated + (jet > 0 ? 0 : top * convection);
    }

    private void vessels(double[] heat) {
        hotEvaporates = evaporates(kitchen.hotBath(), HOT, heat[HOT_KILOGRAMS], OPEN_UNDER_A_LID_FRACTION);
        warmEvaporates = evaporates(kitchen.warmBath(), WARM, heat[WARM_KILOGRAMS], OPEN_AROUND_A_BOWL_FRACTION);
        coldEvaporates = evaporates(kitchen.coldWater(), COLD, heat[COLD_KILOGRAMS], OPEN_AROUND_A_BOWL_FRACTION);
    }

    private double evaporates(Vessel vessel, int part, double waterKilograms, double openWithBowlFraction) {
        if (vessel.openSquareMetres() == 0 || waterKilograms < DRY_KILOGRAMS) return 0;
        double open = vessel.openSquareMetres() * (contact == part ? openWithBowlFraction : 1);
        return open * Vapour.fromOpenWater(celsius[part], kitchen.room());
    }

    /** Heats in, rates of change out; W and kg/s. */
    void rates(double[] heat, double[] rate) {
        double[] t = temperatures(heat);
        for (int i = 0; i < DIMENSION; i++) rate[i] = 0;
        for (int j = 0; j < chained - 1; j++) {
            pass(chain[j], chain[j + 1], links[j] * (t[chain[j]] - t[chain[j + 1]]), rate);
        }
        if (directToWall > 0) pass(contact, WALL, directToWall * (t[contact] - t[WALL]), rate);
        if (clothToWall > 0) pass(CLOTH, WALL, clothToWall * (t[CLOTH] - t[WALL]), rate);
        Spoon spoon = kitchen.spoon();
        pass(BULK, SPOON, spoon.toChocolateWattsPerKelvin() * (t[BULK] - t[SPOON]), rate);
        pass(SPOON, TO_ROOM, spoon.toAirWattsPerKelvin() * (t[SPOON] - airCelsius), rate);
        pass(SURFACE, TO_ROOM, surfaceToAir * (t[SURFACE] - airCelsius), rate);
        pass(outer, TO_ROOM, outerToAir * (t[outer] - airCelsius), rate);
        if (filmEvaporates != 0) evaporate(FILM, FILM_KILOGRAMS, filmEvaporates, t[FILM], rate);
        if (jet > 0) {
            double blown = jet * (hands.blower().jetCelsius() - t[SURFACE]);
            rate[SURFACE] += blown;
            rate[FROM_BLOWER] += blown;
        }
        burner(heat[HOT_KILOGRAMS], t, rate);
        vessel(kitchen.hotBath(), HOT, HOT_KILOGRAMS, hotEvaporates, t[HOT], rate);
        vessel(kitchen.warmBath(), WARM, WARM_KILOGRAMS, warmEvaporates, t[WARM], rate);
        vessel(kitchen.coldWater(), COLD, COLD_KILOGRAMS, coldEvaporates, t[COLD], rate);
        boil(heat[HOT_KILOGRAMS], t[HOT], rate);
    }

    private void burner(double waterKilograms, double[] t, double[] rate) {
        Vessel hot = kitchen.hotBath();
        double watts = waterKilograms < DRY_KILOGRAMS ? 0 : hot.burnerWattsAt(t[HOT]);
        rate[FROM_BURNER] += watts;
        rate[hot.thickPot() ? POT : HOT] += watts;
        if (hot.thickPot()) pass(POT, HOT, hot.potToWaterWattsPerKelvin() * (t[POT] - t[HOT]), rate);
    }

    private void vessel(Vessel vessel, int part, int water, double evaporates, double celsius, double[] rate) {
        double loss = vessel.lossWattsPerKelvin() * (celsius - kitchen.room().celsius());
        pass(part, TO_ROOM, loss, rate);
        if (evaporates > 0) evaporate(part, water, evaporates, celsius, rate);
    }

    private void boil(double waterKilograms, double waterCelsius, double[] rate) {
        if (waterCelsius <= Water.BOILS_AT_CELSIUS || waterKilograms < DRY_KILOGRAMS) return;
        double watts = (waterCelsius - Water.BOILS_AT_CELSIUS) * capacity[HOT] / BOIL_SECONDS;
        evaporate(HOT, HOT_KILOGRAMS, watts / Vapour.latentJoulesPerKilogram(waterCelsius), waterCelsius, rate);
    }

    private static void evaporate(int part, int water, double kilogramsPerSecond, double celsius, double[] rate) {
        double joulesPerKilogram = Vapour.latentJoulesPerKilogram(celsius) + Water.JOULES_PER_KILOGRAM_KELVIN * celsius;
        pass(part, WITH_VAPOUR, kilogramsPerSecond * joulesPerKilogram, rate);
        rate[water] -= kilogramsPerSecond;
    }

    private static void pass(int from, int to, double watts, double[] rate) {
        rate[from] -= watts;
        rate[to] += watts;
    }

    /** Parts in a row; the first {@link #chained} count. */
    int[] chain() {
        return chain;
    }

    /** From each part of the row to the next, W/K. */
    double[] links() {
        return links;
    }

    int chained() {
        return chained;
    }

    /** J/K. */
    double capacity(int part) {
        return capacity[part];
    }

    double kilograms(int part) {
        return kilograms[part];
    }

    /** Temperatures of these heats, °C; overwritten by the next call. */
    double[] celsius(double[] heat) {
        return temperatures(heat);
    }

    /** Of the wall, m². */
    double wettedSquareMetres() {
        return area;
    }

    double airCelsius() {
        return airCelsius;
    }

    /** Chocolate that stirring moves between each layer and the bulk, kg/s. */
    double mixedKilogramsPerSecond(int part) {
        double moved =
                area * Math.max(0, stirring - exchange.still()) / Chocolate.joulesPerKilogramKelvin(celsius[BULK]);
        return part == SURFACE ? TOP_FRACTION * moved : moved;
    }
}
