package fifthform.curves.plan;

import fifthform.curves.forecast.Coast;
import fifthform.curves.recipe.CelsiusRange;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.BowlMaterial;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;

/**
 * A request with everything in numbers: what nobody said filled in as usual, and how far each may be off.
 *
 * @param request as it was made
 * @param kilograms chocolate
 * @param bowlKilograms empty bowl
 * @param panKilograms empty pan
 * @param bathKilograms water of the warm bath
 * @param tapCelsius water from the tap
 * @param roomCelsius the room
 * @param coast how far the bowl coasts
 * @param doubts how far all of these may be off
 * @param caveats what had to be guessed
 */
record Settled(
        PlanRequest request,
        double kilograms,
        double bowlKilograms,
        double panKilograms,
        double bathKilograms,
        double tapCelsius,
        double roomCelsius,
        Coast coast,
        Doubts doubts,
        Set<Caveat> caveats) {
    /** Common practice, no source. */
    private static final double USUAL_ROOM_CELSIUS = 21;

    private static final double USUAL_TAP_CELSIUS = 16;
    private static final double USUAL_PAN_KILOGRAMS = 0.8;

    /** A checked thermometer, K; an unchecked one may be off by 2.5 K either way (IEC 60584-1, class 2) with equal chance. */
    private static final double CHECKED_KELVIN = 0.3;

    private static final double UNCHECKED_KELVIN = 2.5 / Math.sqrt(3);

    /** Amounts within 5 %, any value with equal chance. */
    private static final double WEIGHED = 0.05 / Math.sqrt(3);

    /** 3 K of the 60 between a kettle and the bath. A guess. */
    private static final double KETTLE = 0.05;

    private static final double NOT_WEIGHED = 0.3;

    /** Of stirring, shape and films: see {@link Surfaces}. */
    private static final double CONTACT = 0.2;

    private static final double LOSS = 0.3;

    /** Warm baths hold four times the chocolate's mass of water, within these bounds, kg: the more, the less they cool. */
    private static final double WATER_PER_CHOCOLATE = 4;

    private static final double LEAST_BATH_KILOGRAMS = 2;
    private static final double MOST_BATH_KILOGRAMS = 10;

    static Settled of(PlanRequest request) {
        Set<Caveat> caveats = EnumSet.noneOf(Caveat.class);
        if (request.bowlGrams().isEmpty()) caveats.add(Caveat.BOWL_GUESSED);
        if (request.panGrams().isEmpty()) caveats.add(Caveat.PAN_GUESSED);
        if (request.tapCelsius().isEmpty()) caveats.add(Caveat.TAP_GUESSED);
        if (request.room().celsius().isEmpty()) caveats.add(Caveat.ROOM_GUESSED);
        if (!request.probeChecked()) caveats.add(Caveat.PROBE_UNCHECKED);
        Coast coast = Coast.before(request.bowl());
        if (coast.liftsSeen() == 0) caveats.add(Caveat.COAST_GUESSED);
        double kilograms = request.grams() / 1000;
        double usualBowl = Surfaces.usualBowlKilograms(kilograms, request.bowl().material());
        double usualBath =
                Math.max(LEAST_BATH_KILOGRAMS, Math.min(MOST_BATH_KILOGRAMS, WATER_PER_CHOCOLATE * kilograms));
        return new Settled(
                request,
                kilograms,
                request.bowlGrams().orElse(1000 * usualBowl) / 1000,
                request.panGrams().orElse(1000 * USUAL_PAN_KILOGRAMS) / 1000,
                request.bathGrams().orElse(1000 * tenths(usualBath)) / 1000,
                request.tapCelsius().orElse(USUAL_TAP_CELSIUS),
                request.room().celsius().orElse(USUAL_ROOM_CELSIUS),
                coast,
                new Doubts(doubts(request, coast)),
                caveats);
    }

    private static Map<Unknown, Double> doubts(PlanRequest request, Coast coast) {
        double reading = request.probeChecked() ? CHECKED_KELVIN : UNCHECKED_KELVIN;
        Map<Unknown, Double> doubts = new EnumMap<>(Unknown.class);
        doubts.put(Unknown.CONTACT, CONTACT);
        doubts.put(Unknown.LOSS, LOSS);
        doubts.put(Unknown.BATH, reading);
        doubts.put(Unknown.BOWL, reading);
        doubts.put(Unknown.CHOCOLATE, WEIGHED);
        doubts.put(Unknown.WATER, WEIGHED);
        doubts.put(Unknown.POURED, StrictMath.hypot(WEIGHED, KETTLE));
        doubts.put(Unknown.WALL, request.bowlGrams().isPresent() ? WEIGHED : NOT_WEIGHED);
        doubts.put(Unknown.PAN, request.panGrams().isPresent() ? WEIGHED : NOT_WEIGHED);
        doubts.put(Unknown.ROOM, request.room().celsius().isPresent() ? 1.0 : 3.0);
        doubts.put(Unknown.START, request.recipe().melt().range().widthKelvin() / 2 / Math.sqrt(3));
        doubts.put(Unknown.LATENT, 0.1);
        doubts.put(Unknown.COAST, coast.logSpread());
        doubts.put(Unknown.CRYSTALS, 0.6);
        return doubts;
    }

    Recipe recipe() {
        return request.recipe();
    }

    CelsiusRange work() {
        return recipe().work().range();
    }

    CelsiusRange cool() {
        return recipe().cool().range();
    }

    BowlMaterial material() {
        return request.bowl().material();
    }

    double fatFraction() {
        return recipe().composition().fatFraction();
    }

    double latent() {
        return Heat.latent(recipe().composition().milkFatFraction());
    }

    /** Chocolate and bowl as guessed. */
    Bowlful bowlful(Guess guess) {
        return new Bowlful(
                kilograms * guess.times(Unknown.CHOCOLATE),
                fatFraction(),
                bowlKilograms * guess.times(Unknown.WALL),
                Heat.of(material()));
    }

    Bowlful bowlful() {
        return bowlful(doubts.expected());
    }

    /** The pan's heat capacity, J/kgK. */
    double panJoulesPerKilogramKelvin() {
        return Heat.of(request.panMaterial());
    }

    /** From a bath into this bowl, W/K. */
    double contact(Guess guess) {
        return Surfaces.intoBath(kilograms, material(), bowlKilograms) * guess.times(Unknown.CONTACT);
    }

    double room(Guess guess) {
        return roomCelsius + guess.plus(Unknown.ROOM);
    }

    double coastSeconds(Guess guess) {
        return coast.seconds() * guess.times(Unknown.COAST);
    }

    private static double tenths(double kilograms) {
        return Math.round(10 * kilograms) / 10.0;
    }
}
