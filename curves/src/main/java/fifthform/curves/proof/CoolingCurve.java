package fifthform.curves.proof;

import fifthform.curves.check.Require;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The readings of one sample, oldest first.
 *
 * @param points their times do not fall; {@link Fitness} says where they did in the recording
 * @param stepKelvin width of the last digit, K, 0 to 10; 0 where it is not known
 */
public record CoolingCurve(List<CurvePoint> points, double stepKelvin) {
    /** Before the first reading. */
    public static final CoolingCurve NOTHING = new CoolingCurve(List.of(), 0);

    /** Closer readings are averaged: they share their noise, and a bend takes minutes. Own choice. */
    private static final double CLOSEST_SECONDS = 0.45;

    public CoolingCurve {
        points = List.copyOf(points);
        Require.within(stepKelvin, 0, 10, "stepKelvin");
        for (int i = 1; i < points.size(); i++) {
            if (points.get(i).seconds() < points.get(i - 1).seconds())
                throw new IllegalArgumentException("seconds must not fall, did at " + points.get(i));
        }
    }

    /** A curve of these readings; where several come within half a second, their mean is taken. */
    public static CoolingCurve of(List<CurvePoint> readings, double stepKelvin) {
        List<CurvePoint> kept = new ArrayList<>();
        int from = 0;
        while (from < readings.size()) {
            double first = readings.get(from).seconds();
            double seconds = 0;
            double celsius = 0;
            int to = from;
            while (to < readings.size() && readings.get(to).seconds() - first < CLOSEST_SECONDS) {
                seconds += readings.get(to).seconds();
                celsius += readings.get(to).celsius();
                to++;
            }
            kept.add(new CurvePoint(seconds / (to - from), celsius / (to - from)));
            from = to;
        }
        return new CoolingCurve(kept, stepKelvin);
    }

    public int size() {
        return points.size();
    }

    public boolean isEmpty() {
        return points.isEmpty();
    }

    public double seconds(int index) {
        return points.get(index).seconds();
    }

    public double celsius(int index) {
        return points.get(index).celsius();
    }

    public double lastSeconds() {
        return seconds(size() - 1);
    }

    /** The middle one of the times between two readings, s; 0 for less than two readings. */
    public double intervalSeconds() {
        if (size() < 2) return 0;
        double[] gaps = new double[size() - 1];
        for (int i = 0; i < gaps.length; i++) gaps[i] = seconds(i + 1) - seconds(i);
        Arrays.sort(gaps);
        return gaps[gaps.length / 2];
    }

    /** The first reading at or after this time; the size where there is none. */
    int indexAt(double seconds) {
        int low = 0;
        int high = size();
        while (low < high) {
            int middle = (low + high) / 2;
            if (seconds(middle) < seconds) low = middle + 1;
            else high = middle;
        }
        return low;
    }
}
