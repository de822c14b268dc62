package fifthform.curves.forecast;

import fifthform.curves.check.Require;
import fifthform.curves.input.MakerAction.Place;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/**
 * Where the bowl is going.
 *
 * @param madeAt when it was made
 * @param ifLifted where the temperature turns if the bowl leaves the water now; on the table: where it will turn
 * @param ifLeft the furthest temperature within the next three minutes if nothing changes
 * @param liftAt when a lift would land the turning point at the aim; may have passed; empty where no lift can (the bowl
 *     is on the table, or the water too weak)
 * @param course the curve if nothing is done
 * @param rateSigmaKelvinPerSecond uncertainty of the rate, K/s
 * @param levelSigmaKelvin uncertainty of the present temperature, K
 */
public record Forecast(
        Instant madeAt,
        Outlook ifLifted,
        Outlook ifLeft,
        Optional<Instant> liftAt,
        Course course,
        double rateSigmaKelvinPerSecond,
        double levelSigmaKelvin) {
    /** How far forecasts look ahead. */
    public static final Duration HORIZON = Duration.ofSeconds(180);

    /** What the model leaves out, growing with the way gone: stirring, crystals' heat. Own choice. */
    static final double MODEL_SHARE = 0.15;

    /** And with time alone: 0.09 K in three minutes. Own choice. */
    private static final double DRIFT_KELVIN_PER_SECOND = 0.0005;

    public Forecast {
        Objects.requireNonNull(madeAt, "madeAt");
        Objects.requireNonNull(ifLifted, "ifLifted");
        Objects.requireNonNull(ifLeft, "ifLeft");
        Objects.requireNonNull(liftAt, "liftAt");
        Objects.requireNonNull(course, "course");
        Require.within(rateSigmaKelvinPerSecond, 0, 1e6, "rateSigmaKelvinPerSecond");
        Require.within(levelSigmaKelvin, 0, 1e6, "levelSigmaKelvin");
    }

    /** The temperature {@code ahead} from now if nothing is done; zero to {@link #HORIZON}. */
    public Outlook at(Duration ahead) {
        double seconds = Require.within(ahead.toNanos() / 1e9, 0, HORIZON.toSeconds(), "ahead");
        double celsius = course.at(seconds);
        double way = Math.abs(celsius - course.celsius());
        // On the table an error of the rate fades with the coast; over water it goes on.
        double reach = course.place() == Place.TABLE
                ? course.coastSeconds() * -StrictMath.expm1(-seconds / course.coastSeconds())
                : seconds;
        double fromRate = reach * rateSigmaKelvinPerSecond;
        double fromModel = MODEL_SHARE * way + DRIFT_KELVIN_PER_SECOND * seconds;
        double sigma = Math.sqrt(levelSigmaKelvin * levelSigmaKelvin + fromRate * fromRate + fromModel * fromModel);
        return Outlook.around(celsius, sigma, seconds);
    }

    /** Seconds from {@code now} until that second; negative where it has passed. */
    public Optional<Double> secondsToLift(Instant now) {
        return liftAt.map(at -> Duration.between(now, at).toNanos() / 1e9);
    }
}
