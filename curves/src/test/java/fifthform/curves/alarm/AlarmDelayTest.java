package fifthform.curves.alarm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.input.AlarmId;
import java.time.Duration;
import java.time.Instant;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever the temperatures and the sampling, delays are kept. */
class AlarmDelayTest {
    private static final double LIMIT_CELSIUS = 32.5;

    static LongStream seeds() {
        return LongStream.range(0, 200);
    }

    /** A walk around the limit, sampled unevenly, with one reading in ten lost. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void neverRaisedBeforeAWholeOnDelayAndNeverClearedBeforeAWholeOffDelay(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        AlarmSetting setting = AlarmTable.of(AlarmId.values()[random.nextInt(AlarmId.values().length)]);
        Instant at = Instant.EPOCH;
        Instant lastNotMet = at;
        Instant lastNotOver = at;
        double celsius = 32;
        Standing standing = Standing.QUIET;
        for (int i = 0; i < 400; i++) {
            at = at.plusMillis(random.nextLong(50, 3000));
            celsius += random.nextDouble(-0.4, 0.4);
            Condition condition = random.nextInt(10) == 0
                    ? Condition.UNKNOWN
                    : Condition.high(celsius - LIMIT_CELSIUS, setting.deadbandKelvin());
            if (condition == Condition.OVER || condition == Condition.BETWEEN) lastNotMet = at;
            if (condition == Condition.MET || condition == Condition.BETWEEN) lastNotOver = at;
            boolean waited =
                    standing.state() instanceof AlarmState.Normal || standing.state() instanceof AlarmState.Pending;
            boolean stood = standing.state().isStanding();
            standing =
                    standing.next(setting, new Finding(condition, setting.usualPriority(), OptionalDouble.empty()), at);
            if (waited && standing.state().isNew()) {
                assertTrue(
                        Duration.between(lastNotMet, at).compareTo(setting.onDelay()) >= 0,
                        setting.id() + " raised at " + at + ", not met at " + lastNotMet);
                assertEquals(Condition.MET, condition);
            }
            if (stood && standing.state() instanceof AlarmState.Normal) {
                assertTrue(
                        Duration.between(lastNotOver, at).compareTo(setting.offDelay()) >= 0,
                        setting.id() + " cleared at " + at + ", not over at " + lastNotOver);
            }
        }
    }
}
