package fifthform.curves.engine;

import fifthform.curves.engine.StoryMaker.Keys;
import fifthform.curves.input.Input;
import fifthform.curves.network.Network;
import fifthform.curves.network.Untaught;
import fifthform.curves.recipe.Phase;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * How much memory a state takes at the end of a batch: as many engines go through the story, each with its own state,
 * and the heap in use after collection is compared with before. The aim is at most 5 MiB; {@code kibibytes} counts it.
 * The weights are not in it: all sessions share them.
 */
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 1)
@Measurement(iterations = 1)
@Fork(1)
public class StateBench {
    private static final int STATES = 40;

    /** What was weighed. */
    @State(Scope.Thread)
    @AuxCounters(AuxCounters.Type.EVENTS)
    public static class Weight {
        /** KiB for each state. */
        public double kibibytes;
    }

    /** Weighs the states. */
    @Benchmark
    public List<fifthform.curves.engine.State> states(Weight weight) {
        StoryMaker maker = StoryMaker.melting(200, 0.2, Keys.PRESSED);
        maker.obeysUntil(s -> s.batch().phase() == Phase.WORK, Duration.ofHours(1));
        Optional<Network> network = Optional.of(Untaught.network(3, 32, 64));
        List<fifthform.curves.engine.State> states = new ArrayList<>(STATES);
        long before = inUse();
        for (int i = 0; i < STATES; i++) states.add(went(network, maker));
        weight.kibibytes = (inUse() - before) / 1024.0 / STATES;
        return states;
    }

    private static fifthform.curves.engine.State went(Optional<Network> network, StoryMaker maker) {
        fifthform.curves.engine.State state = Engine.start(maker.setup, StoryMaker.START);
        for (Input input : maker.inputs) {
            state = Engine.step(network, maker.setup, state, input).after();
        }
        return state;
    }

    private static long inUse() {
        for (int i = 0; i < 3; i++) System.gc();
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    }
}
