package fifthform.simulator.bowl;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.crystal.Crystals;
import fifthform.curves.crystal.Kinetics;
import fifthform.curves.crystal.Rates;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The simulator's crystals against the vectors of the reduced model of cocoa butter that they are written from: {@code
 * model_vectors.csv}, computed by another program from the same equations.
 */
class FormsTest {
    /** Without bound heat the temperature is what the test says. */
    private static final Chocolate HEATLESS = new Chocolate(0.5, 0, 28, 34);

    private static final double STEADY = 1;

    private static List<List<String>> rows(String kind) {
        try (BufferedReader in = new BufferedReader(new InputStreamReader(
                FormsTest.class.getResourceAsStream("/reference/model_vectors.csv"), StandardCharsets.UTF_8))) {
            return in.lines()
                    .filter(line -> line.startsWith(kind))
                    .map(line -> List.of(line.split(",", -1)))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Stream<List<String>> rates() {
        // Full vigour is 20 1/s, so the one row of hard stirring is beyond these hands.
        return rows("rate,").stream().filter(row -> number(row, 2) <= 20);
    }

    static Stream<List<String>> holds() {
        return rows("euler1s_hold").stream();
    }

    private static double number(List<String> row, int column) {
        return Double.parseDouble(row.get(column));
    }

    private static Forms begin(List<String> row) {
        return new Forms(number(row, 3), number(row, 4), number(row, 5), number(row, 6), number(row, 7));
    }

    private static Forms held(Forms from, double celsius, double seconds, double vigour) {
        return (Forms) from.settled(HEATLESS, Chocolate.sensible(celsius), seconds, vigour);
    }

    @ParameterizedTest
    @MethodSource("rates")
    void changesAtTheRatesOfTheModel(List<String> row) {
        Forms from = begin(row);
        double seconds = 0.01;
        Forms to = held(from, number(row, 1), seconds, number(row, 2) / 20);
        double[] rate = {
            to.two() - from.two(),
            to.four() - from.four(),
            to.five() - from.five(),
            to.six() - from.six(),
            to.births() - from.births()
        };
        for (int i = 0; i < rate.length; i++) {
            double expected = number(row, 8 + i);
            assertEquals(
                    expected, rate[i] / seconds, 1e-5 * Math.abs(expected) + 1e-13, i + " of " + row.get(1) + " °C");
        }
    }

    @ParameterizedTest
    @MethodSource("holds")
    void endsWhereTheModelEnds(List<String> row) {
        double minutes = Double.parseDouble(row.get(0).replaceAll("euler1s_hold_|min", ""));
        Forms forms = begin(row);
        for (int i = 0; i < minutes * 120; i++) forms = held(forms, number(row, 1), 0.5, STEADY);
        assertEquals(number(row, 10), forms.five(), 0.01 * number(row, 10) + 1e-5);
        assertEquals(number(row, 12), forms.births(), 0.01 * number(row, 12) + 1e-5);
    }

    /** Melted at 45 °C, cooled in 12 min, held for 6, warmed to 31.5 °C in 4. */
    @ParameterizedTest
    @ValueSource(doubles = {25, 27.5, 28.5, 29, 30})
    void theSeedOfAWholeProgrammeIsTheModels(double coolCelsius) {
        Forms end = programme(coolCelsius, STEADY);
        double expected = switch ((int) (coolCelsius * 10)) {
            case 250 -> 3.255695e-01;
            case 275 -> 1.954086e-02;
            case 285 -> 2.548833e-03;
            case 290 -> 7.392810e-04;
            default -> 2.462930e-05;
        };
        assertEquals(expected, end.stableFraction(), 0.05 * expected);
    }

    private static Forms programme(double coolCelsius, double vigour) {
        Forms forms = Forms.SOLID;
        for (int i = 0; i < 10 * 120; i++) forms = held(forms, 45, 0.5, vigour);
        for (int i = 0; i < 12 * 120; i++) forms = held(forms, 45 + (coolCelsius - 45) * i / 1440, 0.5, vigour);
        for (int i = 0; i < 6 * 120; i++) forms = held(forms, coolCelsius, 0.5, vigour);
        for (int i = 0; i < 4 * 120; i++) {
            forms = held(forms, coolCelsius + (31.5 - coolCelsius) * i / 480, 0.5, vigour);
        }
        return forms;
    }

    /** Published: a melt without memory makes no form V at rest. */
    @Test
    void nobodyStirsAndNothingComes() {
        assertTrue(programme(27.5, 0).stableFraction() < 1e-4);
    }

    /** Latent heat of dark chocolate 46 kJ/kg: Beckett ed. 2009, pp. 667–668. */
    @Test
    void solidChocolateBindsItsLatentHeat() {
        assertEquals(46_000, Forms.SOLID.boundJoulesPerKilogram(Chocolate.dark(1)), 1e-6);
        assertEquals(1, Forms.SOLID.solidFraction());
    }

    @Test
    void moltenChocolateInTheHeatStaysAsItIs() {
        assertSame(Forms.MELTED, held(Forms.MELTED, 45, 0.5, STEADY));
    }

    @Test
    void mixingKeepsTheSum() {
        Forms here = new Forms(0.01, 0.02, 0.1, 0.005, 0.004);
        Forms there = new Forms(0, 0.01, 0.02, 0.001, 0.001);
        Forms mixed = here.mixedWith(there, 0.25);
        assertEquals(0.75 * 0.1 + 0.25 * 0.02, mixed.five(), 1e-15);
        assertEquals(0.75 * 0.135 + 0.25 * 0.031, mixed.four() + mixed.two() + mixed.five() + mixed.six(), 1e-15);
    }

    /** Two writings of the same equations, at states and temperatures as they come, milk fat or none. */
    @Test
    void theProgramsOwnModelSaysTheSame() {
        SplittableRandom random = new SplittableRandom(7);
        for (int i = 0; i < 2000; i++) {
            double milkFat = random.nextBoolean() ? 0 : random.nextDouble(0.02, 0.25);
            double shift = -8.5 * Math.log(1 / (1 - milkFat));
            Kinetics kinetics = Kinetics.of(new fifthform.curves.crystal.Fat(milkFat, 0.32));
            Chocolate chocolate = new Chocolate(0.5, 0, 20, 34 + shift);
            double five = random.nextDouble(0.3);
            Forms from = new Forms(
                    random.nextDouble(0.05),
                    random.nextDouble(0.1),
                    five,
                    random.nextDouble(0.02),
                    five * random.nextDouble());
            double celsius = random.nextDouble(5, 50);
            double vigour = random.nextDouble();
            double seconds = 0.01;
            Forms to = (Forms) from.settled(chocolate, Chocolate.sensible(celsius), seconds, vigour);
            Crystals c = new Crystals(from.two(), from.four(), from.five(), from.six(), from.births());
            Rates rates = kinetics.rates(c, celsius, 20 * vigour);
            String what = from + " at " + celsius;
            same(rates.formTwo(), (to.two() - from.two()) / seconds, what);
            same(rates.formFour(), (to.four() - from.four()) / seconds, what);
            same(rates.formFive(), (to.five() - from.five()) / seconds, what);
            same(rates.formSix(), (to.six() - from.six()) / seconds, what);
            same(rates.seedMass(), (to.births() - from.births()) / seconds, what);
        }
    }

    private static void same(double theirs, double ours, String what) {
        assertEquals(theirs, ours, 1e-6 * Math.abs(theirs) + 1e-12, what);
    }

    /** Any temperatures and hands, with the heat that is bound and freed. */
    @Test
    void nothingIsEverNegativeNorMoreThanAll() {
        long seed = 20;
        SplittableRandom random = new SplittableRandom(seed);
        Chocolate chocolate = Chocolate.dark(0.5);
        for (int history = 0; history < 300; history++) {
            Forms forms = random.nextBoolean() ? Forms.SOLID : Forms.MELTED;
            double content = new Portion(random.nextDouble(5, 60), forms).joulesPerKilogram(chocolate);
            for (int step = 0; step < 400; step++) {
                content += random.nextDouble(-3000, 3000);
                content = Math.max(-40_000, Math.min(90_000, content));
                forms = (Forms) forms.settled(chocolate, content, 0.5, random.nextDouble());
                double sum = forms.two() + forms.four() + forms.five() + forms.six();
                boolean sound = forms.two() >= 0
                        && forms.four() >= 0
                        && forms.five() >= 0
                        && forms.six() >= 0
                        && forms.births() >= 0
                        && forms.births() <= forms.five()
                        && sum <= 1;
                assertTrue(sound, forms + ", seed " + seed + ", history " + history);
            }
        }
    }
}
