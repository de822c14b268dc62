package fifthform.curves.cue;

import fifthform.curves.crystal.Temper;
import fifthform.curves.recipe.CelsiusRange;
import fifthform.curves.recipe.Phase;
import fifthform.curves.setup.Holding;
import fifthform.curves.setup.Holding.Warmth;
import fifthform.curves.situation.Reason;
import fifthform.curves.situation.Reason.Figure;
import fifthform.curves.situation.Reason.Rule;
import java.time.Duration;
import java.time.Instant;
import java.util.OptionalDouble;

/** A planned hold: the warm box by its drift, what grows thick, and the end of the planned time. */
final class HoldCues {
    /** What is to be set or heard once is shown for so long. */
    private static final Duration SHOWN = Duration.ofSeconds(60);

    /** Three quarters of what pours poorly, kg per kg of fat: said before it is thick. Own choice. */
    private static final double NEARLY_THICK = 0.045;

    /** Nearer to the upper end nothing more is gained by warmth, K. */
    private static final double AT_THE_UPPER_END_KELVIN = 0.2;

    private static final Duration FLUID_AGAIN = Duration.ofMinutes(10);

    private final Look look;
    private final Holding plan;
    private final Held held;
    private final CelsiusRange work;

    private HoldCues(Look look, Holding plan) {
        this.look = look;
        this.plan = plan;
        this.held = look.before().held();
        this.work = look.situation().recipe().work().range();
    }

    static void collect(Look look) {
        if (look.phase() != Phase.WORK || look.before().held().since().isEmpty()) return;
        look.situation().setup().holding().ifPresent(plan -> new HoldCues(look, plan).collect());
    }

    private void collect() {
        over();
        if (plan.warmth() == Warmth.BOX) box();
        fluid();
    }

    private void over() {
        Duration beyond = held.time(now()).minus(plan.time());
        if (beyond.isNegative() || beyond.compareTo(SHOWN) > 0) return;
        Reason reason = look.reason(Rule.HELD_AS_PLANNED)
                .with(Figure.HELD_S, plan.time().toSeconds())
                .with(Figure.IN_RANGE_PCT, 100 * held.insideFraction());
        look.due(CueId.HOLD_OVER, plan.time().toSeconds() / 60.0, reason);
    }

    private void box() {
        held.box()
                .asked()
                .filter(change -> Duration.between(change.at(), now()).compareTo(SHOWN) <= 0)
                .ifPresent(change -> {
                    Reason reason = look.reason(Rule.DRIFTS_IN_THE_BOX)
                            .with(Figure.DRIFT_K_PER_MIN, change.driftKelvinPerMinute())
                            .with(Figure.SETTLES_C, held.box().settlesCelsius(look.celsius()))
                            .with(Figure.RANGE_LOW_C, work.lowCelsius())
                            .with(Figure.RANGE_HIGH_C, work.highCelsius());
                    CueId id = change.kelvin() > 0 ? CueId.BOX_WARMER : CueId.BOX_COOLER;
                    look.due(id, Math.abs(change.kelvin()), reason);
                });
    }

    private void fluid() {
        OptionalDouble seed = look.situation()
                .crystals()
                .map(Temper::watch)
                .map(w -> OptionalDouble.of(w.seed().middle()))
                .orElse(OptionalDouble.empty());
        boolean room = look.celsius() < work.highCelsius() - AT_THE_UPPER_END_KELVIN;
        boolean stands = look.before()
                .openSince(CueId.KEEP_FLUID)
                .filter(since -> Duration.between(since, now()).compareTo(SHOWN) <= 0)
                .isPresent();
        boolean again = held.fluidAskedAt()
                .filter(at -> Duration.between(at, now()).compareTo(FLUID_AGAIN) < 0)
                .isEmpty();
        if (seed.isEmpty() || seed.getAsDouble() < NEARLY_THICK || !room || !stands && !again) return;
        Reason reason = look.reason(Rule.GROWS_THICK)
                .with(Figure.SEED_PCT, 100 * seed.getAsDouble())
                .with(Figure.RANGE_HIGH_C, work.highCelsius());
        look.due(CueId.KEEP_FLUID, work.highCelsius(), reason);
    }

    private Instant now() {
        return look.situation().now();
    }
}
