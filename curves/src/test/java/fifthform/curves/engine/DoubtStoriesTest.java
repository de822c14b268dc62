package fifthform.curves.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.engine.StoryMaker.Keys;
import fifthform.curves.input.AlarmId;
import fifthform.curves.input.MakerAction.BowlMoved;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.input.Sample;
import fifthform.curves.signal.Doubt;
import java.time.Duration;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A number that is not true, whatever the reason: it is named, nothing is concluded from it, and it ends by itself. */
class DoubtStoriesTest {
    private static final Set<AlarmId> INSTRUMENT = EnumSet.of(
            AlarmId.PROBE_FAULT,
            AlarmId.NO_READING,
            AlarmId.READING_DOUBTFUL,
            AlarmId.NOT_RECORDING,
            AlarmId.PROBE_OUT);

    private final StoryMaker maker = StoryMaker.rewarming(200, 0.2, Keys.PRESSED);
    private int readings;

    /** What the probe says instead, by seconds since it went wrong and by the truth. */
    private interface Wrong {
        double celsius(double seconds, double trueCelsius);
    }

    private void reads(Duration time, Wrong wrong, OptionalDouble junction) {
        maker.watches(time, true_ -> {
            readings++;
            double celsius = Math.round(20 * wrong.celsius(readings / 2.0, true_.tipCelsius())) / 20.0 + 0.0;
            maker.feeds(new Sample(
                    true_.at(), true_.probe(), celsius, true_.sigmaKelvin(), junction, OptionalDouble.empty()));
        });
    }

    private static Wrong wrong(String what) {
        DoubleUnaryOperator falls = s -> 22 + 9 * StrictMath.exp(-s / 6);
        return switch (what) {
            case "zeros" -> (s, c) -> 0;
            case "stuck" -> (s, c) -> 31.5;
            case "pulled out" -> (s, c) -> falls.applyAsDouble(s);
            case "at the wall" -> (s, c) -> c + 5 * (1 - StrictMath.exp(-s / 1.5));
            case "noise" -> (s, c) -> c + 0.5 * Math.signum((int) (2 * s) % 2 - 0.5);
            default -> throw new AssertionError(what);
        };
    }

    @ParameterizedTest
    @CsvSource({
        "zeros, DEAD_LINE, 30",
        "stuck, STUCK, 100",
        "pulled out, OUT_OF_CHOCOLATE, 60",
        "at the wall, AT_WALL, 20",
        "noise, NOISY, 60"
    })
    void isNamedAndNothingIsConcludedFromIt(String what, Doubt doubt, int seconds) {
        OptionalDouble none = OptionalDouble.empty();
        maker.feeds(new BowlMoved(maker.kitchen.at(), Place.BATH));
        int before = maker.events.size();
        reads(Duration.ofSeconds(seconds), wrong(what), none);
        List<Event> told = maker.events.subList(before, maker.events.size());

        assertEquals(
                Optional.of(doubt),
                maker.state.tracks().of(StoryKitchen.BOWL).orElseThrow().doubt());
        assertTrue(maker.state.forecast().isEmpty(), "no forecast from it");
        assertFalse(maker.state.estimate().orElseThrow().isUsable());
        assertTrue(maker.state.alarms().standing().contains(AlarmId.READING_DOUBTFUL));
        assertTrue(
                told.stream().anyMatch(e -> e instanceof Event.ReadingDoubted d && d.doubt() == doubt),
                told.toString());
        List<AlarmId> raised = told.stream()
                .filter(Event.AlarmRaised.class::isInstance)
                .map(e -> ((Event.AlarmRaised) e).alarm())
                .filter(id -> !INSTRUMENT.contains(id))
                .toList();
        assertEquals(List.of(), raised, told.toString());
        int doubted = maker.events.size();

        maker.moves(Place.TABLE);
        maker.watches(Duration.ofSeconds(80));
        assertTrue(maker.state.estimate().orElseThrow().isUsable(), "it ends by itself: " + maker.state.tracks());
        assertFalse(maker.state.alarms().standing().contains(AlarmId.READING_DOUBTFUL));
        assertTrue(maker.events.size() > doubted);
    }

    @Test
    void swappedWiresAreNamedWhereTheMakerSaysWhereTheBowlGoes() {
        maker.moves(Place.COLD_WATER);
        reads(Duration.ofSeconds(90), (s, c) -> 40 - c, OptionalDouble.of(20));
        assertTrue(
                maker.events.stream().anyMatch(e -> e instanceof Event.ReadingDoubted d && d.doubt() == Doubt.REVERSED),
                maker.state.tracks() + " " + maker.state.told().moved());
        assertTrue(maker.state.forecast().isEmpty());
    }

    @Test
    void aColdJunctionThatNoKitchenHasIsNamed() {
        reads(Duration.ofSeconds(5), (s, c) -> c, OptionalDouble.of(-40));
        assertTrue(maker.events.stream()
                .anyMatch(e -> e instanceof Event.ReadingDoubted d && d.doubt() == Doubt.JUNCTION));
    }
}
