package fifthform.curves.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.cue.CueId;
import fifthform.curves.engine.Event.AlarmRaised;
import fifthform.curves.engine.Event.CueGiven;
import fifthform.curves.engine.StoryMaker.Keys;
import fifthform.curves.input.AlarmId;
import fifthform.curves.recipe.CelsiusRange;
import fifthform.curves.recipe.MeltOut;
import fifthform.curves.recipe.Phase;
import fifthform.curves.setup.Approach;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Whole temperings by somebody who does what the cues say 3.5 s later, in kitchens that differ in how fast the
 * chocolate follows the wall and how much heat the wall holds. Nobody knows the bowl. Short dips, the usual way then, land in
 * the range in every one of them; one lift cannot, and what it reaches stands here in figures.
 */
class WholeBatchTest {
    private static final CelsiusRange WORK = TestRecipes.dark().work().range();
    private static final MeltOut MELT_OUT = TestRecipes.dark().meltOut();

    /** What counts as over: no kitchen probe tells less from the range. */
    private static final double OVER_KELVIN = 0.3;

    private static final Map<List<Object>, OneLift> TOLD = new ConcurrentHashMap<>();

    /** Time constants and wall shares whose coast times, 11 to 52 s, are those of steel bowls of 0.2 to 2 kg. */
    static Stream<Arguments> usualKitchens() {
        return kitchens(List.of(Keys.PRESSED, Keys.SILENT)).filter(a -> coastSeconds(a) < 56);
    }

    /** With heavy walls as well, whose heat comes on for two minutes. */
    static Stream<Arguments> allKitchens() {
        return kitchens(List.of(Keys.values()));
    }

    private static Stream<Arguments> kitchens(List<Keys> presses) {
        List<Arguments> kitchens = new ArrayList<>();
        for (Keys keys : presses) {
            for (double follows : new double[] {120, 160, 200, 300, 400}) {
                for (double share : new double[] {0.1, 0.15, 0.2, 0.3, 0.45}) {
                    kitchens.add(Arguments.of(follows, share, keys));
                }
            }
        }
        return kitchens.stream();
    }

    private static double coastSeconds(Arguments kitchen) {
        double share = (double) kitchen.get()[1];
        return (double) kitchen.get()[0] * share / (1 + share);
    }

    private static StoryMaker dips(double follows, double share, Keys keys) {
        StoryMaker maker = StoryMaker.melting(follows, share, keys, Approach.TOUCHES_WHERE_UNSURE);
        maker.obeysUntil(WholeBatchTest::hasWorkedForAMinute, Duration.ofHours(2));
        return maker;
    }

    private static StoryMaker lifts(Arguments kitchen) {
        return told(kitchen).maker();
    }

    /** One batch of one lift serves all tests: the same set-up and inputs give the same states. */
    private static OneLift told(Arguments kitchen) {
        return TOLD.computeIfAbsent(
                List.of(kitchen.get()), k -> OneLift.in((double) k.get(0), (double) k.get(1), (Keys) k.get(2)));
    }

    /**
     * A batch of one lift.
     *
     * @param maker who made it
     * @param passedAt when the chocolate was 0.3 K past the recipe's warning temperature; empty where it never was
     */
    private record OneLift(StoryMaker maker, Optional<Instant> passedAt) {
        private static OneLift in(double follows, double share, Keys keys) {
            StoryMaker maker = StoryMaker.melting(follows, share, keys, Approach.ONE_LIFT);
            List<Instant> passed = new ArrayList<>();
            maker.obeysUntil(
                    s -> {
                        if (maker.highestAfterSeed >= MELT_OUT.warnCelsius() + 0.3) passed.add(s.at());
                        return hasWorkedForAMinute(s);
                    },
                    Duration.ofHours(2));
            return new OneLift(maker, passed.stream().findFirst());
        }

        private boolean wasSaidBefore(Instant time, Predicate<Event> event) {
            return maker.events.stream().filter(event).anyMatch(e -> e.at().isBefore(time));
        }
    }

    private static boolean hasWorkedForAMinute(State s) {
        return s.batch().phase() == Phase.WORK
                && Duration.between(s.batch().progress().since(), s.at()).toSeconds() > 60;
    }

    @ParameterizedTest(name = "follows its wall in {0} s, wall holds {1}, keys {2}")
    @MethodSource("allKitchens")
    void shortDipsLandInTheWorkingRange(double follows, double share, Keys keys) {
        StoryMaker maker = dips(follows, share, keys);

        assertEquals(List.of(Phase.COOL, Phase.SEED, Phase.REWARM, Phase.WORK), maker.phases());
        assertTrue(maker.cues()
                .containsAll(List.of(CueId.MELTED, CueId.STOP_COOLING, CueId.CRYSTALS_ENOUGH, CueId.PUT_BACK)));
        assertTrue(count(maker, CueId.IN_RANGE) <= 1, "said once at most");
        double highest = maker.highestAfterSeed;
        assertTrue(highest >= WORK.lowCelsius() - 0.1 && highest <= WORK.highCelsius() + 0.1, "true peak " + highest);
        assertEquals(List.of(), maker.urgent());
        assertEquals(List.of(), chattering(maker));
    }

    /**
     * The quickest of these bowls, which follows its wall in 120 s, rises by 6 K a minute and may pass the range; so may the
     * next, in 160 s, where its wall holds 0.3. Of the others it is asked that they land in it as short dips do where keys
     * are pressed, and are not over where none is; 0.4 K where it follows in 160 s.
     */
    @ParameterizedTest(name = "follows its wall in {0} s, wall holds {1}, keys {2}")
    @MethodSource("usualKitchens")
    void oneLiftIsToldInTime(double follows, double share, Keys keys) {
        StoryMaker maker = lifts(Arguments.of(follows, share, keys));

        assertEquals(List.of(Phase.COOL, Phase.SEED, Phase.REWARM, Phase.WORK), maker.phases());
        assertTrue(maker.cues()
                .containsAll(List.of(
                        CueId.MELTED, CueId.STOP_COOLING, CueId.CRYSTALS_ENOUGH, CueId.GET_READY, CueId.LIFT_NOW)));
        assertTrue(count(maker, CueId.LIFT_NOW) <= 2, "a lift, and a touch where it fell short: " + maker.cues());
        assertTrue(count(maker, CueId.IN_RANGE) <= 1, "said once at most");
        assertEquals(List.of(), chattering(maker));
        double highest = maker.highestAfterSeed;
        assertTrue(highest >= WORK.lowCelsius() - 0.1, "true peak " + highest);
        if (follows < 160 || follows == 160 && share > 0.2) return;
        double over = keys == Keys.PRESSED ? 0.1 : follows == 160 ? 0.4 : OVER_KELVIN;
        assertTrue(highest <= WORK.highCelsius() + over, "true peak " + highest);
        assertEquals(List.of(), maker.urgent());
    }

    private static long count(StoryMaker maker, CueId cue) {
        return maker.cues().stream().filter(cue::equals).count();
    }

    @Test
    void oneLiftIsEnoughInNineBatchesOfTen() {
        List<Long> lifts =
                usualKitchens().map(a -> count(lifts(a), CueId.LIFT_NOW)).toList();
        long once = lifts.stream().filter(n -> n == 1).count();
        assertTrue(once >= 0.9 * lifts.size(), once + " of " + lifts.size());
    }

    /**
     * Figures reached with heavy walls as well, 25 batches each: with keys 17 are not over, and none comes to the melt-out
     * limit; without them 14, and two, the quickest bowls with the heaviest walls, pass that limit: the reason why an
     * unknown bowl goes by short dips.
     */
    @ParameterizedTest
    @CsvSource({"PRESSED, 17, 0", "LIFTS_FORGOTTEN, 17, 0", "SILENT, 14, 2"})
    void howFarOneLiftGoesInBowlsThatNobodyKnows(Keys keys, int notOver, int meltedOut) {
        List<Double> peaks =
                kitchens(List.of(keys)).map(a -> lifts(a).highestAfterSeed).toList();
        assertEquals(25, peaks.size());
        assertTrue(peaks.stream().allMatch(p -> p >= WORK.lowCelsius() - 0.1), "short of the range: " + peaks);
        long within = peaks.stream()
                .filter(p -> p <= WORK.highCelsius() + OVER_KELVIN)
                .count();
        assertTrue(within >= notOver, within + " not over: " + peaks);
        long melted = peaks.stream().filter(p -> p >= MELT_OUT.limitCelsius()).count();
        assertTrue(melted <= meltedOut, melted + " melted out: " + peaks);
    }

    /**
     * Whoever comes 0.3 K past the warning temperature has been told to lift, and that it goes over, before. One bowl of
     * the heaviest wall, over-cooled and so held for less than the recipe's time, comes 0.2 K past it after a lift that
     * was obeyed within 3 s: nobody can have been told there that a lift is overdue.
     */
    @Test
    void nobodyPassesTheWarningTemperatureUnwarned() {
        int passed = 0;
        for (Arguments kitchen : allKitchens().toList()) {
            OneLift lift = told(kitchen);
            if (lift.passedAt().isEmpty()) continue;
            passed++;
            Instant at = lift.passedAt().get();
            String where = List.of(kitchen.get()).toString();
            assertTrue(
                    lift.wasSaidBefore(at, e -> e instanceof CueGiven cue && cue.cue() == CueId.LIFT_NOW),
                    "no lift-now: " + where);
            assertTrue(
                    lift.wasSaidBefore(at, e -> e instanceof AlarmRaised a && a.alarm() == AlarmId.HEADING_OVER),
                    "no heading-over: " + where);
        }
        assertTrue(passed > 0, "nobody came so far");
    }

    /** Peaks of 32.0 °C lie on the edge of the range, where noise would say it nine times. */
    @ParameterizedTest
    @CsvSource({"PRESSED, 160, 0.2", "LIFTS_FORGOTTEN, 160, 0.2", "SILENT, 400, 0.3"})
    void inRangeIsSaidAtMostOnceEvenAtTheEdge(Keys keys, double follows, double share) {
        StoryMaker maker = lifts(Arguments.of(follows, share, keys));
        assertEquals(WORK.highCelsius(), maker.highestAfterSeed, 0.1, "not at the edge");
        assertTrue(count(maker, CueId.IN_RANGE) <= 1, keys + ": " + maker.cues());
    }

    @Test
    void theLiftIsSaidBeforeTheRangeIsPassed() {
        StoryMaker maker = StoryMaker.rewarming(200, 0.2, Keys.SILENT);
        maker.obeysUntil(s -> s.cues().isOpen(CueId.LIFT_NOW), Duration.ofMinutes(5));
        double atCue = maker.kitchen.chocolateCelsius();
        int ready = maker.cues().lastIndexOf(CueId.GET_READY);
        assertTrue(
                ready >= 0 && ready < maker.cues().lastIndexOf(CueId.LIFT_NOW),
                maker.cues().toString());
        // Left alone from here, how long would it have taken to pass the range?
        maker.watches(Duration.ofSeconds(3));
        while (maker.kitchen.chocolateCelsius() < WORK.highCelsius()) maker.kitchen.read();
        long lead = Duration.between(maker.state.at(), maker.kitchen.at()).toSeconds() + 3;
        assertTrue(lead >= 15, "lead " + lead + " s from " + atCue + " °C");
    }

    /** The same alarm three times within a minute (the usual measure of chatter in alarm management). */
    static List<AlarmId> chattering(StoryMaker maker) {
        List<AlarmId> found = new ArrayList<>();
        for (AlarmId id : AlarmId.values()) {
            List<AlarmRaised> all =
                    maker.raised().stream().filter(e -> e.alarm() == id).toList();
            for (int i = 2; i < all.size(); i++) {
                if (Duration.between(all.get(i - 2).at(), all.get(i).at()).toSeconds() < 60) found.add(id);
            }
        }
        return found;
    }
}
