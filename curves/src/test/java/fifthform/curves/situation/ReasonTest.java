package fifthform.curves.situation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import fifthform.curves.situation.Reason.Figure;
import fifthform.curves.situation.Reason.Rule;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Reasons grow figure by figure and stay what they were. */
class ReasonTest {
    private static final Reason SETTLED = Reason.by(Rule.SETTLED).with(Figure.RATE_K_PER_MIN, 0.1);

    @Test
    void oneMoreFigureLeavesTheReasonBeforeAsItWas() {
        Reason more = SETTLED.with(Figure.CHOCOLATE_C, 31.5);
        assertEquals(OptionalDouble.empty(), SETTLED.figure(Figure.CHOCOLATE_C));
        assertEquals(OptionalDouble.of(31.5), more.figure(Figure.CHOCOLATE_C));
        assertEquals(
                List.of(Figure.CHOCOLATE_C, Figure.RATE_K_PER_MIN),
                List.copyOf(more.figures().keySet()));
    }

    @Test
    void nobodyChangesAReasonFromOutside() {
        EnumMap<Figure, Double> mine = new EnumMap<>(Map.of(Figure.RATE_K_PER_MIN, 0.1));
        Reason reason = new Reason(Rule.SETTLED, mine);
        mine.put(Figure.RATE_K_PER_MIN, 9.0);
        assertEquals(SETTLED, reason);
        assertThrows(UnsupportedOperationException.class, () -> reason.figures().put(Figure.RATE_K_PER_MIN, 9.0));
    }

    @Test
    void aFigureThatIsNoNumberIsRefusedByItsName() {
        Throwable grown =
                assertThrows(IllegalArgumentException.class, () -> SETTLED.with(Figure.PAST_LIMIT_K, Double.NaN));
        Throwable whole = assertThrows(
                IllegalArgumentException.class,
                () -> new Reason(Rule.SETTLED, Map.of(Figure.PAST_LIMIT_K, Double.POSITIVE_INFINITY)));
        assertEquals("past_limit_k must be finite, was NaN", grown.getMessage());
        assertEquals("past_limit_k must be finite, was Infinity", whole.getMessage());
    }

    @Test
    void reasonsAreEqualByRuleAndFigures() {
        Reason same = new Reason(Rule.SETTLED, Map.of(Figure.RATE_K_PER_MIN, 0.1));
        assertEquals(SETTLED, same);
        assertEquals(SETTLED.hashCode(), same.hashCode());
        assertEquals(false, SETTLED.equals(Reason.by(Rule.PAST_A_LIMIT).with(Figure.RATE_K_PER_MIN, 0.1)));
        assertEquals(false, SETTLED.equals(SETTLED.with(Figure.RATE_K_PER_MIN, 0.2)));
    }
}
