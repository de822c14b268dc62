package fifthform.simulator.device;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.thermocouple.ThermocoupleType;
import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** The codes that the pretend converters send against the worked codes of {@code converter_frames.csv}, and the check sum. */
class CodesTest {
    /** µV/K; data sheets, from memory. */
    private static final Map<String, Double> SLOPES = Map.of("max31855", 41.276, "max6675", 41.0);

    @Test
    void everyWorkedCodeIsSentForItsTemperatures() throws Exception {
        int codes = 0;
        int faults = 0;
        for (List<String> row : rows()) {
            String chip = row.get(0).toLowerCase(Locale.ROOT);
            Frames frames = Frames.of(chip, ThermocoupleType.K).orElseThrow();
            long frame = Long.parseLong(row.get(1).replace(" ", ""), 16);
            double junction = row.get(3).isEmpty() ? 25 : Double.parseDouble(row.get(3));
            if (row.get(4).equals("open circuit")) {
                assertEquals(frame, frames.openCircuit(junction), row.toString());
                faults++;
            } else if (row.get(4).equals("short to ground") || row.get(4).equals("over or under voltage")) {
                assertEquals(frame, frames.shortCircuit(junction).orElseThrow(), row.toString());
                faults++;
            } else if (row.get(4).isEmpty()
                    && !row.get(2).isEmpty()
                    && !row.get(1).equals("0321")) {
                OptionalDouble tip = tipThatReads(chip, Double.parseDouble(row.get(2)), junction);
                if (tip.isEmpty()) continue; // beyond what the thermocouple itself can be
                assertEquals(frame, frames.measured(tip.getAsDouble(), junction), row.toString());
                assertEquals(Double.parseDouble(row.get(2)), frames.celsius(frame), row.toString());
                codes++;
            }
        }
        assertTrue(codes > 35 && faults == 5, codes + " codes, " + faults + " faults");
    }

    /** A converter with one slope reads this for another tip; bit 0 of 0321 is a three-state line's. */
    private static OptionalDouble tipThatReads(String chip, double celsius, double junction) {
        if (!SLOPES.containsKey(chip)) return OptionalDouble.of(celsius);
        return ThermocoupleType.K.tipCelsius(SLOPES.get(chip) * (celsius - junction) / 1000, junction);
    }

    private static List<List<String>> rows() throws Exception {
        try (BufferedReader in = new BufferedReader(new InputStreamReader(
                CodesTest.class.getResourceAsStream("/reference/converter_frames.csv"), StandardCharsets.UTF_8))) {
            return in.lines()
                    .filter(line -> !line.startsWith("#") && !line.startsWith("chip,"))
                    .map(line -> List.of(line.split(",", 6)))
                    .toList();
        }
    }

    /**
     * With the board at 10 °C and the tip at 45 °C: E(45) = 1.817 mV, E(10) = 0.397 mV (type K table, NIST Monograph 175), so
     * 1.420 mV / 41.276 µV/K + 10 °C = 44.40 °C, sent as 44.5 °C.
     */
    @Test
    void aConverterWithOneSlopeErrsAsItsDataSheetHasIt() {
        Frames frames = Frames.of("max31855", ThermocoupleType.K).orElseThrow();
        assertEquals(44.5, frames.celsius(frames.measured(45, 10)));
    }

    /** Check value of CRC-16/MODBUS for the text 123456789: 0x4B37 (from memory). */
    @Test
    void theCheckSumIsModbuss() {
        byte[] text = "123456789".getBytes(StandardCharsets.US_ASCII);
        assertEquals(0x4B37, CheckSum.of(text, text.length));
        assertTrue(CheckSum.closes(CheckSum.closed(text)));
        assertTrue(!CheckSum.closes(CheckSum.spoiled(CheckSum.closed(text))));
    }
}
