package fifthform.curves.engine;

import fifthform.curves.engine.StoryMaker.Keys;
import fifthform.curves.input.Input;
import fifthform.curves.network.Network;
import fifthform.curves.network.Untaught;
import fifthform.curves.recipe.Phase;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What one reading costs: a whole story batch, about 3 000 readings with keys, stepped over and over; the figure is per
 * input, its mean and, in the sampled mode, its p99. The aim is at most 100 µs and 1 ms, at ten readings a second a
 * thousandth of one core. The story's readings come every half second, so that every fourth makes the network take a
 * step; what it was taught does not matter to the cost, so networks of random weights stand in for trained ones.
 */
@State(Scope.Benchmark)
@BenchmarkMode({Mode.AverageTime, Mode.SampleTime})
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class StepBench {
    /** How many networks are averaged. */
    @Param({"0", "1", "3"})
    public int networks;

    private Optional<Network> network;
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
        network = networks == 0 ? Optional.empty() : Optional.of(Untaught.network(networks, 32, 64));
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
        Step step = Engine.step(network, setup, state, inputs.get(next++));
        state = step.after();
        return step;
    }
}
