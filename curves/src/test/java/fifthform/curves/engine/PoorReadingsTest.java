package fifthform.curves.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.alarm.Priority;
import fifthform.curves.engine.StoryMaker.Keys;
import fifthform.curves.input.AlarmId;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.input.ProbeFault;
import fifthform.curves.input.ProbeFault.Cause;
import fifthform.curves.input.Sample;
import fifthform.curves.input.Tick;
import fifthform.curves.recipe.Phase;
import java.time.Duration;
import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiConsumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A probe that fails, is silent, or sends what cannot be: what is said, what is not, and that the batch goes on. */
class PoorReadingsTest {
    private static final Set<AlarmId> MEASUREMENT =
            EnumSet.of(AlarmId.PROBE_FAULT, AlarmId.NO_READING, AlarmId.READING_DOUBTFUL);

    /** Every half second this fault instead of a reading, as an adapter with a broken wire repeats it. */
    private static void faults(StoryMaker maker, Cause cause, Duration time) {
        maker.watches(time, lost -> maker.feeds(new ProbeFault(lost.at(), StoryKitchen.BOWL, cause)));
    }

    private static void silence(StoryMaker maker, Duration time) {
        maker.watches(time, lost -> maker.feeds(new Tick(lost.at())));
    }

    @ParameterizedTest
    @EnumSource(names = {"OPEN_CIRCUIT", "SHORT_CIRCUIT", "OUT_OF_RANGE"})
    void aFaultInTheRewarmIsUrgentAndNothingIsForecastFromIt(Cause cause) {
        StoryMaker maker = StoryMaker.rewarming(200, 0.2, Keys.SILENT);
        int before = maker.events.size();
        faults(maker, cause, Duration.ofMillis(1000));
        assertTrue(maker.urgent().isEmpty(), "two faults may be a loose plug: " + maker.urgent());
        faults(maker, cause, Duration.ofSeconds(30));
        List<Event> told = maker.events.subList(before, maker.events.size());

        assertEquals(
                List.of(AlarmId.PROBE_FAULT),
                maker.urgent().stream().map(Event.AlarmRaised::alarm).toList());
        assertTrue(maker.state.forecast().isEmpty());
        assertTrue(told.stream()
                .filter(Event.AlarmRaised.class::isInstance)
                .allMatch(e -> MEASUREMENT.contains(((Event.AlarmRaised) e).alarm())));
        assertTrue(told.stream().anyMatch(e -> e instanceof Event.ProbeLost lost && lost.cause() == cause));
    }

    @Test
    void aPulledPlugIsAnUrgentSilenceAndEndsAfterThreeGoodReadings() {
        StoryMaker maker = StoryMaker.rewarming(200, 0.2, Keys.SILENT);
        maker.feeds(new ProbeFault(maker.kitchen.at(), StoryKitchen.BOWL, Cause.UNPLUGGED));
        assertTrue(maker.state.forecast().isEmpty());
        silence(maker, Duration.ofSeconds(8));
        assertEquals(
                List.of(AlarmId.NO_READING),
                maker.urgent().stream().map(Event.AlarmRaised::alarm).toList());

        int back = maker.events.size();
        maker.moves(Place.TABLE);
        maker.watches(Duration.ofMillis(1000));
        assertTrue(maker.state.alarms().standing().contains(AlarmId.NO_READING), "two readings");
        maker.watches(Duration.ofMillis(1000));
        List<Event> told = maker.events.subList(back, maker.events.size());
        assertFalse(maker.state.alarms().standing().contains(AlarmId.NO_READING));
        Event.ProbeBack returned = (Event.ProbeBack) told.stream()
                .filter(Event.ProbeBack.class::isInstance)
                .findFirst()
                .orElseThrow();
        assertEquals(8.5, returned.goneSeconds(), 1e-9);
        assertTrue(maker.state.forecast().isPresent());
    }

    @Test
    void silenceIsSaidAfterFivePeriodsButNotSooner() {
        StoryMaker maker = StoryMaker.rewarming(200, 0.2, Keys.SILENT);
        silence(maker, Duration.ofMillis(2000));
        assertEquals(List.of(), maker.urgent());
        silence(maker, Duration.ofMillis(1500));
        assertEquals(AlarmId.NO_READING, maker.urgent().get(0).alarm());
        assertTrue(maker.events.stream()
                .anyMatch(e -> e instanceof Event.ProbeLost lost && lost.cause() == Cause.SILENT));
    }

    @Test
    void aPortJustOpenedHasTenSecondsToItsFirstReading() {
        StoryMaker maker = StoryMaker.melting(200, 0.2, Keys.SILENT);
        silence(maker, Duration.ofSeconds(10));
        assertEquals(List.of(), maker.raised());
        silence(maker, Duration.ofSeconds(1));
        assertEquals(AlarmId.NO_READING, maker.raised().get(0).alarm());
        assertEquals(Priority.PROMPT, maker.raised().get(0).priority());
    }

    @Test
    void aSpikeOnceAMinuteSpoilsNothing() {
        temperedThrough((sample, maker) -> {
            boolean spike = sample.at().toEpochMilli() % 60_000 == 0;
            maker.feeds(spike ? StoryKitchen.reading(sample.at(), sample.tipCelsius() + 25) : sample);
        });
    }

    @Test
    void stepsOfAQuarterKelvinSpoilNothing() {
        temperedThrough((sample, maker) -> maker.feeds(new Sample(
                sample.at(),
                sample.probe(),
                Math.round(sample.tipCelsius() * 4) / 4.0,
                0.25 / Math.sqrt(12),
                sample.junctionCelsius(),
                sample.emfMillivolts())));
    }

    @Test
    void oneLostReadingInFiveSpoilsNothing() {
        temperedThrough((sample, maker) -> {
            boolean lost = sample.at().toEpochMilli() / 500 % 5 == 0;
            maker.feeds(lost ? new Tick(sample.at()) : sample);
        });
    }

    /** A whole batch through such a wire: it still lands, no urgent alarm is raised and none of measurement. */
    private static void temperedThrough(BiConsumer<Sample, StoryMaker> wire) {
        for (Keys keys : Keys.values()) {
            StoryMaker maker = StoryMaker.melting(200, 0.2, keys);
            maker.obeysUntil(
                    s -> s.batch().phase() == Phase.WORK, Duration.ofHours(2), sample -> wire.accept(sample, maker));
            assertEquals(Phase.WORK, maker.state.batch().phase(), maker.phases().toString());
            assertEquals(List.of(), maker.urgent());
            assertEquals(
                    List.of(),
                    maker.raised().stream()
                            .filter(e -> MEASUREMENT.contains(e.alarm()))
                            .toList());
            double highest = maker.highestAfterSeed;
            assertTrue(highest > 30.5 && highest < 32.5, "true peak " + highest);
        }
    }

    /** Four readings elsewhere are believed, with a doubt that passes: the tip was moved, and not into the air. */
    @Test
    void aJumpThatStaysIsBelievedButDoubtedFirst() {
        StoryMaker maker = StoryMaker.rewarming(200, 0.2, Keys.SILENT);
        maker.moves(Place.TABLE);
        maker.watches(Duration.ofMinutes(4));
        double there = maker.state.estimate().orElseThrow().chocolateCelsius() + 4;
        Instant at = maker.state.at();
        int before = maker.raised().size();
        for (int i = 1; i <= 40; i++) maker.feeds(StoryKitchen.reading(at.plusMillis(500L * i), there));
        assertEquals(
                List.of(AlarmId.READING_DOUBTFUL),
                maker.raised().subList(before, maker.raised().size()).stream()
                        .map(Event.AlarmRaised::alarm)
                        .filter(MEASUREMENT::contains)
                        .toList());
        assertEquals(there, maker.state.estimate().orElseThrow().chocolateCelsius(), 0.2);
        assertTrue(maker.state.estimate().orElseThrow().isUsable());
    }
}
