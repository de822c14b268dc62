package fifthform.monitor.app;

import fifthform.curves.probecheck.AirPressure;
import fifthform.monitor.texts.CheckText;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine.Option;

/** Which points are taken, and what is known of the air for the boiling point. */
final class CheckAirOptions {
    @Option(names = "--ice")
    private boolean ice;

    @Option(names = "--boil")
    private boolean boil;

    @Option(names = "--altitude", paramLabel = "M")
    private Double altitudeMetres;

    @Option(names = "--pressure", paramLabel = "HPA")
    private Double stationHectopascals;

    @Option(names = "--sea-level-pressure", paramLabel = "HPA")
    private Double seaLevelHectopascals;

    boolean takesIce() {
        return ice || !boil;
    }

    /** The air where the boiling point is asked for. */
    Optional<AirPressure> air() throws Refusal {
        boolean given = altitudeMetres != null || stationHectopascals != null || seaLevelHectopascals != null;
        if (!boil && !given) return Optional.empty();
        AirPressure air = Answers.orRefuse(
                AirPressure.from(of(altitudeMetres), of(stationHectopascals), of(seaLevelHectopascals)),
                Exit.NOT_UNDERSTOOD);
        if (boil) return Optional.of(air);
        throw new Refusal(Exit.NOT_UNDERSTOOD, CheckText.THE_PRESSURE_OR_ALTITUDE.say());
    }

    private static OptionalDouble of(Double value) {
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }
}
