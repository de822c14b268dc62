package fifthform.simulator.bars;

import fifthform.simulator.bowl.Chocolate;
import fifthform.simulator.bowl.Forms;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A bar in its mould, as four layers from the mould to the open face, each with crystals of its own. Heat goes between the
 * layers, to the mould and to the air; crystals give theirs to the layer in which they form. Conductivity 0.25 W/mK and
 * density 1300 kg/m³ of chocolate, 4.3 kJ/m²K of a polycarbonate mould: from memory of handbooks.
 *
 * @param layers crystals of each layer, mould first, when it was taken out of the air it set in
 * @param celsius their temperatures, °C
 * @param poured crystals when it was poured
 * @param ripeMinutes how long the middle was solid in part and above 27 °C, so that large crystals ate small ones, min
 * @param besideCelsius every ten seconds, what a tip beside the mould reads: the air, warmed a little by the mould, °C
 */
public record SetBar(Forms[] layers, double[] celsius, Forms poured, double ripeMinutes, List<Double> besideCelsius) {
    private static final int LAYERS = 4;
    private static final double STEP_SECONDS = 2;
    private static final double CONDUCTIVITY = 0.25;
    private static final double KILOGRAMS_PER_CUBIC_METRE = 1300;
    private static final double JOULES_PER_KILOGRAM_KELVIN = 1590;
    private static final double MOULD_JOULES_PER_SQUARE_METRE_KELVIN = 4300;
    private static final double MOULD_CONTACT = 150;
    private static final double RIPENS_CELSIUS = 27;
    private static final double RIPENS_FROM_SOLID = 0.05;
    private static final double BESIDE_SECONDS = 10;
    private static final double WARMED_BY_MOULD = 0.25;

    public SetBar {
        layers = layers.clone();
        celsius = celsius.clone();
        besideCelsius = List.copyOf(besideCelsius);
    }

    /** A bar of this chocolate after so many minutes. */
    public static SetBar after(Chocolate chocolate, Forms poured, double pouredCelsius, Mould mould, double minutes) {
        double metres = mould.millimetres() / 1000 / LAYERS;
        double capacity = KILOGRAMS_PER_CUBIC_METRE * metres * JOULES_PER_KILOGRAM_KELVIN;
        double between = CONDUCTIVITY / metres;
        double air = mould.wattsPerSquareMetreKelvin();
        double[] t = new double[LAYERS];
        Arrays.fill(t, pouredCelsius);
        Forms[] forms = new Forms[LAYERS];
        Arrays.fill(forms, poured);
        double wall = mould.mouldCelsius();
        double ripe = 0;
        List<Double> beside = new ArrayList<>();
        for (double second = 0; second < 60 * minutes; second += STEP_SECONDS) {
            double outside = mould.airCelsius().applyAsDouble(second / 60);
            double[] watts = new double[LAYERS];
            double toWall = MOULD_CONTACT * (t[0] - wall);
            watts[0] -= toWall;
            wall += STEP_SECONDS * (toWall - air * (wall - outside)) / MOULD_JOULES_PER_SQUARE_METRE_KELVIN;
            watts[LAYERS - 1] -= air * (t[LAYERS - 1] - outside);
            for (int i = 0; i + 1 < LAYERS; i++) {
                double flow = between * (t[i] - t[i + 1]);
                watts[i] -= flow;
                watts[i + 1] += flow;
            }
            for (int i = 0; i < LAYERS; i++) {
                double content = JOULES_PER_KILOGRAM_KELVIN * (t[i] + STEP_SECONDS * watts[i] / capacity)
                        - forms[i].boundJoulesPerKilogram(chocolate);
                forms[i] = (Forms) forms[i].settled(chocolate, content, STEP_SECONDS, 0);
                double next = (content + forms[i].boundJoulesPerKilogram(chocolate)) / JOULES_PER_KILOGRAM_KELVIN;
                t[i] = next;
            }
            if (t[1] > RIPENS_CELSIUS && solid(forms[1]) > RIPENS_FROM_SOLID) ripe += STEP_SECONDS / 60;
            if (second % BESIDE_SECONDS == 0) beside.add(outside + WARMED_BY_MOULD * (wall - outside));
        }
        return new SetBar(forms, t, poured, ripe, beside);
    }

    /** Share of the solid that is stable, in the layer at the mould, 0 to 1. */
    public double stableAtFace() {
        return stable(layers[0]);
    }

    /** All that is solid, kg for each kg of fat, mean of the layers. */
    public double solid() {
        return Arrays.stream(layers).mapToDouble(SetBar::solid).average().orElseThrow();
    }

    /**
     * How coarse the crystals are: the root of how many times as much each seed grew as when it was born, along one edge. Few
     * seeds make large crystals, between which liquid fat comes to the face.
     */
    public double coarseness() {
        double births =
                Arrays.stream(layers).mapToDouble(Forms::births).average().orElseThrow();
        return StrictMath.cbrt(solid() / Math.max(births, 1e-9));
    }

    private static double solid(Forms f) {
        return f.two() + f.four() + f.five() + f.six();
    }

    private static double stable(Forms f) {
        double solid = solid(f);
        return solid < 0.02 ? 0 : f.stableFraction() / solid;
    }
}
