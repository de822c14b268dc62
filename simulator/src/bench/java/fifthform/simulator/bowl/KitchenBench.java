package fifthform.simulator.bowl;

import com.sun.management.OperatingSystemMXBean;
import fifthform.simulator.bowl.KitchenState.Baths;
import java.lang.management.ManagementFactory;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/**
 * How many hours of kitchen, asked twice a second, two cores go through in a minute: the physics alone. The hands are a
 * plan that visits every phase and stirs 45 s of each minute. With makers and engine: {@code FleetBench}.
 *
 * <p>{@code java … KitchenBench SECONDS}, 10 by default, after half as long to warm up.
 */
public final class KitchenBench {
    private static final int CORES = 2;
    private static final Duration HALF_A_SECOND = Duration.ofMillis(500);
    private static final Baths BATHS = new Baths(72, 46, 17);

    private KitchenBench() {}

    public static void main(String[] arguments) throws Exception {
        double seconds = arguments.length > 0 ? Double.parseDouble(arguments[0]) : 10;
        hours(seconds / 2);
        long from = System.nanoTime();
        long cpuFrom = cpuNanos();
        int hours = hours(seconds);
        double minutes = (System.nanoTime() - from) / 60e9;
        double cpuMinutes = (cpuNanos() - cpuFrom) / 60e9;
        System.out.printf(
                Locale.ROOT,
                "physics alone: %,.0f hours at 2 Hz a minute on %d whole cores; %,.0f by the clock, with %.1f cores to"
                        + " itself%n",
                CORES * hours / cpuMinutes,
                CORES,
                hours / minutes,
                cpuMinutes / minutes);
    }

    private static long cpuNanos() {
        return ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class).getProcessCpuTime();
    }

    private static int hours(double seconds) throws Exception {
        long until = System.nanoTime() + Math.round(seconds * 1e9);
        Callable<Integer> worker = () -> {
            int done = 0;
            double check = 0;
            while (System.nanoTime() < until) {
                check += anHour(0.3 + 0.1 * (done % 10));
                done++;
            }
            if (Double.isNaN(check)) throw new IllegalStateException("the kitchen came to no number");
            return done;
        };
        ExecutorService cores = Executors.newFixedThreadPool(CORES);
        try {
            int sum = 0;
            for (Future<Integer> each : cores.invokeAll(List.of(worker, worker))) sum += each.get();
            return sum;
        } finally {
            cores.shutdown();
        }
    }

    private static double anHour(double kilograms) {
        Kitchen kitchen = new Kitchen(
                Chocolate.dark(kilograms),
                new BowlWall(WallMaterial.STEEL, 1, 1.3, 0.2),
                Exchange.USUAL,
                new Vessel(1.2, 400, 550, 0.9, 900, 55, 0.03, 0.5, 60),
                Vessel.offTheHeat(2, 400, 550, 0.4),
                Vessel.offTheHeat(3, 400, 550, 1.2).open(0.07),
                24,
                new Tip(4, 1.5));
        KitchenState state = KitchenState.solid(24, BATHS);
        for (int half = 0; half < 7200; half++) {
            double vigour = half % 120 < 90 ? 1 : 0;
            state = kitchen.advance(state, new Hands(spot(half / 120), vigour, towel(half)), HALF_A_SECOND);
        }
        return state.bulkCelsius();
    }

    private static Spot spot(int minute) {
        if (minute < 18) return Spot.HOT_BATH;
        if (minute < 26) return Spot.COLD_WATER;
        if (minute == 31 || minute == 32) return Spot.WARM_BATH;
        return Spot.TABLE;
    }

    private static Hands.Towel towel(int half) {
        return half == 33 * 120 + 40 ? Hands.Towel.WIPING : Hands.Towel.LEFT;
    }
}
