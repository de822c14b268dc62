package fifthform.probe.find;

import java.util.Objects;
import java.util.Optional;

/**
 * One channel of an adapter that was listened to, to be offered by name.
 *
 * @param channel as the protocol counts
 * @param name what the adapter itself calls it, where it has told
 * @param lastCelsius its last reading, °C
 */
public record ChannelHeard(int channel, Optional<String> name, double lastCelsius) {
    public ChannelHeard {
        Objects.requireNonNull(name, "name");
    }

    /** For people: {@code T2}, or {@code channel 2} where the adapter gave no name. */
    public String title() {
        return name.orElse("channel " + channel);
    }
}
