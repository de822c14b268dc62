package fifthform.monitor.app;

import fifthform.curves.probecheck.AirPressure;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine.Option;

/** Which points are taken, and what is known of the air for the boiling point. */
final class CheckAirOptions {
    @Option(names = "--ice", description = "take the ice point; so it is where nothing else is asked for")
    private boolean ice;

    @Option(names = "--boil", description = "take the boiling point; needs the pressure, or at least the altitude")
    private boolean boil;

    @Option(names = "--altitude", paramLabel = "M", description = "of the kitchen above the sea, metres")
    private Double altitudeMetres;

    @Option(
            names = "--pressure",
            paramLabel = "HPA",
            description = "of the air in the kitchen, by a barometer there, hPa")
    private Double stationHectopascals;

    @Option(
            names = "--sea-level-pressure",
            paramLabel = "HPA",
            description = "as weather reports give it, hPa; needs --altitude")
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
        throw new Refusal(
                Exit.NOT_UNDERSTOOD,
                "The pressure or altitude matters to a boiling point only. Nothing was done. Add --boil, or leave it out.");
    }

    private static OptionalDouble of(Double value) {
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }
}
