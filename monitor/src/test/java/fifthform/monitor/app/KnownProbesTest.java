package fifthform.monitor.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fifthform.curves.setup.Correction;
import fifthform.curves.setup.Origin;
import fifthform.curves.setup.ProbeSetup;
import fifthform.curves.setup.Role;
import fifthform.curves.thermocouple.Converter;
import fifthform.curves.thermocouple.Sensor;
import fifthform.curves.thermocouple.ThermocoupleType;
import fifthform.curves.thermocouple.ToleranceClass;
import fifthform.monitor.adapters.Adapters;
import fifthform.monitor.adapters.KeptCheck;
import fifthform.probe.Talk;
import fifthform.probe.find.KnownAdapter;
import fifthform.probe.find.KnownProbe;
import fifthform.probe.find.UsbIdentity;
import fifthform.probe.reader.ProbeLine;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A real set-up gets sensor, correction and lag from what is remembered of the adapter that is plugged in. */
class KnownProbesTest {
    private static final UsbIdentity DEMO = new UsbIdentity(0x1209, 0x0001, Optional.of("demo"));
    private static final Sensor SENSOR =
            new Sensor(Optional.of(ThermocoupleType.K), ToleranceClass.CLASS_2, Converter.MCP9600);
    private static final Correction CHECKED =
            new Correction(1, -0.62, 0.18, Optional.of(Instant.parse("2026-01-01T09:00:00Z")));

    @TempDir
    Path folder;

    private Adapters adapters;

    @BeforeEach
    void twoChannels() throws Exception {
        adapters = new Adapters(folder);
        KnownProbe bath = new KnownProbe(0, Role.BATH, Sensor.UNKNOWN, Correction.UNCHECKED, OptionalDouble.empty());
        KnownProbe bowl = new KnownProbe(1, Role.BOWL, SENSOR, Correction.UNCHECKED, OptionalDouble.of(2.5));
        KnownAdapter adapter =
                new KnownAdapter(Optional.of(DEMO), "/dev/ttyUSB0", Talk.of("text-lines"), List.of(bath, bowl));
        adapters.keep(
                adapters.remember(adapter, Origin.REAL),
                new KeptCheck(CHECKED.checkedAt().orElseThrow(), 1, List.of(), Optional.of(CHECKED), "passed"));
    }

    @Test
    void theAdapterIsKnownUnderAnotherPortsName() throws Exception {
        ProbeSetup bowl = setup(Optional.of(DEMO), Role.BOWL, 1);
        assertEquals(CHECKED, bowl.correction());
        assertEquals(SENSOR, bowl.sensor());
        assertEquals(2.5, bowl.lagSeconds());
        assertEquals("/dev/ttyUSB7", bowl.place());
    }

    @Test
    void withoutAChannelTheRoleFindsIt() throws Exception {
        assertEquals(
                CHECKED,
                setup(Optional.of(DEMO), Role.BOWL, ProbeLine.FIRST_TO_SPEAK).correction());
        assertEquals(
                Correction.UNCHECKED,
                setup(Optional.of(DEMO), Role.BATH, ProbeLine.FIRST_TO_SPEAK).correction());
    }

    @Test
    void aStrangerIsUnchecked() throws Exception {
        ProbeSetup stranger = setup(Optional.empty(), Role.BOWL, ProbeLine.FIRST_TO_SPEAK);
        assertEquals(Correction.UNCHECKED, stranger.correction());
        assertEquals(ProbeSetup.USUAL_LAG_SECONDS, stranger.lagSeconds());
    }

    /** What was kept while it spoke plain lines must not hide what its frames tell; a check made so must not be mixed. */
    @Test
    void whatTheTalkTellsHoldsWhereNothingBetterIsKept() throws Exception {
        assertEquals(
                Converter.MAX31855,
                setup("max31855", Optional.of(DEMO), Role.BATH, 0).sensor().converter());
        adapters.keep(
                adapters.load().at("/dev/ttyUSB0", Optional.of(DEMO)).orElseThrow(),
                new KeptCheck(CHECKED.checkedAt().orElseThrow(), 0, List.of(), Optional.of(CHECKED), "passed"));
        assertEquals(
                Sensor.UNKNOWN,
                setup("max31855", Optional.of(DEMO), Role.BATH, 0).sensor());
    }

    private ProbeSetup setup(Optional<UsbIdentity> usb, Role role, int channel) throws Exception {
        return setup(Protocols.TEXT, usb, role, channel);
    }

    private ProbeSetup setup(String talk, Optional<UsbIdentity> usb, Role role, int channel) throws Exception {
        return new KnownProbes(adapters.load(), port -> usb)
                .setup(Setups.BOWL, role, Protocols.named(talk), PortName.parse("/dev/ttyUSB7"), channel);
    }
}
