package fifthform.curves.crystal;

import fifthform.curves.estimate.Estimate;
import fifthform.curves.forecast.Coasting;
import fifthform.curves.input.MakerAction.StirringSaid.Stirring;
import fifthform.curves.phase.Batch;
import fifthform.curves.recipe.Phase;
import fifthform.curves.setup.Setup;
import fifthform.curves.signal.Window;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The temper of a batch as far as its temperatures tell: the crystals, the stirring they rest on, and how much longer to
 * stand in the cool range. An estimate from temperature alone; a sample proves it.
 *
 * @param watch the crystals
 * @param stir whether it is stirred
 * @param hold how much longer to stir in the cool range; empty elsewhere
 */
public record Temper(CrystalWatch watch, StirWatch stir, Optional<HoldNeed> hold) {
    /**
     * How far the layer at the wall is from the bulk, in s: K for each K/s of heat that arrives. Chocolate and wall are
     * two bodies, {@code dC/dt = (W − C)/τ} with τ of 105 s in steel and 150 s in glass (0.5 kg; heat capacities and the
     * forecast's coast times without what clings); the layer lies midway, and rather less is taken than too much.
     */
    private static final double LAYER_SECONDS = 50;

    /** A cold wall is 2 to 10 K from its chocolate (reference), its layer half of that; more is a probe, not a wall. */
    private static final double MOST_LAYER_KELVIN = 5;

    /** Seed is taken for chopped chocolate at the temperature of a kitchen. */
    private static final double SEED_CELSIUS = 20;

    public Temper {
        Objects.requireNonNull(watch, "watch");
        Objects.requireNonNull(stir, "stir");
        Objects.requireNonNull(hold, "hold");
    }

    /** Before the first reading; empty where the model does not hold for this chocolate ({@link Fat#of} says why). */
    public static Optional<Temper> atStart(Setup setup) {
        Crystals bars = setup.beginning().again().isPresent() ? Crystals.BLOOMED : Crystals.SOLID;
        return kinetics(setup).map(k -> new Temper(CrystalWatch.of(k, bars), StirWatch.NONE, Optional.empty()));
    }

    private static Optional<Kinetics> kinetics(Setup setup) {
        return Fat.of(setup.recipe().composition()).fold(fat -> Optional.of(Kinetics.of(fat)), no -> Optional.empty());
    }

    /** The same batch of what is said to be another chocolate; empty where the model does not hold for it. */
    public Optional<Temper> of(Setup setup) {
        return Fat.of(setup.recipe().composition())
                .fold(
                        fat -> Optional.of(
                                fat.equals(watch.kinetics().fat()) ? this : with(watch.of(Kinetics.of(fat)), stir)),
                        no -> Optional.empty());
    }

    /**
     * After an input.
     *
     * @param before the batch before it
     * @param batch the batch after it
     * @param news a reading that can be trusted, where the input was one
     * @param passed time since the reading before
     */
    public Temper followed(
            Setup setup,
            Batch before,
            Batch batch,
            Coasting coasting,
            Optional<Estimate> news,
            Window window,
            OptionalDouble bathCelsius,
            Instant now,
            Duration passed) {
        // Of chocolate in temper nothing can be said before the first reading tells how it comes.
        boolean unread = setup.beginning().isInTemper() && watch.beat().isEmpty() && news.isEmpty();
        boolean begun = batch.phase() != Phase.MELT && !unread;
        boolean meltBegins = !begun && before.phase() != Phase.MELT;
        Temper here = joined(before, batch).begun(setup, news);
        if (news.isEmpty()) {
            CrystalWatch silent = here.watch.silent(now, begun, here.stir.isAssumed());
            return silent == watch ? this : new Temper(silent, here.stir, here.hold);
        }
        Estimate reading = news.get();
        StirWatch stirs =
                here.stir.followed(setup, batch.contact(), reading, window, bathCelsius, !begun, meltBegins, passed);
        double arrives =
                reading.rateKelvinPerMinute() / 60 + coasting.lossKelvinPerSecond(setup, reading.chocolateCelsius());
        double layer = Math.min(MOST_LAYER_KELVIN, Math.max(-MOST_LAYER_KELVIN, LAYER_SECONDS * arrives));
        Circumstances round = new Circumstances(OptionalDouble.of(layer), stirs.shearPerSecond(), stirs.isAssumed());
        CrystalWatch read = here.watch.read(setup.recipe(), reading.at(), reading.chocolateCelsius(), round, begun);
        Optional<HoldNeed> need = isCool(setup, batch, reading)
                ? Optional.of(HoldNeed.next(
                        here.hold,
                        read,
                        reading.chocolateCelsius(),
                        stirs.shearPerSecond(),
                        setup.recipe().work().range().lowCelsius(),
                        reading.at()))
                : Optional.empty();
        return new Temper(read, stirs, need);
    }

    private static boolean isCool(Setup setup, Batch batch, Estimate reading) {
        boolean making = batch.phase() == Phase.SEED || batch.phase() == Phase.COOL || batch.phase() == Phase.REWARM;
        return making
                && reading.chocolateCelsius() < setup.recipe().work().range().lowCelsius() - 1;
    }

    /** A batch that the curve took for one that is cooling already: nobody saw what was melted. */
    private Temper joined(Batch before, Batch batch) {
        boolean left = before.phase() == Phase.MELT && batch.phase() != Phase.MELT;
        if (!left || watch.melt().erased()) return this;
        boolean seenMelted = before.melted().isSeen();
        return with(watch.leftTheMelt(seenMelted), stir);
    }

    /** Of chocolate that is said to be in temper the first reading tells whether it comes as bars or kept warm. */
    private Temper begun(Setup setup, Optional<Estimate> news) {
        boolean first = setup.beginning().isInTemper() && watch.beat().isEmpty() && news.isPresent();
        if (!first) return this;
        return with(watch.holding(KeptTemper.at(watch.kinetics(), news.get().chocolateCelsius())), stir);
    }

    /** A sample of chocolate that was said to be in temper has shown it. */
    public Temper provedKept(Setup setup) {
        return setup.beginning().isInTemper() ? with(watch.holding(KeptTemper.proved(watch.copies())), stir) : this;
    }

    /** The maker says that it is melted and cools from now on. */
    public Temper saidMelted() {
        return with(watch.saidMelted(), stir);
    }

    /** The maker says whether it is stirred. */
    public Temper said(Stirring stirring) {
        return with(watch, stir.said(stirring));
    }

    /** Tempered chocolate went in; not weighed where the grams are 0. */
    public Temper seeded(Setup setup, double grams) {
        OptionalDouble bowl = setup.bowl().amountGrams();
        double weighed = grams > 0 ? grams : setup.seedGrams().orElse(0);
        Optional<AddedSeed> seed = weighed > 0 && bowl.isPresent()
                ? Optional.of(AddedSeed.chocolate(
                        watch.kinetics(), weighed, bowl.getAsDouble(), SEED_CELSIUS, AddedSeed.Shape.CHOPPED))
                : Optional.empty();
        return with(watch.seeded(seed), stir);
    }

    /** How much longer to stir where the bowl is, by the crystals; empty where the model cannot say. */
    public Optional<Duration> holdLeft(Instant now) {
        boolean sure = watch.misgiving().filter(Misgiving::spoilsEveryWord).isEmpty();
        return sure ? hold.flatMap(need -> need.leftAt(now)) : Optional.empty();
    }

    /** What to do after an overshoot that reached melt-out or cost the seed; empty where none did. */
    public Optional<Advice> advice(Setup setup) {
        Optional<SeedWord> word = watch.spoken().word();
        return word.flatMap(w -> watch.overshoot()
                .filter(o -> o.highestCelsius() >= setup.recipe().meltOut().limitCelsius()
                        || o.lostAt().isPresent())
                .map(o -> Advice.after(
                        o, w, setup.seedGrams().isPresent(), setup.bowl().amountGrams())));
    }

    private Temper with(CrystalWatch otherWatch, StirWatch otherStir) {
        return new Temper(otherWatch, otherStir, hold);
    }
}
