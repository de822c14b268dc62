package fifthform.curves.review;

import fifthform.curves.engine.State;
import fifthform.curves.engine.Step;
import fifthform.curves.input.Input;
import fifthform.curves.recipe.Phase;
import fifthform.curves.setup.Setup;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What went wrong first: the causes of a batch, counted step by step as {@link Tally} counts its figures. Built from what
 * the engine says only; some kilobytes however long the batch.
 *
 * <p>A cause that a later step of the same batch mended is not among them: too few crystals of a first cool step, once
 * there was a second. What only might have gone wrong, such as a bath that was too hot and did nothing, is none.
 */
public final class Causes {
    private final Setup setup;
    private final Phase phase;
    private final Instant now;
    private final MeltLook melt;
    private final CoolLook cool;
    private final HeatLook heat;
    private final InstrumentLook instruments;
    private final WorkLook work;

    private Causes(
            Setup setup,
            Phase phase,
            Instant now,
            MeltLook melt,
            CoolLook cool,
            HeatLook heat,
            InstrumentLook instruments,
            WorkLook work) {
        this.setup = Objects.requireNonNull(setup, "setup");
        this.phase = phase;
        this.now = now;
        this.melt = melt;
        this.cool = cool;
        this.heat = heat;
        this.instruments = instruments;
        this.work = work;
    }

    /**
     * Before the first input.
     *
     * @param header the set-up of the session's first line
     */
    public static Causes start(Setup header, State start) {
        return new Causes(
                header,
                start.batch().phase(),
                start.at(),
                MeltLook.NONE,
                CoolLook.NONE,
                HeatLook.NONE,
                InstrumentLook.NONE,
                WorkLook.NONE);
    }

    /**
     * After one more step.
     *
     * @param inForce the set-up in force
     * @param before the state before it
     * @param input what happened
     * @param step what it led to
     */
    public Causes with(Setup inForce, State before, Input input, Step step) {
        Glimpse glimpse = new Glimpse(inForce, before, input, step);
        return new Causes(
                inForce,
                glimpse.phase,
                glimpse.now,
                melt.with(glimpse),
                cool.with(glimpse),
                heat.with(glimpse),
                instruments.with(glimpse),
                work.with(glimpse));
    }

    /** Everything that went wrong up to here, earliest first; faults and remarks. */
    public List<Cause> all() {
        List<Cause> all = new ArrayList<>(melt.causes(setup.recipe().scorchCelsius()));
        double deep =
                setup.recipe().cool().range().lowCelsius() - fifthform.curves.alarm.AlarmConditions.OVER_COOLED_KELVIN;
        all.addAll(cool.causes(deep, work.stopCooling()));
        all.addAll(heat.causes(
                setup.recipe().work().range().highCelsius(),
                setup.recipe().meltOut().warnCelsius(),
                setup.reactionTime()));
        all.addAll(instruments.causes(now));
        all.addAll(work.causes(phase, now));
        all.sort(Comparator.comparing(Cause::at).thenComparing(Cause::kind));
        return List.copyOf(all);
    }

    /** The faults, earliest first. */
    public List<Cause> faults() {
        return all().stream().filter(c -> c.weight() == Cause.Weight.FAULT).toList();
    }

    /** What went wrong first. */
    public Optional<Cause> first() {
        return faults().stream().findFirst();
    }
}
