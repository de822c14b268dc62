package fifthform.simulator.rivals;

/**
 * A straight line through the last readings, drawn on for a fixed time.
 *
 * @param leadSeconds for how long, s
 * @param windowSeconds through so much of the curve, s
 * @param recent readings
 * @param lastCelsius the last reading, °C
 * @param levelCelsius the line now, °C
 * @param kelvinPerSecond its slope, K/s
 */
record LineRule(
        double leadSeconds,
        double windowSeconds,
        Recent recent,
        double lastCelsius,
        double levelCelsius,
        double kelvinPerSecond)
        implements Rule {
    private static final int FEWEST = 5;

    LineRule(double leadSeconds, double windowSeconds) {
        this(leadSeconds, windowSeconds, Recent.of((int) Math.ceil(2 * windowSeconds) + 1), Double.NaN, Double.NaN, 0);
    }

    @Override
    public LineRule after(double atSeconds, double celsius) {
        Recent more = recent.with(atSeconds, celsius);
        int from = more.from(windowSeconds);
        int n = more.count() - from;
        if (n < FEWEST) return new LineRule(leadSeconds, windowSeconds, more, celsius, Double.NaN, 0);
        double sumT = 0;
        double sumY = 0;
        for (int i = from; i < more.count(); i++) {
            sumT += more.ago(i);
            sumY += more.celsius(i);
        }
        double meanT = sumT / n;
        double meanY = sumY / n;
        double sxx = 0;
        double sxy = 0;
        for (int i = from; i < more.count(); i++) {
            double t = more.ago(i) - meanT;
            sxx += t * t;
            sxy += t * (more.celsius(i) - meanY);
        }
        double slope = sxx > 0 ? sxy / sxx : 0;
        return new LineRule(leadSeconds, windowSeconds, more, celsius, meanY - slope * meanT, slope);
    }

    @Override
    public double turnCelsius() {
        return levelCelsius + leadSeconds * Math.max(0, kelvinPerSecond);
    }
}
