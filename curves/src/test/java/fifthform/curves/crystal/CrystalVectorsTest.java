package fifthform.curves.crystal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.reference.Table;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * The model against numbers from another program in another language, {@code crystal_vectors.csv}: computed by the
 * reference model behind this project's tables, not measured. Tolerances as the reference gives them.
 */
class CrystalVectorsTest {
    private static final Table VECTORS = Table.read("crystal_vectors.csv");
    private static final Kinetics DARK = Kinetics.of(Fat.DARK);
    private static final long BITS_FIVE = 0x3f970448025f73a8L;
    private static final long BITS_SEED = 0x3f51d511c4df102cL;

    @TestFactory
    List<DynamicTest> ratesAgreeToOneInAMillion() {
        return rows("rate")
                .map(row -> DynamicTest.dynamicTest(name(row), () -> {
                    Rates r = DARK.rates(start(row), number(row, "T_C"), number(row, "shear_per_s"));
                    near(number(row, "out1"), r.formTwo(), 1e-6);
                    near(number(row, "out2"), r.formFour(), 1e-6);
                    near(number(row, "out3"), r.formFive(), 1e-6);
                    near(number(row, "out4"), r.formSix(), 1e-6);
                    near(number(row, "out5"), r.seedMass(), 1e-6);
                }))
                .toList();
    }

    @TestFactory
    List<DynamicTest> solidsInBalanceAgreeToOneInAMillion() {
        return rows("liquidus_sV_sIV_sA")
                .map(row -> DynamicTest.dynamicTest(name(row), () -> {
                    double celsius = number(row, "T_C");
                    near(number(row, "out1"), DARK.liquidus(Form.FIVE, celsius), 1e-6);
                    near(number(row, "out2"), DARK.liquidus(Form.FOUR, celsius), 1e-6);
                    near(number(row, "out3"), DARK.liquidus(Form.TWO, celsius), 1e-6);
                }))
                .toList();
    }

    @TestFactory
    List<DynamicTest> endsOfProgrammesAgreeToOneInTenThousand() {
        return rows("euler1s")
                .map(row -> DynamicTest.dynamicTest(name(row), () -> {
                    Crystals end = programme(row).run(DARK, start(row), number(row, "shear_per_s"));
                    near(number(row, "out1"), end.formTwo(), 1e-4);
                    near(number(row, "out2"), end.formFour(), 1e-4);
                    near(number(row, "out3"), end.formFive(), 1e-4);
                    near(number(row, "out4"), end.formSix(), 1e-4);
                    near(number(row, "out5"), end.seedMass(), 1e-4);
                }))
                .toList();
    }

    @TestFactory
    List<DynamicTest> threeCopiesSayTheReferencesWords() {
        return rows("three_copies")
                .map(row -> DynamicTest.dynamicTest(name(row), () -> {
                    Programme programme = copiesProgramme(text(row, "kind"));
                    Copies copies = Copies.all(start(row));
                    double shear = number(row, "shear_per_s");
                    for (int i = 0; i < Math.round(programme.endMinutes() * 60); i++) {
                        copies = copies.step(DARK, programme.celsiusAt(i / 60.0), shear, 1);
                    }
                    SeedRange seed = copies.seed(DARK);
                    near(number(row, "out1"), seed.lower(), 1e-4);
                    near(number(row, "out2"), seed.middle(), 1e-4);
                    near(number(row, "out3"), seed.higher(), 1e-4);
                    String said = seed.word().word() + (seed.thick() ? "+thick" : "");
                    assertEquals(text(row, "out4"), said);
                }))
                .toList();
    }

    /** StrictMath gives the same last bit on every machine and every JDK; these are of JDK 17. */
    @Test
    void theLastBitIsTheSameEverywhere() {
        Crystals end = Programme.textbook().run(DARK, Crystals.SOLID, 20);
        assertEquals(BITS_FIVE, Double.doubleToLongBits(end.formFive()));
        assertEquals(BITS_SEED, Double.doubleToLongBits(end.seedMass()));
    }

    /** The programmes as section 7 of the reference words them. */
    private static Programme copiesProgramme(String kind) {
        Programme base = Programme.temper(27.5, 6);
        String what = kind.substring("three_copies ".length());
        if (what.startsWith("overshoot ")) {
            String[] words = what.split(" ");
            double celsius = Double.parseDouble(words[1]);
            double minutes = Double.parseDouble(words[3]);
            return base.then(32.5, celsius, 32.5 + minutes, celsius);
        }
        return switch (what) {
            case "textbook 27.5 C x 6 min", "27.5 C x 6 min; never stirred" -> base;
            case "textbook; then 60 min at 31.5 C" -> base.then(92, 31.5);
            case "cooled only to 28.5 C" -> Programme.temper(28.5, 6);
            case "cooled only to 29 C" -> Programme.temper(29, 6);
            case "cooled only to 30 C" -> Programme.temper(30, 6);
            case "cooled to 25 C" -> Programme.temper(25, 6);
            default -> throw new AssertionError("no programme for " + kind);
        };
    }

    private static Programme programme(List<String> row) {
        String kind = text(row, "kind");
        if (kind.equals("euler1s_programme_i_end")) return Programme.textbook();
        double minutes = Double.parseDouble(kind.replaceAll("euler1s_hold_(\\d+)min", "$1"));
        double celsius = number(row, "T_C");
        return Programme.of(0, celsius, minutes, celsius);
    }

    private static Stream<List<String>> rows(String kind) {
        List<List<String>> rows = VECTORS.rows().stream()
                .filter(row -> text(row, "kind").startsWith(kind))
                .toList();
        assertTrue(rows.size() >= 12, "rows of " + kind);
        return rows.stream();
    }

    private static String name(List<String> row) {
        return String.join(" ", row.subList(0, 8));
    }

    private static Crystals start(List<String> row) {
        return new Crystals(number(row, "A"), number(row, "IV"), number(row, "V"), number(row, "VI"), number(row, "N"));
    }

    private static String text(List<String> row, String column) {
        return row.get(VECTORS.columns().indexOf(column));
    }

    private static double number(List<String> row, String column) {
        return Double.parseDouble(text(row, column));
    }

    private static void near(double expected, double got, double relative) {
        assertEquals(expected, got, relative * Math.abs(expected) + 1e-15);
    }
}
