package fifthform.probe.find;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.probe.find.FoundPort.State;
import fifthform.probe.link.Arrival;
import fifthform.probe.link.ByteLink;
import fifthform.probe.link.LinkException;
import fifthform.probe.link.LinkSource;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PortsTest {
    private static final Optional<UsbIdentity> ADAPTER = Optional.of(new UsbIdentity(0x1234, 0x00ab, Optional.empty()));

    @Test
    void aUsbAdapterMayBeSilent() throws Exception {
        assertEquals(State.READY, PortCheck.of(new FakePort(""), ADAPTER).state());
    }

    @Test
    void aBuiltInPortHasToSpeak() throws Exception {
        assertEquals(
                State.READY,
                PortCheck.of(new FakePort("31.25"), Optional.empty()).state());
        PortCheck silent = PortCheck.of(new FakePort(""), Optional.empty());
        assertEquals(State.NO_DEVICE, silent.state());
        assertTrue(silent.reason().orElse("").contains("it is no probe"), silent::toString);
    }

    @Test
    void aPortThatOpensButCannotBeReadIsNoDevice() throws Exception {
        assertEquals(
                State.NO_DEVICE, PortCheck.of(new FakePort("gone"), ADAPTER).state());
    }

    @Test
    void aPortThatCannotBeOpenedSaysWhyAndWhatToDo() throws Exception {
        PortCheck blocked = PortCheck.of(new FakePort("blocked"), ADAPTER);
        assertEquals(new PortCheck(State.BLOCKED, Optional.of("held"), Optional.of("close it")), blocked);
    }

    @Test
    void usbIdentitiesAreWrittenAsSystemsWriteThem() {
        assertEquals("1234:00ab", ADAPTER.get().toString());
    }

    /** On whatever this computer has; a built-in port passes for ready only while something really speaks on it. */
    @Test
    void noListedPortIsTakenForAProbeJustBecauseItIsListed() throws Exception {
        for (FoundPort port : Ports.list(InstantSource.system()))
            assertTrue(port.usb().isPresent() || port.state() != State.READY, port::toString);
    }

    private record FakePort(String behaviour) implements LinkSource {
        @Override
        public String place() {
            return "fake";
        }

        @Override
        public ByteLink open() throws LinkException {
            if (behaviour.equals("blocked")) throw new LinkException("fake", "held", "close it");
            return new ByteLink() {
                @Override
                public Optional<Arrival> read() throws LinkException {
                    if (behaviour.equals("gone")) throw new LinkException("fake", "gone", "plug it in");
                    return Optional.of(new Arrival(Instant.EPOCH, behaviour.getBytes(StandardCharsets.US_ASCII)));
                }

                @Override
                public void write(byte[] bytes) {}

                @Override
                public void close() {}
            };
        }
    }
}
