package fifthform.curves.input;

import java.time.Instant;
import java.util.Objects;

/** Time passed and nothing else happened. */
public record Tick(Instant at) implements Input {
    public Tick {
        Objects.requireNonNull(at, "at");
    }

    @Override
    public <R> R fold(Cases<R> cases) {
        return cases.tick(this);
    }
}
