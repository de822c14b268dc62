package fifthform.simulator.rivals;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.simulator.bench.Fleet;
import fifthform.simulator.maker.Keys;
import fifthform.simulator.maker.Manner;
import java.util.EnumSet;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** The harness itself, by programs of which it is known how they must end. */
class HarnessTest {
    private static final int KITCHENS = 6;
    private static final Contest CONTEST = new Contest(Fleet.builtIn("judging"), 2);

    private static List<Tried> each(Function<JudgedKitchen, Rival> rival) {
        return CONTEST.each(0, KITCHENS, k -> new Ring(CONTEST, k).whole(rival.apply(k), Manner.ONE_LIFT, Keys.NONE));
    }

    private static double mid(JudgedKitchen kitchen) {
        return kitchen.recipe().work().range().midCelsius();
    }

    @Test
    void whoKnowsTheTruthIsNeverWrongAtTheCue() {
        List<Tried> all = each(k -> Clairvoyant.of(k, mid(k), 0));
        List<Double> errors = Figures.cueErrors(all);
        assertTrue(errors.size() >= KITCHENS - 2, "most are hot enough, were " + errors.size());
        assertEquals(0, Reached.mean(errors).value(), 1e-9);
        assertEquals(100, Figures.heldAtCue(all).value(), 1e-9);
        assertTrue(Figures.shown(all, Tried.Place.OVER).value() <= 34, "only the reaction is left: " + places(all));
    }

    @Test
    void whoIsWrongByHalfAKelvinIsSeenToBe() {
        List<Tried> all = each(k -> Clairvoyant.of(k, mid(k), 0.5));
        assertEquals(0.5, Reached.mean(Figures.cueErrors(all)).value(), 1e-9);
        assertEquals(0, Figures.heldAtCue(all).value(), 1e-9);
    }

    @Test
    void whoLiftsThreeKelvinLateIsAlwaysOver() {
        List<Tried> told = each(k -> Clairvoyant.of(k, mid(k) + 3, 0)).stream()
                .filter(t -> t.cue().isPresent())
                .toList();
        assertFalse(told.isEmpty());
        assertEquals(100, Figures.shown(told, Tried.Place.OVER).value(), 1e-9);
    }

    @Test
    void whoLiftsThreeKelvinEarlyIsAlwaysShort() {
        List<Tried> all = each(k -> Clairvoyant.of(k, mid(k) - 3, 0));
        assertEquals(100, Figures.shown(all, Tried.Place.SHORT).value(), 1e-9, places(all));
    }

    @Test
    void endsTheSameOnAnyNumberOfCores() {
        Function<Contest, List<Round>> rounds = contest ->
                contest.each(0, 3, k -> Round.in(new Ring(contest, k), EnumSet.of(Entrant.LINE, Entrant.TOUCH_RULE)));
        assertEquals(Table.of(rounds.apply(CONTEST)), Table.of(rounds.apply(new Contest(Fleet.builtIn("judging"), 1))));
    }

    private static String places(List<Tried> all) {
        return all.stream().map(t -> t.shown().name()).toList().toString();
    }
}
