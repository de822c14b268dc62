package fifthform.simulator.bench;

import com.sun.management.OperatingSystemMXBean;
import fifthform.simulator.bench.Fleet.Advice;
import fifthform.simulator.scenario.Scenario;
import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.LongFunction;

/**
 * How many batches of an hour, two readings a second, can be gone through in a minute on two cores: physics and maker
 * alone, with the engine in the loop, with bytes and decoder as well; and where the time goes. Whole batches of the home
 * fleet, drawing and judging included; simulated hours are counted, since batches differ in length.
 *
 * <p>{@code java … FleetBench SECONDS} measures each for so long (20 by default) after half as much to warm up.
 */
public final class FleetBench {
    private static final int CORES = 2;
    private static final int USUAL_SECONDS = 20;

    private FleetBench() {}

    public static void main(String[] arguments) throws Exception {
        int seconds = arguments.length > 0 ? Integer.parseInt(arguments[0]) : USUAL_SECONDS;
        Fleet fleet = Fleet.builtIn(Fleet.HOME);
        Advice none = Advice.none(RecipeShelf::recipe);
        Advice engine = Advice.engine(RecipeShelf::recipe);
        measure("physics and maker", 10_000, seconds, number -> fleet.run(number, none));
        measure("with the engine", 200, seconds, number -> fleet.run(number, engine));
        measure("with bytes as well", 100, seconds, number -> bytes(fleet, number, engine));
        System.out.println();
        System.out.println("The first 200 batches of the home fleet, advised by the engine:");
        System.out.print(SummaryText.table(Summary.of(fleet.runFirst(200, engine))));
    }

    private static Ending bytes(Fleet fleet, long number, Advice advice) {
        Scenario scenario = fleet.draw(number);
        return PracticeReport.run(scenario, number, advice);
    }

    private static void measure(String name, long goal, int seconds, LongFunction<Ending> batch) throws Exception {
        warmUp(seconds, batch);
        try (Profile profile = Profile.begin()) {
            long from = System.nanoTime();
            long cpuFrom = cpuNanos();
            double hours = hours(seconds, batch);
            double minutes = (System.nanoTime() - from) / 60e9;
            double cpuMinutes = (cpuNanos() - cpuFrom) / 60e9;
            System.out.printf(
                    Locale.ROOT,
                    "%-20s %,9.0f batches of 60 min a minute on %d whole cores (goal %,d); %,.0f by the clock, with %.1f"
                            + " cores to itself%n",
                    name,
                    CORES * hours / cpuMinutes,
                    CORES,
                    goal,
                    hours / minutes,
                    cpuMinutes / minutes);
            System.out.print(profile.text());
        }
    }

    /** In processor time: half a core to itself compiles half as fast. */
    private static void warmUp(int seconds, LongFunction<Ending> batch) throws Exception {
        long from = cpuNanos();
        while (cpuNanos() - from < seconds * 1e9) hours(1, batch);
    }

    /** Of the whole program, collector and compiler included: neighbours on the same machine do not count. */
    private static long cpuNanos() {
        return ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class).getProcessCpuTime();
    }

    /** Simulated hours gone through in about so many seconds. */
    private static double hours(double seconds, LongFunction<Ending> batch) throws Exception {
        AtomicLong next = new AtomicLong();
        long until = System.nanoTime() + Math.round(seconds * 1e9);
        Callable<Double> worker = () -> {
            double hours = 0;
            while (System.nanoTime() < until) {
                hours += batch.apply(next.getAndIncrement()).outcome().lasted().toMillis() / 3.6e6;
            }
            return hours;
        };
        ExecutorService cores = Executors.newFixedThreadPool(CORES);
        try {
            double hours = 0;
            for (Future<Double> each : cores.invokeAll(List.of(worker, worker))) hours += each.get();
            return hours;
        } finally {
            cores.shutdown();
        }
    }
}
