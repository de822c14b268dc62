package fifthform.monitor.app;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Two connected pseudo-terminals and, at the far one, a shell that writes as an adapter would. */
final class SerialPair implements AutoCloseable {
    /** Writes FROM to TO as hundredths of a degree, a line each PAUSE, and after each line tells which it was. */
    private static final String ADAPTER = """
            exec 3>"$1"
            i=$2
            while [ "$i" -le "$3" ]; do
              printf '%d.%02d\\r\\n' $((i / 100)) $((i % 100)) >&3
              echo "$i" >>"$5"
              i=$((i + 1))
              sleep "$4"
            done
            sleep 60
            """;

    private final Path near;
    private final Path far;
    private final Path script;
    private final Path sent;
    private final List<Process> started = new ArrayList<>();

    SerialPair(Path folder) throws IOException {
        near = folder.resolve("near");
        far = folder.resolve("far");
        sent = folder.resolve("sent");
        script = Files.writeString(folder.resolve("adapter.sh"), ADAPTER);
    }

    /** Skips the test where there is no socat; fails instead if {@code -Dserial.required=true}. */
    static void require() {
        boolean there = Program.isInstalled("socat");
        if (!there && Boolean.getBoolean("serial.required"))
            fail("socat is missing and -Dserial.required=true: install it (Debian: apt install socat)");
        assumeTrue(there, "socat is missing: no serial line can be made for this test");
    }

    /** Plugs the pair in; also again, after {@link #unplug}, under other numbers. */
    void plugIn() throws IOException, InterruptedException {
        start("socat", "pty,raw,echo=0,link=" + near, "pty,raw,echo=0,link=" + far);
        for (int i = 0; i < 200 && !(Files.exists(near) && Files.exists(far)); i++) Thread.sleep(25);
        assertTrue(Files.exists(near), "socat made no pair within 5 s");
    }

    /** The adapter begins to send. */
    void send(int fromHundredths, int toHundredths, String pauseSeconds) throws IOException {
        start(
                "sh",
                script.toString(),
                far.toString(),
                Integer.toString(fromHundredths),
                Integer.toString(toHundredths),
                pauseSeconds,
                sent.toString());
    }

    /** How many lines have been sent by now. */
    int sent() {
        try {
            return Files.exists(sent) ? Files.readAllLines(sent).size() : 0;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The port that is watched. */
    String port() {
        return near.toString();
    }

    /** The port that another adapter than the shell may speak through. */
    String farPort() {
        return far.toString();
    }

    /** Whether this process has the port open. */
    boolean isHeldBy(long pid) {
        try (Stream<Path> open = Files.list(Path.of("/proc", Long.toString(pid), "fd"))) {
            Path device = near.toRealPath();
            return open.anyMatch(link -> leadsTo(link, device));
        } catch (IOException notNow) {
            return false;
        }
    }

    private static boolean leadsTo(Path link, Path device) {
        try {
            return Files.readSymbolicLink(link).equals(device);
        } catch (IOException closedMeanwhile) {
            return false;
        }
    }

    private void start(String... command) throws IOException {
        started.add(new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start());
    }

    /** Ends the adapter and the line, as when the plug is pulled. */
    void unplug() throws InterruptedException, IOException {
        for (int i = started.size() - 1; i >= 0; i--) {
            Process process = started.get(i);
            process.descendants().forEach(ProcessHandle::destroyForcibly);
            process.destroyForcibly().waitFor();
        }
        started.clear();
        // A killed socat leaves its links behind, as no real device does.
        Files.deleteIfExists(near);
        Files.deleteIfExists(far);
    }

    @Override
    public void close() throws IOException {
        try {
            unplug();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
