package fifthform.curves.forecast;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * When a limit is reached if nothing is done, s from when the forecast was made; empty where not within
 * {@link Forecast#HORIZON}.
 *
 * @param earliestSeconds when the nearer edge of the 90 % band reaches it
 * @param likelySeconds when the middle does
 * @param latestSeconds when the farther edge does
 */
public record Reach(OptionalDouble earliestSeconds, OptionalDouble likelySeconds, OptionalDouble latestSeconds) {
    public Reach {
        Objects.requireNonNull(earliestSeconds, "earliestSeconds");
        Objects.requireNonNull(likelySeconds, "likelySeconds");
        Objects.requireNonNull(latestSeconds, "latestSeconds");
    }
}
