package fifthform.probe.protocol;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.probe.ProbeProtocol;
import fifthform.probe.Signal;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Every row of {@code reference/modbus_rtu_frames.csv}; its head says where it comes from. */
class ModbusFramesTest {
    private static final HexFormat HEX = HexFormat.ofDelimiter(" ").withUpperCase();

    @Test
    void theCheckValueIsThePublishedOne() {
        byte[] digits = "123456789".getBytes(StandardCharsets.US_ASCII);
        assertEquals(0x4B37, Crc16.of(digits, 0, digits.length));
    }

    @Test
    void requestsAreTheTables() throws Exception {
        assertArrayEquals(
                frame("request read holding registers"),
                new RegisterQuestion(1, RegisterTable.HOLDING, 107, 3).bytes());
        assertArrayEquals(
                frame("request read input registers"), new RegisterQuestion(1, RegisterTable.INPUT, 8, 1).bytes());
    }

    @Test
    void answersMeanWhatTheTableSays() throws Exception {
        String three = "register=107,count=3,table=holding,scale=0.1";
        assertEquals(
                List.of(measured(0, 55.5, 0.1), measured(1, 0, 0.1), measured(2, 10, 0.1)),
                decode(three, rows("response").get(0)));
        assertEquals(
                List.of(measured(0, 10, 1)),
                decode("register=8,scale=1", rows("response").get(1)));
        assertEquals(List.of(measured(0, 31.5, 0.1)), decode("register=8", frame("response temperature x10")));
        assertEquals(List.of(measured(0, -1, 0.1)), decode("register=8", frame("response negative x10")));
        double ulp = Math.ulp(31.5f);
        assertEquals(
                List.of(measured(0, 31.5, ulp)),
                decode("register=8,table=holding,format=float32", frame("response float high word first")));
        assertEquals(
                List.of(measured(0, 31.5, ulp)),
                decode(
                        "register=8,table=holding,format=float32,words=low-first",
                        frame("response float low word first")));
    }

    @Test
    void aRefusalIsNoReadingAndSaysWhatToChange() throws Exception {
        ProbeProtocol.Decoder decoder = Modbus.set("register=8").newDecoder();
        List<Signal> signals = new ArrayList<>();
        decoder.feed(frame("exception illegal data address"), signals::add);
        assertEquals(List.of(new Signal.Aside(5)), signals);
        String complaint = decoder.complaint().orElseThrow().toString();
        assertTrue(complaint.contains("no input register 8") && complaint.contains("30009"), complaint);
        decoder.feed(frame("exception device busy"), signals::add);
        complaint = decoder.complaint().orElseThrow().toString();
        assertTrue(complaint.contains("busy"), complaint);
        decoder.feed(frame("response temperature x10"), signals::add);
        assertEquals(measured(0, 31.5, 0.1), signals.get(2));
        assertFalse(decoder.complaint().isPresent(), "a reading ends the complaint");
    }

    @Test
    void aWrongCrcIsRefusedAndTheNextFrameReadAsIfNothingHadBeen() throws Exception {
        ProbeProtocol.Decoder decoder = Modbus.set("register=8").newDecoder();
        List<Signal> signals = new ArrayList<>();
        decoder.feed(frame("wrong CRC"), signals::add);
        assertEquals(List.of(), signals);
        decoder.feed(frame("response temperature x10"), signals::add);
        assertEquals(List.of(new Signal.Unreadable(7), measured(0, 31.5, 0.1)), signals);
    }

    @Test
    void theWholeTableIsHere() throws Exception {
        assertEquals(11, table().size());
        for (String[] row : table()) {
            byte[] frame = HEX.parseHex(row[1]);
            assertEquals(!row[0].equals("wrong CRC"), Crc16.closes(frame, 0, frame.length), row[0]);
        }
    }

    private static Signal measured(int channel, double celsius, double step) {
        return Modbus.measured(channel, celsius, step);
    }

    private static List<Signal> decode(String settings, byte[] frame) {
        List<Signal> signals = new ArrayList<>();
        Modbus.set(settings).newDecoder().feed(frame, signals::add);
        return signals;
    }

    private static byte[] frame(String what) throws IOException {
        return rows(what).get(0);
    }

    private static List<byte[]> rows(String what) throws IOException {
        return table().stream()
                .filter(row -> row[0].equals(what))
                .map(row -> HEX.parseHex(row[1]))
                .toList();
    }

    private static List<String[]> table() throws IOException {
        try (InputStream in = ModbusFramesTest.class.getResourceAsStream("/reference/modbus_rtu_frames.csv")) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return text.lines()
                    .filter(line -> !line.startsWith("#") && !line.startsWith("what,"))
                    .map(line -> line.split(",", 3))
                    .toList();
        }
    }
}
