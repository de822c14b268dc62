package fifthform.curves.forecast;

import fifthform.curves.check.Require;
import fifthform.curves.input.MakerAction.Place;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * Where the bowl is going.
 *
 * @param madeAt when it was made
 * @param ifLifted where the temperature turns if the bowl leaves the water now; on the table: where it will turn
 * @param ifLeft the furthest temperature within the next three minutes if nothing changes: over water the one at their
 *     end; on the table the furthest on the way on which it is now, so the turning point of a coast upwards and, where it
 *     falls, the one at their end
 * @param liftAt when a lift would land the turning point at the aim; may have passed; empty where no lift can (the bowl
 *     is on the table, or the water too weak)
 * @param course the curve if nothing is done
 * @param rateSigmaKelvinPerSecond uncertainty of the rate, K/s
 * @param levelSigmaKelvin uncertainty of the present temperature, K
 * @param hindsight how the forecasts before it came out
 */
public record Forecast(
        Instant madeAt,
        Outlook ifLifted,
        Outlook ifLeft,
        Optional<Instant> liftAt,
        Course course,
        double rateSigmaKelvinPerSecond,
        double levelSigmaKelvin,
        Hindsight hindsight) {
    /** How far forecasts look ahead. */
    public static final Duration HORIZON = Duration.ofSeconds(180);

    private static final double STEP_SECONDS = 5;

    public Forecast {
        Objects.requireNonNull(madeAt, "madeAt");
        Objects.requireNonNull(ifLifted, "ifLifted");
        Objects.requireNonNull(ifLeft, "ifLeft");
        Objects.requireNonNull(liftAt, "liftAt");
        Objects.requireNonNull(course, "course");
        Require.within(rateSigmaKelvinPerSecond, 0, 1e6, "rateSigmaKelvinPerSecond");
        Require.within(levelSigmaKelvin, 0, 1e6, "levelSigmaKelvin");
        Objects.requireNonNull(hindsight, "hindsight");
    }

    /** A forecast of which nothing has come due yet. */
    Forecast(
            Instant madeAt,
            Outlook ifLifted,
            Outlook ifLeft,
            Optional<Instant> liftAt,
            Course course,
            double rateSigmaKelvinPerSecond,
            double levelSigmaKelvin) {
        this(madeAt, ifLifted, ifLeft, liftAt, course, rateSigmaKelvinPerSecond, levelSigmaKelvin, Hindsight.NONE);
    }

    /** The same, its bands as wide as those before it had to be. */
    public Forecast after(Hindsight other) {
        double seconds = ifLeft.seconds();
        double sigma = ifLeft.sigmaKelvin()
                * other.factor(course.place(), seconds)
                / hindsight.factor(course.place(), seconds);
        return new Forecast(
                madeAt,
                ifLifted,
                Outlook.around(ifLeft.celsius(), sigma, seconds),
                liftAt,
                course,
                rateSigmaKelvinPerSecond,
                levelSigmaKelvin,
                other);
    }

    /** The temperature {@code ahead} from now if nothing is done; zero to {@link #HORIZON}. */
    public Outlook at(Duration ahead) {
        return at(Require.within(ahead.toNanos() / 1e9, 0, HORIZON.toSeconds(), "ahead"));
    }

    private Outlook at(double seconds) {
        double sigma = CourseSpread.kelvin(course, seconds, rateSigmaKelvinPerSecond, levelSigmaKelvin);
        return Outlook.around(course.at(seconds), sigma * hindsight.factor(course.place(), seconds), seconds);
    }

    /** When this temperature is reached if nothing is done, from whichever side the chocolate now is. */
    public Reach timeTo(double limitCelsius) {
        boolean above = limitCelsius >= course.celsius();
        ToDoubleFunction<Outlook> nearer = above ? Outlook::upperCelsius : Outlook::lowerCelsius;
        ToDoubleFunction<Outlook> farther = above ? Outlook::lowerCelsius : Outlook::upperCelsius;
        double way = above ? 1 : -1;
        return new Reach(
                first(o -> way * (nearer.applyAsDouble(o) - limitCelsius)),
                first(o -> way * (o.celsius() - limitCelsius)),
                first(o -> way * (farther.applyAsDouble(o) - limitCelsius)));
    }

    /**
     * Until when lifting the bowl keeps its turning point below this limit over warm water, above it in cold; empty on
     * the table, where there is nothing to lift from, and where it would not be passed within {@link #HORIZON}.
     */
    public Optional<LastChance> latestLift(double limitCelsius) {
        if (course.place() == Place.TABLE) return Optional.empty();
        double way = course.place() == Place.COLD_WATER ? -1 : 1;
        double edge = way > 0 ? ifLifted.upperCelsius() : ifLifted.lowerCelsius();
        OptionalDouble likely = passed(way * (ifLifted.celsius() - limitCelsius), way);
        if (likely.isEmpty()) return Optional.empty();
        double cautious = passed(way * (edge - limitCelsius), way).orElse(likely.getAsDouble());
        return Optional.of(new LastChance(Math.min(cautious, likely.getAsDouble()), likely.getAsDouble()));
    }

    /** Seconds until a turning point that now lies {@code beyond} the limit passes it; as long ago as the rate says. */
    private OptionalDouble passed(double beyond, double way) {
        double push = way * course.kelvinPerSecond();
        if (beyond >= 0) return push > 0 ? OptionalDouble.of(-beyond / push) : OptionalDouble.of(0);
        return first(o -> beyond + way * course.turnFartherKelvin(o.seconds()));
    }

    /** The first second within the horizon at which this is no longer below zero. */
    private OptionalDouble first(ToDoubleFunction<Outlook> beyond) {
        if (beyond.applyAsDouble(at(0.0)) >= 0) return OptionalDouble.of(0);
        for (double late = STEP_SECONDS; late <= HORIZON.toSeconds(); late += STEP_SECONDS) {
            if (beyond.applyAsDouble(at(late)) >= 0)
                return OptionalDouble.of(between(late - STEP_SECONDS, late, beyond));
        }
        return OptionalDouble.empty();
    }

    private double between(double from, double to, ToDoubleFunction<Outlook> beyond) {
        double early = from;
        double late = to;
        for (int i = 0; i < 12; i++) {
            double middle = (early + late) / 2;
            if (beyond.applyAsDouble(at(middle)) >= 0) late = middle;
            else early = middle;
        }
        return late;
    }

    /** Seconds from {@code now} until that second; negative where it has passed. */
    public Optional<Double> secondsToLift(Instant now) {
        return liftAt.map(at -> Duration.between(now, at).toNanos() / 1e9);
    }
}
