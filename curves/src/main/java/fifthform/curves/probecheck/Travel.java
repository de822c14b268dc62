package fifthform.curves.probecheck;

/**
 * How far a reading has been seen to travel near a point. A live tip passes through what lies between; a line that jumps
 * to a number and stays there, or shows it from the start, is dead.
 *
 * @param leastKelvin smallest distance from the point among those seen on the way
 * @param mostKelvin largest
 */
record Travel(double leastKelvin, double mostKelvin) {
    static final Travel NONE = new Travel(Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY);

    /** More than noise and less than a dip; own choice. */
    private static final double ALIVE_KELVIN = 2;

    private static final double AT_THE_POINT_KELVIN = 1;

    Travel with(double offKelvin) {
        double off = Math.abs(offKelvin);
        if (off <= AT_THE_POINT_KELVIN || off > PointCheck.NEAR_KELVIN) return this;
        return new Travel(Math.min(leastKelvin, off), Math.max(mostKelvin, off));
    }

    boolean isAlive() {
        return mostKelvin - leastKelvin >= ALIVE_KELVIN;
    }
}
