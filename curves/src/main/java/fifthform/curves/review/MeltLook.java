package fifthform.curves.review;

import fifthform.curves.crystal.Misgiving;
import fifthform.curves.crystal.Temper;
import fifthform.curves.input.AlarmId;
import fifthform.curves.recipe.Phase;
import fifthform.curves.review.Cause.Kind;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Whether the melt erased the old crystals, and whether it scorched.
 *
 * @param highestCelsius the hottest of this melt, °C; −∞ before its first reading
 * @param hot time in or just below the melting range
 * @param left what is to be said of a melt that has ended
 * @param scorched since when it is too hot, or was
 * @param scorchedCelsius the hottest since then, °C
 */
record MeltLook(
        double highestCelsius,
        Duration hot,
        Optional<Cause> left,
        Optional<Instant> scorched,
        Duration scorchedFor,
        double scorchedCelsius) {
    static final MeltLook NONE = new MeltLook(
            Double.NEGATIVE_INFINITY,
            Duration.ZERO,
            Optional.empty(),
            Optional.empty(),
            Duration.ZERO,
            Double.NEGATIVE_INFINITY);

    /** A probe may be off by so much, and published melting ranges differ by more, K. Own choice. */
    private static final double BELOW_THE_RANGE_KELVIN = 2;

    /** Hot for less than this nobody can be sure that all is gone: a third of the few minutes that the model asks. */
    private static final Duration TOO_SHORT = Duration.ofSeconds(60);

    MeltLook with(Glimpse g) {
        MeltLook here = g.entered(Phase.MELT)
                ? new MeltLook(
                        Double.NEGATIVE_INFINITY,
                        Duration.ZERO,
                        Optional.empty(),
                        scorched,
                        scorchedFor,
                        scorchedCelsius)
                : this;
        here = here.scorching(g);
        boolean leaves = g.phaseBefore == Phase.MELT && g.phase != Phase.MELT;
        if (leaves) return here.judged(g);
        if (g.phase != Phase.MELT || g.celsius.isEmpty()) return here;
        double celsius = g.celsius.getAsDouble();
        boolean isHot = celsius >= g.recipe().melt().range().lowCelsius() - BELOW_THE_RANGE_KELVIN;
        return new MeltLook(
                Math.max(here.highestCelsius, celsius),
                isHot ? here.hot.plus(g.passed) : here.hot,
                here.left,
                here.scorched,
                here.scorchedFor,
                here.scorchedCelsius);
    }

    private MeltLook scorching(Glimpse g) {
        boolean begins = scorched.isEmpty() && g.raised(AlarmId.MELT_TOO_HOT);
        Optional<Instant> since = begins ? Optional.of(g.now) : scorched;
        if (since.isEmpty() || g.celsius.isEmpty()) return since == scorched ? this : with(since, scorchedFor);
        double celsius = g.celsius.getAsDouble();
        if (celsius <= g.recipe().scorchCelsius()) return since == scorched ? this : with(since, scorchedFor);
        return new MeltLook(
                highestCelsius, hot, left, since, scorchedFor.plus(g.passed), Math.max(scorchedCelsius, celsius));
    }

    private MeltLook with(Optional<Instant> since, Duration time) {
        return new MeltLook(highestCelsius, hot, left, since, time, scorchedCelsius);
    }

    /** What is joined while it cools was melted by somebody whom nobody watched. */
    private MeltLook judged(Glimpse g) {
        Optional<Misgiving> misgiving = g.after.crystals().map(Temper::watch).flatMap(w -> w.misgiving());
        // Bars of a failed batch were melted by nobody before.
        boolean again = g.setup.beginning().again().isPresent();
        boolean unseen =
                misgiving.filter(m -> m == Misgiving.START_UNKNOWN && !again).isPresent()
                        || highestCelsius == Double.NEGATIVE_INFINITY
                        || g.phase == Phase.WORK
                        || g.phase == Phase.REST;
        double low = g.recipe().melt().range().lowCelsius();
        Optional<Cause> said = Optional.empty();
        if (!unseen && highestCelsius < low - BELOW_THE_RANGE_KELVIN) {
            said = Optional.of(Cause.of(Kind.MELTED_TOO_COOL, Phase.MELT, g.now)
                    .reaching(highestCelsius)
                    .against(low));
        } else if (!unseen && hot.compareTo(TOO_SHORT) < 0) {
            said = Optional.of(Cause.of(Kind.MELTED_TOO_SHORT, Phase.MELT, g.now)
                    .reaching(highestCelsius)
                    .against(low)
                    .by(hot));
        }
        return new MeltLook(highestCelsius, hot, said, scorched, scorchedFor, scorchedCelsius);
    }

    List<Cause> causes(double scorchCelsius) {
        Optional<Cause> scorch = scorched.map(since -> {
            Cause cause = Cause.of(Kind.MELTED_TOO_HOT, Phase.MELT, since)
                    .against(scorchCelsius)
                    .lasting(scorchedFor);
            return Double.isFinite(scorchedCelsius) ? cause.reaching(scorchedCelsius) : cause;
        });
        return Stream.of(left, scorch).flatMap(Optional::stream).toList();
    }
}
