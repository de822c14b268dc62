package fifthform.curves.crystal;

import fifthform.curves.recipe.Recipe;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The crystals of one batch, followed reading by reading: three copies of the model at a fixed beat of a second, what the
 * melt has erased, and the one word about the seed. An estimate from temperature and stirring; nothing here was measured.
 *
 * @param kinetics the model for this chocolate's fat
 * @param copies the three copies
 * @param beat how far they have been stepped; empty before the first reading
 * @param melt what the melt has erased
 * @param four whether form IV has melted
 * @param spoken the word
 * @param misgiving why the word is not taken as the model gives it
 * @param overshoot the latest stay above the warning temperature
 */
public record CrystalWatch(
        Kinetics kinetics,
        Copies copies,
        Optional<Beat> beat,
        MeltMemory melt,
        FormFourGone four,
        Spoken spoken,
        Optional<Misgiving> misgiving,
        Optional<Overshoot> overshoot) {
    /** After so long without a reading the word is doubtful until the next full melt. */
    private static final Duration LONGEST_GAP = Duration.ofMinutes(2);

    /** As the alarm about the same temperature: or its verdict would give way to that of a flicker of the reading, K. */
    private static final double BACK_BY_KELVIN = 0.3;

    /** What rises again so soon is the same heat, and what it left is judged by how it began. Own choice. */
    private static final Duration SAME_HEAT = Duration.ofMinutes(5);

    /** After so long no straight line says what it was like between; the crystals are left as they were, in doubt. */
    private static final Duration ANOTHER_DAY = Duration.ofHours(6);

    public CrystalWatch {
        Objects.requireNonNull(kinetics, "kinetics");
        Objects.requireNonNull(copies, "copies");
        Objects.requireNonNull(beat, "beat");
        Objects.requireNonNull(melt, "melt");
        Objects.requireNonNull(four, "four");
        Objects.requireNonNull(spoken, "spoken");
        Objects.requireNonNull(misgiving, "misgiving");
        Objects.requireNonNull(overshoot, "overshoot");
    }

    /** Solid chocolate in the bowl, before the first reading. */
    public static CrystalWatch solid(Kinetics kinetics) {
        return of(kinetics, Crystals.SOLID);
    }

    /** These crystals in the bowl, before the first reading. */
    static CrystalWatch of(Kinetics kinetics, Crystals crystals) {
        return new CrystalWatch(
                kinetics,
                Copies.all(crystals),
                Optional.empty(),
                MeltMemory.NONE,
                FormFourGone.NOT_YET,
                Spoken.NOTHING,
                Optional.empty(),
                Optional.empty());
    }

    /** What a reading leads to. */
    public CrystalWatch read(Recipe recipe, Instant at, double celsius, Circumstances round, boolean coolStepBegun) {
        if (!(celsius >= Kinetics.LOWEST_CELSIUS && celsius <= Kinetics.HIGHEST_CELSIUS)) {
            return doubting(Misgiving.READINGS).speaking(at, coolStepBegun, round.assumed());
        }
        if (beat.isEmpty()) {
            Beat begun = Beat.at(at, celsius);
            return with(copies, Optional.of(begun), melt, four, misgiving, overshoot)
                    .speaking(at, coolStepBegun, round.assumed());
        }
        if (Duration.between(beat.get().readAt(), at).compareTo(ANOTHER_DAY) > 0) {
            return with(copies, Optional.of(Beat.at(at, celsius)), melt, four, misgiving, overshoot)
                    .doubting(Misgiving.GAP)
                    .speaking(at, coolStepBegun, round.assumed());
        }
        CrystalWatch here = sound(coolStepBegun);
        Run run = here.new Run(recipe, round, coolStepBegun);
        Instant before = beat.get().readAt();
        Beat after = beat.get().to(at, celsius, run);
        CrystalWatch gone = run.result(after);
        boolean gap = Duration.between(before, at).compareTo(LONGEST_GAP) > 0;
        return (gap ? gone.doubting(Misgiving.GAP) : gone).speaking(at, coolStepBegun, round.assumed());
    }

    /**
     * Time passes without a reading that could be used.
     *
     * @param stirringAssumed whether it is only assumed how it is stirred
     */
    public CrystalWatch silent(Instant now, boolean coolStepBegun, boolean stirringAssumed) {
        boolean gap = beat.filter(b -> Duration.between(b.readAt(), now).compareTo(LONGEST_GAP) > 0)
                .isPresent();
        return (gap ? doubting(Misgiving.GAP) : this).speaking(now, coolStepBegun, stirringAssumed);
    }

    /** The maker says that it is fully melted; more is not known of what was before. */
    public CrystalWatch saidMelted() {
        return with(
                Copies.all(Crystals.MELTED),
                beat,
                new MeltMemory(melt.atTarget(), true),
                four,
                Optional.empty(),
                Optional.empty());
    }

    /** It leaves the melt before everything was surely erased; where nobody saw it melt, even less is known. */
    CrystalWatch leftTheMelt(boolean seenMelted) {
        return melt.erased() ? this : doubting(seenMelted ? Misgiving.MELT_UNSURE : Misgiving.START_UNKNOWN);
    }

    /** Tempered chocolate went in; where its share of the fat is not known, the word says less from now on. */
    public CrystalWatch seeded(Optional<AddedSeed> seed) {
        if (seed.isEmpty()) return doubting(Misgiving.SEED_UNKNOWN);
        return with(
                seed.get().into(copies),
                beat,
                new MeltMemory(Duration.ZERO, melt.erased()),
                four,
                misgiving,
                overshoot);
    }

    /** The same with other crystals in it. */
    CrystalWatch holding(Copies other) {
        return with(other, beat, melt, four, misgiving, overshoot);
    }

    /** The same with the model of another chocolate. */
    public CrystalWatch of(Kinetics other) {
        return other.equals(kinetics)
                ? this
                : new CrystalWatch(other, copies, beat, melt, four, spoken, misgiving, overshoot);
    }

    /** The stable seed of the three copies. */
    public SeedRange seed() {
        return copies.seed(kinetics);
    }

    /** Whether it has been cold for long enough by what all copies say, if it is stirred as is told or assumed. */
    public boolean isColdEnough() {
        return spoken.word().isPresent() && wordOf(seed()) == SeedWord.ENOUGH;
    }

    /** How much thicker the best guess makes it than without crystals, 1 to 50. */
    public double thickness() {
        return kinetics.thickness(copies.middle().mean(kinetics));
    }

    /** What is made of this seed, before it has held. */
    SeedWord wordOf(SeedRange seed) {
        SeedWord word = seed.word();
        return misgiving.map(m -> m.of(word)).orElse(word);
    }

    /** With a good reading: nonsense is over, and a melt after a cool step must erase everything anew. */
    private CrystalWatch sound(boolean coolStepBegun) {
        boolean nonsense = misgiving.filter(m -> m == Misgiving.READINGS).isPresent();
        boolean meltsAgain = !coolStepBegun && spoken.word().isPresent();
        if (!nonsense && !meltsAgain) return this;
        return with(
                copies,
                beat,
                meltsAgain ? MeltMemory.NONE : melt,
                four,
                nonsense ? Optional.empty() : misgiving,
                overshoot);
    }

    private CrystalWatch doubting(Misgiving why) {
        // What spoils every word is not taken back by what spoils one.
        boolean stays = misgiving.filter(m -> m == Misgiving.GAP || m == why).isPresent();
        return stays ? this : with(copies, beat, melt, four, Optional.of(why), overshoot);
    }

    private CrystalWatch speaking(Instant now, boolean coolStepBegun, boolean stirringAssumed) {
        Spoken next = coolStepBegun ? spokenOf(seed(), now, stirringAssumed) : Spoken.NOTHING;
        return next == spoken ? this : new CrystalWatch(kinetics, copies, beat, melt, four, next, misgiving, overshoot);
    }

    private Spoken spokenOf(SeedRange seed, Instant now, boolean stirringAssumed) {
        SeedWord word = wordOf(seed);
        // Left alone it would have made a fraction of these crystals.
        boolean rash = stirringAssumed && word == SeedWord.ENOUGH;
        return spoken.next(rash ? SeedWord.DOUBTFUL : word, seed.thick(), now);
    }

    private CrystalWatch with(
            Copies otherCopies,
            Optional<Beat> otherBeat,
            MeltMemory otherMelt,
            FormFourGone otherFour,
            Optional<Misgiving> otherMisgiving,
            Optional<Overshoot> otherOvershoot) {
        return new CrystalWatch(
                kinetics, otherCopies, otherBeat, otherMelt, otherFour, spoken, otherMisgiving, otherOvershoot);
    }

    /** The whole seconds between two readings. */
    private final class Run implements Beat.Stepper {
        private final Recipe recipe;
        private final Circumstances round;
        private final boolean coolStepBegun;
        private Copies now = copies;
        private MeltMemory melting = melt;
        private FormFourGone formFour = four;
        private Optional<Misgiving> unsure = misgiving;
        private Optional<Overshoot> heat = overshoot;
        private Instant at = beat.orElseThrow().steppedTo();

        Run(Recipe recipe, Circumstances round, boolean coolStepBegun) {
            this.recipe = recipe;
            this.round = round;
            this.coolStepBegun = coolStepBegun;
        }

        @Override
        public void step(double celsius) {
            OptionalDouble wall = round.wallKelvin();
            double shear = round.shearPerSecond();
            now = wall.isPresent()
                    ? now.step(kinetics, celsius, wall.getAsDouble(), shear, 1)
                    : now.step(kinetics, celsius, shear, 1);
            at = at.plusSeconds(1);
            melts(celsius);
            formFour = formFour.after(celsius, kinetics.shiftKelvin());
            overshoots(celsius);
        }

        /** Whatever was in doubt, hot and erased there is nothing left of it. */
        private void melts(double celsius) {
            melting = melting.after(recipe, celsius, now);
            boolean hot = celsius >= recipe.melt().range().lowCelsius();
            if (hot && melting.erased()) unsure = Optional.empty();
        }

        private void overshoots(double celsius) {
            double warn = recipe.meltOut().warnCelsius();
            boolean going = heat.filter(o -> o.until().isEmpty()).isPresent();
            if (coolStepBegun && celsius > warn) {
                SeedRange seed = now.seed(kinetics);
                Optional<Overshoot> same = heat.filter(o -> o.until()
                        .filter(end -> Duration.between(end, at).compareTo(SAME_HEAT) > 0)
                        .isEmpty());
                heat = Optional.of(
                        same.map(o -> o.going(at, celsius, seed)).orElseGet(() -> Overshoot.begin(at, celsius, seed)));
            } else if (going && (!coolStepBegun || celsius <= warn - BACK_BY_KELVIN)) {
                heat = heat.map(o -> o.over(at));
            }
        }

        CrystalWatch result(Beat after) {
            return with(now, Optional.of(after), melting, formFour, unsure, heat);
        }
    }
}
