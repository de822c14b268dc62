package fifthform.probe.link;

import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** A pair of connected pseudo-terminals from {@code socat}, and other programs at its far end; all ended on closing. */
public final class PseudoTerminals implements AutoCloseable {
    private final Path near;
    private final Path far;
    private final List<Process> started = new ArrayList<>();

    public PseudoTerminals(Path folder) {
        near = folder.resolve("near");
        far = folder.resolve("far");
    }

    /** Skips the test where a program is missing; fails instead if {@code -Dserial.required=true}. */
    public static void require(String... programs) {
        for (String program : programs) {
            boolean there = Stream.of(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
                    .anyMatch(folder -> Files.isExecutable(Path.of(folder, program)));
            if (!there && Boolean.getBoolean("serial.required"))
                fail(program + " is missing and -Dserial.required=true: install it (Debian: apt install " + program
                        + ")");
            assumeTrue(there, program + " is missing: no serial line can be made for this test");
        }
    }

    /**
     * A Python that has these modules, the system's first; skips or fails as {@link #require} does where there is none.
     *
     * @param debianPackage what brings them
     */
    public static String requirePython(String debianPackage, String... modules) throws InterruptedException {
        require("python3");
        for (String python : new String[] {"/usr/bin/python3", "python3"})
            if (imports(python, String.join(", ", modules))) return python;
        if (Boolean.getBoolean("serial.required"))
            fail("no Python here has " + String.join(", ", modules)
                    + " and -Dserial.required=true: install it (Debian: apt " + "install " + debianPackage + ")");
        assumeTrue(false, "no Python here has " + String.join(", ", modules) + " (Debian: " + debianPackage + ")");
        throw new IllegalStateException("an assumption that is false ends the test");
    }

    private static boolean imports(String python, String modules) throws InterruptedException {
        try {
            Process trial = new ProcessBuilder(python, "-c", "import " + modules)
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
            return trial.waitFor() == 0;
        } catch (IOException e) {
            return false; // there is no such program, so it has no module either
        }
    }

    /** Makes the pair; also again, after {@link #endAll}, under other numbers. */
    public void connect() throws IOException, InterruptedException {
        start("socat", "pty,raw,echo=0,link=" + near, "pty,raw,echo=0,link=" + far);
        for (int i = 0; i < 200 && !(Files.exists(near) && Files.exists(far)); i++) Thread.sleep(25);
        if (!Files.exists(near)) throw new IOException("socat made no pair within 5 s");
    }

    public Process start(String... command) throws IOException {
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        started.add(process);
        return process;
    }

    /** The end that is read. */
    public String near() {
        return near.toString();
    }

    /** The end that the adapter writes to. */
    public String far() {
        return far.toString();
    }

    /** Ends what this object started, last started first, as when the plug is pulled. */
    public void endAll() throws InterruptedException {
        for (int i = started.size() - 1; i >= 0; i--) {
            Process process = started.get(i);
            process.destroyForcibly();
            process.waitFor(10, TimeUnit.SECONDS);
            closeInput(process);
        }
        started.clear();
        deleteLinks();
    }

    /** Else its descriptor stays open until the garbage is collected. */
    private static void closeInput(Process process) {
        try {
            process.getOutputStream().close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A killed socat leaves its links behind, as no real device does. */
    private void deleteLinks() {
        try {
            Files.deleteIfExists(near);
            Files.deleteIfExists(far);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() {
        try {
            endAll();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
