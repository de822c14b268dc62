package fifthform.curves.cue;

import fifthform.curves.cue.Dip.Purpose;
import fifthform.curves.cue.Dip.Stage;
import fifthform.curves.forecast.Coasting;
import fifthform.curves.forecast.Turn;
import fifthform.curves.recipe.CelsiusRange;
import fifthform.curves.setup.Setup;
import fifthform.curves.situation.Reason;
import fifthform.curves.situation.Reason.Figure;
import fifthform.curves.situation.Reason.Rule;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** How long a dip should be, and why. Somewhat less than what is missing is asked for: a dip can be repeated, not undone. */
final class DipSize {
    /** The first dip of an unknown bowl over an unknown bath, s: even steam under thin metal gives a kelvin or so. */
    private static final double FIRST_SECONDS = 5;

    private static final double SHORTEST_FIRST_SECONDS = 4;
    private static final double LONGEST_FIRST_SECONDS = 10;
    /** The first touch of warm air, s: a burst of 3 to 5 s is usual (common practice, no source); a dryer needs more. */
    private static final double AIR_SECONDS = 5;

    private static final double USUAL_GRAMS = 600;
    private static final double USUAL_PUSH_KELVIN = 15;

    private static final double SHORTEST_SECONDS = 1;
    private static final double LONGEST_SECONDS = 90;

    /** A dip is never longer than so many times the one before. Tuned on training kitchens. */
    private static final double GROWTH = 2;

    /** Not once in twenty over the upper end (normal distribution: Φ(1.645) = 0.95). */
    private static final double SAFE = 1.645;

    /** A dip and its look take about so long; meanwhile the room takes its share, s. Own choice. */
    private static final double ROUND_SECONDS = 70;

    private static final double INSIDE_KELVIN = 0.2;
    private static final double HOLD_INSIDE_KELVIN = 0.3;

    /** So far inside a dip should bring it: nearer to the lower end, since the next one can add and none can take away. */
    private static final double REACH_INSIDE_KELVIN = 0.5;

    /** Of what is missing, by the bowl's coast; a rule of dips found in simulated kitchens. */
    private static final double COAST_SHARE = 0.8;

    private static final double SLOWEST_KELVIN_PER_SECOND = 0.3 / 60;

    /** A shorter stay has not yet shown the rate that this bath gives. */
    private static final Duration REAL_STAY = Duration.ofSeconds(20);

    /** The figures of the sum by which a dip's seconds came about; they stand as long as the seconds do. */
    private static final List<Figure> SUM = List.of(Figure.ASKED_AT_C, Figure.TO_COME_K, Figure.LOST_K, Figure.FILM_S);

    private final Look look;
    private final Purpose purpose;
    private final DipResponse response;

    DipSize(Look look, Purpose purpose, DipResponse response) {
        this.look = look;
        this.purpose = purpose;
        this.response = response;
    }

    Dip asked(Instant now) {
        double expected = look.celsius() + look.expectedUnderWay();
        return new Dip(
                Stage.ASKED,
                purpose,
                now,
                seconds(),
                now,
                expected,
                drift(),
                look.celsius(),
                look.rate(),
                Optional.empty());
    }

    double seconds() {
        if (response.isKnown()) return sized();
        OptionalDouble lastRate = lastRate();
        if (byAir()) return AIR_SECONDS * size();
        if (lastRate.isEmpty()) return first();
        double byCoast = byCoast(lastRate.getAsDouble());
        return purpose == Purpose.HOLD ? Math.min(first(), byCoast) : byCoast;
    }

    /** Whether even the shortest dip may go over: then what is reached must do. */
    boolean isTooStrong() {
        return response.isKnown() && safeSeconds() < SHORTEST_SECONDS;
    }

    /** Where the shortest dip would bring it at the most, °C; empty where dips have shown nothing. */
    OptionalDouble shortestReaches() {
        if (!response.isKnown()) return OptionalDouble.empty();
        return OptionalDouble.of(standsCelsius() + response.mostFrom(SHORTEST_SECONDS, SAFE));
    }

    private double safeSeconds() {
        return response.secondsWithin(range().highCelsius() - INSIDE_KELVIN - standsCelsius() + lost(), SAFE);
    }

    private double lost() {
        return look.rate() > 0 ? 0 : -drift() * ROUND_SECONDS;
    }

    private double sized() {
        double middle = response.secondsFor(aimCelsius() - standsCelsius() + lost());
        double safe = safeSeconds();
        double most = GROWTH * Math.max(SHORTEST_FIRST_SECONDS, response.lastSeconds());
        return Math.max(SHORTEST_SECONDS, Math.min(Math.min(middle, safe), Math.min(most, LONGEST_SECONDS)));
    }

    /**
     * At the rate r of the last lift a dip of N seconds moves the bowl by {@code r·N} while it lasts and by
     * {@code r·L·(1 − e^(−2N/L))} of coast after it, since the wall fills about twice as fast as it empties.
     */
    private double byCoast(double kelvinPerSecond) {
        double coastSeconds = look.situation().coasting().coast().seconds();
        double missing = aimCelsius() - standsCelsius();
        double seconds = SHORTEST_SECONDS;
        while (seconds < LONGEST_SECONDS / 2) {
            double moved = seconds + coastSeconds * -StrictMath.expm1(-2 * seconds / coastSeconds);
            if (kelvinPerSecond * moved >= COAST_SHARE * missing) break;
            seconds += 0.5;
        }
        return seconds;
    }

    /** By what is known of amount and bath; heat for each gram goes with surface by mass. */
    private double first() {
        double push = look.bathCelsius().orElse(range().lowCelsius() + USUAL_PUSH_KELVIN) - range().lowCelsius();
        double seconds = FIRST_SECONDS * size() * USUAL_PUSH_KELVIN / Math.max(1, push);
        return Math.max(SHORTEST_FIRST_SECONDS, Math.min(LONGEST_FIRST_SECONDS, seconds));
    }

    private double size() {
        Setup setup = look.situation().setup();
        return StrictMath.cbrt(setup.bowl().amountGrams().orElse(USUAL_GRAMS) / USUAL_GRAMS);
    }

    private boolean byAir() {
        return purpose == Purpose.HOLD && look.holdsByAir();
    }

    /** Why so many seconds, with the sum as it was when they were asked for. */
    Reason reason(Optional<Reason> whenAsked) {
        Reason reason = reason();
        if (whenAsked.isEmpty()) return reason;
        for (Figure figure : SUM) {
            OptionalDouble then = whenAsked.get().figure(figure);
            if (then.isPresent()) reason = reason.with(figure, then.getAsDouble());
        }
        return reason;
    }

    private Reason reason() {
        Rule rule = response.isKnown()
                ? Rule.SIZED_BY_EARLIER_DIPS
                : lastRate().isPresent() && !byAir() ? Rule.SIZED_BY_COAST : Rule.FIRST_DIP;
        Reason reason = look.reason(rule)
                .with(Figure.AIM_C, aimCelsius())
                .with(Figure.RANGE_LOW_C, range().lowCelsius())
                .with(Figure.RANGE_HIGH_C, range().highCelsius())
                .with(Figure.DIPS_SEEN, response.dips());
        if (!response.isKnown()) return reason;
        return reason.with(Figure.DIP_K_PER_S, response.kelvinPerSecond())
                .with(Figure.DIP_LOG_SPREAD, response.logSpread())
                .with(Figure.DIPS_MOVED_K, response.movedKelvin())
                .with(Figure.ASKED_AT_C, look.celsius())
                .with(Figure.TO_COME_K, look.mostUnderWay())
                .with(Figure.LOST_K, lost())
                .with(Figure.FILM_S, DipResponse.FILM_SECONDS);
    }

    /** What is still under way counts as if it had come. */
    private double standsCelsius() {
        return look.celsius() + look.mostUnderWay();
    }

    private double aimCelsius() {
        return purpose == Purpose.REACH
                ? range().lowCelsius() + REACH_INSIDE_KELVIN
                : range().highCelsius() - HOLD_INSIDE_KELVIN;
    }

    private CelsiusRange range() {
        return look.situation().recipe().work().range();
    }

    /** A bowl that still warms has no drift yet. */
    private double drift() {
        return Math.max(-0.02, Math.min(0, look.rate() / 60));
    }

    /** Rate at the last lift from warm water in this rewarm, where it teaches anything, K/s. */
    private OptionalDouble lastRate() {
        Coasting coasting = look.situation().coasting();
        return coasting.lastTurn()
                .map(Turn::lift)
                .filter(lift -> lift.stay().compareTo(REAL_STAY) >= 0)
                .map(lift -> lift.kelvinPerMinute() / 60)
                .filter(rate -> rate >= SLOWEST_KELVIN_PER_SECOND)
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }
}
