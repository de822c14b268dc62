package fifthform.curves.probecheck;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.probecheck.CheckEvent.GivenUp;
import fifthform.curves.probecheck.CheckEvent.Objected;
import fifthform.curves.probecheck.CheckEvent.Taken;
import fifthform.curves.probecheck.PointCheck.Stage;
import java.time.Duration;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Checks at the sink, as they go well and as they go wrong. */
class PointCheckTest {
    private static final Duration MINUTE = Duration.ofMinutes(1);
    private static final double ROOM = 22;
    private static final double LAG_SECONDS = 4;

    private static final DoubleUnaryOperator AIR = s -> ROOM + wobble(s);

    /** From the room into water of 0.62 °C as this probe says it, at second 20. */
    private static final DoubleUnaryOperator DIP = dip(20, 0.62);

    @Test
    void takesTheIcePointWithoutAKey() {
        Story story = new Story(Target.ice()).reads(Duration.ofSeconds(20), AIR).reads(Duration.ofMinutes(5), DIP);
        assertEquals(Stage.TAKEN, story.check.stage());
        Point point = story.check.point().orElseThrow();
        assertEquals(0.62, point.readCelsius(), 0.03);
        assertTrue(point.meanSigmaKelvin() > 0 && point.meanSigmaKelvin() < 0.03, point.toString());
        assertTrue(story.seconds() < 120, "took " + story.seconds() + " s");
        assertTrue(story.events.contains(new Objected(objected(story).at(), Objection.STILL_FALLING)));
        assertEquals(1, story.events.stream().filter(Taken.class::isInstance).count());
    }

    @Test
    void enterTakesItSoonerButNotBeforeItIsSteady() {
        Story early = new Story(Target.ice()).reads(Duration.ofSeconds(20), AIR);
        early.enter().reads(Duration.ofSeconds(6), DIP).enter();
        assertFalse(early.check.isOver(), "still falling");
        while (early.check.stage() != Stage.STEADY) early.reads(Duration.ofSeconds(1), DIP);
        early.enter();
        assertEquals(Stage.STEADY, early.check.stage());
        early.reads(Duration.ofSeconds(11), DIP).enter();
        assertEquals(Stage.TAKEN, early.check.stage());
    }

    @Test
    void waitsInTheAirForever() {
        Story story = new Story(Target.ice()).reads(Duration.ofMinutes(10), AIR);
        assertEquals(Stage.PREPARE, story.check.stage());
        assertEquals(List.of(), story.events);
    }

    @Test
    void aTipInTheAirIsNoIcePoint() {
        Story story = new Story(Target.ice()).reads(Duration.ofSeconds(5), AIR).enter();
        story.reads(Duration.ofMinutes(5), AIR);
        assertEquals(Objection.TOO_FAR, refusal(story));
    }

    @Test
    void waterWithoutIceIsNoIcePoint() {
        Story story = new Story(Target.ice()).reads(Duration.ofSeconds(20), AIR);
        story.reads(Duration.ofMinutes(8), dip(20, 7.5));
        assertEquals(Objection.TOO_FAR, refusal(story));
    }

    /** Issue: a converter that sends 0000 for ever is not an ice point. */
    @Test
    void aDeadLineThatReadsZeroIsNoIcePoint() {
        Story story = new Story(Target.ice()).reads(Duration.ofMinutes(10), s -> 0);
        assertEquals(Objection.STUCK, refusal(story));
    }

    @Test
    void aLineThatDiesAtZeroIsNoIcePoint() {
        Story story = new Story(Target.ice()).reads(MINUTE, AIR).reads(Duration.ofMinutes(10), s -> 0);
        assertEquals(Objection.STUCK, refusal(story));
    }

    /** A true 0.00 of a coarse adapter came down on its way, and is taken. */
    @Test
    void aLiveProbeMayReadExactlyZero() {
        DoubleUnaryOperator coarse = s -> Math.round(dip(20, 0.02).applyAsDouble(s) / 0.25) * 0.25;
        Story story = new Story(Target.ice()).reads(Duration.ofSeconds(20), AIR).reads(Duration.ofMinutes(5), coarse);
        assertEquals(Stage.TAKEN, story.check.stage());
        assertEquals(0, story.check.point().orElseThrow().readCelsius());
    }

    @Test
    void warmedBetweenTwoFingersAStuckLookingProbeIsBelieved() {
        Story story = new Story(Target.ice()).reads(MINUTE, s -> 0);
        assertEquals(Objection.STUCK, objected(story).objection());
        double then = story.seconds();
        story.reads(Duration.ofSeconds(20), s -> 28 * (1 - Math.exp(-(s - then) / LAG_SECONDS)));
        double back = story.seconds();
        story.reads(Duration.ofMinutes(5), s -> 28 * Math.exp(-(s - back) / LAG_SECONDS));
        assertEquals(Stage.TAKEN, story.check.stage());
    }

    @Test
    void whileItFallsItIsNotTaken() {
        Story story = new Story(Target.ice()).reads(Duration.ofMinutes(6), s -> 4 - 0.6 * s / 60);
        assertFalse(story.events.stream().anyMatch(Taken.class::isInstance));
        assertEquals(Objection.STILL_FALLING, story.check.objection().orElseThrow());
    }

    @Test
    void noiseIsSaidAndNotAveragedAway() {
        SplittableRandom random = new SplittableRandom(5);
        Story story = new Story(Target.ice()).reads(Duration.ofMinutes(8), s -> random.nextDouble(-3, 3));
        assertEquals(Objection.RESTLESS, refusal(story));
    }

    @Test
    void silenceAndBrokenWiresAreSaid() {
        Story silent =
                new Story(Target.ice()).reads(Duration.ofSeconds(30), DIP).silence(Duration.ofMinutes(8));
        assertEquals(Objection.NO_READING, refusal(silent));
        Story open = new Story(Target.ice()).reads(Duration.ofSeconds(30), DIP).broken(Duration.ofMinutes(8));
        assertEquals(Objection.NO_READING, refusal(open));
    }

    @Test
    void aRecordingThatEndsSaysWhatWasMissing() {
        assertEquals(
                Objection.NOT_IN,
                refusal(new Story(Target.ice()).reads(MINUTE, AIR).ends()));
        assertEquals(Objection.NO_READING, refusal(new Story(Target.ice()).ends()));
    }

    @Test
    void aPointThatIsOverStaysAsItIs() {
        Story story = new Story(Target.ice()).reads(Duration.ofMinutes(5), DIP);
        PointCheck taken = story.check;
        assertEquals(
                taken,
                taken.next(new CheckInput.Reading(taken.stageSince(), 30, 0.01)).after());
        assertEquals(taken, taken.ended(taken.stageSince()).after());
    }

    /** Whatever offset, lag and noise: what is taken is right within three of its own standard uncertainties. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void theMeanIsAsGoodAsItSays(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double shows = random.nextDouble(-3, 3);
        double lag = random.nextDouble(1, 12);
        double noise = random.nextDouble(0, 0.2);
        Story story = new Story(Target.ice());
        story.reads(Duration.ofMinutes(10), s -> {
            double uniform = random.nextDouble(-1, 1) + random.nextDouble(-1, 1) + random.nextDouble(-1, 1);
            return shows + (ROOM - shows) * Math.exp(-s / lag) + noise * uniform;
        });
        assertEquals(Stage.TAKEN, story.check.stage(), () -> story.check.objection() + " noise " + noise);
        Point point = story.check.point().orElseThrow();
        assertEquals(shows, point.readCelsius(), 3 * point.meanSigmaKelvin() + 0.02);
    }

    static LongStream seeds() {
        return LongStream.range(0, 60);
    }

    private static DoubleUnaryOperator dip(double atSeconds, double endCelsius) {
        return s -> endCelsius + (ROOM - endCelsius) * Math.exp(-Math.max(0, s - atSeconds) / LAG_SECONDS) + wobble(s);
    }

    /** The small unrest that every live reading has. */
    private static double wobble(double seconds) {
        return 0.02 * Math.sin(7.3 * seconds) + 0.015 * Math.sin(3.1 * seconds);
    }

    private static Objection refusal(Story story) {
        CheckEvent last = story.events.get(story.events.size() - 1);
        if (last instanceof GivenUp end) return end.objection();
        throw new AssertionError("not given up: " + story.events);
    }

    private static Objected objected(Story story) {
        return story.events.stream()
                .filter(Objected.class::isInstance)
                .map(Objected.class::cast)
                .findFirst()
                .orElseThrow();
    }
}
