package fifthform.curves.engine;

import fifthform.curves.crystal.Circumstances;
import fifthform.curves.crystal.CrystalWatch;
import fifthform.curves.crystal.Fat;
import fifthform.curves.crystal.Kinetics;
import fifthform.curves.recipe.Recipe;
import java.time.Instant;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What the crystals cost: three copies with a wall node each, at one reading a second. Aims: 50 µs a reading, 100 ms an
 * hour's history.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@Fork(1)
@Warmup(iterations = 2, time = 2)
@Measurement(iterations = 3, time = 3)
public class CrystalBench {
    private static final Instant START = Instant.parse("2026-11-26T08:00:00Z");
    private static final int HOUR = 3600;

    private final Recipe recipe = TestRecipes.dark();
    private final Circumstances round = new Circumstances(OptionalDouble.of(-3), 20, false);
    private final Kinetics kinetics = Kinetics.of(Fat.DARK);

    /** One reading of the cool step and after, where most is reckoned. */
    @Benchmark
    @OutputTimeUnit(TimeUnit.MICROSECONDS)
    @OperationsPerInvocation(HOUR)
    public CrystalWatch reading() {
        return hour();
    }

    /** An hour's history. */
    @Benchmark
    @OutputTimeUnit(TimeUnit.MILLISECONDS)
    public CrystalWatch hour() {
        CrystalWatch watch = CrystalWatch.solid(kinetics);
        for (int t = 0; t < HOUR; t++) {
            watch = watch.read(recipe, START.plusSeconds(t), celsius(t / 60.0), round, t > 600);
        }
        return watch;
    }

    private static double celsius(double minute) {
        if (minute < 10) return 45;
        if (minute < 22) return 45 - 17.5 * (minute - 10) / 12;
        return minute < 28 ? 27.5 : Math.min(31.5, 27.5 + minute - 28);
    }
}
