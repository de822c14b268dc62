package fifthform.simulator.training;

import java.util.Locale;

/**
 * How well turning points were guessed, each dip counting as its weight says; a sum over dips until {@link #mean} divides
 * it.
 *
 * @param dips weight of all dips
 * @param pinball loss of the five points, both turning points, K
 * @param covered 5 to 95 %: share of the weight at which the truth lay within
 * @param lift at the step in the warm water whose turn lies nearest the aim
 * @param cold the same in cold water
 */
record Score(double dips, double pinball, double covered, NearAim lift, NearAim cold) {
    static final Score NOTHING = new Score(0, 0, 0, NearAim.NOTHING, NearAim.NOTHING);

    /**
     * At the one step of each dip that matters most.
     *
     * @param dips weight of the dips
     * @param errorKelvin of the median
     * @param widthKelvin from the 5 to the 95 % point
     * @param covered how often the truth lay between them
     */
    record NearAim(double dips, double errorKelvin, double widthKelvin, double covered) {
        static final NearAim NOTHING = new NearAim(0, 0, 0, 0);

        NearAim plus(NearAim other) {
            return new NearAim(
                    dips + other.dips,
                    errorKelvin + other.errorKelvin,
                    widthKelvin + other.widthKelvin,
                    covered + other.covered);
        }

        NearAim times(double factor) {
            return new NearAim(dips * factor, errorKelvin * factor, widthKelvin * factor, covered * factor);
        }

        String text() {
            return String.format(
                    Locale.ROOT,
                    "error %.3f K, width %.2f K, %.3f within",
                    errorKelvin / dips,
                    widthKelvin / dips,
                    covered / dips);
        }
    }

    Score plus(Score other) {
        return new Score(
                dips + other.dips,
                pinball + other.pinball,
                covered + other.covered,
                lift.plus(other.lift),
                cold.plus(other.cold));
    }

    /** Pinball loss by dip, K: what decides between passes. */
    double meanPinball() {
        return pinball / dips;
    }

    double meanCovered() {
        return covered / dips;
    }

    String text() {
        return String.format(
                Locale.ROOT,
                "pinball by dip %.4f K, %.3f within 5-95 %%; near the aim: lift %s; cold %s",
                meanPinball(),
                meanCovered(),
                lift.text(),
                cold.text());
    }
}
