package fifthform.curves.crystal;

/**
 * The reference's temper tube: a sample at 31 °C in ice water, time constant 3.5 min, ballast 0.25, at rest; slope and
 * temperature where its curve bends, by a local quadratic over ±15 s (steps 1 to 4 of the reference's section 10).
 */
record Tube(double slopeKelvinPerMinute, double bendCelsius) {
    private static final double STEP = 0.25;

    static Tube cooled(Kinetics kinetics, double five) {
        Crystals c = CrystalCheckValuesTest.seed(five);
        double celsius = 31;
        double[] curve = new double[14 * 60 + 1];
        for (int second = 0; second < curve.length; second++) {
            curve[second] = celsius;
            for (int k = 0; k < 4; k++) {
                Rates r = kinetics.rates(c, Math.max(0, celsius), 0);
                c = kinetics.after(c, r, STEP);
                double heat = 0.32 * kinetics.heatKilowattPerKilogramFat(r) / (1.63 * 1.25);
                celsius += STEP * (-celsius / 210 + heat);
            }
        }
        int cold = 0;
        while (cold < curve.length && curve[cold] >= 8) cold++;
        int steepest = 15;
        for (int i = 15; i < Math.min(105, cold); i++) if (slope(curve, i) < slope(curve, steepest)) steepest = i;
        int bend = steepest;
        for (int i = steepest; i < Math.min(cold, curve.length - 15); i++) {
            if (slope(curve, i) > slope(curve, bend)) bend = i;
        }
        return new Tube(slope(curve, bend), curve[bend]);
    }

    /** Linear coefficient of the quadratic through 31 points, K/min; the quadratic part is even and drops out. */
    private static double slope(double[] curve, int at) {
        double together = 0;
        double squares = 0;
        for (int k = -15; k <= 15; k++) {
            together += k * curve[at + k];
            squares += k * k;
        }
        return 60 * together / squares;
    }
}
