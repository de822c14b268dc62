package fifthform.monitor.adapters;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.probecheck.Point;
import fifthform.curves.probecheck.Target;
import fifthform.curves.setup.Correction;
import fifthform.curves.setup.Origin;
import fifthform.curves.setup.Role;
import fifthform.curves.thermocouple.Converter;
import fifthform.curves.thermocouple.Sensor;
import fifthform.curves.thermocouple.ThermocoupleType;
import fifthform.curves.thermocouple.ToleranceClass;
import fifthform.probe.Talk;
import fifthform.probe.find.KnownAdapter;
import fifthform.probe.find.KnownProbe;
import fifthform.probe.find.UsbIdentity;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is known of adapters outlasts the program, a torn line and a wrong clock. */
class AdaptersTest {
    private static final Instant DAY = Instant.parse("2026-01-01T09:00:00Z");
    private static final Optional<UsbIdentity> DEMO =
            Optional.of(new UsbIdentity(0x1209, 0x0001, Optional.of("demo/7")));
    private static final Optional<UsbIdentity> NAMELESS =
            Optional.of(new UsbIdentity(0x1209, 0x0001, Optional.empty()));
    private static final Sensor SENSOR =
            new Sensor(Optional.of(ThermocoupleType.K), ToleranceClass.CLASS_1, Converter.MCP9600);
    private static final KnownProbe BOWL =
            new KnownProbe(0, Role.BOWL, SENSOR, Correction.UNCHECKED, OptionalDouble.of(3.5));
    private static final KnownProbe BATH =
            new KnownProbe(1, Role.BATH, Sensor.UNKNOWN, Correction.UNCHECKED, OptionalDouble.empty());
    private static final Talk TALK = new Talk("modbus-rtu", Map.of("baud", "19200", "register", "8"));

    @TempDir
    Path home;

    private Path folder;
    private Adapters adapters;

    @BeforeEach
    void place() {
        folder = home.resolve("probes");
        adapters = new Adapters(folder);
    }

    @Test
    void nothingIsKnownAtFirst() {
        assertEquals(new Adapters.Loaded(List.of(), List.of()), adapters.load());
    }

    @Test
    void whatIsRememberedIsKnownAgainWithItsNewestGoodCheck() throws IOException {
        KnownAdapter adapter = adapter(DEMO, "/dev/ttyUSB0");
        adapters.keep(adapters.remember(adapter, Origin.REAL), good(DAY, -0.4));
        adapters.keep(adapters.remember(adapter, Origin.REAL), good(DAY.plusSeconds(60), -0.62));
        adapters.keep(
                adapters.remember(adapter, Origin.REAL),
                new KeptCheck(DAY.plusSeconds(90), 0, List.of(), Optional.empty(), "not in ice"));
        KeptAdapter kept = only();
        KnownProbe bowl = kept.probe(0).orElseThrow();
        assertEquals(-0.62, bowl.correction().offsetKelvin());
        assertEquals(Optional.of(DAY.plusSeconds(60)), bowl.correction().checkedAt());
        assertEquals(SENSOR, bowl.sensor());
        assertEquals(OptionalDouble.of(3.5), bowl.lagSeconds());
        assertEquals(BATH, kept.probe(1).orElseThrow());
        assertEquals(TALK, kept.known().talk());
        assertEquals(3, kept.checks().size());
        assertEquals(good(DAY, -0.4), kept.checks().get(0));
    }

    /** A check after the clock was set back is still the newest. */
    @Test
    void theLastLineCountsWhateverTheClockSaid() throws IOException {
        KeptAdapter kept = adapters.remember(adapter(DEMO, "/dev/ttyUSB0"), Origin.REAL);
        adapters.keep(kept, good(DAY, -0.4));
        adapters.keep(kept, good(DAY.minusSeconds(9999), -0.5));
        assertEquals(-0.5, only().probe(0).orElseThrow().correction().offsetKelvin());
    }

    @Test
    void anAdapterWithASerialNumberIsKnownAtEveryPlace() throws IOException {
        adapters.remember(adapter(DEMO, "/dev/ttyUSB0"), Origin.REAL);
        adapters.remember(adapter(DEMO, "/dev/ttyUSB3"), Origin.REAL);
        assertEquals("/dev/ttyUSB3", only().known().place());
        assertTrue(adapters.load().at("COM9", DEMO).isPresent());
    }

    @Test
    void twinsWithoutSerialNumbersAreToldApartByTheirPlace() throws IOException {
        adapters.keep(adapters.remember(adapter(NAMELESS, "/dev/ttyUSB0"), Origin.REAL), good(DAY, -0.4));
        adapters.remember(adapter(NAMELESS, "/dev/ttyUSB1"), Origin.REAL);
        assertEquals(2, adapters.load().adapters().size());
        assertEquals(-0.4, offsetAt("/dev/ttyUSB0", NAMELESS));
        assertEquals(0, offsetAt("/dev/ttyUSB1", NAMELESS));
        assertTrue(adapters.load().at("/dev/ttyUSB2", NAMELESS).isEmpty());
    }

    @Test
    void rememberingWhatIsKnownWritesNothing() throws IOException {
        KeptAdapter kept = adapters.remember(adapter(DEMO, "/dev/ttyUSB0"), Origin.REAL);
        String before = Files.readString(kept.file());
        adapters.remember(adapter(DEMO, "/dev/ttyUSB0"), Origin.REAL);
        assertEquals(before, Files.readString(kept.file()));
        adapters.keep(kept, good(DAY, 1));
        assertTrue(Files.readString(kept.file()).startsWith(before), "lines are only added");
    }

    @Test
    void simulatedAdaptersAreNeverKept() {
        assertThrows(
                IllegalArgumentException.class,
                () -> adapters.remember(adapter(DEMO, "practice pots"), Origin.SIMULATED));
        assertFalse(Files.exists(folder));
    }

    @Test
    void aTornLineCostsThatLineAndIsKeptAside() throws IOException {
        KeptAdapter kept = adapters.remember(adapter(DEMO, "/dev/ttyUSB0"), Origin.REAL);
        adapters.keep(kept, good(DAY, -0.4));
        String whole = Files.readString(kept.file());
        Files.writeString(kept.file(), "{\"k\":\"check\",\"chan", StandardOpenOption.APPEND);
        Adapters.Loaded loaded = adapters.load();
        assertEquals(1, loaded.problems().size());
        assertTrue(
                loaded.problems().get(0).what().contains(".jsonl.unreadable"),
                loaded.problems().toString());
        assertEquals(
                -0.4,
                loaded.adapters().get(0).probe(0).orElseThrow().correction().offsetKelvin());
        assertEquals(whole, Files.readString(kept.file()));
        assertTrue(Files.readString(Path.of(kept.file() + ".unreadable")).endsWith("\"chan"));
        assertEquals(List.of(), adapters.load().problems(), "said once");
    }

    @Test
    void aFileThatSaysNothingIsKeptAside() throws IOException {
        Files.createDirectories(folder);
        Files.write(folder.resolve("a.jsonl"), new byte[] {(byte) 0xff, 0, 1});
        Files.writeString(folder.resolve("b.jsonl"), "no adapter\n");
        assertEquals(2, adapters.load().problems().size());
        assertTrue(Files.exists(folder.resolve("a.jsonl.unreadable")));
        assertTrue(Files.exists(folder.resolve("b.jsonl.unreadable")));
    }

    @Test
    void numbersThatCannotBeAreDamageToo() throws IOException {
        KeptAdapter kept = adapters.remember(adapter(DEMO, "/dev/ttyUSB0"), Origin.REAL);
        adapters.keep(kept, good(DAY, -0.4));
        Files.writeString(kept.file(), Files.readString(kept.file()).replace("\"offset_k\":-0.4", "\"offset_k\":-400"));
        Adapters.Loaded loaded = adapters.load();
        assertEquals(1, loaded.problems().size());
        assertEquals(
                Correction.UNCHECKED,
                loaded.adapters().get(0).probe(0).orElseThrow().correction());
    }

    @Test
    void aFileOfANewerProgramIsLeftAlone() throws IOException {
        Files.createDirectories(folder);
        Path file = Files.writeString(folder.resolve("x.jsonl"), "{\"k\":\"adapter\",\"format\":2,\"who\":\"else\"}\n");
        Adapters.Loaded loaded = adapters.load();
        assertTrue(
                loaded.problems().get(0).what().contains("newer"),
                loaded.problems().toString());
        assertTrue(Files.exists(file));
    }

    @Test
    void aForgottenAdapterIsUnknownAndNotLost() throws IOException {
        KeptAdapter kept = adapters.remember(adapter(DEMO, "/dev/ttyUSB0"), Origin.REAL);
        Path aside = adapters.forget(kept);
        assertTrue(Files.exists(aside));
        assertEquals(List.of(), adapters.load().adapters());
        adapters.forget(adapters.remember(adapter(DEMO, "/dev/ttyUSB0"), Origin.REAL));
        assertTrue(Files.exists(aside), "the first is not written over");
    }

    private KeptAdapter only() {
        Adapters.Loaded loaded = adapters.load();
        assertEquals(List.of(), loaded.problems());
        assertEquals(1, loaded.adapters().size());
        return loaded.adapters().get(0);
    }

    private double offsetAt(String place, Optional<UsbIdentity> usb) {
        return adapters.load()
                .at(place, usb)
                .orElseThrow()
                .probe(0)
                .orElseThrow()
                .correction()
                .offsetKelvin();
    }

    private static KnownAdapter adapter(Optional<UsbIdentity> usb, String place) {
        return new KnownAdapter(usb, place, TALK, List.of(BOWL, BATH));
    }

    private static KeptCheck good(Instant at, double offsetKelvin) {
        Point ice = new Point(at, Target.ice(), -offsetKelvin, 0.01, 80);
        return new KeptCheck(
                at, 0, List.of(ice), Optional.of(new Correction(1, offsetKelvin, 0.18, Optional.of(at))), "good");
    }
}
