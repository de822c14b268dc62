package fifthform.simulator.bowl;

import fifthform.curves.check.Require;
import java.time.Duration;
import java.util.Objects;

/**
 * All temperatures of a kitchen at a moment: a value, so that any moment can be kept, compared and gone on from twice.
 *
 * @param elapsed since the kitchen was set up
 * @param bulkCelsius most of the chocolate
 * @param layerCelsius the chocolate at the wall
 * @param bulkUnmeltedFraction of the bulk's crystals that have not melted yet
 * @param layerUnmeltedFraction of the layer's crystals that have not melted yet
 * @param wallCelsius the bowl
 * @param filmCelsius the water that clings outside
 * @param filmKilograms how much of it there is
 * @param hotBathCelsius the pot on the burner
 * @param warmBathCelsius the water for the rewarm
 * @param coldWaterCelsius the basin of tap water
 * @param tipCelsius the probe in the chocolate
 * @param bathTipCelsius the probe in the bath
 * @param ledger heat that came and went
 */
public record KitchenState(
        Duration elapsed,
        double bulkCelsius,
        double layerCelsius,
        double bulkUnmeltedFraction,
        double layerUnmeltedFraction,
        double wallCelsius,
        double filmCelsius,
        double filmKilograms,
        double hotBathCelsius,
        double warmBathCelsius,
        double coldWaterCelsius,
        double tipCelsius,
        double bathTipCelsius,
        HeatLedger ledger) {
    public KitchenState {
        Objects.requireNonNull(elapsed, "elapsed");
        Objects.requireNonNull(ledger, "ledger");
        sensible(bulkCelsius, "bulkCelsius");
        sensible(layerCelsius, "layerCelsius");
        Require.within(bulkUnmeltedFraction, 0, 1, "bulkUnmeltedFraction");
        Require.within(layerUnmeltedFraction, 0, 1, "layerUnmeltedFraction");
        sensible(wallCelsius, "wallCelsius");
        sensible(filmCelsius, "filmCelsius");
        Require.within(filmKilograms, 0, 1, "filmKilograms");
        sensible(hotBathCelsius, "hotBathCelsius");
        sensible(warmBathCelsius, "warmBathCelsius");
        sensible(coldWaterCelsius, "coldWaterCelsius");
        sensible(tipCelsius, "tipCelsius");
        sensible(bathTipCelsius, "bathTipCelsius");
    }

    /** Everything at one temperature, melted and dry, the baths as given: the simplest place to begin. */
    public static KitchenState melted(double celsius, Baths baths) {
        return begin(celsius, baths, 0);
    }

    /** Solid pieces in a dry bowl, all at one temperature. */
    public static KitchenState solid(double celsius, Baths baths) {
        return begin(celsius, baths, 1);
    }

    private static KitchenState begin(double celsius, Baths baths, double unmelted) {
        return new KitchenState(
                Duration.ZERO,
                celsius,
                celsius,
                unmelted,
                unmelted,
                celsius,
                celsius,
                0,
                baths.hotCelsius(),
                baths.warmCelsius(),
                baths.coldCelsius(),
                celsius,
                baths.hotCelsius(),
                HeatLedger.EMPTY);
    }

    /**
     * How warm the three waters are.
     *
     * @param hotCelsius the pot on the burner
     * @param warmCelsius the water for the rewarm
     * @param coldCelsius the basin of tap water
     */
    public record Baths(double hotCelsius, double warmCelsius, double coldCelsius) {
        public Baths {
            Require.within(hotCelsius, 0, 100, "hotCelsius");
            Require.within(warmCelsius, 0, 100, "warmCelsius");
            Require.within(coldCelsius, 0, 100, "coldCelsius");
        }
    }

    private static void sensible(double celsius, String name) {
        Require.within(celsius, -40, 150, name);
    }
}
