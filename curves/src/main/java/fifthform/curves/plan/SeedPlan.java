package fifthform.curves.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Seed and slab: what solid or cooled chocolate does to the bowl. */
final class SeedPlan {
    /**
     * Crystals of form V that a batch wants, as a share of its mass: 1 % of form V cocoa butter, grated (a craft maker's
     * technique page, read). Solid chocolate holds them in its fat.
     */
    private static final double CRYSTALS_SHARE = 0.01;

    private static final double QUARTER = 0.25;
    private static final double SLAB_SHARE = 2.0 / 3;

    private final Settled settled;

    SeedPlan(Settled settled) {
        this.settled = settled;
    }

    List<Planned> figures() {
        List<Planned> figures = new ArrayList<>();
        double added = settled.recipe().meltOut().limitCelsius();
        double high = settled.work().highCelsius();
        ToDoubleFunction<Guess> grams = g -> {
            double share = heat(g).share(added + g.plus(Unknown.BOWL), solidShare(), high);
            return 1000 * settled.kilograms() * g.times(Unknown.CHOCOLATE) * share / (1 - share);
        };
        double seed = grams.applyAsDouble(settled.doubts().expected());
        figures.add(Planned.of(
                PlanKey.SEED,
                seed,
                settled.doubts().deviation(grams),
                Formula.of(
                        "(1 − s)(h(T1) − h(Tw)) + b (T1 − Tw) = s · 1590 (Tw − Ts) + (s − u) L, T1 %.1f, Tw %.1f, Ts %.1f °C, L %.0f kJ/kg, u %.3f",
                        added, high, settled.roomCelsius(), settled.latent() / 1000, solidShare()),
                "heat balance; latent heat: Beckett ed. 2009, pp. 667–668"));
        figures.add(Planned.chosen(PlanKey.SEED_AT, added, "melt-out: below it form V keeps", Formula.RECIPE));
        double all = 1000 * settled.kilograms() + seed;
        ToDoubleFunction<Guess> solid =
                g -> all * Math.max(0, heat(g).stillSolidShare(seed / all, added + g.plus(Unknown.BOWL), high));
        figures.add(Planned.of(
                PlanKey.SEED_STILL_SOLID,
                all * solidShare(),
                settled.doubts().deviation(solid),
                Formula.of("u = 1 %% crystals / %.2f fat, of %.0f g", settled.fatFraction(), all),
                "1 % of form V cocoa butter, grated: a craft maker's technique page"));
        ToDoubleFunction<Guess> quarterAt = g -> heat(g).meltCelsius(QUARTER, solidShare(), high);
        figures.add(Planned.of(
                PlanKey.QUARTER_AT,
                quarterAt.applyAsDouble(settled.doubts().expected()),
                settled.doubts().deviation(quarterAt),
                Formula.of("the same balance for s 0.25, u %.3f, solved for T1", solidShare()),
                "heat balance; latent heat: Beckett ed. 2009, pp. 667–668"));
        double melt = settled.recipe().melt().range().midCelsius();
        ToDoubleFunction<Guess> left =
                g -> 100 / QUARTER * Math.max(0, heat(g).stillSolidShare(QUARTER, melt + g.plus(Unknown.BOWL), high));
        figures.add(Planned.of(
                PlanKey.QUARTER_STILL_SOLID,
                left.applyAsDouble(settled.doubts().expected()),
                settled.doubts().deviation(left),
                Formula.of("the same balance for s 0.25, T1 %.1f °C, solved for u; at 0 it did no more than ice", melt),
                "heat balance; latent heat: Beckett ed. 2009, pp. 667–668"));
        figures.add(Planned.chosen(
                PlanKey.SEED_OUT,
                settled.work().midCelsius(),
                "in the working range, once it has not fallen for 2 min with pieces still to be seen",
                Formula.PRACTICE));
        slab(figures);
        return figures;
    }

    /** Two thirds on the slab; how warm the rest may be when they come back so that the mix is in the middle of the range. */
    private void slab(List<Planned> figures) {
        double slabAt = settled.cool().midCelsius();
        double mid = settled.work().midCelsius();
        ToDoubleFunction<Guess> rest = g -> {
            double kept = settled.kilograms() * (1 - SLAB_SHARE * g.times(Unknown.CHOCOLATE));
            double bowl = settled.bowlful(g).bowlJoulesPerKelvin();
            double taken = settled.kilograms()
                    * SLAB_SHARE
                    * g.times(Unknown.CHOCOLATE)
                    * (Heat.chocolate(mid) - Heat.chocolate(slabAt + g.plus(Unknown.BOWL)));
            return mid + taken / (kept * Heat.CHOCOLATE_JOULES_PER_KILOGRAM_KELVIN + bowl);
        };
        figures.add(Planned.chosen(
                PlanKey.SLAB,
                1000 * settled.kilograms() * SLAB_SHARE,
                "two thirds of the chocolate",
                "five public pages on tabling, read; one of them says a fifth"));
        figures.add(Planned.chosen(PlanKey.SLAB_AT, slabAt, "middle of the cool range", Formula.RECIPE));
        figures.add(Planned.of(
                PlanKey.SLAB_REST,
                rest.applyAsDouble(settled.doubts().expected()),
                settled.doubts().deviation(rest),
                Formula.of(
                        "m/3 (h(T) − h(%.1f)) + C_bowl (T − %.1f) = 2m/3 (h(%.1f) − h(%.1f))", mid, mid, mid, slabAt),
                Formula.BALANCE));
    }

    /** Solid chocolate that must be left, as a share of the whole. */
    private double solidShare() {
        return Math.min(0.1, CRYSTALS_SHARE / settled.fatFraction());
    }

    private SeedHeat heat(Guess guess) {
        Bowlful bowlful = settled.bowlful(guess);
        return new SeedHeat(
                settled.latent() * guess.times(Unknown.LATENT),
                bowlful.bowlJoulesPerKelvin() / bowlful.chocolateKilograms(),
                settled.room(guess));
    }
}
