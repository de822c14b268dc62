package fifthform.simulator.bars;

import fifthform.curves.learning.BarLook;
import fifthform.curves.learning.BarLook.Sureness;
import fifthform.curves.learning.BarPlace;
import fifthform.curves.learning.Bloom;
import fifthform.curves.learning.Gloss;
import fifthform.curves.learning.Release;
import fifthform.curves.learning.Snap;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;

/**
 * Bars as they come out of the mould and as they change, and what somebody sees of it. Quantities become sights by soft
 * thresholds of our own, all invented: no such bars were counted. It knows no rules of whoever looks for causes.
 *
 * @param set how they set
 * @param solidWhenOut what was solid when they were turned out, against what was in the end, 0 to 1
 * @param fate what else was done to them
 */
public record BarsInTime(SetBar set, double solidWhenOut, Fate fate) {
    /** As coarse as half a per cent of the fat in seed makes it, which the reference calls the least. */
    private static final double COARSE = 14.5;

    private static final double COARSE_WIDTH = 0.8;
    private static final double RIPE_MINUTES = 70;
    private static final double FADES_HOURS = 14;
    private static final double THICK_SEED = 0.075;

    /** How often an eye misses what is there, or sees what is not. */
    private static final double MISSED = 0.03;

    private static final double IMAGINED = 0.006;

    public BarsInTime {
        Objects.requireNonNull(set, "set");
        Objects.requireNonNull(fate, "fate");
    }

    private static double soft(double value, double limit, double width) {
        return 1 / (1 + StrictMath.exp(-(value - limit) / width));
    }

    private static double either(double one, double other) {
        return 1 - (1 - one) * (1 - other);
    }

    /** How far the temper failed, 0 to 1: unstable crystals, or so few that they are coarse, or old coarse ones. */
    public double untempered() {
        double unstable = Math.min(1, 2.2 * (1 - set.stableAtFace()));
        double coarse = soft(set.coarseness(), COARSE, COARSE_WIDTH);
        return either(either(unstable, coarse), soft(fate.oldCrystalsPerMille(), 3, 0.6));
    }

    /** How far the middle failed where the face did not. */
    public double core() {
        return soft(set.ripeMinutes(), RIPE_MINUTES, 8);
    }

    /** How thick it was when it was poured: what was solid then. */
    public double thick() {
        return soft(set.poured().stableFraction(), THICK_SEED, 0.008);
    }

    /** What the store did by this age, 0 to 1. */
    private double storeWorn(double ageHours) {
        double worn = 0;
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double h = 0; h < ageHours; h += 1) {
            double celsius = fate.storeCelsius().applyAsDouble(h);
            worn += StrictMath.exp((celsius - 26) / 1.6) / 14;
            low = Math.min(low, celsius);
            high = Math.max(high, celsius);
            if ((long) h % 24 == 23) {
                worn += Math.max(0, high - low - 3.5) / 34;
                low = Double.POSITIVE_INFINITY;
                high = Double.NEGATIVE_INFINITY;
            }
        }
        return worn;
    }

    /** What time alone did: V to VI takes about a year at 18 °C. */
    private double aged(double ageHours) {
        return ageHours / 24 / 330 * StrictMath.exp((fate.storeCelsius().applyAsDouble(ageHours) - 18) / 6);
    }

    private double oiled(double ageHours) {
        double warm = StrictMath.exp((fate.storeCelsius().applyAsDouble(ageHours) - 18) / 8);
        return fate.oilPercent() / 100 * StrictMath.sqrt(ageHours / 24) * warm;
    }

    /** What somebody sees at this age. */
    public BarLook look(double ageHours, SplittableRandom luck) {
        double came = 1 - StrictMath.exp(-ageHours / FADES_HOURS);
        Set<Bloom> bloom = EnumSet.noneOf(Bloom.class);
        List<BarPlace> places = new ArrayList<>();
        boolean all = seen(luck, soft(untempered() * came, 0.32, 0.05));
        boolean core = !all && seen(luck, soft(core() * came, 0.4, 0.06));
        boolean store = seen(luck, soft(storeWorn(ageHours), 1, 0.12));
        boolean old = seen(luck, soft(aged(ageHours), 1, 0.08));
        boolean part = !all && seen(luck, soft(fate.unmixedShare() * came, 0.08, 0.015));
        if (all || core || store || old || part) {
            double kind = luck.nextDouble();
            bloom.add(kind < 0.4 ? Bloom.STREAKS : kind < 0.75 ? Bloom.VEIL : Bloom.BLOTCHES);
            if (core && !store) places.add(BarPlace.THICK_PART);
            else if (part && !store) places.add(luck.nextDouble() < 0.8 ? BarPlace.FEW_BARS : BarPlace.ALL_OVER);
            else places.add(luck.nextDouble() < 0.75 ? BarPlace.ALL_OVER : BarPlace.OPEN_SIDE);
        }
        if (seen(luck, soft(fate.wetGrams(), 18, 3))) bloom.add(Bloom.SUGAR);
        if (seen(luck, soft(oiled(ageHours), 0.3, 0.05))) {
            bloom.add(Bloom.OILY);
            if (places.isEmpty()) places.add(BarPlace.OVER_PIECES);
        }
        boolean marked = !bloom.isEmpty();
        if (!marked) bloom.add(Bloom.NONE);
        return new BarLook(
                ageHours,
                List.copyOf(bloom),
                marked ? places : List.of(),
                Optional.of(snap(luck)),
                Optional.of(gloss(store || old, luck)),
                Optional.of(release(luck)),
                Optional.empty(),
                Sureness.SURE);
    }

    private Snap snap(SplittableRandom luck) {
        double soft = either(either(0.75 * untempered(), soft(fate.waterPercent(), 1.2, 0.4) * 0.6), 0.25 * core());
        soft = either(soft, Math.min(0.5, oiled(24 * 14) * 0.8));
        if (!seen(luck, soft)) return Snap.CLEAN;
        return luck.nextDouble() < 0.45 * untempered() ? Snap.BENDS : Snap.SOFT;
    }

    private Gloss gloss(boolean bloomed, SplittableRandom luck) {
        double cold = soft(-fate.mouldCelsius(), -16.5, 0.9);
        double dull = either(0.72 * untempered(), 0.85 * cold);
        dull = either(dull, 0.7 * thick());
        dull = either(dull, 0.75 * soft(fate.roughness(), 0.55, 0.07));
        dull = either(dull, 0.85 * soft(fate.waterPercent(), 1, 0.3));
        dull = either(dull, 0.6 * soft(fate.burntKelvin(), 2.5, 0.6));
        dull = either(dull, 0.5 * soft(fate.wetGrams(), 18, 3));
        dull = either(dull, bloomed ? 0.4 : 0.0);
        dull = either(dull, 0.45 * (1 - released()));
        if (seen(luck, dull)) return Gloss.DULL;
        return luck.nextDouble() < 0.2 ? Gloss.SATIN : Gloss.BRIGHT;
    }

    /** How far they have let go of the mould: by shrinking, less what holds them. */
    private double released() {
        double shrunk = soft(solidWhenOut, 0.72, 0.05) * (1 - 0.55 * untempered()) * (1 - 0.5 * thick());
        double held = either(0.6 * soft(fate.roughness(), 0.6, 0.08), 0.5 * soft(-fate.mouldCelsius(), -16.5, 0.9));
        return shrunk * (1 - held) * (1 - 0.5 * soft(fate.waterPercent(), 1.5, 0.4));
    }

    private Release release(SplittableRandom luck) {
        double free = released() + 0.06 * (luck.nextDouble() - 0.5);
        if (free > 0.82) return luck.nextDouble() < 0.7 ? Release.BY_ITSELF : Release.TAPPED;
        if (free > 0.62) return Release.TAPPED;
        if (free > 0.42) return Release.SOME_STUCK;
        return Release.STUCK;
    }

    private static boolean seen(SplittableRandom luck, double chance) {
        return luck.nextDouble() < IMAGINED + (1 - MISSED - IMAGINED) * chance;
    }
}
