package fifthform.curves.whatif;

import fifthform.curves.whatif.Answer.Refused;
import fifthform.curves.whatif.Answer.Why;
import fifthform.curves.whatif.Change.BathShifted;
import fifthform.curves.whatif.Change.LiftMoved;
import java.util.Optional;
import java.util.OptionalDouble;

/** Goes through a past batch again with one thing changed. A pure function; takes some hundredths of a second. */
public final class Rerun {
    /** A kitchen that is further from its readings than this is no kitchen that we know, K. */
    static final double WORST_FIT_KELVIN = 0.35;

    /** So long the bowl must have been in the water at a lift that was moved, s. */
    private static final double SHORTEST_STAY_SECONDS = 2;

    private Rerun() {}

    /** The answer to this change of this batch. */
    public static Answer of(PastBatch batch, Change change) {
        if (batch.lifts().isEmpty()) return refused(change, Why.NO_LIFT);
        if (change.lift() > batch.lifts().size()) {
            return refused(change, Why.NO_SUCH_LIFT, batch.lifts().size());
        }
        PastLift lift = batch.lifts().get(change.lift() - 1);
        Windows windows = new Windows(batch, lift);
        Windows.Cut cut = windows.cut(change instanceof BathShifted);
        if (cut.why().isPresent()) return new Refused(change, cut.why().get(), cut.figure());
        Window window = cut.window().orElseThrow();
        OptionalDouble tooFar = tooFar(window.course(), change);
        if (tooFar.isPresent()) return refused(change, Why.TOO_FAR, tooFar.getAsDouble());
        Bodies bodies = new Bodies(Prior.roomCelsius(batch.setup()));
        Prior prior = Prior.of(batch.setup(), window, windows.stay(), windows.after());
        Optional<KitchenFit> fit = KitchenFit.of(bodies, window, prior);
        if (fit.isEmpty()) return new Refused(change, Why.NO_GOOD_FIT, OptionalDouble.empty());
        double residual = fit.get().residualKelvin();
        if (residual > WORST_FIT_KELVIN) return refused(change, Why.NO_GOOD_FIT, residual);
        return new Simulation(batch, lift, windows.stay(), window, bodies, fit.get(), change).answer(cut.end());
    }

    /** The most that it can be moved that way, s; empty where it is not moved further. */
    private static OptionalDouble tooFar(Course course, Change change) {
        return change.fold(new Change.Cases<>() {
            @Override
            public OptionalDouble liftMoved(LiftMoved moved) {
                double most = course.liftSeconds() - Math.max(0, course.entrySeconds()) - SHORTEST_STAY_SECONDS;
                return -moved.laterSeconds() > most ? OptionalDouble.of(Math.max(0, most)) : OptionalDouble.empty();
            }

            @Override
            public OptionalDouble bathShifted(BathShifted shifted) {
                return OptionalDouble.empty();
            }
        });
    }

    private static Refused refused(Change change, Why why) {
        return new Refused(change, why, OptionalDouble.empty());
    }

    private static Refused refused(Change change, Why why, double figure) {
        return new Refused(change, why, OptionalDouble.of(figure));
    }
}
