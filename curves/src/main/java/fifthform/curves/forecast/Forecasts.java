package fifthform.curves.forecast;

import fifthform.curves.estimate.Estimate;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.phase.Batch;
import fifthform.curves.recipe.Phase;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.Setup;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;

/** Makes a forecast from what is known now. */
public final class Forecasts {
    /** The water a maker usually has, where nothing says more, °C. Habit of makers; a guess, common practice, no source. */
    private static final double USUAL_MELTING_BATH_CELSIUS = 65;

    private static final double USUAL_COLD_WATER_CELSIUS = 16;

    /** Even a perfect rate and coast time leave this much: stirring, the tip's place in the bowl, K. Own choice. */
    private static final double LEAST_TURN_SIGMA_KELVIN = 0.10;

    /**
     * What two bodies leave out: stirring, lumps, heat of crystals. Without it makers of {@code WholeBatchTest} who obey
     * land above the range. Own choice.
     */
    private static final double LEFT_OUT_FACTOR = 1.7;

    /** Right after a move the filter still follows the old curve; the rate is doubted for this long. */
    private static final Duration UNSETTLED = Duration.ofSeconds(15);

    /** How long the forecast made at the lift keeps its weight; about the delay of filter and wall layer. Own choice. */
    private static final double LIFT_HOLDS_SECONDS = 25;

    /** So far ahead the network's line is straight enough, and over so long the physics' curve takes its place. */
    private static final double LINE_HOLDS_SECONDS = 4;

    private static final double LINE_FADES_SECONDS = 16;

    private static final double SLOWEST_KELVIN_PER_SECOND = 0.05 / 60;

    private Forecasts() {}

    /**
     * The forecast at {@code now}.
     *
     * @param bathCelsius what a probe in the bath reads, where there is one
     * @param saying what the network said last, where there is one and it has spoken
     */
    public static Forecast make(
            Setup setup,
            Batch batch,
            Coasting coasting,
            Estimate estimate,
            OptionalDouble bathCelsius,
            Optional<Saying> saying,
            Instant now) {
        Coast coast = coasting.coast();
        double loss = coasting.lossKelvinPerSecond(setup, estimate.chocolateCelsius());
        Course course = new Course(
                batch.place(),
                estimate.chocolateCelsius(),
                estimate.rateKelvinPerMinute() / 60,
                loss,
                coast.seconds(),
                bathCelsius.orElse(usualBath(setup, batch)));
        double rateSigma = estimate.rateSigmaKelvinPerMinute() / 60 * (isSettled(batch, now) ? 1 : 2);
        Outlook fromNow = ifLifted(course, coast, rateSigma, estimate.sigmaKelvin());
        Outlook physics = afterLift(coasting, fromNow, course, now);
        Optional<HeardTurn> heard = saying.map(s -> HeardTurn.of(s, batch, coasting, estimate, estimate.at()))
                .filter(h -> h.fraction() > 0);
        Outlook turn = heard.map(h -> h.now().mixed(h.fraction(), Spread.of(physics)))
                .map(spread -> spread.after(physics.seconds()))
                .orElse(physics);
        Optional<Instant> liftAt = secondsToLift(setup.recipe(), batch, course, turn, physics, heard)
                .map(s -> estimate.at().plusMillis(Math.round(1000 * s)));
        return new Forecast(
                estimate.at(),
                turn,
                ifLeft(course, rateSigma, estimate.sigmaKelvin()),
                liftAt,
                course,
                rateSigma,
                estimate.sigmaKelvin());
    }

    /** Whether the rate is already that of where the bowl stands, and no longer of where it stood before. */
    public static boolean isSettled(Batch batch, Instant now) {
        return Duration.between(batch.contact().since(), now).compareTo(UNSETTLED) >= 0;
    }

    private static double usualBath(Setup setup, Batch batch) {
        if (batch.place() == Place.COLD_WATER) return USUAL_COLD_WATER_CELSIUS;
        return batch.phase() == Phase.MELT
                ? USUAL_MELTING_BATH_CELSIUS
                : setup.bathCelsius().orElse(setup.recipe().rewarmBathCelsius());
    }

    private static Outlook ifLifted(Course course, Coast coast, double rateSigma, double levelSigma) {
        double inflow = course.kelvinPerSecond() + course.lossKelvinPerSecond();
        double way = Coast.turnKelvin(coast.seconds(), inflow, course.lossKelvinPerSecond());
        double seconds = Coast.turnSeconds(coast.seconds(), inflow, course.lossKelvinPerSecond());
        double fromCoast = way * coast.logSpread();
        double fromRate = coast.seconds() * rateSigma;
        double known = Math.sqrt(fromCoast * fromCoast
                + fromRate * fromRate
                + levelSigma * levelSigma
                + LEAST_TURN_SIGMA_KELVIN * LEAST_TURN_SIGMA_KELVIN);
        double sigma = LEFT_OUT_FACTOR * known;
        return Outlook.around(course.celsius() + way, sigma, seconds);
    }

    /**
     * Right after a lift the layer at the wall and the filter's own delay keep the rate up for some seconds, and a
     * forecast from it alone would run ahead of the bowl. What was forecast at the lift still holds and is let go slowly.
     */
    private static Outlook afterLift(Coasting coasting, Outlook fromNow, Course course, Instant now) {
        if (coasting.lift().isEmpty()) return fromNow;
        Lift lift = coasting.lift().get();
        double loss = course.lossKelvinPerSecond();
        double way = Coast.turnKelvin(coasting.coast().seconds(), lift.kelvinPerMinute() / 60 + loss, loss);
        double age = Math.max(0, Duration.between(lift.at(), now).toMillis() / 1000.0);
        double weight = StrictMath.exp(-age / LIFT_HOLDS_SECONDS);
        double celsius = weight * (lift.celsius() + way) + (1 - weight) * fromNow.celsius();
        return Outlook.around(celsius, fromNow.sigmaKelvin(), fromNow.seconds());
    }

    /** See {@link Forecast#ifLeft}; the simulator's {@code WhatIf.ifLeft} is its truth. */
    private static Outlook ifLeft(Course course, double rateSigma, double levelSigma) {
        double horizon = Forecast.HORIZON.toSeconds();
        double inflow = course.kelvinPerSecond() + course.lossKelvinPerSecond();
        double turn = Coast.turnSeconds(course.coastSeconds(), inflow, course.lossKelvinPerSecond());
        boolean turns = course.place() == Place.TABLE && course.kelvinPerSecond() > 0;
        double at = turns ? Math.min(turn, horizon) : horizon;
        double celsius = course.at(at);
        return Outlook.around(celsius, CourseSpread.kelvin(course, at, rateSigma, levelSigma), at);
    }

    /**
     * Near, the network says how fast the turning point moves; further ahead its straight line runs too far, and the
     * physics' curve takes over, moved to where the turning point is now.
     */
    private static Optional<Double> secondsToLift(
            Recipe recipe, Batch batch, Course course, Outlook turn, Outlook physics, Optional<HeardTurn> heard) {
        if (heard.filter(h -> !h.liftable()).isPresent()) return Optional.empty();
        double moved = turn.celsius() - physics.celsius();
        double aim = Aim.celsius(recipe, batch, Spread.of(turn));
        Optional<Double> far = secondsToLift(batch, course, turn, aim - moved, aim);
        OptionalDouble near = heard.map(h -> h.secondsToLift(batch.place(), s -> Aim.celsius(recipe, batch, s)))
                .orElse(OptionalDouble.empty());
        if (near.isEmpty()) return far;
        double seconds = near.getAsDouble();
        double line = 1 - Math.min(1, Math.max(0, (seconds - LINE_HOLDS_SECONDS) / LINE_FADES_SECONDS));
        double fraction = heard.get().fraction() * line;
        return far.map(f -> fraction * seconds + (1 - fraction) * f)
                .or(() -> Optional.of(seconds).filter(s -> fraction >= 0.5));
    }

    /**
     * Seconds until {@code T(t) + L · r(t)} (less the loss on the way) reaches the aim, found by halving: the left side
     * goes one way only while the bath pushes.
     *
     * @param courseAim the aim as the course alone would have to reach it, °C
     */
    private static Optional<Double> secondsToLift(
            Batch batch, Course course, Outlook turn, double courseAim, double aim) {
        double push = course.kelvinPerSecond() * (batch.place() == Place.COLD_WATER ? -1 : 1);
        if (batch.place() == Place.TABLE || push < SLOWEST_KELVIN_PER_SECOND) return Optional.empty();
        double way = batch.place() == Place.COLD_WATER ? -1 : 1;
        double now = way * (turn.celsius() - aim);
        if (now >= 0) return Optional.of(-now / push);
        double early = 0;
        double late = 20 * 60;
        if (way * (turnAfterLiftAt(course, late) - courseAim) < 0) return Optional.empty();
        for (int i = 0; i < 40; i++) {
            double middle = (early + late) / 2;
            if (way * (turnAfterLiftAt(course, middle) - courseAim) < 0) early = middle;
            else late = middle;
        }
        return Optional.of(late);
    }

    private static double turnAfterLiftAt(Course course, double seconds) {
        double inflow = course.rateAt(seconds) + course.lossKelvinPerSecond();
        return course.at(seconds) + Coast.turnKelvin(course.coastSeconds(), inflow, course.lossKelvinPerSecond());
    }
}
