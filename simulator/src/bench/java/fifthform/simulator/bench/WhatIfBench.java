package fifthform.simulator.bench;

import fifthform.simulator.bench.WhatIfTrial.Compared;
import fifthform.simulator.bench.WhatIfTrial.Held;
import fifthform.simulator.bench.WhatIfTrial.Told;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.LongStream;

/**
 * How often a what-if's band holds what really comes of the changed act: {@code java … WhatIfBench FLEET BATCHES SEED}, and
 * a fourth word for every answer by itself; {@code -Dwhatif.told=MUCH} for one of the two set-ups only. The
 * same kitchen and hands are gone through again in the simulator with the change.
 */
public final class WhatIfBench {
    private static final int USUAL_BATCHES = 400;

    private WhatIfBench() {}

    public static void main(String[] arguments) {
        String name = arguments.length > 0 ? arguments[0] : Fleet.HOME;
        int batches = arguments.length > 1 ? Integer.parseInt(arguments[1]) : USUAL_BATCHES;
        long seed = arguments.length > 2 ? Long.parseLong(arguments[2]) : 41;
        boolean every = arguments.length > 3;
        Fleet fleet = Fleet.builtIn(name).withSeed(seed);
        String only = System.getProperty("whatif.told", "");
        for (Told told : Told.values()) {
            if (!only.isEmpty() && !told.name().equals(only)) continue;
            List<WhatIfTrial> trials = LongStream.range(0, batches)
                    .parallel()
                    .mapToObj(n -> WhatIfTrial.of(fleet, n, told))
                    .toList();
            List<Held> held = trials.stream().flatMap(t -> t.held().stream()).toList();
            System.out.printf(
                    Locale.ROOT,
                    "%s, %s told: %d batches, %d with an answer, %d answers, %d lifts not seen%n",
                    name,
                    told,
                    batches,
                    held.stream().map(Held::number).distinct().count(),
                    held.size(),
                    trials.stream().mapToInt(WhatIfTrial::missed).sum());
            Map<String, Long> no = trials.stream()
                    .flatMap(t -> t.refused().stream())
                    .collect(Collectors.groupingBy(
                            r -> r.kind() + " " + r.refused().why(), TreeMap::new, Collectors.counting()));
            System.out.println("  refused: " + no);
            table("all", held);
            Map<String, List<Held>> kinds = held.stream()
                    .collect(Collectors.groupingBy(
                            h -> h.kind() + " " + h.answer().change(), TreeMap::new, Collectors.toList()));
            Map<String, List<Held>> by = new TreeMap<>();
            kinds.forEach((k, v) -> by.merge(k.replaceAll("lift=\\d+, ", ""), v, WhatIfBench::both));
            by.forEach(WhatIfBench::table);
            table("told by key", held.stream().filter(h -> told(h)).toList());
            table("seen only", held.stream().filter(h -> !told(h)).toList());
            if (every) held.forEach(WhatIfBench::print);
        }
    }

    private static boolean told(Held held) {
        return held.answer().lift().evidence() == fifthform.curves.phase.Evidence.TOLD;
    }

    private static List<Held> both(List<Held> a, List<Held> b) {
        return java.util.stream.Stream.concat(a.stream(), b.stream()).toList();
    }

    private static void print(Held h) {
        System.out.printf(
                Locale.ROOT,
                "  #%d %s stay %ds %s span %ds off %.2f of %.2f, %s fit %s%n",
                h.number(),
                h.answer().change(),
                Duration.between(h.answer().lift().enteredAt(), h.answer().lift().at()).toSeconds(),
                h.answer().end(),
                Duration.between(h.answer().lift().at(), h.answer().until()).toSeconds(),
                h.turnOffKelvin(),
                h.turnHalfWidthKelvin(),
                h.moments().stream()
                        .map(c -> String.format(
                                Locale.ROOT,
                                "%ds %.2f/%.2f",
                                c.afterSeconds(),
                                c.celsius() - c.said().celsius(),
                                c.said().upperCelsius() - c.said().celsius()))
                        .toList(),
                h.answer().fit());
    }

    private static void table(String name, List<Held> held) {
        if (held.isEmpty()) return;
        double turn = held.stream().filter(Held::turnHeld).count() / (double) held.size();
        double half = held.stream().mapToDouble(Held::turnHalfWidthKelvin).average().orElse(0);
        double off = held.stream().mapToDouble(h -> Math.abs(h.turnOffKelvin())).average().orElse(0);
        double bias = held.stream().mapToDouble(Held::turnOffKelvin).average().orElse(0);
        StringBuilder moments = new StringBuilder();
        for (int after : WhatIfTrial.MOMENTS) {
            List<Compared> there = held.stream()
                    .flatMap(h -> h.moments().stream())
                    .filter(c -> c.afterSeconds() == after)
                    .toList();
            double in = there.stream().filter(Compared::held).count() / (double) Math.max(1, there.size());
            moments.append(String.format(Locale.ROOT, " %ds %.1f %%(%d)", after, 100 * in, there.size()));
        }
        System.out.printf(
                Locale.ROOT,
                "  %-40s %5d: turn held %.1f %%, ±%.2f K, off %.2f K, bias %+.2f K; curve%s%n",
                name,
                held.size(),
                100 * turn,
                half,
                off,
                bias,
                moments);
    }
}
