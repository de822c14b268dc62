package fifthform.simulator.maker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.cue.CueId;
import fifthform.curves.input.MakerAction.ProbePutBack;
import fifthform.curves.input.MakerAction.ProbeTakenOut;
import fifthform.curves.input.MakerAction.SeedAdded;
import fifthform.simulator.bowl.Hands.Towel;
import fifthform.simulator.bowl.Spot;
import fifthform.simulator.maker.Acts.Probe;
import fifthform.simulator.maker.Interruption.Cued;
import fifthform.simulator.maker.Interruption.FirstAt;
import fifthform.simulator.maker.Interruption.What;
import java.time.Duration;
import java.util.List;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What each kind of maker is known for. */
class MakerStoriesTest {
    private static Plan interrupted(What what, Interruption.Moment moment, double afterSeconds, double lastingSeconds) {
        Interruption one = new Interruption(
                what,
                moment,
                Duration.ofMillis(Math.round(1000 * afterSeconds)),
                Duration.ofMillis(Math.round(1000 * lastingSeconds)));
        return new Plan(1, 0, 33.5, 0, List.of(one));
    }

    /** Reaction 2.5 s at the median, spread 0.35: 20 s are never reached without the phone. */
    @Test
    void thePhoneRingsAtTheCueAndTheBowlIsLiftedTwentySecondsLate() {
        Plan plan = interrupted(What.PHONE, new Cued(CueId.LIFT_NOW), 0, 20);
        Watched answers = new Watched(Makers.followsCues(Watched.habits(plan), new Luck(4))).warming();
        answers.tell(CueId.LIFT_NOW, 31.5);
        assertEquals(Spot.WARM_BATH, answers.after(19.5, 31.2));
        assertEquals(0, answers.last().hands().stirVigourFraction(), "stirs while on the phone");
        assertEquals(20, 19.5 + answers.secondsUntil(Spot.TABLE, 31.5), 0.51);
    }

    @Test
    void whoIsDistractedIsCalledAwayNowAndThen() {
        Watched distracted = new Watched(Makers.distracted(Watched.HABITS, new Luck(11)));
        distracted.after(40 * 60, 40);
        List<Double> vigours = distracted.acts.stream()
                .map(a -> a.hands().stirVigourFraction())
                .toList();
        int longestRest = 0;
        int rest = 0;
        for (double vigour : vigours) {
            rest = vigour == 0 ? rest + 1 : 0;
            longestRest = Math.max(longestRest, rest);
        }
        assertTrue(longestRest / 8 > 40, "longest rest " + longestRest / 8 + " s");
        long probeOut =
                distracted.acts.stream().filter(a -> a.probe() == Probe.OUT).count();
        assertTrue(probeOut > 0 && probeOut < vigours.size() / 2, probeOut + " looks with the probe out");
    }

    @Test
    void hasteSkipsTheHoldWhateverTheProgramSays() {
        Watched hasty = new Watched(Makers.hasty(Watched.HABITS, new Luck(2)));
        Watched careful = new Watched(Makers.careful(Watched.HABITS, new Luck(2)));
        for (Watched maker : List.of(hasty, careful)) {
            maker.after(1, 40);
            maker.tell(CueId.MELTED, 47);
            maker.after(30, 40);
            maker.tell(CueId.STOP_COOLING, 27.5);
            maker.secondsUntil(Spot.TABLE, 28.5);
            maker.tell(CueId.STIR_ON, 6);
        }
        assertTrue(hasty.secondsUntil(Spot.WARM_BATH, 28) < 30);
        assertEquals(Spot.TABLE, careful.after(6 * 60, 28), "careful hands wait for the crystals");
        careful.tell(CueId.CRYSTALS_ENOUGH);
        assertEquals(Spot.WARM_BATH, careful.after(20, 28));
    }

    /** Habits lift at 31.5 °C; careful hands know of the heat under way and lift 0.8 K before, give or take 0.1 K. */
    @Test
    void careLiftsEarlyAndWipesAtOnce() {
        Watched careful = new Watched(Makers.careful(Watched.HABITS, new Luck(5)));
        careful.secondsUntil(Spot.COLD_WATER, 48);
        careful.secondsUntil(Spot.TABLE, 27.5);
        double held = careful.secondsUntil(Spot.WARM_BATH, 28);
        assertEquals(6 * 60, held, 10);
        assertEquals(Spot.WARM_BATH, careful.after(20, 30.3));
        assertTrue(careful.secondsUntil(Spot.TABLE, 31.1) < 10, "waits for 31.5 °C");
        int lifted = careful.acts.size();
        careful.after(8, 31);
        List<Towel> towels = careful.acts.subList(lifted, careful.acts.size()).stream()
                .map(a -> a.hands().towel())
                .toList();
        assertEquals(5 * 8, towels.indexOf(Towel.WIPING), 2);
        assertEquals(1, towels.stream().filter(t -> t == Towel.WIPING).count(), "wiped more than once");
    }

    @Test
    void aBowlTooCoolToPourIsPutBackUnasked() {
        Watched careful = new Watched(Makers.careful(Watched.HABITS, new Luck(6)));
        careful.secondsUntil(Spot.COLD_WATER, 48);
        careful.secondsUntil(Spot.TABLE, 27.5);
        careful.secondsUntil(Spot.WARM_BATH, 28);
        careful.secondsUntil(Spot.TABLE, 31.5);
        careful.after(80, 30.9);
        double asked = careful.secondsUntil(Spot.WARM_BATH, 28.5);
        assertTrue(asked > 5 && asked < 30, asked + " s");
        assertEquals(6, careful.secondsUntil(Spot.TABLE, 28.5), 0.3);
    }

    @Test
    void beginnersAreSlowAndGentleAndTheirNumbersDiffer() {
        Watched beginner = new Watched(Makers.beginner(Watched.HABITS, new Luck(1)));
        beginner.after(20 * 60, 40);
        double mean = beginner.acts.stream()
                .mapToDouble(a -> a.hands().stirVigourFraction())
                .filter(v -> v > 0)
                .average()
                .orElseThrow();
        assertEquals(0.5, mean, 0.12);
        List<Double> warm = Stream.iterate(1L, seed -> seed + 1)
                .limit(400)
                .map(seed -> Traits.BEGINNER
                        .pace()
                        .of(Watched.HABITS, new Luck(seed))
                        .warmCelsius())
                .toList();
        double average =
                warm.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
        double variance = warm.stream()
                .mapToDouble(w -> (w - average) * (w - average))
                .average()
                .orElseThrow();
        assertEquals(31.5, average, 0.12);
        assertEquals(0.7, Math.sqrt(variance), 0.08);
        assertEquals(
                Duration.ofSeconds(5),
                Traits.BEGINNER.pace().of(Watched.HABITS, new Luck(1)).reaction());
    }

    @Test
    void theProgramTakesTheWordFromTheThermometerOnceItSpeaks() {
        Watched silent = new Watched(Makers.beginner(Watched.HABITS, new Luck(3)));
        assertTrue(silent.secondsUntil(Spot.COLD_WATER, 49) < 40);
        Watched spoken = new Watched(Makers.beginner(Watched.HABITS, new Luck(3)));
        spoken.tell(CueId.STIR_ON, 1);
        assertEquals(Spot.HOT_BATH, spoken.after(120, 49));
        spoken.tell(CueId.MELTED, 49);
        assertTrue(spoken.secondsUntil(Spot.COLD_WATER, 49) < 60);
    }

    /** A cue to put back means cold water while crystals are made, and the hands end a visit when they are told to stop. */
    @Test
    void putBackInTheCoolIsAVisitToTheColdWater() {
        Watched maker = new Watched(Makers.followsCues(Watched.HABITS, new Luck(8)));
        maker.after(1, 40);
        maker.tell(CueId.MELTED, 47);
        maker.after(12, 47);
        maker.tell(CueId.STOP_COOLING, 28);
        assertEquals(Spot.TABLE, maker.after(12, 29));
        maker.tell(CueId.PUT_BACK, 10);
        assertTrue(maker.secondsUntil(Spot.COLD_WATER, 29) < 12);
        assertEquals(10, maker.secondsUntil(Spot.TABLE, 29), 0.3);
        maker.tell(CueId.PUT_BACK, 40);
        maker.secondsUntil(Spot.COLD_WATER, 29);
        maker.tell(CueId.STOP_COOLING, 28);
        assertTrue(maker.secondsUntil(Spot.TABLE, 29) < 12, "stayed in the cold for the whole 40 s");
    }

    @Test
    void seedGoesInOnceWhenItHasCooledFarEnough() {
        Plan plan = new Plan(1, 90, 33.5, 0, List.of());
        Watched maker = new Watched(Makers.ownWay(Watched.habits(plan), new Luck(9)));
        maker.secondsUntil(Spot.COLD_WATER, 47);
        maker.after(30, 34);
        assertEquals(0, maker.acts.stream().mapToDouble(Acts::seedGrams).sum());
        maker.after(60, 33.4);
        assertEquals(90, maker.acts.stream().mapToDouble(Acts::seedGrams).sum());
        List<Double> told = maker.presses.stream()
                .filter(SeedAdded.class::isInstance)
                .map(a -> ((SeedAdded) a).grams())
                .toList();
        assertEquals(List.of(90.0), told);
    }

    @Test
    void theProbeIsOutForAsLongAsPlannedAndThatIsToldByKey() {
        Plan plan = interrupted(What.PROBE_OUT, new FirstAt(Spot.COLD_WATER), 10, 30);
        Watched maker = new Watched(Makers.ownWay(Watched.habits(plan), new Luck(1)));
        maker.secondsUntil(Spot.COLD_WATER, 47);
        int since = maker.acts.size();
        maker.after(60, 40);
        List<Acts> acts = maker.acts.subList(since, maker.acts.size());
        assertEquals(30 * 8, acts.stream().filter(a -> a.probe() == Probe.OUT).count(), 1);
        assertEquals(Probe.IN_THE_CHOCOLATE, acts.get(9 * 8).probe());
        assertTrue(acts.stream().anyMatch(a -> a.hands().stirVigourFraction() > 0 && a.probe() == Probe.OUT));
        List<Class<?>> told = maker.presses.stream()
                .<Class<?>>map(Object::getClass)
                .filter(c -> c == ProbeTakenOut.class || c == ProbePutBack.class)
                .toList();
        assertEquals(List.of(ProbeTakenOut.class, ProbePutBack.class), told);
    }

    @Test
    void aSpoonThatStaysAwayNeverStirs() {
        Watched maker = new Watched(Makers.careful(Watched.habits(new Plan(0, 0, 33.5, 0, List.of())), new Luck(1)));
        maker.after(300, 40);
        assertTrue(maker.acts.stream().allMatch(a -> a.hands().stirVigourFraction() == 0));
    }

    static List<BiFunction<Habits, Luck, Maker>> everyKind() {
        return List.of(
                Makers::followsCues,
                Makers::ownWay,
                Makers::careful,
                Makers::hasty,
                Makers::distracted,
                Makers::beginner);
    }

    /** A maker is a value: from any moment the same looks give the same acts, and another luck gives others. */
    @ParameterizedTest
    @MethodSource("everyKind")
    void anyMomentCanBeGoneOnFromTwice(BiFunction<Habits, Luck, Maker> birth) {
        Watched first = new Watched(birth.apply(Watched.HABITS, new Luck(21)));
        first.after(200, 40);
        first.tell(CueId.MELTED, 47);
        Watched second = new Watched(first.maker);
        second.now = first.now;
        int from = first.acts.size();
        first.after(300, 35);
        second.after(300, 35);
        assertEquals(first.acts.subList(from, first.acts.size()), second.acts);
        assertEquals(first.maker, second.maker);
        Watched other = new Watched(birth.apply(Watched.HABITS, new Luck(22)));
        other.after(200, 40);
        assertNotEquals(first.acts.subList(0, from), other.acts);
    }

    @ParameterizedTest
    @MethodSource("everyKind")
    void everyBatchComesToAnEnd(BiFunction<Habits, Luck, Maker> birth) {
        Watched maker = new Watched(birth.apply(Watched.HABITS, new Luck(31)));
        int minutes = 0;
        while (!maker.maker.done() && minutes++ < 300) maker.after(60, 30);
        assertTrue(minutes < 130, minutes + " min");
    }
}
