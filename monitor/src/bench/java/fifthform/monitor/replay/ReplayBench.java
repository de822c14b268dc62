package fifthform.monitor.replay;

import fifthform.curves.engine.State;
import fifthform.curves.input.Sample;
import fifthform.monitor.settings.Units;
import fifthform.monitor.store.JournalReader;
import fifthform.monitor.store.Session;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.zip.CRC32C;

/**
 * What a day at ten readings a second costs on the Replay screen: 864,000 readings, made of a demo batch again and again,
 * with what was told and with check lines every half second.
 *
 * <p>Opening is measured in a program of its own each time, nothing compiled yet; the file is in the system's cache. Aims:
 * opened within 1.5 s with trace and told-then, a moment found within 50 ms in 95 of 100 cases.
 */
public final class ReplayBench {
    private static final int HERTZ = 10;
    private static final int SECONDS = 86_400;
    private static final int COLD_RUNS = 7;
    private static final int SEEKS = 500;
    private static final int COLUMNS = 1600;

    private ReplayBench() {}

    public static void main(String[] arguments) throws Exception {
        if (arguments.length == 2 && arguments[0].equals("open")) {
            open(Path.of(arguments[1]));
            return;
        }
        Path folder = Files.createTempDirectory("replay-bench");
        Path day = folder.resolve("day.tempering.jsonl");
        write(Path.of("src/test/resources/tapes/demo-own-way.tempering.jsonl"), day);
        say("a day at %d Hz: %d readings, %.0f MB", HERTZ, HERTZ * SECONDS, Files.size(day) / 1e6);
        cold(day);
        warm(day);
        Files.delete(day);
        Files.delete(folder);
    }

    private static void say(String pattern, Object... parts) {
        System.out.println(String.format(Locale.ROOT, pattern, parts));
    }

    /** In a program of its own: from the file to the first picture. */
    private static void open(Path day) {
        long begin = System.nanoTime();
        Recording recording = Recording.read(day).fold(r -> r, problems -> {
            throw new IllegalStateException(problems.toString());
        });
        long read = System.nanoTime();
        ReplayDesk desk = desk(recording);
        ReplayPicture picture = desk.picture(COLUMNS);
        long end = System.nanoTime();
        long cpu = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        say(
                "%d %d %d %d",
                (read - begin) / 1000,
                (end - read) / 1000,
                cpu / 1000,
                picture.chart().measured().seconds().length);
    }

    private static ReplayDesk desk(Recording recording) {
        Units units = Units.CELSIUS;
        return new ReplayDesk(recording, units, new KnownWords(units), WhatIfs.NONE, InstantSource.system());
    }

    private static void cold(Path day) throws IOException, InterruptedException {
        double[] read = new double[COLD_RUNS];
        double[] all = new double[COLD_RUNS];
        double[] cpu = new double[COLD_RUNS];
        for (int i = 0; i < COLD_RUNS; i++) {
            Process process = new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                            "-cp",
                            System.getProperty("java.class.path"),
                            ReplayBench.class.getName(),
                            "open",
                            day.toString())
                    .redirectError(ProcessBuilder.Redirect.INHERIT)
                    .start();
            String[] said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
                    .strip()
                    .split(" ");
            process.waitFor();
            read[i] = Long.parseLong(said[0]) / 1e6;
            all[i] = read[i] + Long.parseLong(said[1]) / 1e6;
            cpu[i] = Long.parseLong(said[2]) / 1e6;
        }
        Arrays.sort(read);
        Arrays.sort(all);
        Arrays.sort(cpu);
        say(
                "opened cold, %d runs: file read %.2f s, with the first picture %.2f s in the middle, %.2f s at worst",
                COLD_RUNS, read[COLD_RUNS / 2], all[COLD_RUNS / 2], all[COLD_RUNS - 1]);
        say("of that on the processor, the program's own thread: %.2f s in the middle", cpu[COLD_RUNS / 2]);
        say("load of this computer: %.1f", ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage());
    }

    private static void warm(Path day) throws IOException {
        Recording recording = Recording.read(day).fold(r -> r, problems -> {
            throw new IllegalStateException(problems.toString());
        });
        double[] columns = new double[50];
        for (int i = 0; i < columns.length; i++) {
            long begin = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            recording.bowl().curve(0, recording.endNanos(), COLUMNS);
            columns[i] = (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - begin) / 1e6;
        }
        Arrays.sort(columns);
        say("the whole day to %d columns, on the processor: %.1f ms in the middle", COLUMNS, columns[columns.length / 2]);
        SecondPass pass = new SecondPass(recording, new KnownWords(Units.CELSIUS), WhatIfs.NONE);
        long begin = System.nanoTime();
        pass.run();
        double busy = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() / 1e9;
        say(
                "second pass, behind the scenes: %.1f s; on the processor, opening included: %.1f s",
                (System.nanoTime() - begin) / 1e9,
                busy);
        Random random = new Random(7);
        double[] seeks = new double[SEEKS];
        double[] cpu = new double[SEEKS];
        Seeker seeker = new Seeker(recording, pass);
        for (int i = 0; i < SEEKS; i++) {
            long nanos = Math.floorMod(random.nextLong(), recording.endNanos());
            long from = System.nanoTime();
            long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            Optional<State> state = seeker.at(nanos);
            seeks[i] = (System.nanoTime() - from) / 1e6;
            cpu[i] = (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - before) / 1e6;
            if (state.isEmpty()) throw new IllegalStateException("nothing at " + nanos);
        }
        Arrays.sort(seeks);
        Arrays.sort(cpu);
        say("a moment anywhere, on the processor: %.1f ms in 95 of 100", cpu[SEEKS * 95 / 100]);
        say(
                "a moment anywhere: %.1f ms in the middle, %.1f ms in 95 of 100, %.1f ms at worst",
                seeks[SEEKS / 2], seeks[SEEKS * 95 / 100], seeks[SEEKS - 1]);
        System.gc();
        Runtime runtime = Runtime.getRuntime();
        say("heap in use with all kept: %.0f MiB", (runtime.totalMemory() - runtime.freeMemory()) / 1048576.0);
        if (pass.whole().isEmpty()) throw new IllegalStateException("not through");
    }

    /** The demo batch again and again, ten times a second, each with what was told. */
    private static void write(Path tape, Path day) throws IOException {
        Session session = JournalReader.read(tape).fold(s -> s, problems -> {
            throw new IllegalStateException(problems.toString());
        });
        List<double[]> points = new ArrayList<>();
        session.inputs()
                .map(r -> r.input())
                .filter(i -> i instanceof Sample s
                        && s.probe().equals(session.header().setup().bowlProbe().id()))
                .map(i -> (Sample) i)
                .forEach(s -> points.add(new double[] {
                    Duration.between(session.header().start(), s.at()).toNanos() / 1e9, s.tipCelsius()
                }));
        List<String> told = session.told().map(t -> t.json()).toList();
        double length = points.get(points.size() - 1)[0];
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(day), 1 << 20)) {
            Lines lines = new Lines(out);
            lines.add(Files.readAllLines(tape).get(0));
            int point = 0;
            int event = 0;
            double offset = 0;
            for (long i = 0; i < (long) HERTZ * SECONDS; i++) {
                double t = i / (double) HERTZ + 0.0123;
                if (t - offset > length) {
                    offset = t;
                    point = 0;
                    event = 0;
                }
                while (point + 2 < points.size() && points.get(point + 1)[0] < t - offset) point++;
                double[] a = points.get(point);
                double[] b = points.get(point + 1);
                double share = Math.max(0, Math.min(1, (t - offset - a[0]) / (b[0] - a[0])));
                double celsius = a[1] + share * (b[1] - a[1]);
                lines.add(String.format(
                        Locale.ROOT,
                        "{\"k\":\"r\",\"s\":%d,\"t\":%.4f,\"p\":\"bowl\",\"c\":%.2f,\"u\":0.002887}",
                        i + 1,
                        t,
                        celsius));
                while (event < told.size() && time(told.get(event)) <= t - offset)
                    lines.add(moved(told.get(event++), i + 1, t));
                if (i % (HERTZ / 2) == 0) lines.check();
            }
        }
    }

    private static double time(String line) {
        int at = line.indexOf("\"t\":") + 4;
        return Double.parseDouble(line.substring(at, line.indexOf(',', at)));
    }

    private static String moved(String line, long sequence, double t) {
        return line.replaceFirst("\"s\":\\d+", "\"s\":" + sequence)
                .replaceFirst("\"t\":[0-9.]+", String.format(Locale.ROOT, "\"t\":%.4f", t));
    }

    /** Lines with their checks. */
    private static final class Lines {
        private final OutputStream out;
        private final CRC32C crc = new CRC32C();
        private int count;

        Lines(OutputStream out) {
            this.out = out;
        }

        void add(String line) throws IOException {
            byte[] bytes = (line + "\n").getBytes(StandardCharsets.UTF_8);
            crc.update(bytes);
            count++;
            out.write(bytes);
        }

        void check() throws IOException {
            String line = String.format(
                    Locale.ROOT,
                    "{\"k\":\"c\",\"crc\":\"%08x\",\"lines\":%d,\"wall\":\"2026-02-03T14:15:16.660113123Z\"}%n",
                    crc.getValue(),
                    count);
            out.write(line.getBytes(StandardCharsets.UTF_8));
            crc.reset();
            count = 0;
        }
    }
}
