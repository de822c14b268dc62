package fifthform.simulator.rivals;

/**
 * Lifts at a fixed reading: every bowl coasts by the same.
 *
 * @param coastKelvin by how much, K
 * @param line for the direction only
 */
record ThresholdRule(double coastKelvin, LineRule line) implements Rule {
    ThresholdRule(double coastKelvin) {
        this(coastKelvin, new LineRule(0, 8));
    }

    @Override
    public Rule after(double atSeconds, double celsius) {
        return new ThresholdRule(coastKelvin, line.after(atSeconds, celsius));
    }

    @Override
    public double turnCelsius() {
        return line.lastCelsius() + coastKelvin;
    }

    @Override
    public double kelvinPerSecond() {
        return line.kelvinPerSecond();
    }
}
