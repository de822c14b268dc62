package fifthform.curves.cue;

import fifthform.curves.estimate.Estimate;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.phase.PhaseProgress;
import fifthform.curves.recipe.CelsiusRange;
import fifthform.curves.recipe.Phase;
import fifthform.curves.recipe.PhaseTarget;
import fifthform.curves.situation.ProbePlace;
import fifthform.curves.situation.Situation;
import java.time.Duration;
import java.time.Instant;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Which steps are due. Each cue has what begins it and what ends it; most end by the maker's act, seen or said. */
public final class CueRules {
    private static final double GET_READY_SECONDS = 15;
    private static final Duration IN_RANGE_SHOWN = Duration.ofSeconds(30);
    private static final double STILL_FALLING_KELVIN_PER_MINUTE = -0.3;
    private static final double HARDLY_FALLING_KELVIN_PER_MINUTE = -0.6;
    private static final double FELL_SHORT_KELVIN = 0.1;
    private static final double EDGE_KELVIN = 0.2;

    /** A touch of the bath, s: first guess and bounds. Own choice; a rule of dips found in simulated kitchens. */
    private static final double FIRST_TOUCH_SECONDS = 8;

    private static final double SHORTEST_TOUCH_SECONDS = 2;
    private static final double LONGEST_TOUCH_SECONDS = 40;
    private static final double TOUCH_SHARE = 0.8;
    private static final double SLOWEST_TOUCH_KELVIN_PER_SECOND = 0.3 / 60;

    private final Situation situation;
    private final CueBoard before;
    private final Map<CueId, OptionalDouble> due = new EnumMap<>(CueId.class);

    private CueRules(Situation situation, CueBoard before) {
        this.situation = situation;
        this.before = before;
    }

    /** The board after one more look. Without a good reading nothing new is said, and only what the
     * maker has done by key is taken back. */
    public static CueBoard next(Situation situation, CueBoard before) {
        if (situation.probe() == ProbePlace.OUT) return CueBoard.empty();
        if (situation.trusted().isEmpty())
            return before.fitting(situation.batch().place());
        CueRules rules = new CueRules(situation, before);
        Optional<Instant> liftReached = rules.look(situation.trusted().get());
        return before.next(rules.due, liftReached, situation.now());
    }

    /** Collects what is due; answers with the reading at which the second to lift was first reached. */
    private Optional<Instant> look(Estimate estimate) {
        melted(estimate);
        boolean stop = stopCooling(estimate);
        if (!stop) holdCool();
        backIntoTheCold(estimate);
        Optional<Instant> liftReached = lift(estimate);
        putBack(estimate);
        inRange(estimate);
        return liftReached;
    }

    private void melted(Estimate estimate) {
        PhaseTarget melt = situation.recipe().melt();
        boolean done = phase() == Phase.MELT
                && place() == Place.BATH
                && progress().dwell().compareTo(melt.dwell()) >= 0;
        if (done) due(CueId.MELTED, estimate.chocolateCelsius());
    }

    /** Out of the cold water once the trough, with the hands' reaction on the way, reaches the middle of the range. */
    private boolean stopCooling(Estimate estimate) {
        boolean cooling = (phase() == Phase.COOL || phase() == Phase.SEED) && place() == Place.COLD_WATER;
        if (!cooling) return false;
        boolean reached = secondsToLift().filter(s -> s <= reactionSeconds()).isPresent();
        boolean alreadyCold =
                estimate.chocolateCelsius() < situation.recipe().cool().range().lowCelsius();
        boolean stillTold =
                before.isOpen(CueId.STOP_COOLING) && estimate.rateKelvinPerMinute() < STILL_FALLING_KELVIN_PER_MINUTE;
        boolean now = reached || alreadyCold || stillTold;
        if (now) due(CueId.STOP_COOLING, turnCelsius());
        return now;
    }

    /** Lifted too soon: it has stopped sinking above the cool range, and waiting for the room to cool it takes too long. */
    private void backIntoTheCold(Estimate estimate) {
        if (phase() != Phase.COOL || place() != Place.TABLE) return;
        CelsiusRange cool = situation.recipe().cool().range();
        boolean stranded = estimate.chocolateCelsius() > cool.highCelsius()
                && estimate.rateKelvinPerMinute() > HARDLY_FALLING_KELVIN_PER_MINUTE
                && situation.coasting().lift().isEmpty();
        if (stranded || before.isOpen(CueId.PUT_BACK)) {
            due(CueId.PUT_BACK, touchSeconds(estimate.chocolateCelsius() - cool.midCelsius(), Phase.COOL));
        }
    }

    private void holdCool() {
        if (phase() != Phase.SEED || place() == Place.BATH) return;
        Duration left = situation.recipe().cool().dwell().minus(progress().dwell());
        if (left.isNegative() || left.isZero()) due(CueId.CRYSTALS_ENOUGH, OptionalDouble.empty());
        else due(CueId.STIR_ON, left.toSeconds() / 60.0);
    }

    private Optional<Instant> lift(Estimate estimate) {
        boolean warming = (phase() == Phase.REWARM || phase() == Phase.WORK) && place() == Place.BATH;
        if (!warming) return Optional.empty();
        Optional<Double> left = secondsToLift().map(s -> s - reactionSeconds());
        boolean reached = left.filter(s -> s <= 0).isPresent();
        boolean believed =
                reached && before.liftReached().filter(estimate.at()::isAfter).isPresent();
        // Once said it stands until the bowl is seen or said to have left: wavering would cost the maker's trust.
        if (believed || before.isOpen(CueId.LIFT_NOW)) due(CueId.LIFT_NOW, turnCelsius());
        else if (left.filter(s -> s <= GET_READY_SECONDS).isPresent()) due(CueId.GET_READY, Math.max(0, left.get()));
        else if (before.isOpen(CueId.GET_READY)
                && left.filter(s -> s <= 2 * GET_READY_SECONDS).isPresent()) {
            due(CueId.GET_READY, left.get());
        }
        return reached ? Optional.of(before.liftReached().orElse(estimate.at())) : Optional.empty();
    }

    /** A peak that fell short, or work that has cooled: a touch of the bath, its length from what the last one did. */
    private void putBack(Estimate estimate) {
        boolean hot = phase() == Phase.REWARM || phase() == Phase.WORK;
        if (!hot || place() != Place.TABLE) return;
        CelsiusRange work = situation.recipe().work().range();
        double short0 = work.lowCelsius() - FELL_SHORT_KELVIN;
        double turns = Math.max(estimate.chocolateCelsius(), turnCelsius());
        boolean fellShort = turns < short0 && estimate.chocolateCelsius() < short0 && coastIsOver(estimate);
        boolean stillShort = before.isOpen(CueId.PUT_BACK) && turns < work.lowCelsius();
        if (fellShort || stillShort) {
            due(CueId.PUT_BACK, touchSeconds(work.midCelsius() - estimate.chocolateCelsius(), Phase.REWARM));
        }
    }

    private boolean coastIsOver(Estimate estimate) {
        return situation.coasting().lift().isEmpty() && estimate.rateKelvinPerMinute() < 0.3;
    }

    /**
     * How long a touch of the water should be. At the rate r that the last one in this direction reached, a touch of N
     * seconds moves the bowl by {@code r·N} while it lasts and by {@code r·L·(1 − e^(−2N/L))} of coast after it, since the
     * wall fills about twice as fast as it empties. Somewhat less than what is missing is asked for: a touch can
     * be repeated, not undone.
     */
    private double touchSeconds(double missingKelvin, Phase direction) {
        double perSecond = situation
                .coasting()
                .lastTurn()
                .map(t -> t.lift().kelvinPerMinute() / 60)
                .filter(rate -> direction == Phase.COOL ? rate < 0 : rate > 0)
                .map(Math::abs)
                .orElse(0.0);
        if (perSecond < SLOWEST_TOUCH_KELVIN_PER_SECOND) return FIRST_TOUCH_SECONDS;
        double coastSeconds = situation.coasting().coast().seconds();
        double seconds = SHORTEST_TOUCH_SECONDS;
        while (seconds < LONGEST_TOUCH_SECONDS) {
            double moved = seconds + coastSeconds * -StrictMath.expm1(-2 * seconds / coastSeconds);
            if (perSecond * moved >= TOUCH_SHARE * missingKelvin) break;
            seconds += 0.5;
        }
        return seconds;
    }

    private void inRange(Estimate estimate) {
        if (phase() != Phase.WORK) return;
        CelsiusRange work = situation.recipe().work().range();
        boolean open = before.isOpen(CueId.IN_RANGE);
        // Once said it is not taken back for a hair's breadth: at the edge of the range noise would say it again and
        // again.
        double margin = open ? EDGE_KELVIN : 0;
        boolean inside = estimate.chocolateCelsius() >= work.lowCelsius() - margin
                && estimate.chocolateCelsius() <= work.highCelsius() + margin;
        // Counted by the time in the range, not in the phase: work may begin below it and be brought in by a touch.
        boolean fresh = progress().dwell().compareTo(IN_RANGE_SHOWN) <= 0;
        if (inside && fresh) due(CueId.IN_RANGE, estimate.chocolateCelsius());
    }

    private Optional<Double> secondsToLift() {
        return situation.forecast().flatMap(f -> f.secondsToLift(situation.now()));
    }

    private double turnCelsius() {
        return situation
                .forecast()
                .map(f -> f.ifLifted().celsius())
                .orElse(situation.estimate().orElseThrow().chocolateCelsius());
    }

    private double reactionSeconds() {
        return situation.setup().reactionTime().toMillis() / 1000.0;
    }

    private void due(CueId id, double figure) {
        due(id, OptionalDouble.of(figure));
    }

    private void due(CueId id, OptionalDouble figure) {
        due.put(id, figure);
    }

    private Phase phase() {
        return situation.batch().phase();
    }

    private Place place() {
        return situation.batch().place();
    }

    private PhaseProgress progress() {
        return situation.batch().progress();
    }
}
