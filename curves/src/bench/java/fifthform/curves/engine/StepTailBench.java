package fifthform.curves.engine;

import fifthform.curves.engine.StoryMaker.Keys;
import fifthform.curves.input.Input;
import fifthform.curves.recipe.Phase;
import java.lang.ref.Reference;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * How long the slowest inputs take, where {@link StepBench} gives the mean: the same story batch, each step timed. Aims:
 * mean at most 100 µs, 99 of 100 within 1 ms. {@link #main} says how much heap a state keeps: aim at most 5 MiB.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class StepTailBench {
    private static final int COPIES = 300;

    private fifthform.curves.setup.Setup setup;
    private List<Input> inputs;
    private fifthform.curves.engine.State state;
    private int next;

    /** Tempers the batch once and keeps what came in. */
    @Setup(Level.Trial)
    public void temper() {
        StoryMaker maker = StoryMaker.melting(200, 0.2, Keys.PRESSED);
        maker.obeysUntil(s -> s.batch().phase() == Phase.WORK, Duration.ofHours(1));
        setup = maker.setup;
        inputs = List.copyOf(maker.inputs);
        begin();
    }

    private void begin() {
        state = Engine.start(setup, StoryMaker.START);
        next = 0;
    }

    /** One input. */
    @Benchmark
    public Step step() {
        if (next == inputs.size()) begin();
        Step step = Engine.step(setup, state, inputs.get(next++));
        state = step.after();
        return step;
    }

    private fifthform.curves.engine.State atTheEnd() {
        begin();
        while (next < inputs.size()) step();
        return state;
    }

    /** Keeps the last states of many sessions that share nothing but their set-up, and counts what the heap grew by. */
    public static void main(String[] arguments) {
        StepTailBench bench = new StepTailBench();
        bench.temper();
        for (int i = 0; i < COPIES / 3; i++) bench.atTheEnd();
        List<fifthform.curves.engine.State> kept = new ArrayList<>();
        long before = used();
        for (int i = 0; i < COPIES; i++) kept.add(bench.atTheEnd());
        long each = (used() - before) / COPIES;
        Reference.reachabilityFence(kept);
        System.out.printf("a state keeps %d KiB (aim: at most %d)%n", each / 1024, 5 * 1024);
    }

    private static long used() {
        for (int i = 0; i < 4; i++) System.gc();
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    }
}
