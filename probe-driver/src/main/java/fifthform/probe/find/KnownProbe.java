package fifthform.probe.find;

import fifthform.curves.check.Require;
import fifthform.curves.setup.Correction;
import fifthform.curves.setup.Role;
import fifthform.curves.thermocouple.Sensor;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * What is remembered of one probe on an adapter.
 *
 * @param channel the adapter's channel as its protocol counts, 0 or more
 * @param role what it measures
 * @param sensor thermocouple and converter, as far as known
 * @param correction what its last check found
 * @param lagSeconds time constant of its tip, 0 to 120 s, where it was measured
 */
public record KnownProbe(int channel, Role role, Sensor sensor, Correction correction, OptionalDouble lagSeconds) {
    public KnownProbe {
        Require.within(channel, 0, Integer.MAX_VALUE, "channel");
        Objects.requireNonNull(role, "role");
        Objects.requireNonNull(sensor, "sensor");
        Objects.requireNonNull(correction, "correction");
        Require.within(lagSeconds, 0, 120, "lagSeconds");
    }
}
