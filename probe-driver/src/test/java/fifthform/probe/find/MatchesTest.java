package fifthform.probe.find;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.setup.Correction;
import fifthform.curves.setup.Role;
import fifthform.curves.thermocouple.Sensor;
import fifthform.probe.Talk;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class MatchesTest {
    private static final Optional<UsbIdentity> NUMBERED = Optional.of(new UsbIdentity(0x1234, 1, Optional.of("A7")));
    private static final Optional<UsbIdentity> PLAIN = Optional.of(new UsbIdentity(0x1234, 1, Optional.empty()));

    @Test
    void aSerialNumberIsFoundUnderAnyName() {
        Matches matches = Matches.of(
                List.of(known(NUMBERED, "ttyUSB0", Role.BOWL)),
                List.of(usb("ttyUSB3", NUMBERED, "1-2"), usb("ttyUSB0", PLAIN, "1-1")));
        assertEquals("ttyUSB3", matches.only().orElseThrow().port().name());
        assertFalse(matches.isAmbiguous());
    }

    @Test
    void anotherSerialNumberIsAnotherAdapter() {
        Optional<UsbIdentity> other = Optional.of(new UsbIdentity(0x1234, 1, Optional.of("A8")));
        assertEquals(
                List.of(),
                Matches.of(List.of(known(NUMBERED, "/dev/ttyUSB0", Role.BOWL)), List.of(usb("ttyUSB0", other, "1-1")))
                        .all());
    }

    @Test
    void withoutSerialNumberThePlaceCounts() {
        FoundPort here = usb("ttyUSB5", PLAIN, "1-4.2");
        FoundPort there = usb("ttyUSB0", PLAIN, "1-1");
        assertEquals("socket 1-4.2", here.place());
        KnownAdapter known = known(PLAIN, here.place(), Role.BOWL);
        assertEquals(
                here,
                Matches.of(List.of(known), List.of(there, here))
                        .only()
                        .orElseThrow()
                        .port());
        assertEquals(List.of(), Matches.of(List.of(known), List.of(there)).all(), "moved: it is looked at anew");
        KnownAdapter byPath = known(PLAIN, "/dev/ttyUSB0", Role.BOWL);
        assertEquals(
                there,
                Matches.of(List.of(byPath), List.of(there, here))
                        .only()
                        .orElseThrow()
                        .port());
    }

    @Test
    void aPortThatIsNoUsbAdapterIsKnownByItsPath() {
        FoundPort builtIn = port("ttyS0", FoundPort.Kind.SERIAL, Optional.empty(), "");
        assertTrue(Matches.of(List.of(known(Optional.empty(), "/dev/ttyS0", Role.BOWL)), List.of(builtIn))
                .only()
                .isPresent());
    }

    /** Cheap adapters of one batch may all have the same serial number. */
    @Test
    void twoThatMatchAreAsked() {
        List<FoundPort> ports = List.of(usb("ttyUSB0", NUMBERED, "1-1"), usb("ttyUSB1", NUMBERED, "1-2"));
        Matches matches = Matches.of(List.of(known(NUMBERED, "socket 1-1", Role.BOWL)), ports);
        assertTrue(matches.isAmbiguous());
        assertEquals(ports, matches.all().stream().map(Matches.Match::port).toList());
        assertTrue(matches.only().isEmpty());
    }

    @Test
    void onlyAdaptersOfTheRoleCount() {
        Matches matches = Matches.of(
                List.of(known(NUMBERED, "x", Role.BOWL), known(PLAIN, "socket 1-2", Role.BATH)),
                List.of(usb("ttyUSB0", NUMBERED, "1-1"), usb("ttyUSB1", PLAIN, "1-2")));
        assertTrue(matches.isAmbiguous());
        assertEquals(
                "ttyUSB1",
                matches.withRole(Role.BATH).only().orElseThrow().port().name());
        assertEquals(List.of(), matches.withRole(Role.ROOM).all());
    }

    static FoundPort port(String name, FoundPort.Kind kind, Optional<UsbIdentity> usb, String socket) {
        return new FoundPort(
                name,
                "/dev/" + name,
                name,
                kind,
                usb,
                Optional.of(socket).filter(where -> !where.isEmpty()),
                FoundPort.State.READY,
                Optional.empty(),
                Optional.empty());
    }

    private static FoundPort usb(String name, Optional<UsbIdentity> usb, String socket) {
        return port(name, FoundPort.Kind.SERIAL, usb, socket);
    }

    private static KnownAdapter known(Optional<UsbIdentity> usb, String place, Role role) {
        KnownProbe probe = new KnownProbe(0, role, Sensor.UNKNOWN, Correction.UNCHECKED, OptionalDouble.empty());
        return new KnownAdapter(usb, place, Talk.of("text-lines"), List.of(probe));
    }
}
