package fifthform.monitor.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.setup.Correction;
import fifthform.curves.setup.ProbeSetup;
import fifthform.curves.setup.Role;
import fifthform.curves.thermocouple.Converter;
import fifthform.monitor.adapters.Adapters;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** An ice point on a real serial line, at the speed of life: it is kept with the adapter and holds for the next batch. */
@Timeout(180)
class CheckProbeSerialTest {
    /** A thin tip goes from 12 °C into ice water, and its probe reads 0.7 K too high. */
    private static final String DIP =
            "exec 3>\"$1\"; while read -r line; do echo \"$line\" >&3; sleep 0.2; done <\"$2\"";

    @TempDir
    Path home;

    @Test
    void theCorrectionIsKeptWithTheAdapterAndHoldsForTheNextBatch() throws Exception {
        SerialPair.require();
        try (SerialPair line = new SerialPair(home)) {
            line.plugIn();
            Process adapter = dip();
            try (Program check = Program.start(
                    home,
                    "check-probe",
                    "--probe",
                    line.port(),
                    "--type",
                    "K",
                    "--class",
                    "1",
                    "--converter",
                    "mcp9600")) {
                assertEquals(0, check.exit(), check.out() + check.err());
                assertTrue(check.out().contains("never checked"), check.out());
                assertTrue(check.out().contains("It holds from the next batch on"), check.out());
            } finally {
                adapter.destroyForcibly();
            }
            ProbeSetup bowl = known(line.port());
            assertEquals(-0.7, bowl.correction().offsetKelvin(), 0.05);
            assertTrue(bowl.correction().checkedAt().isPresent());
            assertEquals(Converter.MCP9600, bowl.sensor().converter());

            Program forget = Program.ran(home, "check-probe", "--probe", line.port(), "--forget");
            assertEquals(0, forget.exit(), forget.err());
            assertEquals(Correction.UNCHECKED, known(line.port()).correction());
            try (Stream<Path> files = Files.list(probes())) {
                List<Path> kept = files.toList();
                assertEquals(1, kept.size(), kept.toString());
                assertFalse(kept.get(0).toString().endsWith(".jsonl"));
            }
        }
    }

    private Process dip() throws IOException {
        StringBuilder lines = new StringBuilder();
        for (int i = 0; i < 600; i++) {
            double celsius = 0.7 + 12 * Math.exp(-i / 10.0) + 0.01 * (i % 4);
            lines.append(String.format(Locale.ROOT, "%.2f%n", celsius));
        }
        Path file = Files.writeString(home.resolve("dip.txt"), lines);
        return new ProcessBuilder("sh", "-c", DIP, "sh", home.resolve("far").toString(), file.toString()).start();
    }

    private ProbeSetup known(String port) throws Exception {
        return new KnownProbes(new Adapters(probes()).load())
                .setup(Setups.BOWL, Role.BOWL, Protocols.named(Protocols.TEXT), PortName.parse(port), 0);
    }

    private Path probes() {
        return home.resolve("data/fifthform/probes");
    }
}
