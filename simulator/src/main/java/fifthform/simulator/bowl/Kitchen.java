package fifthform.simulator.bowl;

import fifthform.curves.check.Require;
import fifthform.simulator.bowl.Hands.Towel;
import java.time.Duration;
import java.util.Objects;
import org.apache.commons.math3.ode.nonstiff.ClassicalRungeKuttaIntegrator;

/**
 * A kitchen: what stands in it and how it behaves. Everything that changes is in {@link KitchenState}; {@link #advance}
 * is a pure function of state, hands and time.
 *
 * <p>The heat balance is solved by the classical Runge–Kutta method of fourth order with a fixed step of at most 1/8 s:
 * fixed, so that the same seed gives the same bits everywhere; 1/8 s, because the quickest part (the film of water,
 * time constant above 0.05 s) then stays well inside the method's stability, while a coast of a minute is followed to
 * far below a millikelvin (tested by halving the step). What is integrated is heat, not temperature, so that what
 * leaves one part arrives in another and the balance closes to rounding.
 *
 * @param chocolate what is in the bowl
 * @param bowl the bowl
 * @param exchange how well heat passes between the parts
 * @param hotBath the pot on the burner
 * @param warmBath the water for the rewarm, off the heat
 * @param coldWater the basin of tap water, which warms up
 * @param roomCelsius the air, 0 to 45 °C
 * @param tip the probe in the chocolate
 */
public record Kitchen(
        Chocolate chocolate,
        BowlWall bowl,
        Exchange exchange,
        Vessel hotBath,
        Vessel warmBath,
        Vessel coldWater,
        double roomCelsius,
        Tip tip) {
    /** The longest step of the integration. */
    public static final Duration LONGEST_STEP = Duration.ofMillis(125);

    public Kitchen {
        Objects.requireNonNull(chocolate, "chocolate");
        Objects.requireNonNull(bowl, "bowl");
        Objects.requireNonNull(exchange, "exchange");
        Objects.requireNonNull(hotBath, "hotBath");
        Objects.requireNonNull(warmBath, "warmBath");
        Objects.requireNonNull(coldWater, "coldWater");
        Require.within(roomCelsius, 0, 45, "roomCelsius");
        Objects.requireNonNull(tip, "tip");
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
        HeatFlow flow = new HeatFlow(this, hands, state.filmKilograms());
        long steps = (time.toNanos() + longestStep.toNanos() - 1) / longestStep.toNanos();
        double stepSeconds = time.toNanos() * 1e-9 / steps;
        ClassicalRungeKuttaIntegrator method = new ClassicalRungeKuttaIntegrator(stepSeconds);
        double[] heat = flow.heatOf(state);
        for (long step = 0; step < steps; step++) {
            heat = method.singleStep(flow, 0, heat, stepSeconds);
            flow.keepMelted(heat);
        }
        return flow.stateAfter(state, state.elapsed().plus(time), heat);
    }

    /** Heat stored in everything, J, counted from 0 °C and solid chocolate. */
    public double storedJoules(KitchenState state) {
        double area = chocolate.wettedSquareMetres();
        double layerKilograms = chocolate.kilograms() * exchange.layerFraction();
        double bulkKilograms = chocolate.kilograms() - layerKilograms;
        return bulkKilograms * chocolate.joulesPerKilogram(state.bulkCelsius(), state.bulkUnmeltedFraction())
                + layerKilograms * chocolate.joulesPerKilogram(state.layerCelsius(), state.layerUnmeltedFraction())
                + bowl.joulesPerKelvin(area) * state.wallCelsius()
                + waterJoules(state.filmKilograms(), state.filmCelsius())
                + hotBath.joulesPerKelvin() * state.hotBathCelsius()
                + warmBath.joulesPerKelvin() * state.warmBathCelsius()
                + coldWater.joulesPerKelvin() * state.coldWaterCelsius();
    }

    /** What a towel or a bath does at the moment of touching: takes the film away, or gives the bowl a new one. */
    private KitchenState touched(KitchenState state, Hands hands) {
        double fullFilm = bowl.filmKilograms(chocolate.wettedSquareMetres());
        if (hands.towel() == Towel.WIPING && state.filmKilograms() > 0) {
            double gone = waterJoules(state.filmKilograms(), state.filmCelsius());
            return withFilm(state, 0, state.wallCelsius(), state.ledger().wiped(gone));
        }
        double missing = fullFilm - state.filmKilograms();
        return switch (hands.spot()) {
            case TABLE, COOL_CLOTH -> state;
            case HOT_BATH -> wetted(state, missing, state.hotBathCelsius());
            case WARM_BATH -> wetted(state, missing, state.warmBathCelsius());
            case COLD_WATER -> wetted(state, missing, state.coldWaterCelsius());
        };
    }

    /** The vessel's own level is kept: a film is less than a hundredth of it, so its water counts as coming from outside. */
    private static KitchenState wetted(KitchenState state, double kilograms, double waterCelsius) {
        if (kilograms <= 0) return state;
        double film = state.filmKilograms() + kilograms;
        double celsius = (state.filmKilograms() * state.filmCelsius() + kilograms * waterCelsius) / film;
        return withFilm(state, film, celsius, state.ledger().wetted(waterJoules(kilograms, waterCelsius)));
    }

    private static KitchenState withFilm(KitchenState s, double kilograms, double celsius, HeatLedger ledger) {
        return new KitchenState(
                s.elapsed(),
                s.bulkCelsius(),
                s.layerCelsius(),
                s.bulkUnmeltedFraction(),
                s.layerUnmeltedFraction(),
                s.wallCelsius(),
                celsius,
                kilograms,
                s.hotBathCelsius(),
                s.warmBathCelsius(),
                s.coldWaterCelsius(),
                s.tipCelsius(),
                s.bathTipCelsius(),
                ledger);
    }

    private static double waterJoules(double kilograms, double celsius) {
        return kilograms * Water.JOULES_PER_KILOGRAM_KELVIN * celsius;
    }
}
