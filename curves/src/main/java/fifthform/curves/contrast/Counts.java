package fifthform.curves.contrast;

import org.apache.commons.math3.distribution.HypergeometricDistribution;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * A yes or no counted in two groups. The test is Fisher's exact one, two-sided: all tables with the same margins that are
 * no more likely than the one seen (Fisher, The Design of Experiments, 1935, and Statistical Methods for Research Workers,
 * 21.02). The interval of the difference of shares is Newcombe's by scores without continuity correction (Newcombe 1998,
 * Stat Med 17:873-890, method 10; the scores by Wilson 1927, JASA 22:209-212).
 *
 * @param yes of the first group
 * @param of size of the first group, 1 or more
 * @param otherYes of the second group
 * @param ofOther size of the second group, 1 or more
 */
record Counts(int yes, int of, int otherYes, int ofOther) {
    /** Tables so nearly as likely are as likely. */
    private static final double ROUNDING = 1 + 1e-7;

    Counts {
        if (of < 1 || ofOther < 1 || yes < 0 || yes > of || otherYes < 0 || otherYes > ofOther) {
            throw new IllegalArgumentException(
                    "counts must lie within their groups: " + yes + "/" + of + ", " + otherYes + "/" + ofOther);
        }
    }

    /** How likely so much or more is by chance, 0 to 1. */
    double chance() {
        return noMoreLikelyThan(tables().probability(yes));
    }

    /** The least chance that groups of these sizes, with as many yes in all, can show. */
    double leastChance() {
        HypergeometricDistribution tables = tables();
        double least = 1;
        for (int k = tables.getSupportLowerBound(); k <= tables.getSupportUpperBound(); k++)
            least = Math.min(least, tables.probability(k));
        return noMoreLikelyThan(least);
    }

    private HypergeometricDistribution tables() {
        return new HypergeometricDistribution(null, of + ofOther, yes + otherYes, of);
    }

    private double noMoreLikelyThan(double probability) {
        HypergeometricDistribution tables = tables();
        double sum = 0;
        for (int k = tables.getSupportLowerBound(); k <= tables.getSupportUpperBound(); k++) {
            double each = tables.probability(k);
            if (each <= probability * ROUNDING) sum += each;
        }
        return Math.min(1, sum);
    }

    /** By how much the first group's share lies above the second's, −1 to 1. */
    double difference() {
        return (double) yes / of - (double) otherYes / ofOther;
    }

    /** Where that difference lies, but for this doubt, 0 to 1. */
    Span interval(double doubt) {
        double z = new NormalDistribution(null, 0, 1).inverseCumulativeProbability(1 - doubt / 2);
        Span one = score(yes, of, z);
        Span other = score(otherYes, ofOther, z);
        double p = (double) yes / of;
        double q = (double) otherYes / ofOther;
        return new Span(
                p - q - StrictMath.hypot(p - one.lower(), other.upper() - q),
                p - q + StrictMath.hypot(one.upper() - p, q - other.lower()));
    }

    private static Span score(int hits, int n, double z) {
        double p = (double) hits / n;
        double middle = p + z * z / (2 * n);
        double half = z * Math.sqrt(p * (1 - p) / n + z * z / (4.0 * n * n));
        double whole = 1 + z * z / n;
        return new Span(Math.max(0, (middle - half) / whole), Math.min(1, (middle + half) / whole));
    }
}
