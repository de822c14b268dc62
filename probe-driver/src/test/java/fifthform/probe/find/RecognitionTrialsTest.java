package fifthform.probe.find;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.probe.LineSettings;
import fifthform.probe.ProbeProtocol;
import fifthform.probe.ProbeProtocol.Manner;
import fifthform.probe.find.SimulatedWire.AfterBadStop;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.ServiceLoader;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * Every protocol that the service loader finds, at every speed, with noise, on a wire that garbles as a real one does.
 * {@code -Drecognition.trials=N} makes N trials for each protocol, speed and noise.
 */
class RecognitionTrialsTest {
    private static final int TRIALS = Integer.getInteger("recognition.trials", 6);
    /** Of each sampled bit; a thousandth spoils a line in ten. */
    private static final double[] NOISES = {0, 0.0002, 0.001};

    private static final double[] INTERVALS_SECONDS = {0.1, 0.25, 0.5, 1, 2};
    /** Files of the kernel: they listen as rivals, but no serial line ever speaks like them. */
    private static final Set<String> NEVER_ON_A_WIRE = Set.of("kernel-files");

    private static final List<Integer> BAUDS = List.of(9600, 115_200, 57_600, 38_400, 19_200, 4800, 2400, 1200);

    private final List<ProbeProtocol> all = ServiceLoader.load(ProbeProtocol.class).stream()
            .map(ServiceLoader.Provider::get)
            .toList();
    private final Map<String, Tally> tallies = new TreeMap<>();
    private final List<String> misses = new ArrayList<>();

    private static final class Tally {
        int trials;
        int right;
        int undecided;
        int wrong;
        int late;
        double slowest;
    }

    @Test
    void everyAdapterIsRecognisedOrSaidToBeUnknown() throws Exception {
        for (ProbeProtocol protocol : all) {
            if (protocol.manner() == Manner.SPEAKS && !NEVER_ON_A_WIRE.contains(protocol.id())) hear(protocol);
        }
        System.out.println(
                "recognition              trials   right  undecided  wrong  late  slowest share of the time promised");
        tallies.forEach((name, t) -> System.out.printf(
                Locale.ROOT,
                "%-24s %6d  %6d  %9d  %5d  %4d  %5.2f%n",
                name,
                t.trials,
                t.right,
                t.undecided,
                t.wrong,
                t.late,
                t.slowest));
        misses.stream().limit(40).forEach(System.out::println);
        int trials = tallies.values().stream().mapToInt(t -> t.trials).sum();
        int right = tallies.values().stream().mapToInt(t -> t.right).sum();
        int undecided = tallies.values().stream().mapToInt(t -> t.undecided).sum();
        assertEquals(0, tallies.values().stream().mapToInt(t -> t.wrong).sum(), "wrong");
        assertEquals(0, tallies.values().stream().mapToInt(t -> t.late).sum(), "late");
        assertTrue(right >= 0.99 * trials, right + " right of " + trials);
        assertTrue(undecided <= 0.05 * trials, undecided + " undecided of " + trials);
    }

    private void hear(ProbeProtocol protocol) throws Exception {
        List<Speaker> speakers = Speaker.of(protocol);
        assertTrue(!speakers.isEmpty(), () -> "no frame of the tape of " + protocol.id() + " is a temperature");
        List<Speaker> clear = speakers.stream().filter(s -> !s.isAmbiguous(all)).toList();
        speakers.stream()
                .filter(s -> s.isAmbiguous(all))
                .forEach(s -> System.out.println("read in two ways by its bytes alone: " + s.name()));
        for (Speaker speaker :
                speakers.stream().filter(s -> !clear.contains(s)).limit(6).toList()) ambiguous(speaker);
        long seed = protocol.id().hashCode();
        for (LineSettings line : lines(protocol))
            for (double noise : NOISES)
                for (int i = 0; i < TRIALS && !clear.isEmpty(); i++) {
                    SplittableRandom random = new SplittableRandom(seed++);
                    trial(clear.get(random.nextInt(clear.size())), line, noise, random);
                }
    }

    private static Set<LineSettings> lines(ProbeProtocol protocol) {
        Set<LineSettings> lines = new LinkedHashSet<>(protocol.lines());
        BAUDS.forEach(baud -> lines.add(new LineSettings(baud)));
        return lines;
    }

    private void ambiguous(Speaker speaker) throws Exception {
        SplittableRandom random = new SplittableRandom(7);
        SimulatedWire wire = wire(speaker, 0.25, speaker.protocol().lines().get(0), 0, random);
        Recognition recognition = new Recognizer(wire, all, Asking.NEVER).recognize();
        assertTrue(
                recognition.decision().isEmpty(), () -> speaker.name() + " has two meanings: " + recognition.reason());
        assertTrue(recognition.reason().contains("different temperatures"), recognition::reason);
    }

    private void trial(Speaker speaker, LineSettings line, double noise, SplittableRandom random) throws Exception {
        double interval = INTERVALS_SECONDS[random.nextInt(INTERVALS_SECONDS.length)];
        SimulatedWire wire = wire(speaker, interval, line, noise, random);
        Recognition recognition = new Recognizer(wire, all, Asking.NEVER).recognize();
        Tally tally = tallies.computeIfAbsent(
                String.format(Locale.ROOT, "%-16s %.4f", speaker.protocol().id(), noise), k -> new Tally());
        tally.trials++;
        double longestFrame =
                speaker.frames().stream().mapToInt(f -> f.length).max().orElse(0) * 12.0 / line.baud();
        double promised = 5 + 6 * Math.max(interval, longestFrame);
        double took = recognition.took().toNanos() / 1e9;
        tally.slowest = Math.max(tally.slowest, took / promised);
        String what = speaker.name() + " at " + line + " each " + interval + " s, noise " + noise + ": ";
        if (took > promised + 0.25) {
            tally.late++;
            misses.add(what + "took " + took);
        }
        if (recognition.decision().isEmpty()) {
            tally.undecided++;
            assertTrue(recognition.reason().length() > 30, recognition::reason);
            misses.add(what + recognition.reason());
        } else if (recognition.decision().get().spoken().line().baud() == line.baud()
                && speaker.isReadRightBy(recognition.decision().get())) {
            tally.right++;
        } else {
            tally.wrong++;
            misses.add(what + "WRONG " + recognition.reason());
        }
    }

    private static SimulatedWire wire(
            Speaker speaker, double interval, LineSettings line, double noise, SplittableRandom random) {
        AfterBadStop style = AfterBadStop.values()[random.nextInt(2)];
        int first = random.nextInt(speaker.frames().size());
        return new SimulatedWire(speaker.from(first), interval, line, noise, style, random);
    }
}
