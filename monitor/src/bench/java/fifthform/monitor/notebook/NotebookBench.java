package fifthform.monitor.notebook;

import fifthform.monitor.notebook.DemoBatches.Plan;
import fifthform.monitor.settings.Units;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * How long a notebook of thousands of batches takes: to its first rows in a fresh program, to all of them without an index,
 * and for a search and a sorting. {@code -Dbatches=N} says how many, 5,000 otherwise. The batches are invented, half an
 * hour each with a reading every two seconds.
 */
public final class NotebookBench {
    /** The aim, ms. */
    private static final int FIRST_ROWS_MILLIS = 500;

    private static final int FRESH_PROGRAMS = 5;

    /** Recorded anew; the others are copies of these under other names. */
    private static final int RECORDED = 8;

    private NotebookBench() {}

    public static void main(String[] args) throws Exception {
        if (args.length == 1) {
            fresh(new DemoBatches(Path.of(args[0])));
            return;
        }
        int batches = Integer.getInteger("batches", 5000);
        Path data = Files.createTempDirectory("notebook-bench");
        try {
            measure(data, batches);
        } finally {
            try (Stream<Path> files = Files.walk(data)) {
                for (Path file : files.sorted(Comparator.reverseOrder()).toList()) Files.delete(file);
            }
        }
    }

    private static void measure(Path data, int batches) throws Exception {
        DemoBatches demo = new DemoBatches(data);
        fill(demo, batches);
        Notebook notebook = demo.notebook();
        long start = System.nanoTime();
        notebook.open();
        say("rows of " + batches + " batches that were never read, by their names", start);
        start = System.nanoTime();
        notebook.readOn(row -> {}, () -> false);
        say("all of them read, and the index written", start);
        System.out.println("index: " + Files.size(demo.index()) / 1024 + " KiB");
        System.out.println("aim for the first rows with the index: " + FIRST_ROWS_MILLIS + " ms");
        for (int i = 0; i < FRESH_PROGRAMS; i++) new ProcessBuilder(
                        "java", "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-cp", System.getProperty("java.class.path"), NotebookBench.class.getName(), data.toString())
                .inheritIO()
                .start()
                .waitFor();
        NotebookDesk desk = new NotebookDesk(notebook, demo.bin(), Units.CELSIUS, Instant::now);
        desk.open();
        List<BatchRow> rows = notebook.open();
        for (int round = 0; round < 3; round++) {
            start = System.nanoTime();
            desk.ask(RowFilter.USUAL.withSearch(round % 2 == 0 ? "glass 2026" : "steel 2026"));
            int found = desk.shown().size();
            say("search through all, " + found + " found", start);
            start = System.nanoTime();
            List<BatchRow> sorted = new ArrayList<>(rows);
            sorted.sort(RowOrder.PEAK.comparator());
            say("sorted by peak", start);
            start = System.nanoTime();
            Together.sentences(rows);
            say("what they say together", start);
        }
    }

    private static void fill(DemoBatches demo, int batches) throws Exception {
        List<byte[]> recorded = new ArrayList<>();
        for (int i = 0; i < RECORDED; i++) {
            Path file = demo.record(Plan.dark(31.5 + 0.4 * i).in(i % 2 == 0 ? "demo steel" : "demo glass"));
            recorded.add(Files.readAllBytes(file));
        }
        for (int i = RECORDED; i < batches; i++) {
            Instant at = DemoBatches.FIRST.plus(Duration.ofMinutes(i));
            String name = at.toString().replace("T", "-").replaceAll("[:Z]", "") + "-dark.tempering.jsonl";
            Files.write(demo.sessions().resolve(name), recorded.get(i % RECORDED));
        }
    }

    /** What a program does that has just been started, with the settings of {@code monitor/run}. */
    private static void fresh(DemoBatches demo) throws IOException {
        long start = System.nanoTime();
        long busy = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        Notebook notebook = demo.notebook();
        List<BatchRow> rows = RowFilter.USUAL.of(notebook.open(), Units.CELSIUS, Instant.now());
        busy = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - busy;
        say(
                "fresh program: " + rows.size() + " rows from the index (" + notebook.unread() + " unread), "
                        + busy / 1_000_000 + " ms of them at work",
                start);
        start = System.nanoTime();
        notebook.open();
        say("the folder listed again", start);
    }

    private static void say(String what, long startNanos) {
        System.out.printf(Locale.ROOT, "%s: %.0f ms%n", what, (System.nanoTime() - startNanos) / 1e6);
    }
}
