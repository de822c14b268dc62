package fifthform.probe.link;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.probe.LineSettings;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.InstantSource;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Ports that cannot be opened say why; ports that can be opened tell silence from loss. */
@Timeout(60)
class SerialSourceTest {
    private static final LineSettings LINE = new LineSettings(9600);

    @TempDir
    Path folder;

    @Test
    @EnabledOnOs({OS.LINUX, OS.MAC})
    void aPortThatIsNotThere() {
        LinkException e = refusal("ttyNOPE7");
        assertEquals("There is no port ttyNOPE7. No reading can be taken.", e.getMessage());
        assertTrue(e.whatToDo().contains("--probe"), e::whatToDo);
    }

    @Test
    @EnabledOnOs({OS.LINUX, OS.MAC})
    void whatIsNotASerialPort() throws Exception {
        Path file = Files.writeString(folder.resolve("notes.txt"), "31.25\n");
        assertTrue(refusal(file.toString()).getMessage().contains("is not a serial port"));
        assertTrue(refusal(folder.toString()).getMessage().contains("is not a serial port"));
        assertTrue(refusal("/dev/null").getMessage().contains("is not a serial port"));
    }

    @Test
    void theCureForAMissingPermissionIsSpelledOut() {
        LinkException e = PortTrouble.forbidden("ttyUSB0", "dialout");
        assertEquals("You may not open the port ttyUSB0. No reading can be taken.", e.getMessage());
        assertEquals("On Linux: sudo usermod -aG dialout $USER, then log out and in again.", e.whatToDo());
    }

    @Test
    @EnabledOnOs(OS.LINUX)
    void aPortThatAnotherProgramHolds() throws Exception {
        PseudoTerminals.require("socat", "sh");
        try (PseudoTerminals pair = new PseudoTerminals(folder)) {
            pair.connect();
            Process holder = pair.start("sh", "-c", "exec sleep 60 < " + pair.near());
            Path descriptor = Path.of("/proc/" + holder.pid() + "/fd/0");
            Path device = Path.of(pair.near()).toRealPath();
            while (!device.equals(Files.readSymbolicLink(descriptor))) Thread.sleep(20);
            while (!Files.readString(Path.of("/proc/" + holder.pid() + "/comm")).equals("sleep\n")) Thread.sleep(20);
            assertEquals(
                    "The probe on " + pair.near() + " is held by another program (sleep, process " + holder.pid()
                            + "). No reading can be taken.",
                    refusal(pair.near()).getMessage());
        }
    }

    @Test
    void aPortThatWeHoldOurselves() throws Exception {
        PseudoTerminals.require("socat");
        try (PseudoTerminals pair = new PseudoTerminals(folder)) {
            pair.connect();
            try (ByteLink first = source(pair.near()).open()) {
                assertTrue(first.read().isPresent());
                assertTrue(refusal(pair.near()).getMessage().contains("already read by this program"));
            }
            source(pair.near()).open().close();
        }
    }

    @Test
    void silenceIsNotLossAndLossIsNotSilence() throws Exception {
        PseudoTerminals.require("socat");
        try (PseudoTerminals pair = new PseudoTerminals(folder)) {
            pair.connect();
            try (ByteLink link = source(pair.near()).open()) {
                assertTrue(link.read().map(Arrival::isSilence).orElse(false));
                Files.writeString(Path.of(pair.far()), "31.25\n");
                Optional<Arrival> arrival = link.read();
                for (int i = 0; i < 20 && arrival.get().isSilence(); i++) arrival = link.read();
                assertArrayEquals(
                        "31.25\n".getBytes(StandardCharsets.US_ASCII),
                        arrival.get().bytes());
                pair.endAll();
                LinkException e = assertThrows(LinkException.class, () -> {
                    for (int i = 0; i < 50; i++) link.read();
                });
                assertTrue(e.getMessage().contains("has gone"), e::getMessage);
            }
        }
    }

    @Test
    void closingEndsAReadThatWaits() throws Exception {
        PseudoTerminals.require("socat");
        try (PseudoTerminals pair = new PseudoTerminals(folder)) {
            pair.connect();
            ByteLink link = source(pair.near()).open();
            CountDownLatch ended = new CountDownLatch(1);
            Thread reader = new Thread(() -> {
                try {
                    while (true) link.read();
                } catch (LinkException | InterruptedException closed) {
                    ended.countDown();
                }
            });
            reader.start();
            link.close();
            assertTrue(ended.await(10, TimeUnit.SECONDS));
            reader.join(Duration.ofSeconds(10).toMillis());
        }
    }

    private static SerialSource source(String port) {
        return new SerialSource(port, LINE, InstantSource.system());
    }

    private static LinkException refusal(String port) {
        return assertThrows(LinkException.class, () -> source(port).open().close());
    }
}
