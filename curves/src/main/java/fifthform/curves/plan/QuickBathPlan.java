package fifthform.curves.plan;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * The hotter bath that is watched: where and when to lift, and the latest that anybody may. The wall has to follow first, so
 * everything comes later by the bowl's coast time.
 */
final class QuickBathPlan {
    private static final double LEFT_OUT = 0.15;

    private final Settled settled;
    private final double bathCelsius;

    QuickBathPlan(Settled settled) {
        this.settled = settled;
        bathCelsius =
                settled.request().quickBathCelsius().orElse(settled.recipe().rewarmBathCelsius());
    }

    /** Whether the way to the lift lasts too short for hands. */
    boolean tooHot() {
        return lift().seconds() < 20;
    }

    private TwoBodies.Point lift() {
        return bodies(settled.doubts().expected())
                .turning(from(), settled.work().midCelsius(), settled.coast().seconds());
    }

    private double from() {
        return settled.cool().midCelsius();
    }

    List<Planned> figures() {
        double mid = settled.work().midCelsius();
        double high = settled.work().highCelsius();
        TwoBodies.Point lift = lift();
        double coast = Math.max(0.05, mid - lift.celsius());
        ToDoubleFunction<Guess> logSeconds = g -> StrictMath.log(settled.coastSeconds(g)
                + bodies(g)
                        .reaching(from() + g.plus(Unknown.BOWL), lift.celsius())
                        .seconds());
        double deviation = settled.doubts().deviation(logSeconds);
        ToDoubleFunction<Guess> logLatest = g -> StrictMath.log(settled.coastSeconds(g)
                + bodies(g)
                        .turning(from() + g.plus(Unknown.BOWL), high, settled.coastSeconds(g))
                        .seconds());
        double latest = StrictMath.exp(logLatest.applyAsDouble(settled.doubts().expected())
                - Band.NINE_IN_TEN * StrictMath.hypot(settled.doubts().deviation(logLatest), LEFT_OUT));
        ToDoubleFunction<Guess> logCoast = g -> StrictMath.log(settled.coastSeconds(g) * g.times(Unknown.CONTACT));
        return List.of(
                Planned.chosen(PlanKey.QUICK_BATH, bathCelsius, "as you said, else the recipe's bath", Formula.RECIPE),
                Planned.of(
                        PlanKey.QUICK_LIFT,
                        lift.celsius(),
                        settled.doubts().of(Unknown.BOWL),
                        Formula.of("middle of the range %.1f °C − coast %.1f K", mid, coast),
                        Formula.TWO_BODIES),
                Planned.ofLog(
                        PlanKey.QUICK_TIME,
                        settled.coast().seconds() + lift.seconds(),
                        StrictMath.hypot(deviation, LEFT_OUT),
                        Formula.of(
                                "two bodies from %.1f to %.1f °C, UA %.1f W/K, and the coast time %.0f s until the wall has followed",
                                from(),
                                lift.celsius(),
                                settled.contact(settled.doubts().expected()),
                                settled.coast().seconds()),
                        Formula.TWO_BODIES),
                Planned.chosen(
                        PlanKey.QUICK_LATEST,
                        latest,
                        Formula.of(
                                "when T + coast time · rate = %.1f °C, for all but the quickest one bowl in twenty",
                                high),
                        Formula.TWO_BODIES),
                Planned.ofLog(
                        PlanKey.QUICK_COAST,
                        coast,
                        settled.doubts().deviation(logCoast),
                        Formula.of(
                                "coast time %.0f s · rate at the lift %.3f K/s",
                                settled.coast().seconds(),
                                coast / settled.coast().seconds()),
                        "two lumped bodies, own derivation; coast time learned of the bowl, else guessed from its material"),
                Planned.chosen(
                        PlanKey.QUICK_MOST_WATER,
                        1000
                                * Calorimetry.mostWaterKilograms(
                                        settled.bowlful(),
                                        from(),
                                        high,
                                        bathCelsius,
                                        settled.panKilograms() * settled.panJoulesPerKilogramKelvin()),
                        Formula.of(
                                "(C1 (T2 − T1) − pan (Tw − T2))/(4180 (Tw − T2)), T2 %.1f, Tw %.1f °C",
                                high, bathCelsius),
                        Formula.BALANCE));
    }

    private TwoBodies bodies(Guess guess) {
        WaterBath bath = new WaterBath(
                settled.bathKilograms() * guess.times(Unknown.WATER),
                Math.max(0, Math.min(100, bathCelsius + guess.plus(Unknown.BATH))),
                settled.panKilograms() * guess.times(Unknown.PAN),
                settled.panJoulesPerKilogramKelvin());
        return new TwoBodies(
                settled.bowlful(guess),
                bath,
                settled.contact(guess),
                Surfaces.fromTop(settled.kilograms()) * guess.times(Unknown.LOSS),
                Surfaces.fromPan(settled.bathKilograms()) * guess.times(Unknown.LOSS),
                settled.room(guess),
                TwoBodies.Crystals.NONE);
    }
}
