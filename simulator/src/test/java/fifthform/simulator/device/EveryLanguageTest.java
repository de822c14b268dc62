package fifthform.simulator.device;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.input.Sample;
import fifthform.probe.Talk;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** For each protocol of the driver a pretend adapter speaks so that the driver finds the truth in its bytes. */
class EveryLanguageTest {
    private static final Duration LENGTH = Duration.ofMinutes(15);

    static Stream<Talk> talks() {
        return Tongues.all();
    }

    @ParameterizedTest
    @MethodSource("talks")
    void theReadingIsTheTruthWithinItsSteps(Talk talk) throws Exception {
        SpokenBatch batch = SpokenBatch.heard(LENGTH, talk, "noise = 0 K");
        List<Sample> samples =
                batch.samples(batch.clearFromSecond(), LENGTH.toSeconds()).toList();
        double heardSeconds = LENGTH.toSeconds() - batch.clearFromSecond();
        // Two a second; an instrument that is asked what it measures now and then misses a turn.
        assertTrue(samples.size() > 1.8 * heardSeconds, samples.size() + " readings");
        double most = samples.stream().mapToDouble(batch::offKelvin).max().orElseThrow();
        assertTrue(most <= Tongues.halfStepKelvin(talk), "off by " + most + " K");
        double warmest = samples.stream().mapToDouble(Sample::tipCelsius).max().orElseThrow();
        assertTrue(warmest > 40, "it went through a batch: " + warmest);
        assertEquals(List.of(), batch.causes(batch.clearFromSecond(), LENGTH.toSeconds()));
    }

    @ParameterizedTest
    @MethodSource("talks")
    void theSameSeedGivesTheSameBytes(Talk talk) throws Exception {
        Duration length = Duration.ofMinutes(3);
        String[] mishaps = {
            "noise = 0.1 K",
            "fault = garbage for 9 s, 20 s after start",
            "fault = half-lines for 20 s, 40 s after start",
            "fault = spikes for 20 s, 70 s after start",
            "fault = drop-outs for 20 s, 100 s after start"
        };
        byte[] once = SpokenBatch.heard(length, talk, mishaps).bytes();
        assertTrue(once.length > 600, once.length + " bytes");
        assertArrayEquals(once, SpokenBatch.heard(length, talk, mishaps).bytes());
    }
}
