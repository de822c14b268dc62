package fifthform.curves.crystal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.reference.Table;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.DoubleSupplier;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * {@code crystal_check_values.csv} row by row, each within the tolerance that the row gives; its column source says where
 * the value is from and its column seen how it came here. Rows that speak of other things than this model stand in
 * {@link #ELSEWHERE}.
 */
class CrystalCheckValuesTest {
    private static final Table VALUES = quoted("crystal_check_values.csv");
    private static final Kinetics DARK = Kinetics.of(Fat.DARK);
    private static final Kinetics MILK = Kinetics.of(new Fat(0.17, 0.31));
    private static final Kinetics WHITE = Kinetics.of(new Fat(0.21, 0.33));
    private static final double STIRRED = 20;

    /**
     * Melting points of other forms and samples (1 to 4, 7 to 9), heat, conduction, density and contraction (12 to 16, 18,
     * 20 to 25), an exponent of another equation (33), flow (34, 35), dew points (36 to 39), a cooling bowl (63),
     * composition (84 to 86), an ideal solution (87), noise of a slope (89, 90).
     */
    private static final Set<Integer> ELSEWHERE = rows(
            1, 2, 3, 4, 7, 8, 9, 12, 13, 14, 15, 16, 18, 20, 21, 22, 23, 24, 25, 33, 34, 35, 36, 37, 38, 39, 63, 84, 85,
            86, 87, 89, 90);

    private static final Crystals IN_TEMPER = HighOrder.run(DARK, Programme.textbook(), Crystals.SOLID, STIRRED);

    @TestFactory
    List<DynamicTest> eachRowWithinItsTolerance() {
        Map<Integer, DoubleSupplier> model = model();
        return VALUES.rows().stream()
                .filter(row -> model.containsKey(number(row)))
                .map(row -> DynamicTest.dynamicTest(
                        row.get(0) + " " + row.get(1) + " [" + row.get(5) + "]",
                        () -> assertEquals(
                                Double.parseDouble(row.get(2)),
                                model.get(number(row)).getAsDouble(),
                                Double.parseDouble(row.get(3)))))
                .toList();
    }

    @Test
    void noRowIsLeftOut() {
        Set<Integer> all = new TreeSet<>();
        VALUES.rows().forEach(row -> all.add(number(row)));
        Set<Integer> seen = new TreeSet<>(ELSEWHERE);
        seen.addAll(model().keySet());
        assertEquals(all, seen);
        assertTrue(model().keySet().stream().noneMatch(ELSEWHERE::contains));
    }

    /** Solid fat against the published band, recalled from memory as its file says. */
    @TestFactory
    List<DynamicTest> solidFatLiesInThePublishedBand() {
        Table band = quoted("solid_fat.csv");
        return band.rows().stream()
                .map(row -> DynamicTest.dynamicTest(row.get(0) + " °C [" + row.get(5) + "]", () -> {
                    double percent = 100 * DARK.liquidus(Form.FIVE, Double.parseDouble(row.get(0)));
                    assertTrue(percent >= Double.parseDouble(row.get(2)), "solid " + percent);
                    if (!row.get(3).isEmpty()) {
                        assertTrue(percent <= Double.parseDouble(row.get(3)), "solid " + percent);
                    }
                }))
                .toList();
    }

    private static Map<Integer, DoubleSupplier> model() {
        Map<Integer, DoubleSupplier> m = new TreeMap<>();
        m.put(5, () -> lastCelsius(Form.FIVE));
        m.put(6, () -> lastCelsius(Form.SIX));
        m.put(10, () -> lastCelsius(Form.FIVE));
        m.put(11, () -> gone());
        // Latent heat of dark, kJ/kg: heat of V of what is solid at 20 °C in 32 % of fat.
        m.put(17, () -> 0.32 * DARK.liquidus(Form.FIVE, 20) * heatOfFive());
        m.put(19, () -> 0.32 * DARK.liquidus(Form.FIVE, 20) * heatOfFive());
        m.put(26, () -> 100 * DARK.liquidus(Form.FIVE, 20));
        m.put(27, () -> 100 * DARK.liquidus(Form.FIVE, 25));
        m.put(28, () -> 100 * DARK.liquidus(Form.FIVE, 30));
        m.put(29, () -> 100 * DARK.liquidus(Form.FIVE, 32.5));
        m.put(30, () -> 100 * DARK.liquidus(Form.FIVE, 35));
        m.put(31, () -> aged(new Crystals(0.01, 0, 0, 0, 0), 17.5, 30).formTwo() / 0.01);
        m.put(32, () -> turnedAtRest(24, 600));
        m.put(40, () -> IN_TEMPER.formFive());
        m.put(41, () -> Programme.textbook().run(DARK, Crystals.SOLID, STIRRED).formFive());
        m.put(42, () -> IN_TEMPER.formFour());
        m.put(
                43,
                () -> HighOrder.run(DARK, Programme.of(0, 48, 10, 48, 22, 27.5, 28, 27.5), Crystals.SOLID, STIRRED)
                        .formFour());
        m.put(44, () -> left(33.5, 2));
        m.put(45, () -> left(33.5, 10));
        m.put(46, () -> left(34, 2));
        m.put(47, () -> left(34, 10));
        m.put(48, () -> left(34.5, 2));
        m.put(49, () -> left(34.5, 10));
        m.put(50, () -> left(33, 10));
        m.put(51, () -> left(32.5, 10));
        m.put(52, () -> neverSeeded().formFive());
        m.put(53, () -> Bar.moulded(DARK, neverSeeded()).shareOfFive());
        m.put(54, () -> Bar.moulded(DARK, seed(IN_TEMPER.formFive())).shareOfFive());
        m.put(55, () -> anHour().formFive());
        m.put(56, () -> DARK.thickness(anHour()));
        // The plateau as at 33 °C in all three, as the reference has it.
        m.put(57, () -> DARK.balanceCelsius(Form.FIVE, 0.02, 33));
        m.put(58, () -> MILK.balanceCelsius(Form.FIVE, 0.02, 33));
        m.put(59, () -> WHITE.balanceCelsius(Form.FIVE, 0.02, 33));
        m.put(60, () -> Tube.cooled(DARK, 0.02).bendCelsius());
        m.put(61, () -> Tube.cooled(DARK, 0.04).slopeKelvinPerMinute());
        m.put(62, () -> Bar.moulded(DARK, seed(IN_TEMPER.formFive())).minutesToSixty());
        m.put(64, () -> 0.32 * 0.01 * heatOfFive() / 1.63);
        m.put(65, () -> Tube.cooled(DARK, 0.001).bendCelsius());
        m.put(66, () -> Tube.cooled(DARK, 0.005).bendCelsius());
        m.put(67, () -> Tube.cooled(DARK, 0.01).bendCelsius());
        m.put(68, () -> Tube.cooled(DARK, 0.03).bendCelsius());
        m.put(69, () -> Tube.cooled(DARK, 0.06).bendCelsius());
        m.put(70, () -> Tube.cooled(DARK, 0.12).bendCelsius());
        m.put(71, () -> Tube.cooled(DARK, 0.01).slopeKelvinPerMinute());
        m.put(72, () -> Tube.cooled(DARK, 0.02).slopeKelvinPerMinute());
        m.put(73, () -> Tube.cooled(DARK, 0.08).slopeKelvinPerMinute());
        m.put(
                74,
                () -> Programme.temper(27.5, 6)
                        .run(DARK, Crystals.SOLID, STIRRED)
                        .formFive());
        m.put(75, () -> fromClearMelt(28.5, 6, STIRRED));
        m.put(76, () -> fromClearMelt(28.5, 12, STIRRED));
        m.put(77, () -> fromClearMelt(29, 20, STIRRED));
        m.put(78, () -> fromClearMelt(27, 6, STIRRED));
        m.put(79, () -> fromClearMelt(25, 6, STIRRED));
        m.put(80, () -> fromClearMelt(27.5, 6, 0));
        m.put(81, () -> Kinetics.of(new Fat(0.10, 0.3)).shiftKelvin());
        m.put(82, () -> MILK.shiftKelvin());
        m.put(83, () -> WHITE.shiftKelvin());
        m.put(88, () -> DARK.thickness(new Crystals(0, 0, 0.06, 0, 0)));
        return m;
    }

    /** The highest temperature at which a trace of a form does not melt: the model's melt-out. */
    private static double lastCelsius(Form form) {
        double trace = 1e-9;
        Crystals c = form == Form.FIVE ? new Crystals(0, 0, trace, 0, 0) : new Crystals(0, 0, 0, trace, 0);
        double celsius = 30;
        while (melts(c, form, celsius) == 0) celsius += 0.001;
        return celsius;
    }

    private static double melts(Crystals c, Form form, double celsius) {
        Rates r = DARK.rates(c, celsius, 0);
        return form == Form.FIVE ? Math.min(0, r.crystallising()) : Math.min(0, r.formSix());
    }

    /** The temperature below which form IV counts as present. */
    private static double gone() {
        double celsius = 31;
        FormFourGone warm = FormFourGone.NOT_YET.after(31, 0);
        while (!warm.after(celsius, 0).equals(FormFourGone.NOT_YET)) celsius -= 0.01;
        return celsius;
    }

    private static double heatOfFive() {
        return Constants.PACKED.value("LV");
    }

    private static Crystals aged(Crystals start, double celsius, double minutes) {
        Kinetics still = new Kinetics(
                Constants.PACKED.with("JA", 0).with("JB", 0).with("kA", 0).with("kB", 0), Fat.DARK);
        return Programme.of(0, celsius, minutes, celsius).run(still, start, 0);
    }

    /** Of form IV with nothing new forming and nothing melting. */
    private static double turnedAtRest(double celsius, double minutes) {
        Kinetics still = new Kinetics(
                Constants.PACKED
                        .with("JA", 0)
                        .with("JB", 0)
                        .with("kA", 0)
                        .with("kB", 0)
                        .with("kV", 0),
                Fat.DARK);
        return Programme.of(0, celsius, minutes, celsius)
                        .run(still, new Crystals(0, 0.1, 0, 0, 0), 0)
                        .formFour()
                / 0.1;
    }

    private static double left(double celsius, double minutes) {
        Programme over = Programme.of(0, 31.5, 0.5, celsius, 0.5 + minutes, celsius);
        return HighOrder.run(DARK, over, IN_TEMPER, STIRRED).formFive() / IN_TEMPER.formFive();
    }

    private static Crystals neverSeeded() {
        return Programme.of(0, 48, 10, 48, 20, 31.5, 35, 31.5).run(DARK, Crystals.SOLID, STIRRED);
    }

    private static Crystals anHour() {
        Programme warm = Programme.of(0, 48, 10, 48, 22, 27.5, 28, 27.5, 32, 31.5, 92, 31.5);
        return HighOrder.run(DARK, warm, Crystals.SOLID, STIRRED);
    }

    private static double fromClearMelt(double celsius, double minutes, double shear) {
        return Programme.temper(celsius, minutes)
                .run(DARK, Crystals.MELTED, shear)
                .formFive();
    }

    /** As the reference seeds a mould or a tube: N = 0.055 V. */
    static Crystals seed(double five) {
        return new Crystals(0, 0, five, 0, 0.055 * five);
    }

    private static int number(List<String> row) {
        return Integer.parseInt(row.get(0));
    }

    private static Set<Integer> rows(int... numbers) {
        Set<Integer> set = new TreeSet<>();
        for (int n : numbers) set.add(n);
        return set;
    }

    /** Commas within quotation marks are text. */
    private static Table quoted(String name) {
        Table plain = Table.read(name);
        List<List<String>> rows = plain.rows().stream()
                .map(cells -> List.of(String.join(",", cells).split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1)))
                .toList();
        return new Table(plain.columns(), rows);
    }
}
