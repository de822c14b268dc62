package fifthform.simulator.maker;

import fifthform.curves.engine.Event;
import fifthform.simulator.bowl.ProbePlace;
import fifthform.simulator.bowl.Spot;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/**
 * Somebody who explores, at one moment: goes from stay to stay by clock and thermometer, and hears nothing.
 *
 * @param plan what is meant to be done
 * @param stay which stay it is at; beyond the last when all is done
 * @param begunAt when the batch began; empty before
 * @param since when the stay began
 * @param atFirstCelsius what the thermometer showed then, NaN where nothing
 * @param spoon stirring or resting
 * @param wipeAt when the outside will be wiped
 * @param seedLeftGrams seed that waits to be thrown in
 * @param luck for small choices
 */
record Explorer(
        Exploration plan,
        int stay,
        Optional<Instant> begunAt,
        Instant since,
        double atFirstCelsius,
        Spoon spoon,
        Optional<Instant> wipeAt,
        double seedLeftGrams,
        Luck luck)
        implements Exploring {
    /** Nobody explores for longer. */
    private static final Duration LONGEST = Duration.ofMinutes(45);

    Explorer {
        Objects.requireNonNull(plan, "plan");
        Objects.requireNonNull(begunAt, "begunAt");
        Objects.requireNonNull(since, "since");
        Objects.requireNonNull(spoon, "spoon");
        Objects.requireNonNull(wipeAt, "wipeAt");
        Objects.requireNonNull(luck, "luck");
    }

    static Explorer beginning(Habits habits, Luck luck) {
        Exploration plan = ExplorationDraw.of(habits, luck.branch(0));
        Spoon spoon = Spoon.resting(plan.stirring(), habits.plan().stirringShare(), luck.branch(1));
        return new Explorer(
                plan,
                0,
                Optional.empty(),
                Instant.MIN,
                Double.NaN,
                spoon,
                Optional.empty(),
                plan.seedGrams(),
                luck.branch(2));
    }

    @Override
    public Maker told(Event event) {
        return this;
    }

    @Override
    public Next next(KitchenView view) {
        return new ExplorerAtWork(this, view).next();
    }

    @Override
    public boolean done() {
        return stay >= plan.stays().size();
    }

    boolean outOfTime(Instant at) {
        return begunAt.isPresent() && Duration.between(begunAt.get(), at).compareTo(LONGEST) >= 0;
    }

    ProbePlace probe(Instant at) {
        double seconds =
                begunAt.map(b -> Duration.between(b, at).toMillis() / 1000.0).orElse(0.0);
        for (Spell spell : plan.spells()) if (spell.lasts(seconds)) return spell.place();
        return ProbePlace.IN_CHOCOLATE;
    }

    @Override
    public Spot rewarm() {
        return plan.rewarm();
    }

    @Override
    public double stirringShare() {
        Stirring stirring = plan.stirring();
        if (stirring.vigourFraction() == 0) return 0;
        return stirring.boutSeconds() / (stirring.boutSeconds() + stirring.pauseSeconds());
    }

    @Override
    public double stirringVigour() {
        return plan.stirring().vigourFraction() * spoon.share();
    }
}
