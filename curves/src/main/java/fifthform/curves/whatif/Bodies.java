package fifthform.curves.whatif;

/**
 * A bowl in numbers: chocolate, wall, the water it stands in, what follows the chocolate slowly, and the tip, each of one
 * temperature.
 *
 * <pre>
 *   dC/dt =  kc (W − C) − ½ a (C − R) − κ (C − S) / σ
 *   dW/dt = [−kc (W − C) + kb (B − W) in water − ½ a (W − R) on the table] / ρ
 *   dB/dt = −β kb (B − W) while the bowl stands in it, and −l (B − R)
 *   dS/dt =  (C − S) / σ
 *   dT/dt =  (C − T) / τ
 * </pre>
 *
 * Everything is counted for the chocolate's own heat capacity. Source: lumped heat balances as in heat transfer textbooks
 * (Incropera and DeWitt, chapter 5; from memory). In air the loss is taken from chocolate and wall alike, and has another
 * value before the stay in water than after it: a wet bowl loses more than a dry one.
 *
 * <p>Parameters are handed over as an array, in the order of {@link Parameter}.
 */
final class Bodies {
    /** Step of the integration, s; the quickest bowl of a kitchen has a wall that follows within some seconds. */
    static final double STEP_SECONDS = 0.5;

    /** What is fitted. Those of a scale are fitted by their logarithm. */
    enum Parameter {
        /** ln of kc, 1/s. */
        WALL_TO_CHOCOLATE,
        /** ln of ρ, heat of the wall and of what clings to it for each of the chocolate. */
        WALL_SHARE,
        /** ln of kb, 1/s. */
        WATER_TO_WALL,
        /** ln of a after the stay in water, 1/s. */
        LOSS_AFTER,
        /** ln of a before it, 1/s. */
        LOSS_BEFORE,
        /** B when the bowl came into it, °C. */
        WATER,
        /** ln of τ, s. */
        TIP_LAG,
        /** C at the beginning of the window, °C. */
        CHOCOLATE,
        /** W − C at the beginning of the window, K. */
        WALL_ABOVE,
        /** ln of β, heat of the chocolate for each of the water. */
        WATER_COOLS,
        /** ln of the water's own loss to the room, 1/s. */
        WATER_LOSES,
        /** ln of κ, heat of what follows slowly for each of the chocolate: spoon, surface, crystals that melt or form. */
        SLOW_SHARE,
        /** ln of σ, s. */
        SLOW_SECONDS,
        /** ln of the heat of the water that clings to the bowl from its entry on, for each of the chocolate. */
        FILM,
        /** How much later the bowl came into the water than is known, s. */
        ENTRY_LATER,
        /** How much later it left than is known, s. */
        LIFT_LATER;

        static final int COUNT = values().length;
    }

    /** At the beginning of a window nothing slow is further behind than by this rate, K/s. */
    private static final double STEADY = 0.01;

    private final double roomCelsius;

    Bodies(double roomCelsius) {
        this.roomCelsius = roomCelsius;
    }

    /**
     * The way of a bowl, one value a step.
     *
     * @param chocolate °C
     * @param tip °C
     * @param wall °C
     */
    record Way(double[] chocolate, double[] tip, double[] wall) {
        /** Between two steps, on a straight line. */
        static double at(double[] of, double seconds) {
            double place = Math.max(0, Math.min(of.length - 1.0, seconds / STEP_SECONDS));
            int i = Math.min(of.length - 2, (int) place);
            return of[i] + (place - i) * (of[i + 1] - of[i]);
        }
    }

    /** Goes through the window. */
    Way through(double[] p, Course planned) {
        return through(p, planned, 0);
    }

    /**
     * Goes through the window.
     *
     * @param p the parameters
     * @param planned where the bowl stands; what is known of the hands' moments is put right by the parameters
     * @param waterHotter how much hotter the water is when the bowl comes into it, K
     */
    Way through(double[] p, Course planned, double waterHotter) {
        Course course = planned.shifted(of(p, Parameter.ENTRY_LATER), of(p, Parameter.LIFT_LATER));
        int steps = (int) Math.ceil(course.endSeconds() / STEP_SECONDS) + 1;
        double kc = StrictMath.exp(of(p, Parameter.WALL_TO_CHOCOLATE));
        double share = StrictMath.exp(of(p, Parameter.WALL_SHARE));
        double kb = StrictMath.exp(of(p, Parameter.WATER_TO_WALL));
        double after = StrictMath.exp(of(p, Parameter.LOSS_AFTER)) / 2;
        double before = StrictMath.exp(of(p, Parameter.LOSS_BEFORE)) / 2;
        double lag = StrictMath.exp(of(p, Parameter.TIP_LAG));
        double cools = StrictMath.exp(of(p, Parameter.WATER_COOLS));
        double loses = StrictMath.exp(of(p, Parameter.WATER_LOSES));
        double slowSeconds = StrictMath.exp(of(p, Parameter.SLOW_SECONDS));
        double slow = StrictMath.exp(of(p, Parameter.SLOW_SHARE)) / slowSeconds;
        double film = StrictMath.exp(of(p, Parameter.FILM));
        boolean entered = course.entrySeconds() <= 0;
        double[] chocolate = new double[steps];
        double[] tip = new double[steps];
        double[] wall = new double[steps];
        double c = of(p, Parameter.CHOCOLATE);
        double w = c + of(p, Parameter.WALL_ABOVE);
        double b = of(p, Parameter.WATER) + waterHotter;
        // The tip runs behind at the rate that chocolate and wall give it.
        double t = c - lag * kc * (w - c);
        double s = c - slowSeconds * Math.max(-STEADY, Math.min(STEADY, kc * (w - c)));
        double h = STEP_SECONDS;
        for (int i = 0; i < steps; i++) {
            chocolate[i] = c;
            tip[i] = t;
            wall[i] = w;
            double from = i * h;
            double wet = course.inWater(from, h);
            if (wet > 0 && !entered) {
                entered = true;
                w += film / (share + film) * (b - w);
            }
            double loss = from >= course.liftSeconds() ? after : before;
            double atWall = (1 - wet) * loss;
            double push = wet * kb;
            double top = 0.5 * Math.min(after, before) * wet + loss * (1 - wet);
            // Second order, implicit in the middle, as the wall may be quick: the 2 × 2 system of chocolate and wall.
            double half = h / 2;
            double a11 = 1 + half * (kc + top + slow);
            double a12 = -half * kc;
            double a21 = -half * kc / share;
            double a22 = 1 + half * (kc + push + atWall) / share;
            double r1 = c + half * (top * roomCelsius + slow * s);
            double r2 = w + half * (push * b + atWall * roomCelsius) / share;
            double det = a11 * a22 - a12 * a21;
            double cMid = (r1 * a22 - a12 * r2) / det;
            double wMid = (a11 * r2 - a21 * r1) / det;
            if (entered) b -= h * (cools * push * (b - wMid) + loses * (b - roomCelsius));
            double follows = StrictMath.exp(-h / lag);
            s = cMid + (s - cMid) * StrictMath.exp(-h / slowSeconds);
            t = cMid + (t - cMid) * follows;
            c = 2 * cMid - c;
            w = 2 * wMid - w;
        }
        return new Way(chocolate, tip, wall);
    }

    static double of(double[] p, Parameter which) {
        return p[which.ordinal()];
    }
}
