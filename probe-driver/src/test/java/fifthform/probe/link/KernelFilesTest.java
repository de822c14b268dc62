package fifthform.probe.link;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.probe.ProbeProtocol;
import fifthform.probe.Signal;
import fifthform.probe.protocol.KernelFileLines;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A directory that imitates the kernel's: what is read, what is told when it goes, and what is offered as a probe. */
class KernelFilesTest {
    private static final Instant NOW = Instant.parse("2026-03-01T10:00:00Z");

    @TempDir
    Path sys;

    @Test
    void oneRoundIsOneLine() throws Exception {
        Path device = hwmon(0, "demo");
        file(device, "temp1_input", "31250");
        file(device, "temp1_label", "my bowl=1");
        file(device, "temp1_fault", "0");
        file(device, "temp1_max", "99000");
        file(device, "fan1_input", "900");
        assertEquals("name=demo temp1_fault=0 temp1_input=31250 temp1_label=my%20bowl%3D1\n", lines(device, 1));
    }

    @Test
    void whatTheKernelSaysIsUnderstood() throws Exception {
        Path device = iio(0, "max31856");
        file(device, "in_temp_raw", "4032");
        file(device, "in_temp_scale", "7.812500");
        file(device, "in_temp_ambient_raw", "1568");
        file(device, "in_temp_ambient_scale", "15.625000");
        file(device, "in_temp_thermocouple_type", "K");
        List<Signal> signals = new ArrayList<>();
        ProbeProtocol.Decoder decoder = new KernelFileLines().newDecoder();
        decoder.feed(lines(device, 2).getBytes(StandardCharsets.UTF_8), signals::add);
        // 4032 · 1/128 °C and 1568 · 1/64 °C
        Signal expected = new Signal.Measured(0, 31.5, OptionalDouble.of(24.5), OptionalDouble.empty(), 7.8125 * 1e-3);
        assertEquals(List.of(expected, expected), signals);
    }

    @Test
    void labelsAreChannelNames() throws Exception {
        Path device = hwmon(0, "demo");
        file(device, "temp1_input", "31250");
        file(device, "temp2_input", "45000");
        file(device, "temp2_label", "warm bath");
        ProbeProtocol.Decoder decoder = new KernelFileLines().newDecoder();
        decoder.feed(lines(device, 1).getBytes(StandardCharsets.UTF_8), signal -> {});
        assertEquals(Optional.empty(), decoder.channelName(0));
        assertEquals(Optional.of("warm bath"), decoder.channelName(1));
    }

    /** A directory in place of a file: reading it fails as a busy bus does, and is no end. */
    @Test
    void aFileThatCannotBeReadIsNoEnd() throws Exception {
        Path device = hwmon(0, "demo");
        Files.createDirectory(device.resolve("temp1_input"));
        file(device, "temp2_input", "31250");
        try (ByteLink link = source(device).open()) {
            String first = text(link);
            assertTrue(first.matches("name=demo temp1_input=!\\S+ temp2_input=31250\n"), first);
            Files.delete(device.resolve("temp1_input"));
            file(device, "temp1_input", "31500");
            assertEquals("name=demo temp1_input=31500 temp2_input=31250\n", text(link));
        }
    }

    @Test
    void aVanishedDirectoryIsALossThatSaysWhatToDo() throws Exception {
        Path device = hwmon(0, "demo");
        file(device, "temp1_input", "31250");
        try (ByteLink link = source(device).open()) {
            text(link);
            Files.delete(device.resolve("temp1_input"));
            Files.delete(device.resolve("name"));
            Files.delete(device);
            LinkException gone = assertThrows(LinkException.class, () -> text(link));
            assertEquals(device.toString(), gone.place());
            assertTrue(gone.whatToDo().startsWith("Plug it in again"), gone.whatToDo());
        }
        assertThrows(LinkException.class, () -> source(device).open());
    }

    @Test
    void aDirectoryWithoutATemperatureIsRefused() throws Exception {
        Path device = hwmon(0, "demo");
        file(device, "fan1_input", "900");
        LinkException refused =
                assertThrows(LinkException.class, () -> source(device).open());
        assertTrue(refused.getMessage().contains("no file with a temperature"), refused.getMessage());
        assertThrows(LinkException.class, () -> source(device.resolve("name")).open());
    }

    @Test
    void aClosedLinkSaysSo() throws Exception {
        Path device = hwmon(0, "demo");
        file(device, "temp1_input", "31250");
        ByteLink link = source(device).open();
        link.close();
        assertThrows(LinkException.class, link::read);
        assertThrows(LinkException.class, () -> link.write(new byte[1]));
    }

    @Test
    void betweenRoundsThereIsSilence() throws Exception {
        Path device = hwmon(0, "demo");
        file(device, "temp1_input", "31250");
        try (ByteLink link = new KernelFilesSource(device, Duration.ofHours(1), () -> NOW).open()) {
            text(link);
            Arrival silence = link.read().orElseThrow();
            assertTrue(silence.isSilence());
            assertEquals(NOW, silence.at());
        }
    }

    @Test
    void onlyWhatCanBeAProbeIsOffered() throws Exception {
        file(hwmon(0, "coretemp"), "temp1_input", "55000");
        file(hwmon(1, "nvme"), "temp1_input", "38000");
        file(hwmon(2, "acpitz"), "temp1_input", "27800");
        Path wire = hwmon(3, "w1_slave_temp");
        file(wire, "temp1_input", "31250");
        Path thermocouple = iio(0, "demo-converter");
        file(thermocouple, "in_temp_raw", "504");
        file(thermocouple, "in_temp_ambient_raw", "390");
        Path typed = iio(1, "other-converter");
        file(typed, "in_temp_raw", "504");
        file(typed, "in_temp_thermocouple_type", "K");
        file(iio(2, "board-adc"), "in_temp_raw", "504");
        file(iio(3, "weather"), "in_temp_input", "22000");
        file(iio(4, "lamp"), "in_illuminance_raw", "7");
        assertEquals(
                List.of(
                        new KernelFiles.Found(thermocouple, "demo-converter"),
                        new KernelFiles.Found(typed, "other-converter"),
                        new KernelFiles.Found(wire, "w1_slave_temp")),
                KernelFiles.found(sys));
    }

    @Test
    void whereThereIsNoKernelOfThisKindNothingIsOffered() {
        assertEquals(List.of(), KernelFiles.found(sys.resolve("nowhere")));
    }

    private Path hwmon(int number, String name) throws IOException {
        return device(sys.resolve("class/hwmon/hwmon" + number), name);
    }

    private Path iio(int number, String name) throws IOException {
        return device(sys.resolve("bus/iio/devices/iio:device" + number), name);
    }

    private static Path device(Path directory, String name) throws IOException {
        Files.createDirectories(directory);
        file(directory, "name", name);
        return directory;
    }

    private static void file(Path directory, String name, String content) throws IOException {
        Files.writeString(directory.resolve(name), content + "\n");
    }

    private static KernelFilesSource source(Path device) {
        return new KernelFilesSource(device, Duration.ofMillis(1), () -> NOW);
    }

    private static String lines(Path device, int count) throws Exception {
        StringBuilder lines = new StringBuilder();
        try (ByteLink link = source(device).open()) {
            for (int i = 0; i < count; i++) lines.append(text(link));
        }
        return lines.toString();
    }

    private static String text(ByteLink link) throws LinkException, InterruptedException {
        while (true) {
            byte[] bytes = link.read().orElseThrow().bytes();
            if (bytes.length > 0) return new String(bytes, StandardCharsets.UTF_8);
        }
    }
}
