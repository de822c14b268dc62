package fifthform.simulator.rivals;

/** The last readings, a value: at most so many as one was begun for. */
final class Recent {
    private final int most;
    private final double[] seconds;
    private final double[] celsius;

    private Recent(int most, double[] seconds, double[] celsius) {
        this.most = most;
        this.seconds = seconds;
        this.celsius = celsius;
    }

    static Recent of(int most) {
        return new Recent(most, new double[0], new double[0]);
    }

    Recent with(double atSeconds, double readCelsius) {
        int kept = Math.min(seconds.length, most - 1);
        int from = seconds.length - kept;
        double[] times = new double[kept + 1];
        double[] values = new double[kept + 1];
        System.arraycopy(seconds, from, times, 0, kept);
        System.arraycopy(celsius, from, values, 0, kept);
        times[kept] = atSeconds;
        values[kept] = readCelsius;
        return new Recent(most, times, values);
    }

    int count() {
        return seconds.length;
    }

    /** When, counted from the last, s; not above 0. */
    double ago(int index) {
        return seconds[index] - seconds[seconds.length - 1];
    }

    double celsius(int index) {
        return celsius[index];
    }

    /** The first index not older than this. */
    int from(double windowSeconds) {
        int index = 0;
        while (index < seconds.length - 1 && ago(index) < -windowSeconds) index++;
        return index;
    }
}
