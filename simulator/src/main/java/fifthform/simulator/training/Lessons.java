package fifthform.simulator.training;

import java.util.List;
import java.util.SplittableRandom;

/**
 * Sessions divided by kitchens into those that teach and those that examine.
 *
 * @param teaching what is learned from
 * @param examining about a tenth of the kitchens, never learned from
 */
record Lessons(List<Session> teaching, List<Session> examining) {
    private static final int ONE_IN = 10;

    Lessons {
        teaching = List.copyOf(teaching);
        examining = List.copyOf(examining);
        if (teaching.isEmpty() || examining.isEmpty()) {
            throw new IllegalArgumentException("too few kitchens to learn from and to examine: " + teaching.size()
                    + " and " + examining.size() + " sessions; ask for more sessions");
        }
    }

    /** By the kitchens' own numbers, so that more sessions leave the others where they were. */
    static Lessons of(List<Session> sessions) {
        return new Lessons(
                sessions.stream().filter(s -> !examines(s.kitchen)).toList(),
                sessions.stream().filter(s -> examines(s.kitchen)).toList());
    }

    private static boolean examines(long kitchen) {
        return new SplittableRandom(kitchen).nextInt(ONE_IN) == 0;
    }

    Loss loss(Plan plan) {
        double weight = 0;
        double steps = 0;
        for (Session session : teaching) {
            steps += session.steps;
            for (float w : session.weight) weight += w;
        }
        return new Loss(weight / teaching.size(), steps / teaching.size(), plan.placeShare(), plan.bulkShare());
    }
}
