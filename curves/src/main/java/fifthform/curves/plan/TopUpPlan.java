package fifthform.curves.plan;

import fifthform.curves.plan.BatchPlan.TopUpFor;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * The second step of the slow bath: once the bowl has stopped rising, it says itself what this kitchen loses, and boiling
 * water by weight carries it the rest of the way.
 *
 * <p>What a bath's thermometer misreads, and losses nobody knows, are in where the bowl stands; what is left is how far the
 * bowl's own reading may be off, and the little that is poured. Where it has stood still for {@code t} the bath is
 * {@code B = T + (G1 (T − room) − (1 − exp(−t UA/C1)) C1 r)/UA}, with {@code r} the rate at which both sink; from there the two bodies' highest point is {@link Band#ONE_IN_TWO_HUNDRED} deviations
 * under the upper end of the range, and not above its middle. Poured is {@code m = C2 ΔB/(4180 (Th − B − ΔB))}.
 */
final class TopUpPlan {
    /** Just boiled, by the time it is poured. A guess. */
    private static final double KETTLE_CELSIUS = 95;

    private static final double[] SHORT_KELVIN = {2, 1.5, 1, 0.6, 0.3, 0.1};
    private static final double USUAL_SHORT_KELVIN = 1;
    private static final double MOST_KELVIN = 30;
    private static final int HALVINGS = 20;
    private static final double MOST_OF_THE_WAY = 0.9;
    private static final double LEFT_OUT = 0.1;

    /** Until it is seen that the bowl stands still, s. Common practice, no source. */
    private static final double WAITED_SECONDS = 180;

    private final Settled settled;
    private final double aimCelsius;
    private final double deviationKelvin;

    TopUpPlan(Settled settled) {
        this.settled = settled;
        double aim = settled.work().midCelsius();
        double deviation = 0;
        // The margin hardly depends on where it is aimed, so three rounds are plenty.
        for (int round = 0; round < 3; round++) {
            double at = aim - USUAL_SHORT_KELVIN;
            double joules = joules(at, aim);
            deviation = settled.doubts().deviation(g -> peak(g, at, joules));
            aim = Math.min(
                    settled.work().midCelsius(), settled.work().highCelsius() - Band.ONE_IN_TWO_HUNDRED * deviation);
        }
        aimCelsius = aim;
        deviationKelvin = deviation;
    }

    /** Whether the aim lies in the working range. */
    boolean reaches() {
        return aimCelsius >= settled.work().lowCelsius();
    }

    /** How much to pour for a bowl that stands still at several temperatures under the aim. */
    List<TopUpFor> rows() {
        List<TopUpFor> rows = new ArrayList<>();
        for (double kelvin : SHORT_KELVIN) {
            double at = Math.round(10 * (aimCelsius - kelvin)) / 10.0;
            if (at < aimCelsius) rows.add(new TopUpFor(at, grams(at)));
        }
        return rows;
    }

    List<Planned> figures() {
        double at = aimCelsius - USUAL_SHORT_KELVIN;
        double joules = joules(at, aimCelsius);
        ToDoubleFunction<Guess> logSeconds = g -> StrictMath.log(seconds(g, at, joules));
        double deviation = settled.doubts().deviation(logSeconds);
        return List.of(
                Planned.of(
                        PlanKey.TOP_UP_PEAK,
                        aimCelsius,
                        deviationKelvin,
                        Formula.of(
                                "middle of the range at most, and %.1f − 2.6 · %.2f K (%s)",
                                settled.work().highCelsius(),
                                deviationKelvin,
                                settled.doubts().inWords(g -> peak(g, at, joules))),
                        Formula.TWO_BODIES + "; JCGM 100:2008, 5.1.2"),
                Planned.chosen(
                        PlanKey.TOP_UP_WATER,
                        grams(at),
                        Formula.of(
                                "m = C2 ΔB/(4180 (%.0f − B − ΔB)), C2 %.0f J/K, B as under a bowl that has stood still for 3 min at T %.1f °C, 1 K under",
                                KETTLE_CELSIUS,
                                bath(settled.doubts().expected(), 40).joulesPerKelvin(),
                                at),
                        Formula.TWO_BODIES),
                Planned.ofLog(
                        PlanKey.TOP_UP_TIME,
                        seconds(settled.doubts().expected(), at, joules),
                        Math.sqrt(deviation * deviation + LEFT_OUT * LEFT_OUT),
                        Formula.of("%.0f s to see that it stands still, then nine tenths of the way", WAITED_SECONDS),
                        Formula.TWO_BODIES));
    }

    private double grams(double bowlCelsius) {
        double joules = joules(bowlCelsius, aimCelsius);
        Guess expected = settled.doubts().expected();
        double after =
                still(expected, bowlCelsius) + joules / bath(expected, 40).joulesPerKelvin();
        return 1000 * joules / (Heat.WATER_JOULES_PER_KILOGRAM_KELVIN * (KETTLE_CELSIUS - after));
    }

    /** Heat into the bath with which the bowl is expected to come to {@code toCelsius}. */
    private double joules(double fromCelsius, double toCelsius) {
        Guess expected = settled.doubts().expected();
        double capacity = bath(expected, 40).joulesPerKelvin();
        double low = 0;
        double high = MOST_KELVIN;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (peak(expected, fromCelsius, middle * capacity) < toCelsius) low = middle;
            else high = middle;
        }
        return low * capacity;
    }

    private double peak(Guess guess, double shownCelsius, double joules) {
        double from = shownCelsius + guess.plus(Unknown.BOWL);
        return after(guess, from, joules).highest(from).celsius();
    }

    private double seconds(Guess guess, double shownCelsius, double joules) {
        double from = shownCelsius + guess.plus(Unknown.BOWL);
        TwoBodies bodies = after(guess, from, joules);
        double rise = bodies.highest(from).celsius() - from;
        return WAITED_SECONDS
                + Math.max(
                        1, bodies.reaching(from, from + MOST_OF_THE_WAY * rise).seconds());
    }

    private TwoBodies after(Guess guess, double fromCelsius, double joules) {
        double rise = joules * guess.times(Unknown.POURED) / bath(guess, 40).joulesPerKelvin();
        return new TwoBodies(
                settled.bowlful(guess),
                bath(guess, still(guess, fromCelsius) + rise),
                settled.contact(guess),
                top(guess),
                Surfaces.fromPan(settled.bathKilograms()) * guess.times(Unknown.LOSS),
                settled.room(guess),
                TwoBodies.Crystals.NONE);
    }

    /**
     * The bath under a bowl that has stood still for the wait: by then both have begun to sink together, so that the wall
     * gives a part of what the top loses.
     */
    private double still(Guess guess, double celsius) {
        double over = celsius - settled.room(guess);
        double capacity = settled.bowlful(guess).joulesPerKelvin(celsius);
        double pan = Surfaces.fromPan(settled.bathKilograms()) * guess.times(Unknown.LOSS);
        double contact = settled.contact(guess);
        double sinking =
                (top(guess) + pan) * over / (capacity + bath(guess, celsius).joulesPerKelvin());
        double share = 1 - StrictMath.exp(-WAITED_SECONDS * contact / capacity);
        return celsius + (top(guess) * over - share * capacity * sinking) / contact;
    }

    private double top(Guess guess) {
        return Surfaces.fromTop(settled.kilograms()) * guess.times(Unknown.LOSS);
    }

    private WaterBath bath(Guess guess, double celsius) {
        return new WaterBath(
                settled.bathKilograms() * guess.times(Unknown.WATER),
                Math.max(0, Math.min(100, celsius)),
                settled.panKilograms() * guess.times(Unknown.PAN),
                settled.panJoulesPerKilogramKelvin());
    }
}
