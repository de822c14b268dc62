package fifthform.curves.setup;

import fifthform.curves.check.Require;
import fifthform.curves.thermocouple.Budget;
import fifthform.curves.thermocouple.Budget.Part;
import fifthform.curves.thermocouple.Budget.Source;
import fifthform.curves.thermocouple.Sensor;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * One probe of a session.
 *
 * @param id its name in this session
 * @param role what it measures
 * @param talk how its adapter talks: the protocol's id, with its settings where it has any
 * @param place where it is plugged in, in words for people, for example {@code /dev/ttyUSB0}
 * @param correction what its last check found
 * @param lagSeconds time constant of the tip in what it measures, 0 to 120 s
 * @param sensor the thermocouple and its converter, as far as known
 */
public record ProbeSetup(
        ProbeId id, Role role, String talk, String place, Correction correction, double lagSeconds, Sensor sensor) {
    /** A thin sheath in stirred chocolate, s. A guess to begin with (no source); measured later at the first dip. */
    public static final double USUAL_LAG_SECONDS = 4;

    public ProbeSetup {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(role, "role");
        Objects.requireNonNull(talk, "talk");
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(correction, "correction");
        Require.within(lagSeconds, 0, 120, "lagSeconds");
        Objects.requireNonNull(sensor, "sensor");
    }

    /** A probe of whose thermocouple and converter nothing is known. */
    public ProbeSetup(ProbeId id, Role role, String talk, String place, Correction correction, double lagSeconds) {
        this(id, role, talk, place, correction, lagSeconds, Sensor.UNKNOWN);
    }

    /**
     * How far a reading of this probe can be trusted. What a check left takes the place of wire, converter and junction,
     * which it measured together. The tip's lag is no part of it: that is a bias, and is undone.
     *
     * @param tipCelsius the reading, °C
     * @param junctionCelsius its cold junction, °C, where told
     * @param resolutionKelvin standard uncertainty from the last digit on the line, K: step/√12
     * @param noiseKelvin standard deviation of the readings around their curve, K
     */
    public Budget budget(
            double tipCelsius, OptionalDouble junctionCelsius, double resolutionKelvin, double noiseKelvin) {
        List<Part> parts = new ArrayList<>();
        if (correction.isChecked()) parts.add(new Part(Source.CORRECTION, correction.sigmaKelvin()));
        else parts.addAll(sensor.parts(tipCelsius, junctionCelsius));
        parts.add(new Part(Source.RESOLUTION, resolutionKelvin));
        parts.add(new Part(Source.NOISE, Math.min(noiseKelvin, Part.MOST_KELVIN)));
        return new Budget(parts);
    }

    /** The same probe with another lag. */
    public ProbeSetup withLagSeconds(double other) {
        return new ProbeSetup(id, role, talk, place, correction, other, sensor);
    }
}
