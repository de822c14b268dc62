package fifthform.simulator.bench;

import fifthform.curves.review.Cause;
import fifthform.simulator.bench.CauseTrial.Fault;
import fifthform.simulator.scenario.Scenario;
import fifthform.simulator.scenario.Scenarios;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.LongStream;

/**
 * Whether <i>what went wrong first</i> is right: {@code java … CauseBench BATCHES SEED}. Sound home batches, two of three in the hands of somebody who
 * follows the cues,
 * batches with one fault put in, and the practice scenarios.
 */
public final class CauseBench {
    private static final int USUAL_BATCHES = 300;

    private CauseBench() {}

    public static void main(String[] arguments) {
        int batches = arguments.length > 0 ? Integer.parseInt(arguments[0]) : USUAL_BATCHES;
        long seed = arguments.length > 1 ? Long.parseLong(arguments[1]) : 51;
        Fleet fleet = Fleet.builtIn(Fleet.HOME).withSeed(seed);
        sound(fleet, batches);
        for (Fault fault : Fault.values()) faulty(fleet, batches / 6, fault);
        new TreeSet<>(Scenarios.builtIn().ids()).forEach(CauseBench::scenario);
    }

    private static void sound(Fleet fleet, int batches) {
        List<CauseTrial> sound = LongStream.range(0, batches)
                .parallel()
                .mapToObj(n -> n % 3 == 0 ? CauseTrial.of(fleet.draw(n), n) : CauseTrial.followed(fleet, n))
                .filter(CauseTrial::isSound)
                .toList();
        long silent = sound.stream().filter(t -> t.faults().isEmpty()).count();
        Map<Cause.Kind, Long> claimed = sound.stream()
                .flatMap(t -> t.faults().stream().distinct())
                .collect(Collectors.groupingBy(k -> k, TreeMap::new, Collectors.counting()));
        System.out.printf(
                Locale.ROOT,
                "%d drawn, %d sound: nothing claimed in %d (%.1f %%), else %s%n",
                batches,
                sound.size(),
                silent,
                100.0 * silent / Math.max(1, sound.size()),
                claimed);
    }

    private static void faulty(Fleet fleet, int batches, Fault fault) {
        List<CauseTrial> shown = LongStream.range(1000, 1000 + batches)
                .parallel()
                .mapToObj(n -> CauseTrial.of(fleet, n, fault))
                .filter(t -> fault.shows(t) && (fault == Fault.MILD_MELT || t.isMelted()))
                .toList();
        long right = shown.stream()
                .filter(t -> t.causes().first().filter(c -> fault.right().contains(c.kind())).isPresent())
                .count();
        Map<String, Long> wrong = shown.stream()
                .filter(t -> t.causes().first().filter(c -> fault.right().contains(c.kind())).isEmpty())
                .collect(Collectors.groupingBy(
                        t -> t.causes().first().map(c -> c.kind().word()).orElse("nothing"),
                        TreeMap::new,
                        Collectors.counting()));
        System.out.printf(
                Locale.ROOT,
                "%s: %d drawn, shows in %d, right first in %d (%.0f %%), else %s%n",
                fault,
                batches,
                shown.size(),
                right,
                100.0 * right / Math.max(1, shown.size()),
                wrong);
    }

    private static void scenario(String id) {
        Scenario scenario = BatchRunTest.scenario(id);
        CauseTrial trial = CauseTrial.of(scenario, scenario.seed());
        System.out.printf(Locale.ROOT, "%s (%.1f, %.1f): ", id, trial.coolestCelsius(), trial.hottestCelsius());
        System.out.println(trial.causes().all().stream()
                        .map(c -> c.kind().word() + (c.weight() == Cause.Weight.REMARK ? "(remark)" : "")
                                + c.off().map(o -> " by " + o.toSeconds() + "s").orElse("")
                                + c.lasted().map(o -> " for " + o.toSeconds() + "s").orElse(""))
                        .toList());
    }
}
