package fifthform.monitor.app;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;

/** The real program in a process of its own, with folders of its own. */
final class Program implements AutoCloseable {
    private static final long PATIENCE_SECONDS = 150;

    private final Path home;
    private final Process process;
    private final Path out;
    private final Path err;

    private Program(Path home, Process process, Path out, Path err) {
        this.home = home;
        this.process = process;
        this.out = out;
        this.err = err;
    }

    /** Starts it; data, settings and what it prints go to folders below {@code home}. */
    static Program start(Path home, String... arguments) throws IOException {
        return start(List.of(), home, arguments);
    }

    /** Starts it through another command, for example one that changes the user. */
    static Program start(List<String> before, Path home, String... arguments) throws IOException {
        List<String> command = new ArrayList<>(before);
        command.addAll(List.of(java(), "-cp", System.getProperty("java.class.path"), Main.class.getName()));
        command.addAll(List.of(arguments));
        Path out = Files.createTempFile(home, "program", ".out");
        Path err = Files.createTempFile(home, "program", ".err");
        ProcessBuilder builder =
                new ProcessBuilder(command).redirectOutput(out.toFile()).redirectError(err.toFile());
        Map<String, String> environment = builder.environment();
        environment.remove("DISPLAY");
        environment.put("XDG_DATA_HOME", home.resolve("data").toString());
        environment.put("XDG_CONFIG_HOME", home.resolve("config").toString());
        environment.put("XDG_STATE_HOME", home.resolve("state").toString());
        return new Program(home, builder.start(), out, err);
    }

    /** Runs it to its end; answers with its exit code. */
    static Program ran(Path home, String... arguments) throws Exception {
        Program program = start(home, arguments);
        program.exit();
        return program;
    }

    private static String java() {
        return Path.of(System.getProperty("java.home"), "bin", "java").toString();
    }

    static boolean isInstalled(String command) {
        return Stream.of(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
                .anyMatch(folder -> Files.isExecutable(Path.of(folder, command)));
    }

    long pid() {
        return process.pid();
    }

    boolean isRunning() {
        return process.isAlive();
    }

    /** Waits for its end; answers with its exit code. */
    int exit() throws InterruptedException {
        if (process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) return process.exitValue();
        process.destroyForcibly();
        throw new AssertionError("The program did not end; it said " + out() + err());
    }

    /** As Ctrl-C or a polite kill. */
    void askToEnd() {
        process.destroy();
    }

    /** As kill -9. */
    void kill() throws InterruptedException {
        process.destroyForcibly().waitFor();
    }

    String out() {
        return text(out);
    }

    String err() {
        return text(err);
    }

    /** The session files below its home, oldest first. */
    List<Path> sessions() throws IOException {
        Path folder = home.resolve("data/fifthform/sessions");
        if (!Files.isDirectory(folder)) return List.of();
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(f -> f.toString().endsWith(".jsonl")).sorted().toList();
        }
    }

    /** Waits for what other processes do in their own time. */
    void await(String what, BooleanSupplier condition) throws InterruptedException {
        for (int i = 0; i < 1500; i++) {
            if (condition.getAsBoolean()) return;
            Thread.sleep(20);
        }
        throw new AssertionError(what + " did not come; the program said " + out() + err());
    }

    static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() {
        process.destroyForcibly();
    }
}
