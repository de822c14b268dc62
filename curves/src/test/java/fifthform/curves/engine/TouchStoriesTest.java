package fifthform.curves.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.cue.CueId;
import fifthform.curves.cue.Dip;
import fifthform.curves.cue.Dips;
import fifthform.curves.engine.Event.CueGiven;
import fifthform.curves.engine.StoryMaker.Keys;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.recipe.CelsiusRange;
import fifthform.curves.recipe.Phase;
import fifthform.curves.setup.Approach;
import fifthform.curves.setup.Beginning;
import fifthform.curves.setup.Bowl;
import fifthform.curves.setup.BowlMaterial;
import fifthform.curves.setup.LearnedCoast;
import fifthform.curves.setup.Setup;
import fifthform.curves.situation.Reason;
import fifthform.curves.situation.Reason.Figure;
import fifthform.curves.situation.Reason.Rule;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Whole temperings in bowls that nobody knows yet: short dips, each peak looked at. */
class TouchStoriesTest {
    private static final CelsiusRange WORK = TestRecipes.dark().work().range();

    static Stream<Arguments> kitchens() {
        List<Arguments> all = new ArrayList<>();
        for (double follows : new double[] {120, 200, 400}) {
            for (double share : new double[] {0.1, 0.25, 0.45}) {
                for (Keys keys : Keys.values()) all.add(Arguments.of(follows, share, keys));
            }
        }
        return all.stream();
    }

    private static StoryMaker tempers(double follows, double share, Keys keys) {
        StoryMaker maker = StoryMaker.melting(follows, share, keys, Approach.TOUCHES_WHERE_UNSURE);
        maker.obeysUntil(s -> s.cues().done().inRangeAt().isPresent(), Duration.ofHours(2));
        return maker;
    }

    @ParameterizedTest(name = "follows its wall in {0} s, wall holds {1}, keys {2}")
    @MethodSource("kitchens")
    void dipsComeUpToTheRangeAndNotOverIt(double follows, double share, Keys keys) {
        StoryMaker maker = tempers(follows, share, keys);
        assertTrue(maker.cues().contains(CueId.IN_RANGE), maker.cues().toString());
        // Who forgets to say that the bowl is off again may come three tenths over: what counts as over on the bench.
        double over = keys == Keys.LIFTS_FORGOTTEN ? 0.3 : 0.05;
        assertTrue(
                maker.highestAfterSeed <= WORK.highCelsius() + over && maker.highestAfterSeed >= WORK.lowCelsius(),
                "highest " + maker.highestAfterSeed);
    }

    private static List<CueGiven> given(StoryMaker maker, CueId id) {
        return maker.events.stream()
                .filter(CueGiven.class::isInstance)
                .map(CueGiven.class::cast)
                .filter(g -> g.cue() == id)
                .toList();
    }

    @Test
    void theFirstDipIsShortAndTheNextNeverMoreThanTwiceAsLong() {
        StoryMaker maker = tempers(200, 0.25, Keys.PRESSED);
        double last = given(maker, CueId.CRYSTALS_ENOUGH).get(0).figure().orElseThrow();
        assertTrue(last >= 4 && last <= 6, "first " + last);
        for (CueGiven next : given(maker, CueId.PUT_BACK)) {
            double seconds = next.figure().orElseThrow();
            assertTrue(seconds <= 2 * Math.max(4, last) + 1, seconds + " after " + last);
            last = seconds;
        }
        assertFalse(given(maker, CueId.PUT_BACK).isEmpty());
    }

    @Test
    void aKeyThatWasNotTakenBackBeginsNoOtherDip() {
        StoryMaker maker = StoryMaker.melting(120, 0.25, Keys.LIFTS_FORGOTTEN, Approach.TOUCHES_WHERE_UNSURE);
        List<Dip> ghosts = new ArrayList<>();
        Instant[] lastOn = {Instant.MIN};
        maker.obeysUntil(
                s -> {
                    if (maker.kitchen.place() == Place.BATH) lastOn[0] = maker.kitchen.at();
                    s.cues()
                            .dips()
                            .dip()
                            .filter(d -> d.stage() == Dip.Stage.OVER_BATH
                                    && d.askedAt().isAfter(lastOn[0]))
                            .ifPresent(ghosts::add);
                    return s.cues().done().inRangeAt().isPresent();
                },
                Duration.ofHours(2));
        assertEquals(List.of(), ghosts);
    }

    /** Hands that lift after a second or two, whatever was asked for, since in these kitchens what is asked for gives more. */
    @Test
    void aDipThatGaveLittleSaysNothingOfHowLateTheBowlIs() {
        int little = 0;
        for (double follows : new double[] {160, 200, 300}) {
            for (double share : new double[] {0.1, 0.25, 0.45}) {
                for (int millis : new int[] {1000, 1500, 2000}) {
                    Dips dips = afterFirstDip(follows, share, Duration.ofMillis(millis));
                    if (dips.response().dips() != 1 || dips.response().movedKelvin() >= 0.4) continue;
                    little++;
                    assertEquals(
                            OptionalDouble.empty(),
                            dips.lateSeconds(),
                            "follows " + follows + ", " + share + " after " + millis);
                }
            }
        }
        assertTrue(little >= 5, little + " dips gave little: too few to show anything");
    }

    private static Dips afterFirstDip(double follows, double share, Duration stay) {
        StoryMaker maker = StoryMaker.melting(follows, share, Keys.PRESSED, Approach.TOUCHES_WHERE_UNSURE);
        maker.obeysUntil(s -> s.cues().isOpen(CueId.CRYSTALS_ENOUGH), Duration.ofHours(2));
        maker.watches(Duration.ofSeconds(3));
        maker.moves(Place.BATH);
        maker.watches(stay);
        maker.moves(Place.TABLE);
        Instant latest = maker.kitchen.at().plus(Duration.ofMinutes(5));
        while (maker.state.cues().dips().response().dips() < 1
                && maker.kitchen.at().isBefore(latest)) {
            maker.watches(Duration.ofSeconds(1));
        }
        return maker.state.cues().dips();
    }

    @Test
    void warmingUpOnTheTableAfterTheColdWaterIsNoDip() {
        StoryMaker maker = StoryMaker.melting(120, 0.25, Keys.SILENT, Approach.TOUCHES_WHERE_UNSURE);
        maker.obeysUntil(s -> s.cues().isOpen(CueId.STIR_ON), Duration.ofHours(2));
        assertTrue(maker.cues().contains(CueId.STIR_ON), maker.cues().toString());
        Instant held = maker.kitchen.at();
        maker.watches(Duration.ofSeconds(120));
        Instant from = maker.kitchen.at();
        boolean[] taken = {false};
        maker.watches(Duration.ofSeconds(60), sample -> {
            double seconds = Duration.between(from, sample.at()).toMillis() / 1000.0;
            maker.feeds(StoryKitchen.reading(sample.at(), sample.tipCelsius() + 0.55 / 60 * seconds));
            taken[0] |= maker.state.cues().dips().dip().isPresent();
        });
        assertFalse(taken[0], "nobody dipped");
        maker.watches(Duration.ofSeconds(60), sample -> {
            maker.feeds(StoryKitchen.reading(sample.at(), sample.tipCelsius() + 0.55));
        });
        for (CueId id : List.of(CueId.PUT_BACK, CueId.CRYSTALS_ENOUGH)) {
            assertFalse(given(maker, id).stream().anyMatch(g -> g.at().isAfter(held)), id + " " + maker.phases());
        }
    }

    @Test
    void everyCueSaysWhyInFigures() {
        StoryMaker maker = tempers(200, 0.25, Keys.PRESSED);
        for (CueId id : CueId.values()) {
            for (CueGiven cue : given(maker, id)) {
                Reason why = cue.reason().orElseThrow();
                assertTrue(why.figure(Figure.CHOCOLATE_C).isPresent(), id + ": " + why);
                assertTrue(why.figure(Figure.REACTION_S).isPresent(), id + ": " + why);
            }
        }
        assertEquals(
                Rule.FIRST_DIP,
                given(maker, CueId.CRYSTALS_ENOUGH)
                        .get(0)
                        .reason()
                        .orElseThrow()
                        .rule());
        Reason sized = given(maker, CueId.PUT_BACK).get(0).reason().orElseThrow();
        assertEquals(Rule.SIZED_BY_EARLIER_DIPS, sized.rule());
        assertTrue(sized.figure(Figure.DIP_K_PER_S).orElseThrow() > 0);
        assertTrue(sized.figure(Figure.DIP_S).orElseThrow() > 0);
        for (CueId id : List.of(CueId.PUT_BACK, CueId.TOUCH_OF_WARMTH))
            given(maker, id).forEach(cue -> canBeReckoned(cue.reason().orElseThrow()));
    }

    /** Whoever goes through the figures comes to the seconds that were asked for, or to more than is safe. */
    private static void canBeReckoned(Reason why) {
        if (why.rule() != Rule.SIZED_BY_EARLIER_DIPS) return;
        double gives = figure(why, Figure.AIM_C)
                - figure(why, Figure.ASKED_AT_C)
                - figure(why, Figure.TO_COME_K)
                + figure(why, Figure.LOST_K);
        double seconds = gives / figure(why, Figure.DIP_K_PER_S) - figure(why, Figure.FILM_S);
        double asked = figure(why, Figure.DIP_S);
        assertTrue(asked <= Math.max(1, seconds) + 0.01, why.toString());
    }

    private static double figure(Reason why, Figure figure) {
        return why.figure(figure).orElseThrow();
    }

    @Test
    void aBowlThatEarlierBatchesTaughtIsLiftedOnce() {
        Setup plain = TestRecipes.setup();
        Setup known = new Setup(
                plain.recipe(),
                new Bowl(
                        "steel",
                        BowlMaterial.STEEL,
                        OptionalDouble.of(800),
                        Optional.of(new LearnedCoast(40, 0.15, 5))),
                plain.probes(),
                plain.reactionTime(),
                plain.bathCelsius(),
                plain.roomCelsius(),
                plain.origin(),
                plain.approach(),
                plain.seedGrams(),
                Beginning.WHOLE,
                Optional.empty());
        StoryMaker maker = StoryMaker.melting(200, 0.2, known, Keys.PRESSED);
        maker.obeysUntil(s -> s.cues().isOpen(CueId.LIFT_NOW), Duration.ofHours(2));
        assertTrue(given(maker, CueId.CRYSTALS_ENOUGH).get(0).figure().isEmpty(), "no seconds named");
        assertFalse(maker.cues().contains(CueId.PUT_BACK), maker.cues().toString());
        assertFalse(given(maker, CueId.GET_READY).isEmpty());
    }

    @Test
    void theCountdownOfOneLiftNeverGrows() {
        StoryMaker maker = StoryMaker.rewarming(200, 0.2, Keys.PRESSED);
        List<Double> shown = new ArrayList<>();
        maker.obeysUntil(
                s -> {
                    var open = s.cues().open().get(CueId.GET_READY);
                    if (open != null) shown.add(open.figure().orElseThrow());
                    return s.cues().isOpen(CueId.LIFT_NOW);
                },
                Duration.ofMinutes(9));
        assertTrue(shown.size() > 10, "shown " + shown);
        for (int i = 1; i < shown.size(); i++) {
            assertTrue(shown.get(i) <= shown.get(i - 1), "grew: " + shown);
        }
    }

    @Test
    void everyLiftFromWaterAsksToWipeAndStir() {
        StoryMaker maker = tempers(200, 0.25, Keys.PRESSED);
        long lifts = maker.events.stream()
                .filter(e -> e instanceof Event.BowlSeen seen
                        && seen.place() == fifthform.curves.input.MakerAction.Place.TABLE)
                .count();
        assertTrue(given(maker, CueId.WIPE_AND_STIR).size() >= lifts - 1, lifts + " lifts, " + maker.cues());
    }

    @Test
    void seedIsAskedForOnceItKeepsAndNotAgainOnceItIsIn() {
        Setup seeding = TestRecipes.setup().withSeedGrams(OptionalDouble.of(60));
        StoryMaker maker = StoryMaker.melting(200, 0.2, seeding, Keys.PRESSED);
        maker.obeysUntil(s -> s.cues().isOpen(CueId.SEED_NOW), Duration.ofHours(2));
        double at = maker.state.estimate().orElseThrow().chocolateCelsius();
        assertEquals(TestRecipes.dark().meltOut().limitCelsius(), at, 0.5);
        assertEquals(60, given(maker, CueId.SEED_NOW).get(0).figure().orElseThrow());
        maker.feeds(new fifthform.curves.input.MakerAction.SeedAdded(maker.kitchen.at(), 60));
        maker.watches(Duration.ofSeconds(5));
        assertFalse(maker.state.cues().isOpen(CueId.SEED_NOW));
        assertEquals(1, given(maker, CueId.SEED_NOW).size());
    }

    /** A forgotten key must not bring the step back when the phase wavers; that nobody said it is kept. */
    @Test
    void seedIsAskedForOnceAlsoWhereTheKeyIsForgotten() {
        Setup seeding = TestRecipes.setup().withSeedGrams(OptionalDouble.of(60));
        StoryMaker maker = StoryMaker.melting(200, 0.2, seeding, Keys.PRESSED);
        maker.obeysUntil(s -> s.batch().phase() == Phase.SEED, Duration.ofHours(2));
        assertFalse(maker.state.cues().done().isSeedUnsaid());
        for (Phase phase : List.of(Phase.REWARM, Phase.SEED, Phase.REWARM)) {
            maker.feeds(new fifthform.curves.input.MakerAction.PhaseConfirmed(maker.kitchen.at(), phase));
            maker.watches(Duration.ofSeconds(5));
        }
        assertEquals(1, given(maker, CueId.SEED_NOW).size());
        assertTrue(maker.state.cues().done().isSeedUnsaid());
    }

    @Test
    void whoPlansNoSeedIsNotAskedForAny() {
        assertFalse(tempers(200, 0.2, Keys.PRESSED).cues().contains(CueId.SEED_NOW));
    }

    /**
     * Somebody who hears and does nothing must not be sent over the bath for longer and longer: the dip at last done would
     * be far too long. Noise of the rate must not be taken for what a dip has given, however often it is asked for.
     */
    @ParameterizedTest(name = "follows its wall in {0} s, wall holds {1}")
    @CsvSource({"120, 0.3", "160, 0.1", "160, 0.25", "200, 0.25", "300, 0.45", "400, 0.3"})
    void whoTakesNoNoticeIsNeverAskedForALongDip(double follows, double share) {
        StoryMaker maker = StoryMaker.melting(follows, share, Keys.SILENT, Approach.TOUCHES_WHERE_UNSURE);
        maker.obeysUntil(s -> s.cues().isOpen(CueId.CRYSTALS_ENOUGH), Duration.ofHours(2));
        maker.watches(Duration.ofMinutes(40));
        List<Double> asked = given(maker, CueId.PUT_BACK).stream()
                .map(g -> g.figure().orElseThrow())
                .toList();
        assertTrue(asked.size() >= 6 && asked.size() < 60, asked.size() + " times");
        assertTrue(asked.stream().allMatch(seconds -> seconds <= 16), asked.toString());
    }
}
