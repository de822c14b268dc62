package fifthform.simulator.bowl;

import fifthform.curves.check.Require;
import fifthform.simulator.bowl.Hands.Towel;
import java.time.Duration;
import java.util.Objects;
import java.util.Optional;

/**
 * A kitchen: what stands in it and how it behaves. Everything that changes is in {@link KitchenState}; {@link #advance}
 * is a pure function of state, hands and time.
 *
 * <p>The heat balance is solved with fixed steps of at most {@link #LONGEST_STEP}, so that the same seed gives the same
 * bits everywhere (see {@link ImplicitStep}). What is integrated is heat, not temperature, so that what leaves one part
 * arrives in another and the balance closes to rounding.
 *
 * @param chocolate what is in the bowl
 * @param bowl the bowl
 * @param exchange how well heat passes between the parts
 * @param hotBath the pot on the burner
 * @param warmBath the water for the rewarm, off the heat
 * @param coldWater the basin of tap water, which warms up
 * @param room the air
 * @param tip the probe in the chocolate
 * @param spoon what the chocolate is stirred with
 */
public record Kitchen(
        Chocolate chocolate,
        BowlWall bowl,
        Exchange exchange,
        Vessel hotBath,
        Vessel warmBath,
        Vessel coldWater,
        Room room,
        Tip tip,
        Spoon spoon) {
    /** The longest step of the integration; halving it moves a peak by less than 0.02 K (tested). */
    public static final Duration LONGEST_STEP = Duration.ofMillis(500);

    /** A kitchen towel that holds 140 g of water; a guess. */
    static final double CLOTH_JOULES_PER_KELVIN = 600;

    public Kitchen {
        Objects.requireNonNull(chocolate, "chocolate");
        Objects.requireNonNull(bowl, "bowl");
        Objects.requireNonNull(exchange, "exchange");
        Objects.requireNonNull(hotBath, "hotBath");
        Objects.requireNonNull(warmBath, "warmBath");
        Objects.requireNonNull(coldWater, "coldWater");
        Objects.requireNonNull(room, "room");
        Objects.requireNonNull(tip, "tip");
        Objects.requireNonNull(spoon, "spoon");
    }

    /** With usual humidity and fridge, and a steel spoon. */
    public Kitchen(
            Chocolate chocolate,
            BowlWall bowl,
            Exchange exchange,
            Vessel hotBath,
            Vessel warmBath,
            Vessel coldWater,
            double roomCelsius,
            Tip tip) {
        this(chocolate, bowl, exchange, hotBath, warmBath, coldWater, Room.at(roomCelsius), tip, Spoon.STEEL);
    }

    public double roomCelsius() {
        return room.celsius();
    }

    /** Area of the wall that the chocolate wets, m²; chocolate added later does not count. */
    public double wettedSquareMetres() {
        return chocolate.wettedSquareMetres() * bowl.shapeFactor();
    }

    /**
     * The kitchen after the hands have stayed as they are for a while.
     *
     * @param time zero or longer; cut into equal steps of at most {@link #LONGEST_STEP}
     */
    public KitchenState advance(KitchenState before, Hands hands, Duration time) {
        return advance(before, hands, time, LONGEST_STEP);
    }

    /** As {@link #advance(KitchenState, Hands, Duration)} with another longest step, to show what the step does. */
    KitchenState advance(KitchenState before, Hands hands, Duration time, Duration longestStep) {
        Require.notNegative(time, "time");
        KitchenState state = touched(before, hands);
        if (time.isZero()) return state;
        long steps = (time.toNanos() + longestStep.toNanos() - 1) / longestStep.toNanos();
        double stepSeconds = time.toNanos() * 1e-9 / steps;
        return new Passage(this, hands, state, stepSeconds)
                .after(steps, state.elapsed().plus(time));
    }

    /**
     * The crystals of the whole bowl, wall to surface, kg for each kg of fat; empty where the kitchen only has such as melt
     * once.
     */
    public Optional<Forms> forms(KitchenState state) {
        if (!(state.bulk().crystals() instanceof Forms bulk)
                || !(state.layer().crystals() instanceof Forms layer)
                || !(state.surface().crystals() instanceof Forms surface)) return Optional.empty();
        double all = chocolate.kilograms() + state.seedKilograms();
        double atWall = chocolate.kilograms() * exchange.layerFraction() / all;
        double atTop = chocolate.kilograms() * exchange.surfaceFraction() / all;
        return Optional.of(bulk.mixedWith(layer, atWall / (1 - atTop)).mixedWith(surface, atTop));
    }

    /** Heat stored in everything, J, counted from molten chocolate and water at 0 °C. */
    public double storedJoules(KitchenState state) {
        return new Passage(this, Hands.leaving(state.spot()), state, 1).storedJoules();
    }

    /**
     * The kitchen after solid chocolate was added; it is in the bulk at once, with its crystals, and melts as it may.
     *
     * @param kilograms of seed, 0 to 5 kg in all
     * @param celsius its temperature
     */
    public KitchenState seeded(KitchenState state, double kilograms, double celsius) {
        return seeded(
                state, kilograms, new Portion(celsius, state.bulk().crystals().solidAlike()));
    }

    /** As {@link #seeded(KitchenState, double, double)} with crystals of the seed's own, of the bulk's kind. */
    public KitchenState seeded(KitchenState state, double kilograms, Portion seed) {
        double before = chocolate.kilograms() * (1 - exchange.layerFraction() - exchange.surfaceFraction())
                + state.seedKilograms();
        double share = kilograms / (before + kilograms);
        Crystals crystals = state.bulk().crystals().mixedWith(seed.crystals(), share);
        double brought = seed.joulesPerKilogram(chocolate);
        double content = state.bulk().joulesPerKilogram(chocolate) * (1 - share) + brought * share;
        Crystals settled = crystals.settled(chocolate, content, 0, 0);
        Portion bulk =
                new Portion(Chocolate.celsiusOfSensible(content + settled.boundJoulesPerKilogram(chocolate)), settled);
        return Change.of(state)
                .bulk(bulk, state.seedKilograms() + kilograms)
                .ledger(state.ledger().seeded(kilograms * brought))
                .done();
    }

    /**
     * The kitchen after water got into the chocolate: from about 2 % on stirring mixes no more. Common practice, no source;
     * the heat of the drops is left out.
     */
    public KitchenState splashed(KitchenState state, double kilograms) {
        return Change.of(state).splash(state.splashKilograms() + kilograms).done();
    }

    /**
     * The kitchen after water was poured into a bath.
     *
     * @param bath {@link Spot#HOT_BATH}, {@link Spot#WARM_BATH} or {@link Spot#COLD_WATER}
     * @param kilograms of water, above 0
     * @param celsius its temperature
     */
    public KitchenState pouredInto(KitchenState state, Spot bath, double kilograms, double celsius) {
        HeatLedger ledger = state.ledger().wetted(waterJoules(kilograms, celsius));
        Change change = Change.of(state).ledger(ledger);
        return switch (bath) {
            case HOT_BATH ->
                change.hot(poured(hotBath, state.hot(), kilograms, celsius)).done();
            case WARM_BATH ->
                change.warm(poured(warmBath, state.warm(), kilograms, celsius)).done();
            case COLD_WATER ->
                change.cold(poured(coldWater, state.cold(), kilograms, celsius)).done();
            case TABLE, COOL_CLOTH, WARM_CLOTH, WARM_BOX, FRIDGE ->
                throw new IllegalArgumentException("bath must be HOT_BATH, WARM_BATH or COLD_WATER, was " + bath);
        };
    }

    /** The kitchen with as much other water for the rewarm, pot and all at this temperature, °C. */
    public KitchenState withWarmWaterAt(KitchenState state, double celsius) {
        Basin warm = state.warm();
        double capacity = warmBath.joulesPerKelvin(warmBath.waterKilograms() - warm.goneKilograms());
        return Change.of(state)
                .warm(new Basin(celsius, warm.goneKilograms()))
                .ledger(state.ledger().wetted(capacity * (celsius - warm.celsius())))
                .done();
    }

    private static Basin poured(Vessel vessel, Basin basin, double kilograms, double celsius) {
        double here = vessel.joulesPerKelvin(vessel.waterKilograms() - basin.goneKilograms());
        double added = kilograms * Water.JOULES_PER_KILOGRAM_KELVIN;
        double mean = (here * basin.celsius() + added * celsius) / (here + added);
        return new Basin(mean, basin.goneKilograms() - kilograms);
    }

    /**
     * The kitchen with one of its waters as if it had been made hotter or cooler; where the burner holds it, it comes back.
     *
     * @param water which: a spot where the bowl stands in water
     * @param kelvin how much hotter
     */
    public KitchenState waterHotter(KitchenState state, Spot water, double kelvin) {
        return switch (water) {
            case HOT_BATH -> Change.of(state).hot(hotter(state.hot(), kelvin)).done();
            case WARM_BATH ->
                Change.of(state).warm(hotter(state.warm(), kelvin)).done();
            case COLD_WATER ->
                Change.of(state).cold(hotter(state.cold(), kelvin)).done();
            case TABLE, FRIDGE, COOL_CLOTH, WARM_CLOTH, WARM_BOX ->
                throw new IllegalArgumentException("no water: " + water);
        };
    }

    private static Basin hotter(Basin basin, double kelvin) {
        return new Basin(basin.celsius() + kelvin, basin.goneKilograms());
    }

    /** What a towel, a cloth or a bath does at the moment of touching. */
    private KitchenState touched(KitchenState state, Hands hands) {
        if (hands.towel() == Towel.WIPING && state.filmKilograms() > 0) {
            double gone = waterJoules(state.filmKilograms(), state.filmCelsius());
            return Change.of(state)
                    .film(0, state.wallCelsius())
                    .ledger(state.ledger().wiped(gone))
                    .done();
        }
        return switch (hands.spot()) {
            case TABLE, FRIDGE, WARM_BOX -> state;
            case COOL_CLOTH -> wrungOut(state, hands, state.coldWaterCelsius());
            case WARM_CLOTH -> wrungOut(state, hands, state.warmBathCelsius());
            case HOT_BATH -> wetted(state, state.hotBathCelsius());
            case WARM_BATH -> wetted(state, state.warmBathCelsius());
            case COLD_WATER -> wetted(state, state.coldWaterCelsius());
        };
    }

    /** A cloth is as warm as its water when the bowl comes to it, and from then on has only its own heat. */
    private static KitchenState wrungOut(KitchenState state, Hands hands, double waterCelsius) {
        if (state.spot() == hands.spot()) return state;
        double brought = CLOTH_JOULES_PER_KELVIN * (waterCelsius - state.clothCelsius());
        return Change.of(state)
                .cloth(waterCelsius)
                .ledger(state.ledger().wetted(brought))
                .done();
    }

    /** The vessel's own level is kept: a film is less than a hundredth of it, so its water counts as coming from outside. */
    private KitchenState wetted(KitchenState state, double waterCelsius) {
        double kilograms = bowl.filmKilograms(wettedSquareMetres()) - state.filmKilograms();
        if (kilograms <= 0) return state;
        double film = state.filmKilograms() + kilograms;
        double celsius = (state.filmKilograms() * state.filmCelsius() + kilograms * waterCelsius) / film;
        return Change.of(state)
                .film(film, celsius)
                .ledger(state.ledger().wetted(waterJoules(kilograms, waterCelsius)))
                .done();
    }

    private static double waterJoules(double kilograms, double celsius) {
        return kilograms * Water.JOULES_PER_KILOGRAM_KELVIN * celsius;
    }
}
