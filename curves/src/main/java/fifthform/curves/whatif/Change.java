package fifthform.curves.whatif;

import fifthform.curves.check.Require;

/** The one thing that is done otherwise in a re-run. All that follows is done as it was, as long after it as it was. */
public sealed interface Change {
    /** The {@link PastLift#number()} of the lift that it is about. */
    int lift();

    /** Calls the method for this kind of change. */
    <R> R fold(Cases<R> cases);

    /** One answer for each kind of change. */
    interface Cases<R> {
        R liftMoved(LiftMoved change);

        R bathShifted(BathShifted change);
    }

    /**
     * The bowl is lifted earlier or later; what the hands did after the lift they do as long after the new one.
     *
     * @param lift which
     * @param laterSeconds how much later, s; negative for earlier, at most two minutes either way
     */
    record LiftMoved(int lift, double laterSeconds) implements Change {
        /** No lift is moved further, s. */
        public static final double MOST_SECONDS = 120;

        public LiftMoved {
            Require.within(lift, 1, 1e6, "lift");
            Require.within(laterSeconds, -MOST_SECONDS, MOST_SECONDS, "laterSeconds");
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.liftMoved(this);
        }
    }

    /**
     * The water was warmer or cooler when the bowl came into it before this lift; every act stays at its time.
     *
     * @param lift the lift that ended the stay in that water
     * @param hotterKelvin how much warmer, K; negative for cooler, at most 15 K either way
     */
    record BathShifted(int lift, double hotterKelvin) implements Change {
        /** No bath is shifted further, K. */
        public static final double MOST_KELVIN = 15;

        public BathShifted {
            Require.within(lift, 1, 1e6, "lift");
            Require.within(hotterKelvin, -MOST_KELVIN, MOST_KELVIN, "hotterKelvin");
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.bathShifted(this);
        }
    }
}
