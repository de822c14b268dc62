package fifthform.monitor.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.engine.Event;
import fifthform.curves.input.Input;
import fifthform.curves.input.MakerAction.StirringSaid;
import fifthform.curves.input.MakerAction.StirringSaid.Stirring;
import fifthform.curves.input.Recorded;
import fifthform.curves.input.Sample;
import fifthform.curves.setup.Setup;
import fifthform.monitor.analyse.BatchFigures;
import fifthform.monitor.intake.TapeInputs;
import fifthform.monitor.model.WatchPicture.Flag;
import fifthform.monitor.session.SessionLoop;
import fifthform.monitor.session.SessionRecord;
import fifthform.monitor.session.SessionSnapshot;
import fifthform.monitor.session.Tapes;
import fifthform.monitor.settings.Units;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** An overshoot that costs the seed, cooled again: what is marked, said and summed up, and when it is no news any more. */
class SurvivedWordsTest {
    private static final Setup SETUP = Tapes.start(Tapes.UNPLUGGED).setup();
    private static final Instant START = Instant.parse("2026-01-01T13:00:00Z");
    private static final Look LOOK =
            new Look(Units.CELSIUS, ZoneOffset.UTC, List.of(), "", Optional.empty(), Optional.empty());

    /** Minute and °C in turn: melted, cooled and held, 35.5 °C for four minutes, cooled and held again, and up. */
    private static final double[] COURSE = {
        0, 46, 10, 46, 22, 27.5, 28, 27.5, 32, 32, 33, 35.5, 37, 35.5, 39, 31.5, 44, 31.5, 46, 27.5, 56, 27.5, 60, 31.5,
        66, 31.5
    };

    private final List<SessionSnapshot> seen = new ArrayList<>();

    @Test
    void aLossIsMarkedSaidAndSummedUp() {
        goes(42);
        SessionSnapshot after = seen.get(seen.size() - 1);
        Event.SeedLost lost = after.trace().losses().get(0);
        assertEquals(1, after.trace().losses().size());
        assertEquals(Optional.of(lost), after.tally().seedLost());
        double minute = Duration.between(START, lost.at()).toMillis() / 60e3;
        assertTrue(minute > 32 && minute < 37.5, "lost at " + minute);

        WatchPicture picture = WatchModel.picture(after, LOOK);
        Flag flag = picture.trace().flags().stream()
                .filter(f -> f.weight() == Flag.Weight.THROUGH)
                .findFirst()
                .orElseThrow();
        assertEquals(lost.at(), flag.at());
        assertTrue(flag.word().matches("seed likely lost 13:3\\d, 3[45]\\.\\d °C"), flag.word());

        String survived = picture.crystals().survived();
        assertTrue(survived.matches("What survived 35\\.\\d °C \\(\\d min( \\d+ s)? above 32\\.5\\): .*"), survived);
        assertTrue(survived.endsWith("cool again, 27 to 28 °C: too few are left"), survived);

        List<String> closing = SurvivedWords.closing(after, Units.CELSIUS, ZoneOffset.UTC);
        assertEquals(
                "Crystals, the last word: too few; estimate from temperature alone, no measurement of crystals; prove on"
                        + " a sample before pouring.",
                closing.get(0));
        assertTrue(closing.get(1).startsWith("Seed likely lost at 13:3"), closing.get(1));
        assertTrue(closing.get(1).contains(" % of the fat to less than the 0.5 % that a temper needs"), closing.get(1));

        String figures = BatchFigures.of(SETUP, after.tally(), START).end();
        assertTrue(
                figures.matches(".*\"crystals\":\"too few\",\"seed_lost\":\\{\"time_s\":2\\d{3}(\\.\\d+)?,"
                        + "\"highest_c\":3[45](\\.\\d+)?,\"above_warning_s\":\\d+(\\.\\d+)?\\},\"verdict\".*"),
                figures);
    }

    /** While it lasts the alarms speak; then the verdict stands until it was cooled and held again. */
    @Test
    void theVerdictComesAfterTheHeatAndGoesOnceItIsAnswered() {
        goes(66);
        List<Double> minutes = seen.stream()
                .filter(s -> !WatchModel.picture(s, LOOK).crystals().survived().isEmpty())
                .map(s -> Duration.between(START, s.state().at()).toMillis() / 60e3)
                .toList();
        assertFalse(minutes.isEmpty());
        assertTrue(minutes.get(0) > 37 && minutes.get(0) < 39.5, "first at " + minutes.get(0));
        double last = minutes.get(minutes.size() - 1);
        assertTrue(last > 44 && last < 48, "still there at " + last);
    }

    /** A textbook temper has nothing to say of losses. */
    @Test
    void withoutHeatNothingIsLost() {
        goes(31);
        SessionSnapshot after = seen.get(seen.size() - 1);
        assertEquals(Optional.empty(), after.tally().seedLost());
        assertEquals(List.of(), after.trace().losses());
        assertEquals("", WatchModel.picture(after, LOOK).crystals().survived());
        assertTrue(BatchFigures.of(SETUP, after.tally(), START).end().contains("\"seed_lost\":null"));
    }

    private void goes(int minutes) {
        SplittableRandom noise = new SplittableRandom(6);
        List<Recorded> inputs = new ArrayList<>();
        inputs.add(new Recorded(1, new StirringSaid(START, Stirring.STIRRED)));
        for (int second = 1; second <= 60 * minutes; second++) {
            double celsius = celsius(second / 60.0) + 0.02 * noise.nextDouble(-1, 1);
            Input sample = new Sample(
                    START.plusSeconds(second),
                    SETUP.bowlProbe().id(),
                    Math.round(celsius * 1000) / 1000.0,
                    0.02,
                    OptionalDouble.empty(),
                    OptionalDouble.empty());
            inputs.add(new Recorded(second + 1L, sample));
        }
        int[] count = {0};
        new SessionLoop(
                        SETUP,
                        START,
                        new TapeInputs(inputs, START, Optional.empty(), Optional.empty()),
                        SessionRecord.NONE,
                        List.of((snapshot, events) -> {
                            if (count[0]++ % 10 == 0) seen.add(snapshot);
                        }),
                        () -> 0)
                .run();
    }

    private static double celsius(double minute) {
        for (int i = 2; i < COURSE.length; i += 2) {
            if (minute > COURSE[i]) continue;
            double share = (minute - COURSE[i - 2]) / (COURSE[i] - COURSE[i - 2]);
            return COURSE[i - 1] + share * (COURSE[i + 1] - COURSE[i - 1]);
        }
        return COURSE[COURSE.length - 1];
    }
}
