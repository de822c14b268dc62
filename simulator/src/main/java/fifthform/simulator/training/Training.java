package fifthform.simulator.training;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** One network that goes through the lessons, pass by pass. */
final class Training {
    private final Lessons lessons;
    private final Plan plan;
    private final Workers workers;
    private final Loss loss;
    private final Pace pace;
    private final Parameters weights;
    private final Adam adam;
    private final SplittableRandom order;
    private final Parameters[] slopes;
    private final double[] losses;
    private int step;

    /** @param seed of the weights to begin with and of the order of the sessions */
    Training(Lessons lessons, Plan plan, long seed, Workers workers) {
        this.lessons = lessons;
        this.plan = plan;
        this.workers = workers;
        SplittableRandom random = new SplittableRandom(seed);
        this.weights = Parameters.random(plan.shape(), random.nextLong());
        this.order = random.split();
        this.loss = lessons.loss(plan);
        this.pace = plan.paceOver(lessons.teaching().size());
        this.adam = new Adam(weights, plan.shrink());
        this.slopes = new Parameters[plan.batch()];
        for (int i = 0; i < slopes.length; i++) slopes[i] = Parameters.zeros(plan.shape());
        this.losses = new double[plan.batch()];
    }

    /** The weights as they are now; they go on changing. */
    Parameters weights() {
        return weights;
    }

    /** Goes once through all sessions that teach, in a new order. Answers with their mean loss on the way, K. */
    double pass() throws InterruptedException {
        List<Session> sessions = shuffled();
        double sum = 0;
        for (int from = 0; from < sessions.size(); from += plan.batch()) {
            sum += batch(sessions.subList(from, Math.min(from + plan.batch(), sessions.size())));
        }
        return sum / sessions.size();
    }

    private List<Session> shuffled() {
        List<Session> sessions = new ArrayList<>(lessons.teaching());
        for (int i = sessions.size() - 1; i > 0; i--) {
            int other = order.nextInt(i + 1);
            Session moved = sessions.set(other, sessions.get(i));
            sessions.set(i, moved);
        }
        return sessions;
    }

    private double batch(List<Session> sessions) throws InterruptedException {
        workers.each(sessions.size(), (place, pass) -> learn(sessions.get(place), place, pass));
        Parameters slope = slopes[0];
        double sum = losses[0];
        for (int i = 1; i < sessions.size(); i++) {
            slope.add(slopes[i]);
            sum += losses[i];
        }
        double norm = slope.norm() / sessions.size();
        if (!Double.isFinite(norm)) throw new ArithmeticException("the slope grew beyond all bounds at step " + step);
        slope.scale((float) (Math.min(1, Plan.LONGEST_SLOPE / norm) / sessions.size()));
        adam.step(slope, pace.at(step++));
        return sum;
    }

    private void learn(Session session, int place, NetworkPass pass) {
        float[][] answers = pass.forward(weights, session);
        losses[place] = loss.of(session, answers, pass.answerSlope());
        slopes[place].clear();
        pass.backward(weights, session, slopes[place]);
    }
}
