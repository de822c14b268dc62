package fifthform.monitor.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import fifthform.curves.input.Recorded;
import fifthform.curves.input.Sample;
import fifthform.curves.setup.Approach;
import fifthform.curves.setup.Beginning;
import fifthform.curves.setup.Bowl;
import fifthform.curves.setup.Correction;
import fifthform.curves.setup.Origin;
import fifthform.curves.setup.ProbeSetup;
import fifthform.curves.setup.Role;
import fifthform.curves.setup.Setup;
import fifthform.curves.thermocouple.Sensor;
import fifthform.monitor.adapters.Adapters;
import fifthform.monitor.adapters.KeptAdapter;
import fifthform.monitor.adapters.KeptCheck;
import fifthform.monitor.json.JsonObject;
import fifthform.monitor.settings.Folders;
import fifthform.monitor.store.JournalWriter;
import fifthform.monitor.store.SessionFiles;
import fifthform.monitor.store.SessionHeader;
import fifthform.probe.Talk;
import fifthform.probe.find.KnownAdapter;
import fifthform.probe.find.KnownProbe;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A session is analysed and replayed with the correction of its day, whatever was found since. */
class CorrectionOfItsDayTest {
    private static final Instant DAY = Instant.parse("2026-01-01T09:00:00Z");
    private static final double READ_CELSIUS = 30;
    private static final String PORT = "/dev/ttyDEMO";

    @TempDir
    Path data;

    @Test
    void aLaterCheckDoesNotChangeWhatWasThen() throws Exception {
        check(-0.5, DAY);
        Path session = record();
        check(-2.0, DAY.plusSeconds(86_400));
        assertEquals(-2.0, known().correction().offsetKelvin(), "the store has the later check");

        assertTrue(
                Files.readString(session).contains("\"checked\":\"2026-01-01T09:00:00Z\""),
                "its date is in the header");
        Said analysed = Said.by("analyse", "--data", data.toString(), session.toString());
        assertEquals(0, analysed.exit(), analysed.err());
        JsonObject last = JsonObject.parse(analysed.out().lines().toList().get(59));
        assertEquals(READ_CELSIUS - 0.5, last.number("estimate_c"), 0.02);
        Said replayed = Said.by("replay", "--data", data.toString(), "--screen", "none", session.toString());
        assertEquals(0, replayed.exit(), replayed.out() + replayed.err());
    }

    private ProbeSetup known() throws Exception {
        return new KnownProbes(new Adapters(data.resolve("probes")).load(), port -> Optional.empty())
                .setup(Setups.BOWL, Role.BOWL, Protocols.named(Protocols.TEXT), PortName.parse(PORT), 0);
    }

    private void check(double offsetKelvin, Instant at) throws Exception {
        Adapters adapters = new Adapters(data.resolve("probes"));
        KnownProbe bowl = new KnownProbe(0, Role.BOWL, Sensor.UNKNOWN, Correction.UNCHECKED, OptionalDouble.empty());
        KeptAdapter kept = adapters.remember(
                new KnownAdapter(Optional.empty(), PORT, Talk.of(Protocols.TEXT), List.of(bowl)), Origin.REAL);
        Correction correction = new Correction(1, offsetKelvin, 0.2, Optional.of(at));
        adapters.keep(kept, new KeptCheck(at, 0, List.of(), Optional.of(correction), "passed"));
    }

    /** A minute at 30 °C as the wire said it. */
    private Path record() throws Exception {
        Setup setup = new Setup(
                Chocolates.find(
                        "dark",
                        Folders.of("Linux", Map.of(), data).withData(data),
                        new PrintWriter(Writer.nullWriter())),
                Bowl.ANY,
                List.of(known()),
                Setup.USUAL_REACTION,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Origin.REAL,
                Approach.TOUCHES_WHERE_UNSURE,
                OptionalDouble.empty(),
                Beginning.WHOLE,
                Optional.empty());
        Path file = data.resolve("2026-01-01-090000-dark" + SessionFiles.ENDING);
        SessionHeader header = new SessionHeader("demo", "", SessionFiles.name(file), DAY, ZoneOffset.UTC, setup);
        JournalWriter writer =
                JournalWriter.create(file, header, InstantSource.fixed(DAY), trouble -> fail(trouble.toString()));
        for (int i = 1; i <= 60; i++) {
            Sample sample = new Sample(
                    DAY.plusSeconds(i),
                    Setups.BOWL,
                    READ_CELSIUS,
                    0.003,
                    OptionalDouble.empty(),
                    OptionalDouble.empty());
            writer.input(new Recorded(i, sample));
        }
        writer.close();
        return file;
    }
}
