package fifthform.simulator.maker;

import java.util.Objects;

/**
 * What a maker does next.
 *
 * @param after the maker from then on
 * @param acts what is done until the maker is asked again
 */
public record Next(Maker after, Acts acts) {
    public Next {
        Objects.requireNonNull(after, "after");
        Objects.requireNonNull(acts, "acts");
    }
}
