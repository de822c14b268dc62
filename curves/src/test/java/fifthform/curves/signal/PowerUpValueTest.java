package fifthform.curves.signal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.input.Sample;
import fifthform.curves.setup.Correction;
import fifthform.curves.setup.ProbeId;
import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Converters that start up say 85.00 for a while; nothing may be built on that. */
class PowerUpValueTest {
    private static final Instant START = Instant.parse("2026-01-10T10:00:00Z");

    private Track track = Track.silentSince(START);
    private int seconds;

    @Test
    void anAbsurdStepIsDoubtedForAsLongAsAPowerUpLasts() {
        reads(30.0, 60);
        assertEquals(Optional.empty(), track.doubt());
        for (int i = 0; i < 10; i++) {
            reads(85.0, 1);
            assertEquals(Optional.of(Doubt.JUMPS), track.doubt(), "after " + (i + 1) + " s at 85");
        }
    }

    @Test
    void aStepFromAirIntoChocolateIsBelievedSooner() {
        reads(22.0, 60);
        reads(46.0, 8);
        assertEquals(Optional.empty(), track.doubt());
        assertTrue(track.freshAt(START.plusSeconds(seconds)));
    }

    private void reads(double celsius, int times) {
        for (int i = 0; i < times; i++) {
            seconds++;
            Sample sample = new Sample(
                    START.plusSeconds(seconds),
                    new ProbeId("bowl"),
                    celsius,
                    0.03,
                    OptionalDouble.empty(),
                    OptionalDouble.empty());
            track = track.with(sample, Correction.UNCHECKED);
        }
    }
}
