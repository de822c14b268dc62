package fifthform.curves.whatif;

import fifthform.curves.crystal.Circumstances;
import fifthform.curves.crystal.CrystalWatch;
import fifthform.curves.crystal.SeedWord;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.recipe.CelsiusRange;
import fifthform.curves.recipe.Phase;
import fifthform.curves.whatif.Answer.End;
import fifthform.curves.whatif.Answer.Fit;
import fifthform.curves.whatif.Answer.Moment;
import fifthform.curves.whatif.Answer.Range;
import fifthform.curves.whatif.Answer.Simulated;
import fifthform.curves.whatif.Bodies.Parameter;
import fifthform.curves.whatif.Bodies.Way;
import fifthform.curves.whatif.Change.BathShifted;
import fifthform.curves.whatif.Change.LiftMoved;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One re-run of a fitted kitchen. What the two bodies cannot follow is taken from the readings themselves: what the fit
 * left over at a moment stays left over at the same moment of the re-run, counted from the lift once it has come. So only
 * the difference that the change makes rests on the fit. Lives within one {@link Rerun#of}.
 */
final class Simulation {
    /** Of the 5 and 95 % points of a normal distribution. */
    private static final double NINETY_PERCENT = 1.645;

    /** What is not known of any moment: reading, stirring, place of the tip; K. Calibrated, see DEVELOPERS.md. */
    private static final double FLOOR_KELVIN = 0.07;

    /**
     * What is not known of the difference that the change makes, as a share of it: at the lift, and how much more minutes
     * later, when crystals that melt or form have answered it. Calibrated, see DEVELOPERS.md.
     */
    private static final double SHARE_OF_CHANGE = 0.16;

    private static final double MORE_LATER = 0.25;
    private static final double LATER_SECONDS = 90;

    /** Over so long what was left over before the lift gives way to what was left over after it, s. */
    private static final double HANDED_OVER_SECONDS = 20;

    private static final double SMOOTHED_SECONDS = 5;

    /** As {@code Temper} has it: K of the layer at the wall for each K/s of heat that arrives, and the most of it. */
    private static final double LAYER_SECONDS = 50;

    private static final double MOST_LAYER_KELVIN = 5;

    private final PastBatch batch;
    private final PastLift lift;
    private final Stay stay;
    private final Window window;
    private final Bodies bodies;
    private final KitchenFit fit;
    private final Change change;
    private final double laterSeconds;
    private final double hotterKelvin;

    Simulation(PastBatch batch, PastLift lift, Stay stay, Window window, Bodies bodies, KitchenFit fit, Change change) {
        this.batch = batch;
        this.lift = lift;
        this.stay = stay;
        this.window = window;
        this.bodies = bodies;
        this.fit = fit;
        this.change = change;
        laterSeconds = change instanceof LiftMoved moved ? moved.laterSeconds() : 0;
        hotterKelvin = change instanceof BathShifted shifted ? shifted.hotterKelvin() : 0;
    }

    Simulated answer(End end) {
        double[] at = seconds();
        Course otherwise = window.course().liftedLater(laterSeconds);
        Way way = bodies.through(fit.parameters(), otherwise, hotterKelvin);
        double[] spread = fit.spread(p -> {
            Way then = bodies.through(p, otherwise, hotterKelvin);
            Way was = bodies.through(p, window.course());
            double[] off = new double[at.length];
            for (int i = 0; i < at.length; i++) off[i] = Way.at(then.chocolate(), at[i]) - measuredBy(was, at[i]);
            return off;
        });
        List<Moment> curve = new ArrayList<>(at.length);
        double[] walls = new double[at.length];
        for (int i = 0; i < at.length; i++) {
            double chocolate = Way.at(way.chocolate(), at[i]);
            walls[i] = Way.at(way.wall(), at[i]) - chocolate;
            double celsius = chocolate + leftOver(at[i]);
            double difference = chocolate - Way.at(fit.way().chocolate(), asMeasured(at[i]));
            double share = shareUnknown(at[i]) * difference;
            double band =
                    NINETY_PERCENT * Math.sqrt(spread[i] * spread[i] + FLOOR_KELVIN * FLOOR_KELVIN + share * share);
            curve.add(new Moment(instant(at[i]), celsius, celsius - band, celsius + band));
        }
        Moment turn = turn(curve);
        return new Simulated(
                change,
                lift,
                curve,
                end,
                turn,
                measuredTurn(),
                range(turn),
                seed(curve, walls),
                batch.wordAt(instant(window.course().endSeconds())),
                new Fit(fit.residualKelvin(), fit.parameters()[Parameter.WATER.ordinal()], coastSeconds()));
    }

    private double shareUnknown(double seconds) {
        double after = Math.max(0, seconds - newLift());
        return SHARE_OF_CHANGE + MORE_LATER * -StrictMath.expm1(-after / LATER_SECONDS);
    }

    /** Once a second from the point of change to the end. */
    private double[] seconds() {
        Course course = window.course();
        double from = hotterKelvin == 0 && laterSeconds != 0
                ? course.liftSeconds() + Math.min(0, laterSeconds)
                : Math.max(0, course.entrySeconds());
        double to = course.endSeconds() + laterSeconds;
        double[] at = new double[Math.max(2, (int) (to - from) + 1)];
        for (int i = 0; i < at.length; i++) at[i] = Math.min(to, from + i);
        return at;
    }

    private Instant instant(double seconds) {
        return window.zero().plusMillis(Math.round(1000 * seconds));
    }

    private double newLift() {
        return window.course().liftSeconds() + laterSeconds;
    }

    /** The moment of the measured curve that is like this one of the re-run: as long after the lift. */
    private double asMeasured(double seconds) {
        if (laterSeconds == 0) return seconds;
        if (seconds >= newLift()) return seconds - laterSeconds;
        return Math.min(seconds, window.course().liftSeconds());
    }

    /** How far what was handed over has come, 0 before the new lift to 1. */
    private double handedOver(double seconds) {
        return Math.max(0, Math.min(1, (seconds - newLift()) / HANDED_OVER_SECONDS));
    }

    private double measuredBy(Way was, double seconds) {
        double over = handedOver(seconds);
        double before = Math.min(seconds, window.course().liftSeconds());
        double after = asMeasured(seconds);
        return over * Way.at(was.tip(), after) + (1 - over) * Way.at(was.tip(), laterSeconds == 0 ? seconds : before);
    }

    private double leftOver(double seconds) {
        if (laterSeconds == 0) return smoothed(seconds);
        double over = handedOver(seconds);
        double before = Math.min(seconds, window.course().liftSeconds());
        return over * smoothed(asMeasured(seconds)) + (1 - over) * smoothed(before);
    }

    private double smoothed(double seconds) {
        double sum = 0;
        double weights = 0;
        double[] at = window.at();
        int nearest = 0;
        for (int i = 0; i < at.length; i++) {
            if (Math.abs(at[i] - seconds) < Math.abs(at[nearest] - seconds)) nearest = i;
            double weight = 1 - Math.abs(at[i] - seconds) / SMOOTHED_SECONDS;
            if (weight <= 0) continue;
            sum += weight * fit.residual()[i];
            weights += weight;
        }
        return weights > 0 ? sum / weights : fit.residual()[nearest];
    }

    private boolean rises() {
        return stay.place() == Place.BATH;
    }

    private Moment turn(List<Moment> curve) {
        Instant from = instant(newLift());
        Moment turn = curve.get(curve.size() - 1);
        for (Moment m : curve) {
            if (m.at().isBefore(from)) continue;
            boolean further = rises() ? m.celsius() > turn.celsius() : m.celsius() < turn.celsius();
            if (further) turn = m;
        }
        return turn;
    }

    private OptionalDouble measuredTurn() {
        double turn = Double.NaN;
        Course course = window.course();
        for (double s = course.liftSeconds(); s <= course.endSeconds(); s++) {
            double here = Way.at(fit.way().chocolate(), s) + smoothed(s);
            if (Double.isNaN(turn) || (rises() ? here > turn : here < turn)) turn = here;
        }
        return Double.isNaN(turn) ? OptionalDouble.empty() : OptionalDouble.of(turn);
    }

    private Range range(Moment turn) {
        boolean meant =
                rises() && (lift.phase() == Phase.SEED || lift.phase() == Phase.REWARM || lift.phase() == Phase.WORK);
        if (!meant) return Range.NOT_MEANT;
        CelsiusRange range = batch.setup().recipe().work().range();
        if (turn.lowerCelsius() > range.highCelsius()) return Range.PASSED;
        if (turn.upperCelsius() < range.lowCelsius()) return Range.NOT_REACHED;
        boolean within = turn.lowerCelsius() >= range.lowCelsius() && turn.upperCelsius() <= range.highCelsius();
        return within ? Range.KEPT : Range.UNSURE;
    }

    private double coastSeconds() {
        double share = StrictMath.exp(Bodies.of(fit.parameters(), Parameter.WALL_SHARE));
        return share / (1 + share) / StrictMath.exp(Bodies.of(fit.parameters(), Parameter.WALL_TO_CHOCOLATE));
    }

    /** The crystals along the curve and along both ends of its band; where they say different things, doubtful. */
    private Optional<SeedWord> seed(List<Moment> curve, double[] walls) {
        Optional<Kept> from = batch.crystalsAt(curve.get(0).at());
        if (from.isEmpty()) return Optional.empty();
        Optional<SeedWord> middle = word(from.get(), curve, walls, Moment::celsius);
        Optional<SeedWord> lower = word(from.get(), curve, walls, Moment::lowerCelsius);
        Optional<SeedWord> upper = word(from.get(), curve, walls, Moment::upperCelsius);
        if (middle.isEmpty()) return middle;
        return middle.equals(lower) && middle.equals(upper) ? middle : Optional.of(SeedWord.DOUBTFUL);
    }

    private interface Reading {
        double of(Moment moment);
    }

    private Optional<SeedWord> word(Kept from, List<Moment> curve, double[] walls, Reading reading) {
        double kc = StrictMath.exp(Bodies.of(fit.parameters(), Parameter.WALL_TO_CHOCOLATE));
        CrystalWatch watch = from.watch();
        for (int i = 0; i < curve.size(); i++) {
            Moment m = curve.get(i);
            if (!m.at().isAfter(from.at())) continue;
            double layer = Math.max(-MOST_LAYER_KELVIN, Math.min(MOST_LAYER_KELVIN, LAYER_SECONDS * kc * walls[i]));
            Circumstances round = new Circumstances(
                    OptionalDouble.of(layer),
                    from.stir().shearPerSecond(),
                    from.stir().isAssumed());
            watch = watch.read(batch.setup().recipe(), m.at(), reading.of(m), round, true);
        }
        return watch.spoken().word();
    }
}
