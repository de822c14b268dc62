package fifthform.simulator.training;

import fifthform.simulator.training.Score.NearAim;
import java.util.Arrays;
import java.util.TreeMap;

/** Marks a network's answers in one session, dip by dip. */
final class Marking {
    /** The step that weighs most: its turn lies nearest the aim. */
    private static final class Heaviest {
        private float weight;
        private NearAim there = NearAim.NOTHING;

        void step(float weight, double error, double width, double hit) {
            if (weight <= this.weight) return;
            this.weight = weight;
            there = new NearAim(1, error, width, hit);
        }
    }

    private static final class Dip {
        private double weight;
        private double pinball;
        private double covered;
        private final Heaviest lift = new Heaviest();
        private final Heaviest cold = new Heaviest();

        Score score() {
            return new Score(weight, pinball, covered, lift.there.times(weight), cold.there.times(weight));
        }
    }

    private final TreeMap<Integer, Dip> dips = new TreeMap<>();

    private Marking() {}

    /** The points are put in order first, as the program does it. */
    static Score of(Session session, float[][] answers) {
        Marking marking = new Marking();
        for (int t = 0; t < session.steps; t++) {
            if (session.weight[t] > 0 && !Float.isNaN(session.turn[t])) marking.step(session, t, answers[t]);
        }
        return marking.dips.values().stream().map(Dip::score).reduce(Score.NOTHING, Score::plus);
    }

    private void step(Session session, int t, float[] answer) {
        float[] points = answer.clone();
        Arrays.sort(points, 0, Loss.POINTS);
        Arrays.sort(points, Loss.LATER, Loss.LATER + Loss.POINTS);
        float truth = session.turn[t];
        float weight = session.weight[t];
        double error = Math.abs(points[Loss.POINTS / 2] - truth);
        double width = points[Loss.POINTS - 1] - points[0];
        double hit = truth >= points[0] && truth <= points[Loss.POINTS - 1] ? 1 : 0;
        Dip dip = dips.computeIfAbsent(session.dip[t], number -> new Dip());
        dip.weight += weight;
        dip.pinball += weight * pinball(points, truth, session.turnLater[t]);
        dip.covered += weight * hit;
        if (session.place[t] == Session.BATH) dip.lift.step(weight, error, width, hit);
        if (session.place[t] == Session.COLD_WATER) dip.cold.step(weight, error, width, hit);
    }

    private static double pinball(float[] points, float now, float later) {
        double first = Loss.pinball(points, 0, now);
        return Float.isNaN(later) ? first : (first + Loss.pinball(points, Loss.LATER, later)) / 2;
    }
}
