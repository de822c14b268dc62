package fifthform.curves.proof;

import java.util.Arrays;

/**
 * A round sample as rings of equal mass around its axis, as conduction joins them, and its surface in a bath. Heat
 * capacities count per ring, so a conductance is a rate, 1/min.
 *
 * <p>Rings of equal mass have their middles at radii {@code R·√((i − ½)/n)}; between two of them the conductance goes
 * with {@code 2 / ln((i + ½)/(i − ½))}. The axis is found by a parabola through the two innermost (own derivation).
 */
final class Shells {
    private final double[] inward;
    private final double surface;

    private Shells(double[] inward, double surface) {
        this.inward = inward;
        this.surface = surface;
    }

    /** Rings that cool with this cup's time constant, and whose axis stays behind as far as its does. */
    static Shells of(CupTraits cup, int count) {
        if (count == 1 || cup.axisExcess() < 1.005) return new Shells(new double[0], 1 / cup.tauMinutes());
        double[] inward = new double[count - 1];
        for (int i = 0; i < inward.length; i++) inward[i] = 2 / StrictMath.log((i + 1.5) / (i + 0.5));
        double edge = 2 / StrictMath.log(count / (count - 0.5));
        double low = 1e-3;
        double high = 1e3;
        for (int i = 0; i < 50; i++) {
            double film = Math.sqrt(low * high);
            Mode mode = Mode.of(new Shells(inward, 1 / (1 / edge + 1 / film)));
            if (mode.axisExcess() < cup.axisExcess()) low = film;
            else high = film;
        }
        Shells bare = new Shells(inward, 1 / (1 / edge + 1 / low));
        double faster = 1 / (Mode.of(bare).perMinute() * cup.tauMinutes());
        double[] scaled = new double[inward.length];
        for (int i = 0; i < scaled.length; i++) scaled[i] = faster * inward[i];
        return new Shells(scaled, faster * bare.surface);
    }

    int count() {
        return inward.length + 1;
    }

    /** Where the tip is. */
    double axis(double[] celsius) {
        return celsius.length == 1 ? celsius[0] : celsius[0] + 0.5 * (celsius[0] - celsius[1]);
    }

    /** What conduction does to each ring, K/min, into {@code rates}. */
    void conduct(double[] celsius, double bathCelsius, double[] rates) {
        int last = inward.length;
        for (int i = 0; i <= last; i++) rates[i] = 0;
        for (int i = 0; i < last; i++) {
            double flow = inward[i] * (celsius[i] - celsius[i + 1]);
            rates[i] -= flow;
            rates[i + 1] += flow;
        }
        rates[last] -= surface * (celsius[last] - bathCelsius);
    }

    /**
     * The slowest way in which rings cool.
     *
     * @param perMinute its rate
     * @param axisExcess what the axis has of it at first where all rings begin alike
     */
    private record Mode(double perMinute, double axisExcess) {
        static Mode of(Shells shells) {
            int n = shells.count();
            double[] shape = new double[n];
            Arrays.fill(shape, 1);
            // Inverse iteration: each solution of A·x = shape is nearer to the slowest mode.
            double rate = 0;
            for (int round = 0; round < 30; round++) {
                double[] next = shells.steady(shape);
                rate = shape[0] / next[0];
                double size = next[0];
                for (int i = 0; i < n; i++) shape[i] = next[i] / size;
            }
            double ones = 0;
            double squares = 0;
            for (double part : shape) {
                ones += part;
                squares += part * part;
            }
            return new Mode(rate, ones / squares * shells.axis(shape));
        }
    }

    /** Temperatures over the bath at which this much heat goes through each ring: heat flows outwards, so summed up. */
    private double[] steady(double[] heat) {
        int n = count();
        double[] through = new double[n];
        double sum = 0;
        for (int i = 0; i < n; i++) {
            sum += heat[i];
            through[i] = sum;
        }
        double[] celsius = new double[n];
        celsius[n - 1] = through[n - 1] / surface;
        for (int i = n - 2; i >= 0; i--) celsius[i] = celsius[i + 1] + through[i] / inward[i];
        return celsius;
    }
}
