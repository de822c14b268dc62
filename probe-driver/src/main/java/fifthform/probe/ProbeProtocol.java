package fifthform.probe;

import fifthform.curves.check.Parsed;
import fifthform.curves.check.Problem;
import fifthform.curves.thermocouple.Sensor;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * One way in which an adapter talks. To add a protocol write one class, name it in
 * {@code META-INF/services/fifthform.probe.ProbeProtocol}, and put a recorded tape and its expected list beside the tests.
 */
public interface ProbeProtocol {
    /** Stable name in settings and recordings: lower-case letters, digits, hyphens. */
    String id();

    /** One line for people: what such an adapter sends. */
    String description();

    /** Usual settings of the serial line, the most usual first; at least one. */
    List<LineSettings> lines();

    /** Whether such an adapter speaks by itself. */
    default Manner manner() {
        return Manner.SPEAKS;
    }

    /**
     * This protocol with the maker's settings, for example {@code register} and {@code scale}.
     *
     * @param settings names and values as the maker wrote them; never those of the serial line
     * @return refused with a problem a setting that is unknown or cannot be used
     */
    default Parsed<ProbeProtocol> with(Map<String, String> settings) {
        if (settings.isEmpty()) return Parsed.accepted(this);
        return Parsed.refused(
                "--talk " + id(),
                "The protocol " + id() + " has no settings, but " + String.join(", ", settings.keySet())
                        + " was given. Nothing was done.",
                "Leave the settings out.");
    }

    /** What the protocol by itself tells of thermocouple and converter. */
    default Sensor sensor() {
        return Sensor.UNKNOWN;
    }

    /** A decoder for one open link. */
    Decoder newDecoder();

    /** Who begins. */
    enum Manner {
        /** The adapter sends by itself. */
        SPEAKS,
        /** The adapter answers only. Asking can disturb a device that is no probe, so the maker must allow it. */
        ANSWERS
    }

    /** Lives as long as one open link and is used by that link's reader thread only. */
    interface Decoder {
        /**
         * Takes bytes as they arrived; where one chunk ends carries no meaning. Never throws on bad bytes; every byte
         * ends up in exactly one signal, white space between signals excepted.
         */
        void feed(byte[] bytes, Consumer<? super Signal> out);

        /**
         * What to send now. Called after every read of the link, be it a silence, so at least every 200 ms of the
         * link's time.
         *
         * @param now the link's time
         * @param out takes signals that time alone decides, for example the pieces of an answer that was cut short
         * @return empty where nothing is to be sent, which is always so for adapters that speak by themselves
         */
        default Optional<byte[]> ask(Instant now, Consumer<? super Signal> out) {
            return Optional.empty();
        }

        /** Why an adapter that is asked gives no temperature, and what to do; empty while it does. */
        default Optional<Problem> complaint() {
            return Optional.empty();
        }

        /** What the adapter itself calls a channel, where it has told. */
        default Optional<String> channelName(int channel) {
            return Optional.empty();
        }
    }
}
