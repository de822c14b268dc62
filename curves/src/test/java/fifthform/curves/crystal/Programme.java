package fifthform.curves.crystal;

/** A temperature that goes straight from corner to corner, in minutes and °C; programmes of the reference vectors among them. */
public record Programme(double[] minutes, double[] celsius) {
    /** Corners as minute, °C, minute, °C … */
    public static Programme of(double... corners) {
        double[] minutes = new double[corners.length / 2];
        double[] celsius = new double[corners.length / 2];
        for (int i = 0; i < minutes.length; i++) {
            minutes[i] = corners[2 * i];
            celsius[i] = corners[2 * i + 1];
        }
        return new Programme(minutes, celsius);
    }

    /** Melted at 45 °C, 12 min to the cool step, so long there, 4 min to 31.5 °C. */
    public static Programme temper(double coolCelsius, double coolMinutes) {
        double warm = 22 + coolMinutes;
        return of(0, 45, 10, 45, 22, coolCelsius, warm, coolCelsius, warm + 4, 31.5);
    }

    /** The reference's programme i: 48 °C, 27.5 °C for 6 min, 10 min at 31.5 °C. */
    public static Programme textbook() {
        return of(0, 48, 10, 48, 22, 27.5, 28, 27.5, 32, 31.5, 42, 31.5);
    }

    /** This one, and in the last corner's place two more. */
    public Programme then(double... corners) {
        double[] all = new double[2 * minutes.length + corners.length];
        for (int i = 0; i < minutes.length; i++) {
            all[2 * i] = minutes[i];
            all[2 * i + 1] = celsius[i];
        }
        System.arraycopy(corners, 0, all, 2 * minutes.length, corners.length);
        return of(all);
    }

    public double endMinutes() {
        return minutes[minutes.length - 1];
    }

    public double celsiusAt(double minute) {
        int i = 1;
        while (i < minutes.length - 1 && minutes[i] < minute) i++;
        double part = (minute - minutes[i - 1]) / (minutes[i] - minutes[i - 1]);
        double within = Math.min(1, Math.max(0, part));
        return celsius[i - 1] + within * (celsius[i] - celsius[i - 1]);
    }

    /** What it makes of a state by plain steps, read warmer by an offset. */
    Crystals run(Kinetics kinetics, Crystals start, double shear, double seconds, double offsetKelvin) {
        Crystals c = start;
        long steps = Math.round(endMinutes() * 60 / seconds);
        for (long i = 0; i < steps; i++) {
            c = kinetics.step(c, celsiusAt(i * seconds / 60) + offsetKelvin, shear, seconds);
        }
        return c;
    }

    Crystals run(Kinetics kinetics, Crystals start, double shear) {
        return run(kinetics, start, shear, 1, 0);
    }
}
