package fifthform.curves.crystal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** A million histories drawn by number: nothing negative, nothing made or lost. */
class CrystalHistoriesTest {
    private static final long SEED = Long.getLong("crystals.seed", 20261126L);
    private static final int SHORT = Integer.getInteger("crystals.histories", 1_000_000);
    private static final int LONG = 300;

    @Test
    void formsAndMeltAreOneAndNothingIsNegative() {
        System.out.println("crystal histories: seed " + SEED + ", " + SHORT + " short and " + LONG + " long ones");
        SplittableRandom dice = new SplittableRandom(SEED);
        Kinetics[] kinetics = new Kinetics[16];
        for (int i = 0; i < kinetics.length; i++) {
            kinetics[i] = Kinetics.of(new Fat(0.30 * i / 15, dice.nextDouble(0.2, 0.7)));
        }
        for (int i = 0; i < SHORT; i++) history(dice, kinetics[i % kinetics.length], 3);
        for (int i = 0; i < LONG; i++) history(dice, kinetics[i % kinetics.length], 3000);
    }

    private static void history(SplittableRandom dice, Kinetics kinetics, int steps) {
        Crystals c = start(dice);
        double melt = c.melt();
        double celsius = dice.nextDouble(0, 70);
        double drift = dice.nextDouble(-1, 1);
        double shear = dice.nextBoolean() ? 0 : dice.nextDouble(0, 60);
        double seconds = dice.nextInt(4) == 0 ? 0.25 : 1;
        for (int i = 0; i < steps; i++) {
            Rates r = kinetics.rates(c, celsius, shear);
            double forms = r.formTwo() + r.formFour() + r.formFive() + r.formSix();
            assertEquals(r.crystallising(), forms, 1e-14, "what leaves the melt is what the forms gain");
            c = kinetics.after(c, r, seconds);
            melt -= r.crystallising() * seconds;
            if (!(c.formTwo() >= 0 && c.formFour() >= 0 && c.formFive() >= 0 && c.formSix() >= 0 && c.seedMass() >= 0)
                    || c.seedMass() > c.formFive()
                    || c.solids() > 1) {
                throw new AssertionError(c + " at " + celsius);
            }
            double sum = c.solids() + melt;
            assertTrue(Math.abs(sum - 1) <= 1e-12, () -> "forms and melt are " + sum);
            celsius = Math.min(70, Math.max(0, celsius + drift * seconds));
            if (steps > 10 && dice.nextInt(120) == 0) drift = dice.nextDouble(-0.3, 0.3);
        }
    }

    /** Mostly little of everything, sometimes much, and as much number as may be. */
    private static Crystals start(SplittableRandom dice) {
        double most = dice.nextInt(3) == 0 ? 0.24 : StrictMath.exp(dice.nextDouble(-30, -2));
        double two = dice.nextInt(3) == 0 ? 0 : dice.nextDouble() * most;
        double four = dice.nextInt(3) == 0 ? 0 : dice.nextDouble() * most;
        double five = dice.nextInt(5) == 0 ? 0 : dice.nextDouble() * most;
        double six = dice.nextInt(3) == 0 ? 0 : dice.nextDouble() * most;
        return new Crystals(two, four, five, six, five * dice.nextDouble());
    }
}
