package fifthform.curves.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.engine.StoryMaker.Keys;
import fifthform.curves.input.AlarmId;
import fifthform.curves.input.MakerAction.OtherThermometer;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.input.MakerAction.ProbePutBack;
import fifthform.curves.input.MakerAction.ProbeTakenOut;
import fifthform.curves.input.Sample;
import fifthform.curves.signal.Doubt;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Out to be rinsed, in again; and what another thermometer says. */
class ProbeOutTest {
    private final StoryMaker maker = StoryMaker.rewarming(200, 0.2, Keys.SILENT);

    /** In hot rinsing water, at the tap, in the air: readings that would be any alarm. */
    private void rinses(Duration time) {
        maker.watches(time, read -> {
            long second = read.at().getEpochSecond() % 30;
            double celsius = second < 10 ? 60 : second < 20 ? 12 : 22;
            maker.feeds(StoryKitchen.reading(read.at(), celsius));
            assertFalse(
                    maker.state.tracks().entries().get(0).judgement().tipIsElsewhere(), "no doubt about where it is");
        });
    }

    @Test
    void whileItIsOutNothingIsConcludedAndAfterThreeMinutesItIsSaid() {
        Instant out = maker.kitchen.at();
        maker.feeds(new ProbeTakenOut(out));
        int before = maker.events.size();
        rinses(Duration.ofSeconds(178));
        assertEquals(List.of(), raisedSince(before));
        assertTrue(maker.state.forecast().isEmpty());
        assertEquals(Optional.of(out), maker.state.probeOutSince());
        rinses(Duration.ofSeconds(3));
        assertEquals(List.of(AlarmId.PROBE_OUT), raisedSince(before));
        assertTrue(maker.events.stream().noneMatch(Event.ReadingDoubted.class::isInstance));

        maker.feeds(new ProbePutBack(maker.kitchen.at()));
        assertFalse(maker.state.alarms().standing().contains(AlarmId.PROBE_OUT));
        assertTrue(maker.state.estimate().isEmpty(), "the estimate starts anew");
    }

    @Test
    void theDipThatPutsItBackIsMeasuredAndUsed() {
        maker.moves(Place.TABLE);
        maker.watches(Duration.ofMinutes(2));
        maker.feeds(new ProbeTakenOut(maker.kitchen.at()));
        rinses(Duration.ofSeconds(20));
        maker.feeds(new ProbePutBack(maker.kitchen.at()));
        int before = maker.events.size();
        Instant dipped = maker.kitchen.at().plusSeconds(2);
        maker.watches(Duration.ofSeconds(40), read -> {
            double since = Math.max(0, Duration.between(dipped, read.at()).toMillis() / 1000.0);
            double tip = read.tipCelsius() + (20 - read.tipCelsius()) * StrictMath.exp(-since / 2.4);
            Sample sample = StoryKitchen.reading(read.at(), Math.round(20 * tip) / 20.0);
            maker.feeds(sample);
            if (since > 0.5 && since < 4) {
                assertEquals(
                        Optional.of(Doubt.SETTLING),
                        maker.state.tracks().entries().get(0).judgement().doubt(Around.of(maker.state, maker.setup)));
                assertTrue(maker.state.forecast().isEmpty(), "nothing is forecast from a tip that settles");
            }
        });
        Event.LagMeasured lag = (Event.LagMeasured) maker.events.subList(before, maker.events.size()).stream()
                .filter(Event.LagMeasured.class::isInstance)
                .findFirst()
                .orElseThrow();
        assertEquals(2.4, lag.seconds(), 0.3);
        assertEquals(List.of(), raisedSince(before));
        assertEquals(
                lag.seconds(),
                maker.state.tracks().asMeasured(maker.setup.bowlProbe()).lagSeconds());
        double undone = maker.state.estimate().orElseThrow().trend().level()
                + lag.seconds() * maker.state.estimate().orElseThrow().trend().slope();
        assertEquals(undone, maker.state.estimate().orElseThrow().chocolateCelsius(), 1e-12);
    }

    @Test
    void whatAnotherThermometerSaysIsKeptBesideTheEstimate() {
        double here = maker.state.estimate().orElseThrow().chocolateCelsius();
        for (int i = 0; i < 6; i++) maker.feeds(new OtherThermometer(maker.kitchen.at(), here + i));
        assertEquals(4, maker.state.otherReadings().size());
        OtherReading newest = maker.state.otherReadings().get(0);
        assertEquals(5, newest.aboveKelvin().orElseThrow(), 1e-9);
        assertTrue(newest.disagrees());
        maker.feeds(new OtherThermometer(maker.kitchen.at(), here + 0.4));
        assertFalse(maker.state.otherReadings().get(0).disagrees());
        assertEquals(
                7,
                maker.events.stream()
                        .filter(Event.OtherCompared.class::isInstance)
                        .count());

        maker.feeds(new ProbeTakenOut(maker.kitchen.at()));
        maker.feeds(new OtherThermometer(maker.kitchen.at(), here));
        assertTrue(maker.state.otherReadings().get(0).aboveKelvin().isEmpty(), "nothing to compare with");
    }

    private List<AlarmId> raisedSince(int before) {
        return maker.events.subList(before, maker.events.size()).stream()
                .filter(Event.AlarmRaised.class::isInstance)
                .map(e -> ((Event.AlarmRaised) e).alarm())
                .toList();
    }
}
