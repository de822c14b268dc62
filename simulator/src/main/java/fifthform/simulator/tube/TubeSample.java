package fifthform.simulator.tube;

import fifthform.curves.check.Require;
import java.util.Objects;

/**
 * What is in the cup.
 *
 * @param fat what its fat is like
 * @param fatFraction fat over chocolate, 0.2 to 0.7
 * @param seedFraction form V over fat, 0 to 0.3
 * @param grams 2 to 40 g
 * @param startCelsius when it goes into the ice, 15 to 50 °C
 */
public record TubeSample(FatMake fat, double fatFraction, double seedFraction, double grams, double startCelsius) {
    public TubeSample {
        Objects.requireNonNull(fat, "fat");
        Require.within(fatFraction, 0.2, 0.7, "fatFraction");
        Require.within(seedFraction, 0, 0.3, "seedFraction");
        Require.within(grams, 2, 40, "grams");
        Require.within(startCelsius, 15, 50, "startCelsius");
    }
}
