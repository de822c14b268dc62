package fifthform.monitor.practice;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.cue.CueId;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.Beginning;
import fifthform.curves.setup.Holding;
import fifthform.monitor.session.Tapes;
import fifthform.monitor.settings.Units;
import fifthform.simulator.bench.Ending;
import fifthform.simulator.bench.Outcome;
import fifthform.simulator.scenario.Landed;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What is said afterwards helps the next time and lays nothing at hands that did what they were told. */
class DebriefTextTest {
    private static final Recipe RECIPE = Tapes.start(Tapes.UNPLUGGED).setup().recipe();

    private static String tooCold(List<CueAnswer> answers) {
        double coolest = RECIPE.cool().range().lowCelsius() - 2;
        Outcome outcome =
                new Outcome(Duration.ofMinutes(40), 47, OptionalDouble.of(coolest), OptionalDouble.of(31.5), List.of());
        Ending ending = new Ending(outcome, Landed.IN_RANGE, 0, Duration.ZERO, List.of(), List.of());
        Debrief debrief = new Debrief(
                RECIPE,
                ending,
                List.of(),
                answers,
                Duration.ZERO,
                0,
                0.8,
                1,
                Debrief.Crystals.UNSAID,
                Beginning.WHOLE,
                Optional.empty());
        return new DebriefText(debrief, Units.CELSIUS).advice();
    }

    private static CueAnswer out(Optional<Duration> took) {
        return new CueAnswer(CueId.STOP_COOLING, Instant.EPOCH, took);
    }

    @Test
    void aBowlThatSinksOnIsNotLaidAtTheMaker() {
        String obeyed = tooCold(List.of(out(Optional.of(Duration.ofSeconds(3)))));
        assertTrue(
                obeyed.startsWith("it sank to "
                        + Units.CELSIUS.withUnit(RECIPE.cool().range().lowCelsius() - 2)),
                obeyed);
        assertTrue(obeyed.contains("You had it out in time"), obeyed);
        assertTrue(obeyed.contains("Dry the bowl at once, and warmer tap water"), obeyed);
        assertFalse(obeyed.contains("sooner"), obeyed);
    }

    /** Nobody but the simulator can lay what was said beside what there was. */
    @Test
    void whatWasSaidOfTheCrystalsStandsBesideWhatThereWas() {
        Outcome outcome =
                new Outcome(Duration.ofMinutes(40), 47, OptionalDouble.of(27.5), OptionalDouble.of(35.4), List.of());
        Ending ending = new Ending(outcome, Landed.MELTED_OUT, 3.4, Duration.ZERO, List.of(), List.of());
        Debrief.Crystals crystals = new Debrief.Crystals(
                Optional.of("too few"), OptionalDouble.of(0.00312), Optional.of(Duration.ofSeconds(34 * 60 + 10)));
        Debrief debrief = new Debrief(
                RECIPE,
                ending,
                List.of(),
                List.of(),
                Duration.ZERO,
                1,
                0.8,
                1,
                crystals,
                Beginning.WHOLE,
                Optional.empty());
        List<String> lines = new DebriefText(debrief, Units.CELSIUS).lines();
        assertTrue(
                lines.contains("Crystals: the screen's last word was too few; it had said that heat cost the seed after"
                        + " 34 min. Really there were 0.3 % of the fat in good ones; a temper needs 0.5 %."),
                lines.toString());
    }

    /** What came in temper is not blamed for cold water it never needed; a hold has its true figures. */
    @Test
    void aKeptPourAndItsHoldAreJudgedByWhatWasPlanned() {
        Outcome outcome =
                new Outcome(Duration.ofMinutes(70), 30, OptionalDouble.of(29.5), OptionalDouble.of(31.6), List.of());
        Ending ending = new Ending(outcome, Landed.IN_RANGE, 0, Duration.ZERO, List.of(), List.of());
        Debrief.Stay stay = new Debrief.Stay(
                new Holding(Duration.ofMinutes(60), Holding.Warmth.AIR),
                Duration.ofMinutes(50),
                Duration.ofMinutes(45));
        Debrief debrief = new Debrief(
                RECIPE,
                ending,
                List.of(),
                List.of(),
                Duration.ZERO,
                0,
                0.8,
                1,
                Debrief.Crystals.UNSAID,
                new Beginning.InTemper(),
                Optional.of(stay));
        List<String> lines = new DebriefText(debrief, Units.CELSIUS).lines();
        assertTrue(lines.contains("It came in temper; cold water was not wanted."), lines.toString());
        assertTrue(
                lines.contains("Held for 50 min of 1 h planned, by air: really in the working range for 90 % of it."),
                lines.toString());
        assertFalse(lines.toString().contains("cool further"), lines.toString());
    }

    @Test
    void whatHandsCouldHaveDoneIsSaidWithItsFigure() {
        assertTrue(
                tooCold(List.of(out(Optional.of(Duration.ofSeconds(9))))).contains("It was out 9.0 s after the cue"));
        assertTrue(tooCold(List.of(out(Optional.empty()))).contains("was said and it stayed in"));
        assertTrue(tooCold(List.of()).contains("a little before the range"));
    }
}
