package fifthform.curves.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.forecast.Outlook;
import fifthform.curves.input.MakerAction.BowlMoved;
import fifthform.curves.input.MakerAction.PhaseConfirmed;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.recipe.Phase;
import fifthform.curves.reference.Fit;
import fifthform.curves.reference.Table;
import fifthform.curves.setup.Beginning;
import fifthform.curves.setup.Setup;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.analysis.interpolation.LinearInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer.Optimum;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Cooling curves that no model of ours produced; the source of each stands in its file. */
class MeasuredCoolingTest {
    private static final Table VESSELS = Table.read("cooling_three_vessels.csv");
    /** Beside the vessels it was 23.7 to 23.0 °C; beside the mug it is not known and of no weight while that is hot. */
    private static final double ROOM_CELSIUS = 23.2;

    private static final Table MUG = Table.read("cooling_mug.csv");

    /**
     * The reference page's values, after 100 s: 1044, 1462 and 1239 s, without an error; ours lie within 2 % (the kept
     * fifth of the readings, rounded to 0.1 K).
     */
    @ParameterizedTest
    @CsvSource({"1, 1044", "2, 1462", "3, 1239"})
    void eachVesselCoolsWithTheStatedTimeConstant(String run, double stated) {
        Table vessel = VESSELS.where("run", run);
        double[] seconds = vessel.numbers("time_s");
        double[] water = vessel.numbers("water_C");
        double[] room = vessel.numbers("room_C");
        SimpleRegression line = new SimpleRegression();
        for (int i = 0; i < seconds.length; i++) {
            if (seconds[i] >= 100) line.addData(seconds[i], Math.log(water[i] - room[i]));
        }
        assertEquals(stated, -1 / line.getSlope(), 0.02 * stated);
    }

    /** The reference page: one exponential leaves 1.15 K rms, two (168 and 1128 s, end 32.5 °C) leave 0.27 K. */
    @Test
    void aMugIsABodyAndItsWall() {
        double[] seconds = MUG.numbers("time_s");
        double[] celsius = mugCelsius();
        Optimum one = Fit.of((t, p) -> p[0] + p[1] * Math.exp(-t / p[2]), seconds, celsius, 30, 60, 800);
        Optimum two = Fit.of(
                (t, p) -> p[0] + p[1] * Math.exp(-t / p[2]) + p[3] * Math.exp(-t / p[4]),
                seconds,
                celsius,
                30,
                20,
                150,
                45,
                1000);
        assertEquals(1.15, one.getRMS(), 0.02);
        assertEquals(0.27, two.getRMS(), 0.01);
        assertEquals(32.5, two.getPoint().getEntry(0), 0.5);
        assertEquals(168, two.getPoint().getEntry(2), 5);
        assertEquals(1128, two.getPoint().getEntry(4), 30);
    }

    private static double[] mugCelsius() {
        return Arrays.stream(MUG.numbers("water_F")).map(f -> (f - 32) / 1.8).toArray();
    }

    private record Coverage(
            String curve, int forecasts, int inside, double meanHalfWidthKelvin, double meanErrorKelvin) {}

    /** From every prefix, what the engine says of a bowl on the table so many seconds ahead, against what came. */
    private static Coverage coverage(String curve, double[] seconds, double[] celsius, Duration ahead) {
        Setup setup = inRoom(ROOM_CELSIUS);
        PolynomialSplineFunction measured = new LinearInterpolator().interpolate(seconds, celsius);
        Instant start = StoryMaker.START;
        State state = Engine.start(setup, start);
        state = Engine.step(setup, state, new PhaseConfirmed(start, Phase.REST)).after();
        state = Engine.step(setup, state, new BowlMoved(start, Place.TABLE)).after();
        int forecasts = 0;
        int inside = 0;
        int judged = 0;
        double width = 0;
        double error = 0;
        for (int i = 0; i < seconds.length; i++) {
            Instant at = start.plusMillis(Math.round(1000 * seconds[i]));
            state = Engine.step(setup, state, StoryKitchen.reading(at, celsius[i]))
                    .after();
            double then = seconds[i] + ahead.toSeconds();
            if (i < 2 || then > seconds[seconds.length - 1] || state.forecast().isEmpty()) continue;
            Outlook outlook = state.forecast().get().at(ahead);
            double came = measured.value(then);
            forecasts++;
            if (came >= outlook.lowerCelsius() && came <= outlook.upperCelsius()) inside++;
            width += (outlook.upperCelsius() - outlook.lowerCelsius()) / 2;
            // The middle is judged once the filter has seen some readings, the band from the third on.
            if (i < 10) continue;
            judged++;
            error += Math.abs(outlook.celsius() - came);
        }
        return new Coverage(curve, forecasts, inside, width / forecasts, error / judged);
    }

    private static Setup inRoom(double celsius) {
        Setup setup = TestRecipes.setup();
        return new Setup(
                setup.recipe(),
                setup.bowl(),
                setup.probes(),
                setup.reactionTime(),
                setup.bathCelsius(),
                OptionalDouble.of(celsius),
                setup.origin(),
                setup.approach(),
                setup.seedGrams(),
                Beginning.WHOLE,
                Optional.empty());
    }

    /**
     * From every prefix of all four curves, in a band that should hold 90 %: 94 % of what came 60 s later (471 of 500)
     * and 95 % of what came 180 s later (405 of 427). The shares of the band come from simulated
     * kitchens ({@code CourseSpread}), its width from how the session's own forecasts came out ({@code Hindsight}); but how
     * fast {@code Hindsight} learns was settled with these figures in sight, so of that constant they are no test. Curve by curve it is
     * less even: 91 % for the vessel that cools fastest, 97 to 99 % for the mug, which at 5 K/min is taken for a bowl in
     * cold water and gets that place's wide band.
     */
    @ParameterizedTest
    @CsvSource({"60, 0.5", "180, 1.2"})
    void theBandHoldsNineTimesInTen(int ahead, double meanErrorKelvin) {
        Duration time = Duration.ofSeconds(ahead);
        List<Coverage> all = new ArrayList<>();
        for (String run : List.of("1", "2", "3")) {
            Table vessel = VESSELS.where("run", run);
            all.add(coverage("vessel " + run, vessel.numbers("time_s"), vessel.numbers("water_C"), time));
        }
        all.add(coverage("mug", MUG.numbers("time_s"), mugCelsius(), time));
        for (Coverage c : all) System.out.printf(Locale.ROOT, "%d s ahead: %s%n", ahead, c);
        int forecasts = all.stream().mapToInt(Coverage::forecasts).sum();
        int inside = all.stream().mapToInt(Coverage::inside).sum();
        System.out.printf(Locale.ROOT, "%d s ahead: %d of %d in the band%n", ahead, inside, forecasts);
        assertTrue(forecasts > 420, "forecasts " + forecasts);
        assertTrue(inside >= 0.85 * forecasts && inside <= 0.95 * forecasts, inside + " of " + forecasts + ": " + all);
        for (Coverage c : all) {
            assertTrue(c.inside() >= 0.85 * c.forecasts(), c.toString());
            assertTrue(c.meanErrorKelvin() < meanErrorKelvin, c.toString());
        }
    }

    /** 545 readings that nobody here made up, on the table and said to stand in cold water: not one is doubted. */
    @ParameterizedTest
    @ValueSource(strings = {"TABLE", "COLD_WATER"})
    void noneOfTheMeasuredReadingsIsDoubted(Place place) {
        int readings = 0;
        for (String run : List.of("1", "2", "3")) {
            Table vessel = VESSELS.where("run", run);
            readings += undoubted(vessel.numbers("time_s"), vessel.numbers("water_C"), place);
        }
        readings += undoubted(MUG.numbers("time_s"), mugCelsius(), place);
        System.out.println(readings + " measured readings, none doubted");
        assertTrue(readings > 500, "readings " + readings);
    }

    private static int undoubted(double[] seconds, double[] celsius, Place place) {
        Setup setup = inRoom(ROOM_CELSIUS);
        Instant start = StoryMaker.START;
        State state = Engine.step(setup, Engine.start(setup, start), new PhaseConfirmed(start, Phase.REST))
                .after();
        state = Engine.step(setup, state, new BowlMoved(start, place)).after();
        for (int i = 0; i < seconds.length; i++) {
            Instant at = start.plusMillis(Math.round(1000 * seconds[i]));
            state = Engine.step(setup, state, StoryKitchen.reading(at, celsius[i]))
                    .after();
            assertEquals(
                    Optional.empty(), state.tracks().entries().get(0).track().doubt(), "at " + seconds[i] + " s");
        }
        return seconds.length;
    }
}
