package fifthform.probe.find;

import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.probe.LineSettings;
import fifthform.probe.find.SimulatedWire.AfterBadStop;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class GarblingTest {
    private static final List<Integer> BAUDS = List.of(57_600, 38_400, 19_200, 9600, 4800);
    private static final int FASTEST = 115_200;

    @Test
    void aReceiverThatIsTooFastLearnsTheSpeed() {
        for (AfterBadStop receiver : AfterBadStop.values()) {
            for (int sent : List.of(57_600, 38_400, 19_200)) {
                Garbling garbling = hear(sent, FASTEST, receiver);
                int likeliest = BAUDS.stream()
                        .max(Comparator.comparingDouble(garbling::evidenceFor))
                        .orElseThrow();
                assertTrue(likeliest == sent, sent + " was taken for " + likeliest + " by one that " + receiver);
            }
        }
    }

    /** One that is far too slow hears a byte at a time, of which {@link LineTrial#evidenceFor} makes nothing. */
    @Test
    void aReceiverThatIsRightOrTooSlowSeesNoSlowerSpeed() {
        for (AfterBadStop receiver : AfterBadStop.values())
            for (int sent : List.of(9600, 19_200, 57_600))
                for (int slower : List.of(4800, 2400, 1200))
                    assertTrue(
                            hear(sent, 9600, receiver).evidenceFor(slower) < LineTrial.STRONG_EVIDENCE,
                            sent + " heard at 9600 was taken for " + slower);
    }

    private static Garbling hear(int sent, int receiver, AfterBadStop afterBadStop) {
        SimulatedWire wire = new SimulatedWire(
                () -> "T: 31.25 C\r\n".getBytes(StandardCharsets.US_ASCII),
                0.1,
                new LineSettings(sent),
                0,
                afterBadStop,
                new SplittableRandom(3));
        wire.tune(new LineSettings(receiver));
        Garbling garbling = new Garbling(receiver);
        for (int i = 0; i < 30; i++) garbling.hear(wire.read().orElseThrow());
        return garbling;
    }
}
