package fifthform.simulator.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.check.Problem;
import fifthform.simulator.bench.Distribution.LogNormal;
import fifthform.simulator.bench.Distribution.LogUniform;
import fifthform.simulator.bench.Distribution.Normal;
import fifthform.simulator.bench.Distribution.OneOf;
import fifthform.simulator.bench.Distribution.Uniform;
import fifthform.simulator.bench.Fleet.Advice;
import fifthform.simulator.bowl.WallMaterial;
import fifthform.simulator.maker.Luck;
import fifthform.simulator.scenario.MakerKind;
import fifthform.simulator.scenario.Scenario;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is drawn, and that it is the same wherever and in whatever order it is run. */
class FleetTest {
    private static final Fleet HOME = Fleet.builtIn(Fleet.HOME);
    private static final Advice ENGINE = Advice.engine(RecipeShelf::recipe);
    private static final Advice NONE = Advice.none(RecipeShelf::recipe);

    private static DescriptiveStatistics drawn(Distribution distribution) {
        DescriptiveStatistics all = new DescriptiveStatistics();
        for (long i = 0; i < 20_000; i++) {
            all.addValue(Double.parseDouble(distribution.draw(new Luck(8).branch(i))));
        }
        return all;
    }

    @Test
    void momentsAreAsStated() {
        DescriptiveStatistics normal = drawn(new Normal(21, 2.5, 0, 42));
        assertEquals(21, normal.getMean(), 0.06);
        assertEquals(2.5, normal.getStandardDeviation(), 0.05);
        DescriptiveStatistics even = drawn(new Uniform(3, 7));
        assertEquals(5, even.getMean(), 0.03);
        assertEquals(4 / Math.sqrt(12), even.getStandardDeviation(), 0.02);
        DescriptiveStatistics logNormal = drawn(new LogNormal(600, 0.6, 1, 1e6));
        assertEquals(600, logNormal.getPercentile(50), 10);
        assertEquals(600 * Math.exp(0.6 * 0.6 / 2), logNormal.getMean(), 15);
        double share = Math.exp(0.6); // one standard deviation of the logarithm: 84.13 % lie below
        assertEquals(600 * share, logNormal.getPercentile(84.13), 25);
    }

    /** Evenly in the logarithm from 0.2 to 5: the median is their geometric mean, 1, and a quarter lies below 5^(-1/2). */
    @Test
    void aLogarithmMayBeDrawnEvenly() {
        DescriptiveStatistics drawn = drawn(new LogUniform(0.2, 5));
        assertEquals(1, drawn.getPercentile(50), 0.03);
        assertEquals(Math.pow(5, -0.5), drawn.getPercentile(25), 0.02);
        assertTrue(drawn.getMin() >= 0.2 && drawn.getMax() <= 5);
    }

    /** Words with a unit are numbers like any other. */
    @Test
    void theTrainingFleetDrawsNumbersAmongSome() {
        Fleet training = Fleet.builtIn("training");
        long coarse = LongStream.range(0, 400)
                .filter(n -> training.draw(n).bowlAdapter().resolutionKelvin() == 0.5)
                .count();
        assertEquals(0.06 * 400, coarse, 15); // three standard deviations of so many draws
    }

    /**
     * A normal distribution cut off at one standard deviation on either side has the standard deviation
     * sqrt(1 − 2φ(1)/(2Φ(1) − 1)) = 0.5396 (truncated normal distribution, textbook).
     */
    @Test
    void whatLiesOutsideIsDrawnAgain() {
        DescriptiveStatistics cut = drawn(new Normal(0, 1, -1, 1));
        assertEquals(0.5396, cut.getStandardDeviation(), 0.01);
        assertTrue(cut.getMin() >= -1 && cut.getMax() <= 1);
        assertEquals(600, drawn(new LogNormal(600, 0.6, 590, 610)).getMean(), 10);
    }

    @Test
    void wordsComeAsOftenAsTheirShareSays() {
        OneOf distribution = new OneOf(List.of("steel", "glass", "plastic"), List.of(60.0, 30.0, 10.0));
        long glass = LongStream.range(0, 20_000)
                .filter(i -> distribution.draw(new Luck(3).branch(i)).equals("glass"))
                .count();
        assertEquals(0.3, glass / 20_000.0, 0.012);
    }

    /** Drawn from the text that comes with the program: shares, a median, and what depends on a word drawn before. */
    @Test
    void theHomeFleetIsDrawnAsItsTextSays() {
        Map<MakerKind, Integer> makers = new EnumMap<>(MakerKind.class);
        DescriptiveStatistics grams = new DescriptiveStatistics();
        for (long number = 0; number < 2000; number++) {
            Scenario scenario = HOME.draw(number);
            makers.merge(scenario.maker(), 1, Integer::sum);
            grams.addValue(scenario.kitchen().chocolate().kilograms() * 1000);
            double millimetres = scenario.kitchen().bowl().thicknessMillimetres();
            boolean glass = scenario.kitchen().bowl().material() == WallMaterial.GLASS;
            assertEquals(glass, millimetres >= 3, scenario.kitchen().bowl().toString());
        }
        assertEquals(0.30, makers.get(MakerKind.FOLLOWS_CUES) / 2000.0, 0.04);
        assertEquals(0.15, makers.get(MakerKind.BEGINNER) / 2000.0, 0.03);
        assertEquals(610, grams.getPercentile(50), 40); // cut off at 200 g, the median moves up a little
    }

    @Test
    void aLineMoreChangesNoOtherDraw() {
        String text = """
                demo = always invented for a test # invented
                title = always A test             # invented
                about = always Nothing much.      # invented
                chocolate = always dark           # invented
                bowl = always steel               # invented
                maker = always own-way            # invented
                room = normal 21 sd 2, within 15 to 27 C # invented
                """;
        Fleet plain = accepted(text);
        Fleet more = accepted("amount = uniform 300 to 900 g # invented\n" + text);
        assertEquals(
                plain.draw(7).kitchen().roomCelsius(), more.draw(7).kitchen().roomCelsius());
        assertNotEquals(
                plain.draw(7).kitchen().roomCelsius(), plain.draw(8).kitchen().roomCelsius());
        assertNotEquals(plain.text(7), plain.withSeed(99).text(7));
    }

    private static Fleet accepted(String text) {
        return Fleet.parse("test", text).fold(fleet -> fleet, problems -> {
            throw new AssertionError(problems);
        });
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "room = normal 21 sd 2, within 15 to 27 C          | is not a line of a fleet",
                "room = about 21 C # invented                      | is not a distribution",
                "room = normal 31 sd 2, within 15 to 27 C # mine   | mean must be",
                "room = uniform 27 to 15 C # mine                  | high must be",
                "room = uniform 15 to 77 C # mine                  | \"room\" must be 5 to 40",
                "room = uniform 15 to 27 K # mine                  | \"room\" takes the unit C",
                "bowl = one of steel 60 %, glass 30 % # mine       | its shares make 90",
                "bowl = one of steel 60 %, paper 40 % # mine       | cannot be \"paper\"",
                "rooom = uniform 15 to 27 C # mine                 | Did you mean \"room\"",
            })
    void whatCannotBeDrawnIsNamed(String line, String told) {
        String text = """
                demo = always invented for a test # invented
                title = always A test             # invented
                about = always Nothing much.      # invented
                chocolate = always dark           # invented
                maker = always own-way            # invented
                """;
        String bowl = line.startsWith("bowl") ? "" : "bowl = always steel # invented\n";
        List<Problem> problems = Fleet.parse("test", text + line + "\n" + bowl).fold(f -> List.of(), List::copyOf);
        assertEquals(1, problems.size(), problems.toString());
        assertEquals("line 6", problems.get(0).where());
        assertTrue(problems.get(0).toString().contains(told), problems.toString());
    }

    /** Pinned: another machine or JDK that draws another kitchen is noticed. */
    @Test
    void theSameKitchenOnEveryJdk() {
        assertEquals(
                List.of("amount = 609.04 g", "room = 18.262 C", "offset = -0.15898 K", "maker = careful"),
                HOME.text(3)
                        .lines()
                        .filter(l -> l.matches("(amount|room|maker|offset) =.*"))
                        .toList());
    }

    @Test
    void theSameEndingsInAnyOrderAndOnAnyNumberOfCores() {
        List<Ending> oneAfterTheOther = HOME.runFirst(6, ENGINE);
        List<Ending> sideBySide = LongStream.range(0, 6)
                .parallel()
                .mapToObj(number -> HOME.run(number, ENGINE))
                .toList();
        assertEquals(oneAfterTheOther, sideBySide);
        assertEquals(oneAfterTheOther.get(5), HOME.run(5, ENGINE));
        assertNotEquals(oneAfterTheOther.get(0), oneAfterTheOther.get(1));
    }

    /** The drawn text is a scenario like any other: kept, it gives the same kitchen. */
    @Test
    void aDrawnKitchenCanBeKept() {
        assertEquals(HOME.draw(3).kitchen(), Fleet.builtIn(Fleet.HOME).draw(3).kitchen());
        assertTrue(HOME.text(3).contains("demo = invented"));
    }

    /** With nobody to advise there are no cues and no forecasts, and everything still comes to an end. */
    @Test
    void withoutAdviceTheMakersGoTheirOwnWay() {
        for (Ending ending : HOME.runFirst(30, NONE)) {
            assertEquals(List.of(), ending.answers());
            assertEquals(List.of(), ending.coastErrorsKelvin());
            assertTrue(ending.outcome().lasted().compareTo(Batch.LONGEST) < 0);
        }
    }
}
