package fifthform.monitor.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.monitor.json.JsonObject;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From a chip's frames to the screen, the journal and the replay: its one slope is undone, and its own budget shown. */
class ConverterUndoneTest {
    /** MAX31855: 31.50 °C in the upper 14 bits, junction 25.00 °C in the 12 bits from bit 4 (its data sheet, from memory). */
    private static final String FRAME = "01F81900";

    /** Worked by hand in DEVELOPERS.md from the printed table of type K. */
    private static final double TIP_CELSIUS = 31.60;

    @TempDir
    Path data;

    @Test
    void framesOfAOneSlopeConverter() throws Exception {
        Path tape = data.resolve("frames.txt");
        Files.write(tape, Stream.generate(() -> FRAME).limit(120).toList());
        Said watched = Said.by(
                "watch",
                "--data",
                data.toString(),
                "--probe",
                "file:" + tape,
                "--talk",
                "max31855",
                "--speed",
                "max",
                "--screen",
                "lines");
        assertEquals(0, watched.exit(), watched.err());
        // Of the page's example: 1.443, √(1.155² + 1.148²) and 0.072 K.
        assertTrue(
                watched.out().contains("wire 1.44, converter and its junction 1.63, last digit 0.07, noise"),
                watched.out());

        Path session = onlySession();
        List<String> lines = Files.readAllLines(session);
        assertTrue(lines.get(0).contains("max31855"), lines.get(0));
        assertTrue(
                lines.stream().anyMatch(l -> l.contains("\"k\":\"r\"") && l.contains("\"c\":31.5,")),
                "the journal keeps what the wire said");
        Said analysed = Said.by("analyse", "--data", data.toString(), session.toString());
        JsonObject reading =
                JsonObject.parse(analysed.out().lines().skip(100).findFirst().orElseThrow());
        assertEquals(TIP_CELSIUS, reading.number("estimate_c"), 0.01);
        Said replayed = Said.by("replay", "--data", data.toString(), "--screen", "none", session.toString());
        assertEquals(0, replayed.exit(), replayed.out() + replayed.err());
    }

    private Path onlySession() throws Exception {
        try (Stream<Path> files = Files.list(data.resolve("sessions"))) {
            return files.filter(f -> f.toString().endsWith(".jsonl"))
                    .findFirst()
                    .orElseThrow();
        }
    }
}
