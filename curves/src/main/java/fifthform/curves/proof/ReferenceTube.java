package fifthform.curves.proof;

import fifthform.curves.check.Require;
import fifthform.curves.crystal.Crystals;
import fifthform.curves.crystal.Fat;
import fifthform.curves.crystal.Kinetics;
import fifthform.curves.crystal.Rates;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/**
 * How a sample would cool if the crystal model were right: rings around an axis without stirring, in a bath of constant
 * temperature.
 *
 * <p>In each ring {@code dT/dt = conduction + φ·Σ(Lᵢ·dXᵢ/dt) / (c·(1 + b))}, with {@code φ} the fat share, {@code c} = 1.63
 * kJ/(kg K) and {@code b} = {@value #BALLAST} the heat capacity of holder and probe over that of the sample. With one
 * ring, conduction is {@code (Tb − T)/τ} and this is the equation of the project's crystal model, section 10. Explicit
 * Euler in steps of a quarter of a second.
 *
 * @param kinetics of this chocolate's fat
 * @param cup how it cools without crystals
 * @param bathCelsius temperature of the bath, −5 to 15 °C
 */
public record ReferenceTube(Kinetics kinetics, CupTraits cup, double bathCelsius) {
    static final double BALLAST = 0.25;
    /** Warm enough that crystals of V only just grow, as at the end of the rewarm. */
    static final double START_CELSIUS = 31;

    private static final double HEAT_CAPACITY = 1.63;
    private static final double STEP_SECONDS = 0.25;
    /** Three tell a skin, a middle and a core apart; five move no bend by more than 0.1 K. */
    private static final int RINGS = 3;

    private static final int STEPS_A_READING = 4;
    private static final double LONGEST_SECONDS = 20 * 60;
    /** Number measure of the seed over its mass on reaching the working range. */
    private static final double SEEDS_PER_MASS = 0.055;

    public ReferenceTube {
        Objects.requireNonNull(kinetics, "kinetics");
        Objects.requireNonNull(cup, "cup");
        Require.within(bathCelsius, -5, 15, "bathCelsius");
    }

    public static ReferenceTube of(Fat fat, CupTraits cup, double bathCelsius) {
        return new ReferenceTube(Kinetics.of(fat), cup, bathCelsius);
    }

    /** The curve of a sample with this much seed, one reading a second until it is cold. */
    public CoolingCurve curve(double seedFraction) {
        Shells shells = Shells.of(cup, RINGS);
        int n = shells.count();
        Crystals[] crystals = new Crystals[n];
        double[] celsius = new double[n];
        double[] cooling = new double[n];
        Arrays.fill(crystals, new Crystals(0, 0, seedFraction, 0, SEEDS_PER_MASS * seedFraction));
        Arrays.fill(celsius, START_CELSIUS);
        double gain = kinetics.fat().fatFraction() / (HEAT_CAPACITY * (1 + BALLAST));
        List<CurvePoint> points = new ArrayList<>();
        long steps = Math.round(LONGEST_SECONDS / STEP_SECONDS);
        for (long i = 0; i <= steps; i++) {
            double axis = shells.axis(celsius);
            if (i % STEPS_A_READING == 0) points.add(new CurvePoint(i * STEP_SECONDS, axis));
            if (axis < bathCelsius + Course.MARGIN_KELVIN - 1.5) break;
            shells.conduct(celsius, bathCelsius, cooling);
            for (int ring = 0; ring < n; ring++) {
                Rates rates = kinetics.rates(crystals[ring], celsius[ring], 0);
                crystals[ring] = kinetics.step(crystals[ring], celsius[ring], 0, STEP_SECONDS);
                double heat = gain * kinetics.heatKilowattPerKilogramFat(rates);
                celsius[ring] += STEP_SECONDS * (cooling[ring] / 60 + heat);
            }
        }
        return new CoolingCurve(points, 0);
    }
}
