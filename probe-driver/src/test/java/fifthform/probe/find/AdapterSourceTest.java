package fifthform.probe.find;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.probe.link.Arrival;
import fifthform.probe.link.ByteLink;
import fifthform.probe.link.LinkException;
import fifthform.probe.link.LinkSource;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is plugged in is a list that the story changes. */
class AdapterSourceTest {
    private static final Optional<UsbIdentity> NUMBERED = Optional.of(new UsbIdentity(0x1234, 1, Optional.of("A7")));
    private static final Optional<UsbIdentity> PLAIN = Optional.of(new UsbIdentity(0x1234, 1, Optional.empty()));

    private final List<ListedPort> plugged = new ArrayList<>();
    private final List<String> opened = new ArrayList<>();

    @Test
    void itIsFoundUnderAnotherNameInAnotherSocket() throws Exception {
        for (Optional<UsbIdentity> usb : List.of(NUMBERED, PLAIN)) {
            opened.clear();
            AdapterSource source = source(port("ttyUSB0", usb, "1-1"));
            plug(port("ttyUSB0", usb, "1-1"), port("ttyACM0", Optional.empty(), ""));
            source.open();
            plug(port("ttyUSB1", usb, "1-2"));
            source.open();
            assertEquals(List.of("/dev/ttyUSB0", "/dev/ttyUSB1"), opened);
            assertEquals("/dev/ttyUSB1", source.place());
        }
    }

    @Test
    void whileItIsUnpluggedNothingElseIsOpened() {
        AdapterSource source = source(port("ttyUSB0", NUMBERED, "1-1"));
        plug(port("ttyUSB0", Optional.of(new UsbIdentity(0x1234, 1, Optional.of("B8"))), "1-1"));
        LinkException e = assertThrows(LinkException.class, source::open);
        assertTrue(e.getMessage().contains("1234:0001") && e.getMessage().contains("not plugged in"), e::getMessage);
        assertEquals(List.of(), opened);
    }

    @Test
    void twinsStayInTheirSocketsWhateverTheirPortsAreCalled() throws Exception {
        AdapterSource bowl = source(port("ttyUSB0", PLAIN, "1-1"));
        AdapterSource bath = source(port("ttyUSB1", PLAIN, "1-2"));
        plug(port("ttyUSB0", PLAIN, "1-2"), port("ttyUSB1", PLAIN, "1-1"));
        bowl.open();
        bath.open();
        assertEquals(List.of("/dev/ttyUSB1", "/dev/ttyUSB0"), opened);
    }

    @Test
    void theOtherTwinIsNeverTakenForTheOneThatHasGone() throws Exception {
        AdapterSource bowl = source(port("ttyUSB0", PLAIN, "1-1"));
        plug(port("ttyUSB0", PLAIN, "1-1"), port("ttyUSB1", PLAIN, "1-2"));
        bowl.open();
        plug(port("ttyUSB0", PLAIN, "1-2")); // the bath's, plugged in first, has got the bowl's name
        LinkException e = assertThrows(LinkException.class, bowl::open);
        assertTrue(e.getMessage().contains("none comes from the wrong probe"), e::getMessage);
        assertTrue(e.whatToDo().contains("(1-1)"), e::whatToDo);
        assertEquals(List.of("/dev/ttyUSB0"), opened);
    }

    @Test
    void withoutSocketsTheNameOfThePortHasToDo() throws Exception {
        AdapterSource bowl = source(port("ttyUSB0", PLAIN, ""));
        plug(port("ttyUSB1", PLAIN, ""), port("ttyUSB0", PLAIN, ""));
        bowl.open();
        assertEquals(List.of("/dev/ttyUSB0"), opened);
    }

    @Test
    void whatIsNoUsbAdapterStaysWhereItIs() throws Exception {
        source(port("ttyS0", Optional.empty(), "")).open();
        assertEquals(List.of("/dev/ttyS0"), opened);
    }

    private void plug(ListedPort... ports) {
        plugged.clear();
        plugged.addAll(List.of(ports));
    }

    private static ListedPort port(String name, Optional<UsbIdentity> usb, String socket) {
        return new ListedPort(
                name, "/dev/" + name, name, usb, Optional.of(socket).filter(where -> !where.isEmpty()));
    }

    private AdapterSource source(ListedPort port) {
        return new AdapterSource(port, () -> plugged, path -> new LinkSource() {
            @Override
            public String place() {
                return path;
            }

            @Override
            public ByteLink open() {
                opened.add(path);
                return new Silent();
            }
        });
    }

    private static final class Silent implements ByteLink {
        @Override
        public Optional<Arrival> read() {
            return Optional.of(Arrival.silence(Instant.EPOCH));
        }

        @Override
        public void write(byte[] bytes) {}

        @Override
        public void close() {}
    }
}
