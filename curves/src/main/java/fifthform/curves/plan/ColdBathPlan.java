package fifthform.curves.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** The cold bath: how much tap water, when to lift, how far the bowl falls after that. */
final class ColdBathPlan {
    /** Water for which a forgotten bowl would end so far below the middle of the cool range, K. Own choice: quick enough. */
    private static final double BELOW_KELVIN = 4;

    private static final double LEAST_WATER_PER_CHOCOLATE = 1.5;
    private static final double MOST_WATER_PER_CHOCOLATE = 6;

    /** Where ice brings a tap that is too warm, °C. Own choice. */
    private static final double ICED_CELSIUS = 16;

    /** Of the fat, what turns solid on the way down. Order of a textbook temper; see the crystal model's reference. */
    private static final double SOLID_FRACTION_OF_FAT = 0.01;

    /** Below this crystals form at all; own choice for all kinds. */
    private static final double CRYSTALS_ABOVE_COOL_KELVIN = 3;

    private static final double LEFT_OUT = 0.1;

    private final Settled settled;
    private final double waterCelsius;
    private final double waterKilograms;
    private final double iceKilograms;

    ColdBathPlan(Settled settled) {
        this.settled = settled;
        boolean warm = tapTooWarm();
        waterCelsius = warm ? ICED_CELSIUS : settled.tapCelsius();
        double exact = Calorimetry.waterKilograms(
                settled.bowlful(), start(), target() - BELOW_KELVIN, waterCelsius, SOLID_FRACTION_OF_FAT);
        double least = LEAST_WATER_PER_CHOCOLATE * settled.kilograms();
        double most = MOST_WATER_PER_CHOCOLATE * settled.kilograms();
        waterKilograms = Math.max(0.5, Math.round(10 * Math.max(least, Math.min(most, exact))) / 10.0);
        // Ice melts and warms up, the rest of the water cools down.
        double drop = settled.tapCelsius() - ICED_CELSIUS;
        double perKilogram = Heat.WATER_JOULES_PER_KILOGRAM_KELVIN * drop;
        double ice = Heat.ICE_JOULES_PER_KILOGRAM + Heat.WATER_JOULES_PER_KILOGRAM_KELVIN * ICED_CELSIUS;
        iceKilograms = warm ? waterKilograms * perKilogram / (ice + perKilogram) : 0;
    }

    boolean tapTooWarm() {
        return settled.tapCelsius() > target() - BELOW_KELVIN - 1;
    }

    private double target() {
        return settled.cool().midCelsius();
    }

    private double start() {
        return settled.recipe().melt().range().midCelsius();
    }

    List<Planned> figures() {
        Guess expected = settled.doubts().expected();
        List<Planned> figures = new ArrayList<>();
        figures.add(Planned.chosen(
                PlanKey.COLD_WATER,
                1000 * waterKilograms,
                Formula.of(
                        "m = Q/(4180 (T2 − Tw)), Q %.0f kJ from %.1f °C, T2 %.1f (%.0f K under the cool target), Tw %.1f °C; 1.5 to 6 times the chocolate",
                        settled.bowlful().joulesGiven(start(), target() - BELOW_KELVIN, SOLID_FRACTION_OF_FAT) / 1000,
                        start(),
                        target() - BELOW_KELVIN,
                        BELOW_KELVIN,
                        waterCelsius),
                Formula.BALANCE));
        if (iceKilograms > 0) {
            figures.add(Planned.chosen(
                    PlanKey.COLD_ICE,
                    1000 * iceKilograms,
                    Formula.of(
                            "m_ice (334000 + 4180 · %.0f) = m_tap · 4180 (%.1f − %.0f); of the water above",
                            ICED_CELSIUS, settled.tapCelsius(), ICED_CELSIUS),
                    "heat balance; heat of melting ice: handbook, from memory"));
        }
        figures.add(Planned.chosen(
                PlanKey.COLD_STOPS_ITSELF,
                1000
                        * Calorimetry.waterKilograms(
                                settled.bowlful(), start(), target(), waterCelsius, SOLID_FRACTION_OF_FAT),
                Formula.of("m = Q/(4180 (T2 − Tw)), T2 %.1f, Tw %.1f °C", target(), waterCelsius),
                Formula.BALANCE));
        ToDoubleFunction<Guess> ends = g ->
                Calorimetry.equilibriumCelsius(settled.bowlful(g), start() + g.plus(Unknown.START), bath(g), solid(g));
        figures.add(Planned.of(
                PlanKey.COLD_FORGOTTEN,
                ends.applyAsDouble(expected),
                settled.doubts().deviation(ends),
                Formula.of(
                        "(C1 T1 + C2 Tw + crystals)/(C1 + C2), crystals of %.0f %% of the fat",
                        100 * SOLID_FRACTION_OF_FAT),
                Formula.BALANCE));
        TwoBodies.Point lift =
                bodies(expected).turning(start(), target(), settled.coast().seconds());
        double fall = Math.max(0, lift.celsius() - target());
        figures.add(Planned.of(
                PlanKey.COLD_LIFT,
                lift.celsius(),
                settled.doubts().of(Unknown.BOWL),
                Formula.of("cool target %.1f °C + fall %.1f K", target(), fall),
                Formula.TWO_BODIES));
        ToDoubleFunction<Guess> logSeconds = g -> StrictMath.log(Math.max(
                1,
                bodies(g)
                        .reaching(start() + g.plus(Unknown.START), lift.celsius() + g.plus(Unknown.BOWL))
                        .seconds()));
        double deviation = settled.doubts().deviation(logSeconds);
        figures.add(Planned.ofLog(
                PlanKey.COLD_TIME,
                Math.max(1, lift.seconds()),
                Math.sqrt(deviation * deviation + LEFT_OUT * LEFT_OUT),
                Formula.of(
                        "two bodies from %.1f to %.1f °C, UA %.1f W/K; without loss ln((T1 − Te)/(T2 − Te))/(UA (1/C1 + 1/C2))",
                        start(), lift.celsius(), settled.contact(expected)),
                Formula.TWO_BODIES));
        ToDoubleFunction<Guess> logFall = g -> StrictMath.log(settled.coastSeconds(g) * g.times(Unknown.CONTACT));
        figures.add(Planned.ofLog(
                PlanKey.COLD_FALL,
                Math.max(0.05, fall),
                settled.doubts().deviation(logFall),
                Formula.of(
                        "coast time %.0f s · rate at the lift %.3f K/s",
                        settled.coast().seconds(), fall / settled.coast().seconds()),
                "two lumped bodies, own derivation; coast time learned of the bowl, else guessed from its material"));
        return figures;
    }

    private double solid(Guess guess) {
        return SOLID_FRACTION_OF_FAT * Math.max(0, 1 + guess.plus(Unknown.CRYSTALS));
    }

    private TwoBodies bodies(Guess guess) {
        Bowlful bowlful = settled.bowlful(guess);
        double joules = bowlful.crystalJoules(solid(guess));
        double above = target() + CRYSTALS_ABOVE_COOL_KELVIN;
        return new TwoBodies(
                bowlful,
                bath(guess),
                settled.contact(guess),
                Surfaces.fromTop(settled.kilograms()) * guess.times(Unknown.LOSS),
                0,
                settled.room(guess),
                new TwoBodies.Crystals(joules / CRYSTALS_ABOVE_COOL_KELVIN, above, target()));
    }

    /** A basin's own heat is left out: it is as cold as its water. */
    private WaterBath bath(Guess guess) {
        return new WaterBath(
                waterKilograms * guess.times(Unknown.WATER),
                Math.max(0, waterCelsius + guess.plus(Unknown.BATH)),
                0,
                0);
    }
}
