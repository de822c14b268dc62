package fifthform.curves.signal;

import fifthform.curves.input.ProbeFault;
import fifthform.curves.input.Sample;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a probe's readings say about the probe itself, beside what its {@link Track} sees in each single one. Judged from
 * the bare readings: a correction moves them all alike.
 *
 * @param repeats how often the same number came
 * @param polarity whether it moves the wrong way
 * @param tip where the tip is
 * @param kink whether its curve has just bent as chocolate's cannot
 * @param scale whether its numbers are °F
 * @param dip whether it is just being dipped, and the lag that a dip showed
 * @param lastDoubt the latest doubt that asks for hands; stays when it is over, for who asks what it was
 * @param lastFault the latest fault that was reported
 */
public record Judgement(
        Repeats repeats,
        Polarity polarity,
        TipPlace tip,
        Kink kink,
        Scale scale,
        Dip dip,
        Optional<Doubt> lastDoubt,
        Optional<ProbeFault> lastFault) {
    public Judgement {
        Objects.requireNonNull(repeats, "repeats");
        Objects.requireNonNull(polarity, "polarity");
        Objects.requireNonNull(tip, "tip");
        Objects.requireNonNull(kink, "kink");
        Objects.requireNonNull(scale, "scale");
        Objects.requireNonNull(dip, "dip");
        Objects.requireNonNull(lastDoubt, "lastDoubt");
        Objects.requireNonNull(lastFault, "lastFault");
    }

    /** Before the first reading. */
    public static Judgement since(Instant start) {
        return new Judgement(
                Repeats.NONE,
                Polarity.UNSEEN,
                TipPlace.IN_CHOCOLATE,
                Kink.NONE,
                Scale.UNSEEN,
                Dip.waitingSince(start),
                Optional.empty(),
                Optional.empty());
    }

    /** Once the bowl's probe has read {@code sample} with this around it. */
    public Judgement inTheBowl(Sample sample, Surroundings around) {
        Repeats repeated = repeats.with(sample.at(), sample.tipCelsius());
        double step = repeated.seenStepKelvin();
        Dip dipped = dip.with(sample.at(), sample.tipCelsius(), step);
        return new Judgement(
                repeated,
                polarity.with(sample, around),
                tip.with(sample.at(), sample.tipCelsius(), step, around),
                // A tip that is just being dipped bends as it should.
                dipped.settling() ? Kink.NONE : kink.with(sample.at(), sample.tipCelsius(), step, around),
                scale.with(sample.at(), sample.tipCelsius(), step),
                dipped,
                lastDoubt,
                lastFault);
    }

    /** Once a probe has read {@code sample} of which it is only known that it is not in the chocolate. */
    public Judgement elsewhere(Sample sample) {
        Repeats repeated = repeats.with(sample.at(), sample.tipCelsius());
        return new Judgement(repeated, polarity, tip, kink, scale, dip, lastDoubt, lastFault);
    }

    /** Once its adapter has reported this fault. */
    public Judgement with(ProbeFault fault) {
        return new Judgement(repeats, polarity, tip, kink, scale, dip, lastDoubt, Optional.of(fault));
    }

    /** Once this is the doubt that is told. */
    public Judgement naming(Optional<Doubt> told) {
        Optional<Doubt> latest = told.filter(Doubt::needsHands).or(() -> lastDoubt);
        return latest.equals(lastDoubt)
                ? this
                : new Judgement(repeats, polarity, tip, kink, scale, dip, latest, lastFault);
    }

    /** Out of the chocolate on purpose: where the tip is and what it repeats is nobody's business meanwhile. */
    public Judgement takenOut() {
        return new Judgement(
                Repeats.NONE,
                polarity,
                TipPlace.IN_CHOCOLATE,
                Kink.NONE,
                scale,
                new Dip(dip.armedAt(), Dip.Watch.IDLE, List.of(), dip.lag()),
                lastDoubt,
                lastFault);
    }

    /** Back in the chocolate: the next rise is a dip. */
    public Judgement putBack(Instant at) {
        return new Judgement(
                Repeats.NONE, polarity, TipPlace.IN_CHOCOLATE, Kink.NONE, scale, dip.putBack(at), lastDoubt, lastFault);
    }

    /** What is to be doubted about the present number. */
    public Optional<Doubt> doubt(Surroundings around) {
        if (repeats.isDead()) return Optional.of(Doubt.DEAD_LINE);
        if (repeats.isStuck(around.waterTold())) return Optional.of(Doubt.STUCK);
        if (scale.doubt().isPresent()) return scale.doubt();
        if (polarity.reversed().isPresent()) return Optional.of(Doubt.REVERSED);
        if (tip.doubt().isPresent()) return tip.doubt();
        if (dip.settling() || repeats.isUnproven()) return Optional.of(Doubt.SETTLING);
        return kink.doubt();
    }

    /**
     * The reading with its resolution as its neighbours show it: an adapter that steps by 0.25 K may well print two
     * decimals.
     */
    public Sample resolved(Sample sample) {
        return sample.atLeastUnsure(repeats.seenStepKelvin() / Math.sqrt(12));
    }

    /** Whether the tip is not in the chocolate, or not yet as warm as it. */
    public boolean tipIsElsewhere() {
        return tip.doubt().isPresent() || kink.doubt().isPresent() || dip.settling();
    }

    /** How fast the chocolate's temperature went, K/s, before the tip was elsewhere; empty where nobody saw. */
    public OptionalDouble slopeBefore() {
        return kink.slopeBefore();
    }

    /** The lag that a dip showed. */
    public Optional<Lag> lag() {
        return dip.lag();
    }
}
