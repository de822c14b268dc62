package fifthform.curves.proof;

import fifthform.curves.check.Require;
import java.util.List;

/**
 * The maker's own good curves of one chocolate in one cup, as mean and spread.
 *
 * @param count how many, {@value #ENOUGH} or more
 * @param slopeKelvinPerMinute mean slope at the bend
 * @param slopeSpread their standard deviation, K/min
 * @param bendCelsius mean temperature of the bend
 * @param bendSpread their standard deviation, K
 */
public record GoodCurves(
        int count, double slopeKelvinPerMinute, double slopeSpread, double bendCelsius, double bendSpread) {
    /** From so many on they are what a sample is judged by. Source: the project's crystal model, section 10. */
    public static final int ENOUGH = 3;

    private static final double LEAST_BEND_KELVIN = 1.0;
    private static final double LEAST_SLOPE = 0.3;

    public GoodCurves {
        Require.within(count, ENOUGH, Integer.MAX_VALUE, "count");
        Require.within(slopeSpread, 0, 60, "slopeSpread");
        Require.within(bendSpread, 0, 60, "bendSpread");
    }

    /** Of these bends; there must be enough of them. */
    public static GoodCurves of(List<Bend> bends) {
        double[] slopes = bends.stream().mapToDouble(Bend::kelvinPerMinute).toArray();
        double[] celsius = bends.stream().mapToDouble(Bend::celsius).toArray();
        return new GoodCurves(bends.size(), mean(slopes), spread(slopes), mean(celsius), spread(celsius));
    }

    /** How far from their mean temperature a good bend may lie, K. */
    public double bendReach() {
        return Math.max(LEAST_BEND_KELVIN, 2 * bendSpread);
    }

    /** How far from their mean slope, K/min. */
    public double slopeReach() {
        return Math.max(LEAST_SLOPE, 2 * slopeSpread);
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double value : values) sum += value;
        return values.length == 0 ? 0 : sum / values.length;
    }

    private static double spread(double[] values) {
        double mean = mean(values);
        double squares = 0;
        for (double value : values) squares += (value - mean) * (value - mean);
        return values.length < 2 ? 0 : Math.sqrt(squares / (values.length - 1));
    }
}
