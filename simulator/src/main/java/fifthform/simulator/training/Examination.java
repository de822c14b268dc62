package fifthform.simulator.training;

import java.util.List;

/** How networks do where they never learned. */
final class Examination {
    private Examination() {}

    /** @param networks whose answers are averaged, as the program does it */
    static Score of(List<Parameters> networks, List<Session> sessions, Workers workers) throws InterruptedException {
        Score[] scores = new Score[sessions.size()];
        workers.each(scores.length, (place, pass) -> {
            Session session = sessions.get(place);
            scores[place] = Marking.of(session, averaged(networks, session, pass));
        });
        Score sum = Score.NOTHING;
        for (Score score : scores) sum = sum.plus(score);
        return sum;
    }

    private static float[][] averaged(List<Parameters> networks, Session session, NetworkPass pass) {
        float[][] sum = new float[session.steps][Parameters.OUTPUTS];
        for (Parameters network : networks) {
            float[][] answers = pass.forward(network, session);
            for (int t = 0; t < session.steps; t++) Rows.add(sum[t], 1f / networks.size(), answers[t]);
        }
        return sum;
    }
}
