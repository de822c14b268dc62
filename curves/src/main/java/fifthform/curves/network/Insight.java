package fifthform.curves.network;

import fifthform.curves.input.MakerAction.Place;
import java.util.Objects;
import java.util.Optional;

/**
 * What a network makes of a session so far.
 *
 * @param blocks the readings and words it has heard
 * @param memory what it remembers; empty before the first step
 * @param guess what it said last; empty before the first step
 */
public record Insight(Blocks blocks, Optional<Memory> memory, Optional<Guess> guess) {
    /** Nothing has been read yet. */
    public static final Insight START = new Insight(Blocks.START, Optional.empty(), Optional.empty());

    public Insight {
        Objects.requireNonNull(blocks, "blocks");
        Objects.requireNonNull(memory, "memory");
        Objects.requireNonNull(guess, "guess");
    }

    /** Once time has come to {@code seconds}, s since the start. */
    public Insight until(Network network, double seconds, Given given) {
        Blocks.Run run = blocks.until(seconds, given);
        if (run.after() == blocks) return this;
        Insight insight = new Insight(run.after(), memory, guess);
        for (Moment moment : run.moments()) {
            Network.Step step = network.step(insight.memory.orElseGet(network::nothing), moment);
            insight = new Insight(run.after(), Optional.of(step.memory()), Optional.of(step.guess()));
        }
        return insight;
    }

    /** Once a believed reading has come; see {@link Blocks#reading}. */
    public Insight reading(double seconds, double celsius) {
        return new Insight(blocks.reading(seconds, celsius), memory, guess);
    }

    /** Once the maker has said where the bowl stands since {@code seconds}. */
    public Insight told(Place place, double seconds) {
        return new Insight(blocks.told(place, seconds), memory, guess);
    }

    /** Once it holds again that nobody has said where the bowl stands. */
    public Insight untold() {
        return new Insight(blocks.untold(), memory, guess);
    }
}
