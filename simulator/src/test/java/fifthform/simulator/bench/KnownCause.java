package fifthform.simulator.bench;

import fifthform.curves.contrast.Bars;
import fifthform.curves.contrast.BatchTraits;
import fifthform.curves.contrast.Comparison;
import fifthform.curves.contrast.LookedBatch;
import fifthform.curves.contrast.Suggestion;
import fifthform.curves.contrast.Trait;
import fifthform.curves.learning.BarLook;
import fifthform.curves.learning.BarLook.Sureness;
import fifthform.curves.learning.Bloom;
import fifthform.curves.learning.HeatScale;
import fifthform.curves.recipe.Recipe;
import fifthform.simulator.bowl.Chocolate;
import fifthform.simulator.bowl.Fat;
import fifthform.simulator.bowl.Forms;
import fifthform.simulator.maker.Luck;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A maker whose bars fail by a known cause. Each batch is a curve of temperature; what it does to the crystals is told by
 * the simulator's own {@link Forms}, and how likely the bars are marked by how much stable seed is left when they are
 * poured. So the traits that batches are compared by are nowhere in what makes the bars good or bad. Habits, spreads, other
 * causes and errors of the eye are invented.
 *
 * @param cause what spoils
 * @param habits what this maker does, and what this kitchen is
 * @param luck of its batches
 */
record KnownCause(Cause cause, Habits habits, Luck luck) {
    static final Recipe RECIPE = RecipeShelf.recipe("dark");

    private static final HeatScale SCALE = HeatScale.of(RECIPE);
    private static final double STEP_SECONDS = 2;
    private static final double JOULES_PER_KILOGRAM_KELVIN = 1590;

    /** The reference calls half a per cent of the fat the least seed that tempers. */
    private static final double LEAST_SEED = 0.005;

    private static final double SEED_WIDTH = 0.15;
    private static final double SHOWS_HOURS = 14;
    private static final double EYE_ERROR = 0.03;

    /** Follows a suggestion with these spreads, and as far on the safe side. */
    private static final double FOLLOWED_KELVIN = 0.3;

    private static final double FOLLOWED_MINUTES = 1;

    /** What spoils the bars of a maker. */
    enum Cause {
        /** Nothing that is compared: water, moulds, the store. */
        NOTHING,
        /** The bowl is lifted late. */
        OVERSHOOT,
        /** It is hardly held cool. */
        COOLED_SHORT
    }

    /**
     * What differs from maker to maker.
     *
     * @param peakCelsius how far the bowl turns, as the probe reads it, with its spread
     * @param lowestCelsius how far it is cooled
     * @param holdMinutes how long it is held there, median
     * @param pourCelsius at what it is poured
     * @param probeKelvin by how much the probe reads too low
     * @param wallKelvin by how much the chocolate that is harmed is hotter than the tip on the way up
     * @param otherShare bars that are marked by other causes
     * @param fridgeShare of batches that set in the fridge
     */
    record Habits(
            double peakCelsius,
            double peakKelvin,
            double lowestCelsius,
            double holdMinutes,
            double pourCelsius,
            double probeKelvin,
            double wallKelvin,
            double otherShare,
            double fridgeShare,
            Chocolate chocolate) {}

    /** What one batch is meant to be, in readings of the probe. */
    private record Plan(double peakCelsius, double lowestCelsius, double holdMinutes, double pourCelsius) {}

    /** The maker of a number: same seed and number, same maker. */
    static KnownCause maker(Cause cause, long seed, long number) {
        Luck luck = new Luck(seed).branch(number);
        boolean late = cause != Cause.COOLED_SHORT;
        Fat fat = new Fat(
                StrictMath.exp(0.3 * luck.branch(1).normal()),
                StrictMath.exp(0.15 * luck.branch(2).normal()),
                StrictMath.exp(0.15 * luck.branch(3).normal()));
        Habits habits = new Habits(
                late
                        ? 33.2 + 1.4 * luck.branch(4).uniform()
                        : 31.8 + 0.5 * luck.branch(4).uniform(),
                late ? 0.5 + 0.6 * luck.branch(5).uniform() : 0.25,
                (late ? 27 : 27.5) + luck.branch(6).uniform(),
                cause == Cause.COOLED_SHORT
                        ? 0.3 + 2 * luck.branch(7).uniform()
                        : 7 + 5 * luck.branch(7).uniform(),
                31.3 + 0.5 * luck.branch(8).uniform(),
                0.25 * luck.branch(9).normal(),
                0.4 + 0.8 * luck.branch(13).uniform(),
                cause == Cause.NOTHING
                        ? 0.15 + 0.5 * luck.branch(10).uniform()
                        : 0.02 + 0.1 * luck.branch(10).uniform(),
                luck.branch(11).uniform(),
                new Chocolate(0.8, 46_000, 28, 34, fat));
        return new KnownCause(cause, habits, luck.branch(12));
    }

    /** The first so many batches that looks tell of, as the maker goes on by habit. */
    List<LookedBatch> batches(int count) {
        List<LookedBatch> looked = new ArrayList<>();
        for (long day = 0; looked.size() < count; day++) {
            Luck today = luck.branch(day);
            batch(today, habit(today.branch(0))).ifPresent(looked::add);
        }
        return looked;
    }

    private Plan habit(Luck today) {
        return new Plan(
                habits.peakCelsius() + habits.peakKelvin() * today.branch(0).normal(),
                habits.lowestCelsius() + 0.35 * today.branch(1).normal(),
                habits.holdMinutes() * StrictMath.exp(0.35 * today.branch(2).normal()),
                habits.pourCelsius() + 0.2 * today.branch(3).normal());
    }

    private Optional<LookedBatch> batch(Luck today, Plan plan) {
        Curve curve = Curve.of(plan);
        double lost = lost(curve, today.branch(1));
        boolean marked = today.branch(2).uniform() < lost;
        BatchTraits traits = curve.traits(SCALE, today.branch(3));
        // Half of the batches have a log of how they set.
        if (today.branch(4).uniform() < 0.5)
            traits = traits.with(Trait.FRIDGE, today.branch(5).uniform() < habits.fridgeShare() ? 1 : 0);
        BatchTraits known = traits.with(Trait.SEED, 0);
        return Bars.of(looks(marked, today.branch(6))).map(bars -> new LookedBatch(known, bars));
    }

    /** How likely the bars of this curve are marked. */
    private double lost(Curve curve, Luck today) {
        if (cause == Cause.NOTHING) return habits.otherShare();
        double seed = curve.seed(habits, 0.5 + 0.5 * today.uniform());
        double temper = 1 / (1 + StrictMath.exp((StrictMath.log(Math.max(seed, 1e-9) / LEAST_SEED)) / SEED_WIDTH));
        return 1 - (1 - temper) * (1 - habits.otherShare());
    }

    private static List<BarLook> looks(boolean marked, Luck today) {
        List<BarLook> looks = new ArrayList<>();
        double showsAt = today.branch(0).exponential(SHOWS_HOURS);
        if (today.branch(1).uniform() < 0.9) looks.add(look(24, marked && showsAt <= 24, today.branch(2)));
        if (today.branch(3).uniform() < 0.7) looks.add(look(168, marked, today.branch(4)));
        return looks;
    }

    private static BarLook look(double hours, boolean shows, Luck eye) {
        boolean seen = (eye.branch(0).uniform() < EYE_ERROR) != shows;
        return new BarLook(
                hours,
                List.of(seen ? Bloom.STREAKS : Bloom.NONE),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Sureness.SURE);
    }

    /** What so many batches of this maker say. */
    static Comparison said(List<LookedBatch> batches, int count) {
        return Comparison.of(RECIPE, batches.subList(0, count));
    }

    /**
     * Share of fine bars over further batches, as they really are, without errors of the eye.
     *
     * @param followed what is done otherwise; empty for the old habit
     */
    double fineShare(Optional<Suggestion> followed, int batches) {
        double fine = 0;
        for (long day = 0; day < batches; day++) {
            // The same days with and without the suggestion.
            Luck today = luck.branch(100_000 + day);
            Plan habit = habit(today.branch(0));
            Plan plan = followed.map(f -> following(habit, f, today.branch(7))).orElse(habit);
            fine += 1 - lost(Curve.of(plan), today.branch(1));
        }
        return fine / batches;
    }

    private static Plan following(Plan habit, Suggestion s, Luck today) {
        double kelvin = FOLLOWED_KELVIN * today.normal();
        return switch (s.trait()) {
            case HEAT ->
                new Plan(
                        s.value() + kelvin,
                        habit.lowestCelsius(),
                        habit.holdMinutes(),
                        Math.min(habit.pourCelsius(), 32));
            case LOWEST -> new Plan(habit.peakCelsius(), s.value() + kelvin, habit.holdMinutes(), habit.pourCelsius());
            case COOL_MINUTES ->
                new Plan(
                        habit.peakCelsius(),
                        habit.lowestCelsius(),
                        Math.max(0, s.value() + FOLLOWED_MINUTES * today.normal()),
                        habit.pourCelsius());
            case POURING ->
                new Plan(habit.peakCelsius(), habit.lowestCelsius(), habit.holdMinutes(), s.value() + kelvin);
            case SEED, FRIDGE -> habit;
        };
    }

    /**
     * A curve as the probe reads it, a reading every {@link #STEP_SECONDS}.
     *
     * @param rewarmed the first reading of the way up
     * @param pouring the first reading of the pouring
     */
    private record Curve(double[] celsius, int rewarmed, int pouring) {
        private static final double BEGINS_CELSIUS = 34;
        private static final double COOLING_MINUTES = 3;
        private static final double WARMING_MINUTES = 6;
        private static final double SETTLING_MINUTES = 2.5;
        private static final double TURNING_MINUTES = 6;
        private static final double POURING_MINUTES = 12;

        static Curve of(Plan plan) {
            List<Double> all = new ArrayList<>();
            double perMinute = 60 / STEP_SECONDS;
            double lowest = Math.min(plan.lowestCelsius(), 31);
            double depth = BEGINS_CELSIUS - lowest;
            int cool = (int) (4 * COOLING_MINUTES * perMinute);
            for (int i = 0; i < cool; i++) all.add(lowest + depth * StrictMath.exp(-i / (COOLING_MINUTES * perMinute)));
            int hold = (int) Math.round(plan.holdMinutes() * perMinute);
            for (int i = 0; i < hold; i++) all.add(lowest);
            int rewarmed = all.size();
            int up = (int) (WARMING_MINUTES * perMinute);
            for (int i = 1; i <= up; i++) all.add(lowest + (plan.peakCelsius() - lowest) * i / up);
            int turn = (int) (TURNING_MINUTES * perMinute);
            for (int i = 1; i <= turn; i++) all.add(settling(plan, i / perMinute));
            int pouring = all.size();
            int pour = (int) (POURING_MINUTES * perMinute);
            for (int i = 1; i <= pour; i++) all.add(settling(plan, TURNING_MINUTES + i / perMinute));
            return new Curve(all.stream().mapToDouble(Double::doubleValue).toArray(), rewarmed, pouring);
        }

        private static double settling(Plan plan, double minutes) {
            return plan.pourCelsius()
                    + (plan.peakCelsius() - plan.pourCelsius()) * StrictMath.exp(-minutes / SETTLING_MINUTES);
        }

        /** Stable seed when half of it is poured, kg for each kg of fat. */
        double seed(Habits habits, double vigour) {
            Chocolate chocolate = habits.chocolate();
            Forms forms = Forms.MELTED;
            int end = (pouring + celsius.length) / 2;
            for (int i = 0; i < end; i++) {
                double hotter = habits.probeKelvin() + (i >= rewarmed && i < pouring ? habits.wallKelvin() : 0);
                double content =
                        JOULES_PER_KILOGRAM_KELVIN * (celsius[i] + hotter) - forms.boundJoulesPerKilogram(chocolate);
                forms = (Forms) forms.settled(chocolate, content, STEP_SECONDS, vigour);
            }
            return forms.stableFraction();
        }

        /** As they would be counted from the readings. */
        BatchTraits traits(HeatScale scale, Luck noise) {
            double lowest = Double.POSITIVE_INFINITY;
            int cool = 0;
            for (int i = 0; i < rewarmed; i++) {
                lowest = Math.min(lowest, celsius[i]);
                if (celsius[i] <= RECIPE.cool().range().highCelsius() + 0.5) cool++;
            }
            double weighted = 0;
            for (int i = rewarmed; i < celsius.length; i++) weighted += scale.weight(celsius[i]) * STEP_SECONDS / 60;
            double poured = 0;
            for (int i = pouring; i < celsius.length; i++) poured += celsius[i] / (celsius.length - pouring);
            return BatchTraits.NONE
                    .with(Trait.HEAT, OptionalDouble.of(scale.equivalentCelsius(weighted)))
                    .with(Trait.LOWEST, lowest + 0.02 * noise.normal())
                    .with(Trait.COOL_MINUTES, cool * STEP_SECONDS / 60)
                    .with(Trait.POURING, poured);
        }
    }
}
