package fifthform.curves.proof;

import java.util.Optional;

/**
 * A parabola through the readings around one of them, by least squares: {@code c + b·t + a·t²} with {@code t} from that
 * reading, in minutes.
 *
 * @param celsius level there, °C
 * @param kelvinPerMinute slope there
 * @param scatterKelvin standard deviation about it, n − 3 degrees of freedom
 * @param readings how many were used
 */
record LocalFit(double celsius, double kelvinPerMinute, double scatterKelvin, int readings) {
    /** Fewer readings make no parabola that could be trusted. Source: the project's crystal model, section 10. */
    static final int FEWEST = 9;

    /**
     * The fit around {@code centre} over {@code halfSeconds} to either side, wider where that holds fewer than
     * {@link #FEWEST} readings; empty where the curve does not reach that far to both sides.
     */
    static Optional<LocalFit> around(CoolingCurve curve, int centre, double halfSeconds) {
        double reach = Math.max(halfSeconds, FEWEST / 2 * curve.intervalSeconds());
        return around(curve, centre, halfSeconds, reach);
    }

    static Optional<LocalFit> around(CoolingCurve curve, int centre, double halfSeconds, double reachSeconds) {
        double middle = curve.seconds(centre);
        double slack = 0.001;
        if (middle - curve.seconds(0) < reachSeconds - slack) return Optional.empty();
        if (curve.lastSeconds() - middle < reachSeconds - slack) return Optional.empty();
        int from = curve.indexAt(middle - reachSeconds - slack);
        int to = curve.indexAt(middle + reachSeconds + slack);
        if (to - from < FEWEST) return Optional.empty();
        return Optional.of(through(curve, from, to, middle));
    }

    private static LocalFit through(CoolingCurve curve, int from, int to, double middleSeconds) {
        int n = to - from;
        double s1 = 0;
        double s2 = 0;
        double s3 = 0;
        double s4 = 0;
        double y0 = 0;
        double y1 = 0;
        double y2 = 0;
        double offset = curve.celsius(from);
        for (int i = from; i < to; i++) {
            double t = (curve.seconds(i) - middleSeconds) / 60;
            double y = curve.celsius(i) - offset;
            double tt = t * t;
            s1 += t;
            s2 += tt;
            s3 += tt * t;
            s4 += tt * tt;
            y0 += y;
            y1 += y * t;
            y2 += y * tt;
        }
        double[] abc = solve(n, s1, s2, s3, s4, y0, y1, y2);
        double squares = 0;
        for (int i = from; i < to; i++) {
            double t = (curve.seconds(i) - middleSeconds) / 60;
            double off = curve.celsius(i) - offset - (abc[0] + abc[1] * t + abc[2] * t * t);
            squares += off * off;
        }
        return new LocalFit(offset + abc[0], abc[1], Math.sqrt(squares / Math.max(1, n - 3)), n);
    }

    /** Cramer's rule for the three normal equations. */
    private static double[] solve(
            double n, double s1, double s2, double s3, double s4, double y0, double y1, double y2) {
        double whole = n * (s2 * s4 - s3 * s3) - s1 * (s1 * s4 - s3 * s2) + s2 * (s1 * s3 - s2 * s2);
        if (whole == 0) return new double[] {y0 / n, 0, 0};
        double c = y0 * (s2 * s4 - s3 * s3) - s1 * (y1 * s4 - s3 * y2) + s2 * (y1 * s3 - s2 * y2);
        double b = n * (y1 * s4 - s3 * y2) - y0 * (s1 * s4 - s3 * s2) + s2 * (s1 * y2 - y1 * s2);
        double a = n * (s2 * y2 - y1 * s3) - s1 * (s1 * y2 - y1 * s2) + y0 * (s1 * s3 - s2 * s2);
        return new double[] {c / whole, b / whole, a / whole};
    }
}
