package fifthform.curves.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * The warm bath that cannot pass the working range: pan off the hob, its heat counted, nothing to watch.
 *
 * <p>Two bounds, and the cooler bath of the two counts. Without any loss to the room bowl and bath would meet at the
 * recipe's warning temperature at most. And the highest point that is expected with the room's share lies {@link Band#ONE_IN_TWO_HUNDRED}
 * standard deviations under that end, and not above the middle of the range; the deviation is that of everything that may be
 * off ({@link Doubts}). Crystals that melt on the way take heat and are not counted on.
 */
final class WarmBathPlan {
    /** Where the bath's temperature is looked for, °C. */
    private static final double HOTTEST_CELSIUS = 90;

    private static final int HALVINGS = 20;

    /** The share of its way up after which the bowl hardly rises any more. */
    private static final double MOST_OF_THE_WAY = 0.9;

    /** What two bodies leave out of the way up, as a share of the time: walls and layers that lag. Own choice. */
    private static final double LEFT_OUT = 0.1;

    private final Settled settled;

    WarmBathPlan(Settled settled) {
        this.settled = settled;
    }

    /** A bath for a bowl that stands at {@code fromCelsius}. */
    record Bath(double fromCelsius, double celsius, double aimCelsius, double deviationKelvin) {}

    Bath bathFor(double fromCelsius) {
        double high = settled.work().highCelsius();
        double warn = settled.recipe().meltOut().warnCelsius();
        WaterBath water = bath(settled.doubts().expected(), 0);
        double lossless = Calorimetry.warmestBathCelsius(settled.bowlful(), fromCelsius, warn, water, 0);
        double aim = settled.work().midCelsius();
        double celsius = Math.min(lossless, comingTo(fromCelsius, aim));
        double deviation = deviation(fromCelsius, celsius);
        // The margin hardly depends on the bath, so three rounds are plenty.
        for (int round = 0; round < 3; round++) {
            aim = Math.min(settled.work().midCelsius(), high - Band.ONE_IN_TWO_HUNDRED * deviation);
            celsius = Math.min(lossless, comingTo(fromCelsius, aim));
            deviation = deviation(fromCelsius, celsius);
        }
        return new Bath(fromCelsius, downToTenths(celsius), aim, deviation);
    }

    List<Planned> figures() {
        Bath bath = bathFor(settled.cool().midCelsius());
        double from = bath.fromCelsius();
        List<Planned> figures = new ArrayList<>();
        figures.add(Planned.chosen(
                PlanKey.WARM_WATER,
                1000 * settled.bathKilograms(),
                Formula.of(
                        "four times the chocolate, 2 to 10 kg, unless you say otherwise; pan %.2f kg",
                        settled.panKilograms()),
                "own choice: the more water, the less it cools on the way"));
        figures.add(Planned.chosen(PlanKey.WARM_BATH, bath.celsius(), formula(bath), Formula.TWO_BODIES));
        double margin = Math.max(0, settled.work().highCelsius() - bath.aimCelsius());
        figures.add(Planned.chosen(PlanKey.WARM_MARGIN, margin, marginFormula(bath), "JCGM 100:2008, 5.1.2"));
        double peak = peak(settled.doubts().expected(), from, bath.celsius());
        figures.add(Planned.of(
                PlanKey.WARM_PEAK,
                peak,
                bath.deviationKelvin(),
                Formula.of(
                        "C1 dT/dt = UA (B − T) − G1 (T − room), C2 dB/dt = UA (T − B) − G2 (B − room), from T %.1f, B %.1f °C",
                        from, bath.celsius()),
                Formula.TWO_BODIES));
        double lossless = Calorimetry.equilibriumCelsius(
                settled.bowlful(), from, bath(settled.doubts().expected(), bath.celsius()), 0);
        figures.add(Planned.chosen(
                PlanKey.WARM_WITHOUT_LOSS,
                lossless,
                Formula.of("(C1 T1 + C2 Tw)/(C1 + C2), T1 %.1f, Tw %.1f °C", from, bath.celsius()),
                Formula.BALANCE));
        ToDoubleFunction<Guess> logSeconds = g -> StrictMath.log(mostOfTheWay(g, from, bath.celsius()));
        double deviation = settled.doubts().deviation(logSeconds);
        figures.add(Planned.ofLog(
                PlanKey.WARM_TIME,
                mostOfTheWay(settled.doubts().expected(), from, bath.celsius()),
                Math.sqrt(deviation * deviation + LEFT_OUT * LEFT_OUT),
                Formula.of(
                        "the same equations, until nine tenths of the rise; UA %.1f W/K",
                        settled.contact(settled.doubts().expected())),
                Formula.TWO_BODIES));
        return figures;
    }

    private String formula(Bath bath) {
        return Formula.of(
                "no loss: Tw ≤ T2 + C1/C2 (T2 − T1) = %.1f + %.0f/%.0f (%.1f − %.1f); with loss: highest point ≤ %.2f °C; rounded down",
                settled.recipe().meltOut().warnCelsius(),
                settled.bowlful().joulesPerKelvin(30),
                bath(settled.doubts().expected(), bath.celsius()).joulesPerKelvin(),
                settled.recipe().meltOut().warnCelsius(),
                bath.fromCelsius(),
                bath.aimCelsius());
    }

    private String marginFormula(Bath bath) {
        String parts = settled.doubts().inWords(g -> peak(g, bath.fromCelsius(), bath.celsius()));
        return Formula.of(
                "2.6 · √(sum of squares) of %s K = 2.6 · %.2f; at least half the range", parts, bath.deviationKelvin());
    }

    private double deviation(double from, double bathCelsius) {
        return settled.doubts().deviation(g -> peak(g, from, bathCelsius));
    }

    /** The bath whose expected highest point is {@code aimCelsius}: that rises with the bath, so it is halved towards. */
    private double comingTo(double fromCelsius, double aimCelsius) {
        double low = fromCelsius;
        double high = HOTTEST_CELSIUS;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (peak(settled.doubts().expected(), fromCelsius, middle) < aimCelsius) low = middle;
            else high = middle;
        }
        return low;
    }

    private double peak(Guess guess, double from, double bathCelsius) {
        return bodies(guess, bathCelsius)
                .highest(from + guess.plus(Unknown.BOWL))
                .celsius();
    }

    private double mostOfTheWay(Guess guess, double from, double bathCelsius) {
        TwoBodies bodies = bodies(guess, bathCelsius);
        double start = from + guess.plus(Unknown.BOWL);
        double peak = bodies.highest(start).celsius();
        return Math.max(
                1,
                bodies.reaching(start, start + MOST_OF_THE_WAY * (peak - start)).seconds());
    }

    private TwoBodies bodies(Guess guess, double bathCelsius) {
        return new TwoBodies(
                settled.bowlful(guess),
                bath(guess, bathCelsius),
                settled.contact(guess),
                Surfaces.fromTop(settled.kilograms()) * guess.times(Unknown.LOSS),
                Surfaces.fromPan(settled.bathKilograms()) * guess.times(Unknown.LOSS),
                settled.room(guess),
                TwoBodies.Crystals.NONE);
    }

    private WaterBath bath(Guess guess, double celsius) {
        return new WaterBath(
                settled.bathKilograms() * guess.times(Unknown.WATER),
                Math.max(0, Math.min(100, celsius + guess.plus(Unknown.BATH))),
                settled.panKilograms() * guess.times(Unknown.PAN),
                settled.panJoulesPerKilogramKelvin());
    }

    private static double downToTenths(double celsius) {
        return Math.floor(10 * celsius + 1e-9) / 10;
    }
}
