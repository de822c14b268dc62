package fifthform.curves.forecast;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.engine.TestRecipes;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.phase.Batch;
import fifthform.curves.recipe.Phase;
import java.time.Instant;
import java.util.Random;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;

/** The aim against the loss it is said to make least, and spreads against what they are said to mean. */
class AimTest {
    private static final Instant START = Instant.parse("2026-01-10T10:00:00Z");
    private static final NormalDistribution NORMAL = new NormalDistribution();
    /** 5 % point of the standard normal distribution, from tables. */
    private static final double FIVE_PERCENT = 1.6449;

    private static Batch rewarming() {
        return Batch.atStart(START).confirmed(Phase.REWARM, START);
    }

    private static double aim(double below, double above) {
        return Aim.celsius(TestRecipes.dark(), rewarming(), new Spread(30, below, above));
    }

    /** The middle of 31 to 32.3 °C: the first three tenths over cost nothing, so they belong to what is aimed at. */
    @Test
    void what_is_well_known_goes_to_the_middle_of_what_costs_nothing_and_what_is_not_lower() {
        assertEquals(31.65, aim(0.02, 0.02), 0.01);
        assertTrue(aim(1.2, 1.2) < 31.6);
        assertTrue(aim(1.8, 1.8) < aim(1.2, 1.2));
        assertTrue(aim(1.2, 2.0) < aim(1.2, 1.2), "what may run up is put lower");
        assertEquals(31.15, aim(9, 9), 0.01, "never out of the range");
    }

    /**
     * The loss itself, summed over the distribution, tried at other aims: 1.3 for each kelvin over by more than 0.3 K, 1
     * for each under. What is tried goes past the upper end that the aim is held to.
     */
    @Test
    void no_other_aim_costs_less() {
        for (double half : new double[] {0.8, 1.2, 1.8}) {
            double best = loss(aim(half, half), half);
            for (double other = 31.16; other <= 31.9; other += 0.02) {
                assertTrue(best <= loss(other, half) + 0.003, "at " + other + " with " + half);
            }
        }
    }

    private static double loss(double middle, double half) {
        double sigma = half / FIVE_PERCENT;
        double loss = 0;
        for (double z = -5; z <= 5; z += 0.01) {
            double peak = middle + sigma * z;
            loss += 0.01 * NORMAL.density(z) * (1.3 * Math.max(0, peak - 32.3) + Math.max(0, 31 - peak));
        }
        return loss;
    }

    @Test
    void after_cold_water_both_sides_count_the_same() {
        Batch cooling = Batch.atStart(START).confirmed(Phase.COOL, START);
        assertEquals(Place.COLD_WATER, cooling.place());
        assertEquals(27.5, Aim.celsius(TestRecipes.dark(), cooling, new Spread(30, 0.8, 0.8)), 1e-3);
    }

    @Test
    void halves_of_a_normal_distribution_are_meant() {
        for (double x = -4; x <= 4; x += 0.1) {
            assertEquals(NORMAL.cumulativeProbability(-x), Spread.beyond(x), 0.0096);
        }
        Spread skew = new Spread(31, 0.5, 1.5);
        assertEquals(0.05, skew.aboveFraction(32.5), 0.01);
        assertEquals(0.95, skew.aboveFraction(30.5), 0.01);
        assertEquals(0.05, skew.belowFraction(30.5), 0.01);
        assertEquals(0.95, skew.belowFraction(32.5), 0.01);
    }

    /** Two bells drawn from at random: mean and variance of the lot. */
    @Test
    void mixing_adds_the_variances_and_the_disagreement() {
        Spread mixed = new Spread(31, 0.5, 0.5).mixed(0.7, new Spread(33, 1.0, 1.0));
        Random random = new Random(5);
        double sum = 0;
        double squares = 0;
        int draws = 200_000;
        for (int i = 0; i < draws; i++) {
            boolean first = random.nextDouble() < 0.7;
            double x = (first ? 31 : 33) + (first ? 0.5 : 1.0) / 1.645 * random.nextGaussian();
            sum += x;
            squares += x * x;
        }
        double mean = sum / draws;
        assertEquals(mean, mixed.celsius(), 0.01);
        assertEquals(1.645 * Math.sqrt(squares / draws - mean * mean), mixed.aboveKelvin(), 0.01);
        assertEquals(mixed.aboveKelvin(), mixed.belowKelvin(), 1e-12);
    }
}
