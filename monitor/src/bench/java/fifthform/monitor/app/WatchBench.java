package fifthform.monitor.app;

import fifthform.curves.setup.Beginning;
import fifthform.curves.input.StoreTrouble;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.Approach;
import fifthform.curves.setup.Bowl;
import fifthform.curves.setup.BowlMaterial;
import fifthform.curves.setup.Origin;
import fifthform.curves.setup.Setup;
import fifthform.monitor.catalogue.Recipes;
import fifthform.monitor.intake.SessionClock;
import fifthform.monitor.model.ScreenFeed;
import fifthform.monitor.model.WatchPicture;
import fifthform.monitor.session.SessionLoop;
import fifthform.monitor.settings.Motion;
import fifthform.monitor.settings.Units;
import fifthform.monitor.sound.OwnLine;
import fifthform.monitor.sound.Speaker;
import fifthform.monitor.store.JournalWriter;
import fifthform.monitor.store.SessionHeader;
import fifthform.monitor.view.Theme;
import fifthform.monitor.view.WatchWindow;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.stage.Stage;
import javafx.stage.Window;

/**
 * What the Watch screen costs: 1600 × 900 in software rendering, ten readings a second.
 *
 * <p>Each part runs in a program of its own. {@code -Dbench.seconds=N} says how long the live part goes on, 120 otherwise.
 * A frame counts as presented when the next pulse begins, since that waits for the frame before: up to 17 ms later than
 * the truth. There is no sound device here; what is measured is the moment at which samples are handed to a line of our
 * own, through the program's own speaker and thread.
 */
public final class WatchBench {
    private static final int WIDTH = 1600;
    private static final int HEIGHT = 900;
    private static final int FIRST_PAINTS = 5;
    private static final int DAY_SECONDS = 86_400;
    private static final long WARM_NANOS = TimeUnit.SECONDS.toNanos(20);

    private WatchBench() {}

    public static void main(String[] args) throws Exception {
        String part = args.length == 0 ? "all" : args[0];
        switch (part) {
            case "first" -> first();
            case "live" -> live(Integer.parseInt(args[1]));
            case "day" -> day();
            default -> all();
        }
    }

    private static void all() throws Exception {
        say("load of this computer: %.1f", ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage());
        for (int i = 0; i < FIRST_PAINTS; i++) child("first");
        child("live", String.valueOf(Integer.getInteger("bench.seconds", 120)));
        child("day");
        say("load of this computer: %.1f", ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage());
    }

    private static void child(String... part) throws Exception {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                // As monitor/run has it.
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-Dprism.order=sw",
                "-cp",
                System.getProperty("java.class.path")));
        if (System.getenv("DISPLAY") == null)
            command.addAll(
                    1,
                    List.of(
                            "-Dglass.platform=Monocle",
                            "-Dmonocle.platform=Headless",
                            "-Dheadless.geometry=" + WIDTH + "x" + HEIGHT + "-32"));
        command.add(WatchBench.class.getName());
        command.addAll(List.of(part));
        Path home = Files.createTempDirectory("watch-bench");
        ProcessBuilder builder = new ProcessBuilder(command).inheritIO();
        builder.environment().put("XDG_DATA_HOME", home.resolve("data").toString());
        builder.environment().put("XDG_CONFIG_HOME", home.resolve("config").toString());
        builder.start().waitFor();
        delete(home);
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) Files.delete(file);
        }
    }

    private static void say(String pattern, Object... parts) {
        System.out.println(String.format(Locale.ROOT, pattern, parts));
    }

    /** The real program, from its first line to the frame after the first. */
    private static void first() {
        long begin = System.nanoTime();
        new Thread(() -> Main.main(new String[] {"watch", "--probe", "practice", "--screen", "window"})).start();
        whenShown(stage -> new AnimationTimer() {
            private int pulses;

            @Override
            public void handle(long now) {
                if (++pulses < 2) return;
                say(
                        "first paint: %.2f s after main began; the whole process used %.2f s of the processor's time",
                        (System.nanoTime() - begin) / 1e9,
                        cpuNanos() / 1e9);
                System.exit(0);
            }
        }.start());
    }

    private static long cpuNanos() {
        return ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
                .getProcessCpuTime();
    }

    private interface Shown {
        void take(Stage stage);
    }

    /** Looks again and again for the first window, from another thread: the toolkit must not be started for it. */
    private static void whenShown(Shown then) {
        Thread look = new Thread(() -> {
            while (true) {
                try {
                    Thread.sleep(2);
                    Platform.runLater(() -> {
                        if (Window.getWindows().isEmpty() || Thread.currentThread().isInterrupted()) return;
                        if (Window.getWindows().get(0) instanceof Stage stage && stage.isShowing()) {
                            if (stage.getProperties().putIfAbsent("bench", "seen") == null) then.take(stage);
                        }
                    });
                    if (!Window.getWindows().isEmpty()
                            && Window.getWindows().get(0).getProperties().containsKey("bench")) return;
                } catch (IllegalStateException notYet) {
                    // The toolkit is not there yet.
                } catch (InterruptedException end) {
                    return;
                }
            }
        });
        look.setDaemon(true);
        look.start();
    }

    private static void live(int seconds) throws Exception {
        Live live = new Live();
        BenchProbe probe = new BenchProbe(BenchProbe.Pace.LIFE, seconds * BenchProbe.HERTZ, live::arrived);
        Speaker speaker = OwnLine.speaker(live::heard);
        whenShown(live::follow);
        watch(probe, speaker, live);
        System.exit(0);
    }

    /** Everything between the wire and the frame, as it happens. */
    private static final class Live {
        private final TreeMap<Instant, Long> waiting = new TreeMap<>();
        private final List<Double> toFrame = new ArrayList<>();
        private final List<Double> betweenFrames = new ArrayList<>();
        private final ConcurrentLinkedQueue<Double> toSound = new ConcurrentLinkedQueue<>();
        private final List<Double> drawing = new ArrayList<>();
        private volatile long raised;
        private volatile boolean warm;
        private Optional<Instant> pending = Optional.empty();
        private Optional<Instant> armed = Optional.empty();
        private long lastPulse;
        private long cpuFrom;
        private long from;
        private Map<String, Long> threads = Map.of();

        synchronized void arrived(Instant at, long nanos) {
            waiting.put(at, nanos);
        }

        void raise() {
            raised = System.nanoTime();
        }

        void heard(long nanos) {
            long since = raised;
            raised = 0;
            if (since > 0 && warm) toSound.add((nanos - since) / 1e6);
        }

        void shown(WatchPicture picture) {
            pending = Optional.of(picture.trace().now());
        }

        void follow(Stage stage) {
            stage.setX(0);
            stage.setY(0);
            stage.setWidth(WIDTH);
            stage.setHeight(HEIGHT);
            new AnimationTimer() {
                @Override
                public void handle(long pulse) {
                    long now = System.nanoTime();
                    armed.ifPresent(at -> presented(at, now));
                    armed = pending;
                    pending = Optional.empty();
                    if (warm && lastPulse > 0) betweenFrames.add((now - lastPulse) / 1e6);
                    lastPulse = now;
                }
            }.start();
            Thread warming = new Thread(() -> {
                try {
                    TimeUnit.NANOSECONDS.sleep(WARM_NANOS);
                } catch (InterruptedException end) {
                    return;
                }
                threads = byThread();
                cpuFrom = cpuNanos();
                from = System.nanoTime();
                warm = true;
            });
            warming.setDaemon(true);
            warming.start();
        }

        private synchronized void presented(Instant at, long now) {
            Map<Instant, Long> there = waiting.headMap(at, true);
            if (warm) there.values().forEach(nanos -> toFrame.add((now - nanos) / 1e6));
            there.clear();
        }

        void report() {
            if (!warm) return;
            double wall = System.nanoTime() - from;
            say("live for %.0f s after a warm-up of %.0f s:", wall / 1e9, WARM_NANOS / 1e9);
            say("  CPU %.1f %% of one core (goal 20)", 100 * (cpuNanos() - cpuFrom) / wall);
            Map<String, Long> after = byThread();
            after.forEach((name, nanos) -> {
                double share = 100 * (nanos - threads.getOrDefault(name, 0L)) / wall;
                if (share >= 0.1) say("    %s %.1f %%", name, share);
            });
            say("  reading to presented frame %s (goal p95 100)", quantiles(toFrame));
            say("  frame interval %s (goal p99 60)", quantiles(betweenFrames));
            say("  alarm raised to samples handed over %s (goal p95 150)", quantiles(new ArrayList<>(toSound)));
        }

        private static Map<String, Long> byThread() {
            var threads = ManagementFactory.getThreadMXBean();
            Map<String, Long> all = new TreeMap<>();
            for (long id : threads.getAllThreadIds()) {
                var info = threads.getThreadInfo(id);
                if (info != null) all.merge(info.getThreadName(), threads.getThreadCpuTime(id), Long::sum);
            }
            return all;
        }

        private static String quantiles(List<Double> millis) {
            if (millis.isEmpty()) return "none";
            millis.sort(Comparator.naturalOrder());
            int n = millis.size();
            return String.format(
                    Locale.ROOT,
                    "p50 %.1f, p95 %.1f, p99 %.1f, worst %.1f ms of %d",
                    millis.get(n / 2),
                    millis.get(n * 95 / 100),
                    millis.get(n * 99 / 100),
                    millis.get(n - 1),
                    n);
        }
    }

    private static void day() throws Exception {
        BenchProbe probe = new BenchProbe(BenchProbe.Pace.AT_ONCE, DAY_SECONDS * BenchProbe.HERTZ, (at, nanos) -> {});
        long begin = System.nanoTime();
        watch(probe, OwnLine.speaker(nanos -> {}), new Live());
        say(
                "24 h of readings, %d of them, in %.0f s",
                DAY_SECONDS * BenchProbe.HERTZ, (System.nanoTime() - begin) / 1e9);
        System.exit(0);
    }

    /** The session as LiveBatch puts it together, behind the real window. */
    private static void watch(BenchProbe probe, Speaker speaker, Live live) throws Exception {
        Path folder = Files.createTempDirectory("watch-bench");
        Recipe recipe = Recipes.load(folder).find("dark").fold(known -> known.recipe(), problems -> {
            throw new IllegalStateException(problems.toString());
        });
        Setup setup = new Setup(
                recipe,
                new Bowl("demo", BowlMaterial.STEEL, OptionalDouble.of(1000), Optional.empty()),
                probe.probes(),
                Setup.USUAL_REACTION,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Origin.SIMULATED,
                Approach.TOUCHES_WHERE_UNSURE,
                OptionalDouble.empty(), Beginning.WHOLE, Optional.empty());
        Instant start = Instant.now().truncatedTo(ChronoUnit.MICROS);
        SessionClock clock = new SessionClock(start, 1, System::nanoTime);
        Watching watching = new Watching(setup, clock, probe, 0, Units.CELSIUS, Choices.USUAL, ZoneOffset.UTC, speaker);
        JournalWriter journal = JournalWriter.create(
                folder.resolve("bench.tempering.jsonl"),
                new SessionHeader("bench", "bench", "bench", start, ZoneOffset.UTC, setup),
                InstantSource.system(),
                watching::storeTrouble);
        SessionLoop loop = watching.loop(start, journal);
        Thread alarms = new Thread(() -> alarms(watching, live), "bench");
        alarms.setDaemon(true);
        alarms.start();
        Object[] held = new Object[1];
        Showing window = (wished, feed, elapsed) -> {
            ScreenFeed followed = new ScreenFeed(
                    () -> {
                        WatchPicture picture = feed.picture().get();
                        live.shown(picture);
                        return picture;
                    },
                    feed.publishedNanos(),
                    feed.nanoClock(),
                    feed.letters(),
                    feed.assigned(),
                    feed.keys(),
                    feed.closeRequested(),
                    () -> {
                        if (feed.finished().getAsBoolean() && held[0] == null) {
                            held[0] = feed;
                            live.report();
                            heap();
                        }
                        return feed.finished().getAsBoolean();
                    },
                    feed.silent());
            WatchWindow.open(followed, Theme.BRIGHT, Motion.BLINKING, WatchWindow.Windows.ONE).ifPresent(System.out::println);
        };
        watching.run(loop, journal, window, Optional.empty(), List.of(recipe), tap -> tap);
        delete(folder);
    }

    /** While everything is still there: the session, the window, the trace. */
    private static void heap() {
        for (int i = 0; i < 3; i++) System.gc();
        say(
                "live heap after a full collection: %.1f MiB (goal 64)",
                ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed() / 1048576.0);
    }

    /** Not saved, saved again: an alarm every eight seconds. */
    private static void alarms(Watching watching, Live live) {
        try {
            while (true) {
                TimeUnit.SECONDS.sleep(8);
                live.raise();
                watching.storeTrouble(StoreTrouble.What.CANNOT_WRITE);
                TimeUnit.MILLISECONDS.sleep(500);
                watching.storeTrouble(StoreTrouble.What.WRITES_AGAIN);
            }
        } catch (InterruptedException end) {
            Thread.currentThread().interrupt();
        }
    }
}
