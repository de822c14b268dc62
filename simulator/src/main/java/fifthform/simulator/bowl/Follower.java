package fifthform.simulator.bowl;

/**
 * Something that follows its surroundings with a first-order lag, exactly for surroundings that change in a straight line
 * within a step. Source: solution of {@code τ dy/dt = u − y} for a ramp; textbook.
 *
 * @param kept {@code e^(−h/τ)}
 * @param lagSteps {@code τ/h}
 */
record Follower(double kept, double lagSteps) {
    static Follower of(double lagSeconds, double stepSeconds) {
        return new Follower(StrictMath.exp(-stepSeconds / lagSeconds), lagSeconds / stepSeconds);
    }

    double next(double celsius, double aroundBefore, double aroundNow) {
        double behind = (aroundNow - aroundBefore) * lagSteps;
        return aroundNow - behind + (celsius - aroundBefore + behind) * kept;
    }
}
