package fifthform.simulator.bars;

import fifthform.curves.plan.DewPoint;
import java.util.function.Consumer;
import java.util.function.DoubleUnaryOperator;

/**
 * What was done to bars besides tempering, as chance or neglect had it. Each is a quantity and not a word: how warm, how
 * much, how long.
 *
 * @param waterPercent water that got into the chocolate, % of its mass
 * @param burntKelvin how far the melt was above what this chocolate bears, K
 * @param oldCrystalsPerMille crystals of form VI of the stock that no melt erased, per mille of the fat
 * @param unmixedShare share of the bars that were poured from an unmixed part
 * @param mouldCelsius the mould when it was filled
 * @param roughness of the mould's face, 0 polished to 1 scratched or oiled
 * @param outMinutes when they were turned out
 * @param wetGrams water that came onto them, g/m²
 * @param oilPercent loose oil of nuts or a filling, % of their mass
 * @param storeCelsius how warm they were kept, by the hours since the batch
 */
public record Fate(
        double waterPercent,
        double burntKelvin,
        double oldCrystalsPerMille,
        double unmixedShare,
        double mouldCelsius,
        double roughness,
        double outMinutes,
        double wetGrams,
        double oilPercent,
        DoubleUnaryOperator storeCelsius) {
    /** Nothing at all went wrong. */
    public static final Fate GOOD = new Fate(0, 0, 0, 0, 23, 0.03, 90, 0, 0, hours -> 17);

    /** Heat and mass go alike (Lewis): about 10 W/m²K of still air carry this much vapour, g/s for each m² and hPa. */
    private static final double GRAMS_PER_SQUARE_METRE_SECOND_HECTOPASCAL = 0.0062;

    private static final double METRES_BARE_SECONDS = 520;

    /**
     * Water that comes onto a bar that is opened cold: as long as its face is below the dew point it takes vapour out of the
     * air, and the face warms up with a time constant of 520 s (8 mm, both faces, 16 W/m²K with the dew's own heat).
     *
     * @param barCelsius how cold it is
     * @return g/m²
     */
    public static double dewGrams(double barCelsius, double roomCelsius, double humidityPercent) {
        double air = DewPoint.WMO.hectopascals(roomCelsius, humidityPercent);
        double grams = 0;
        for (int second = 0; second < 3600; second += 5) {
            double face = roomCelsius + (barCelsius - roomCelsius) * StrictMath.exp(-second / METRES_BARE_SECONDS);
            double over = air - DewPoint.WMO.hectopascals(face, 100);
            if (over <= 0) break;
            grams += 5 * GRAMS_PER_SQUARE_METRE_SECOND_HECTOPASCAL * over;
        }
        return grams;
    }

    public Fate withWater(double percent) {
        return but(draft -> draft.waterPercent = percent);
    }

    public Fate withBurnt(double kelvin) {
        return but(draft -> draft.burntKelvin = kelvin);
    }

    public Fate withOldCrystals(double perMille) {
        return but(draft -> draft.oldCrystalsPerMille = perMille);
    }

    public Fate withUnmixed(double share) {
        return but(draft -> draft.unmixedShare = share);
    }

    public Fate withMould(double celsius, double rough) {
        return but(draft -> {
            draft.mouldCelsius = celsius;
            draft.roughness = rough;
        });
    }

    public Fate outAfter(double minutes) {
        return but(draft -> draft.outMinutes = minutes);
    }

    /** @param grams of water that came onto them, g/m² */
    public Fate withDew(double grams) {
        return but(draft -> draft.wetGrams = grams);
    }

    public Fate withOil(double percent) {
        return but(draft -> draft.oilPercent = percent);
    }

    public Fate storedAt(DoubleUnaryOperator celsiusByHour) {
        return but(draft -> draft.storeCelsius = celsiusByHour);
    }

    private Fate but(Consumer<Draft> change) {
        Draft draft = new Draft(this);
        change.accept(draft);
        return draft.fate();
    }

    /** A fate of which some is being changed. */
    private static final class Draft {
        private double waterPercent;
        private double burntKelvin;
        private double oldCrystalsPerMille;
        private double unmixedShare;
        private double mouldCelsius;
        private double roughness;
        private double outMinutes;
        private double wetGrams;
        private double oilPercent;
        private DoubleUnaryOperator storeCelsius;

        Draft(Fate from) {
            waterPercent = from.waterPercent;
            burntKelvin = from.burntKelvin;
            oldCrystalsPerMille = from.oldCrystalsPerMille;
            unmixedShare = from.unmixedShare;
            mouldCelsius = from.mouldCelsius;
            roughness = from.roughness;
            outMinutes = from.outMinutes;
            wetGrams = from.wetGrams;
            oilPercent = from.oilPercent;
            storeCelsius = from.storeCelsius;
        }

        Fate fate() {
            return new Fate(
                    waterPercent,
                    burntKelvin,
                    oldCrystalsPerMille,
                    unmixedShare,
                    mouldCelsius,
                    roughness,
                    outMinutes,
                    wetGrams,
                    oilPercent,
                    storeCelsius);
        }
    }
}
