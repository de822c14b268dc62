package fifthform.curves.signal;

import fifthform.curves.check.Require;

/**
 * The usual time between two readings of a probe, so that one which speaks once a minute is not called silent, and one
 * which speaks ten times a second is missed soon. A pause says nothing of the pace, unless the next is as long.
 *
 * @param periodSeconds usual time between readings, s
 * @param lastPauseSeconds the last time between two readings that was too long for the pace then, s; 0 for none
 * @param patienceSeconds how long to wait as long as no pace is known, s
 * @param gaps how many times between readings are behind it
 */
public record Pace(double periodSeconds, double lastPauseSeconds, double patienceSeconds, int gaps) {
    private static final double USUAL_PERIOD_SECONDS = 1;
    private static final double SHORTEST_SECONDS = 0.05;
    private static final double LONGEST_SECONDS = 180;
    private static final double NEW_SHARE = 0.1;

    /** A number older than this, or than so many usual periods, is not the present one. Own choice. */
    private static final double SILENCE_SECONDS = 2;

    private static final double SILENT_PERIODS = 5;

    /** A pace of the bowl is expected to be quick; a room thermometer may speak once a minute. Own choice. */
    static final Pace QUICK = new Pace(USUAL_PERIOD_SECONDS, 0, SILENT_PERIODS * USUAL_PERIOD_SECONDS, 0);

    static final Pace ANY = new Pace(USUAL_PERIOD_SECONDS, 0, LONGEST_SECONDS, 0);

    public Pace {
        Require.within(periodSeconds, SHORTEST_SECONDS, LONGEST_SECONDS, "periodSeconds");
        Require.within(lastPauseSeconds, 0, 1e10, "lastPauseSeconds");
        Require.within(patienceSeconds, SILENCE_SECONDS, LONGEST_SECONDS, "patienceSeconds");
    }

    /** With one more time between two readings of which none was lost or refused. */
    Pace with(double gapSeconds) {
        if (gapSeconds > overdueSeconds() && gapSeconds < LONGEST_SECONDS) {
            boolean again =
                    lastPauseSeconds > 0 && gapSeconds / lastPauseSeconds > 0.67 && gapSeconds / lastPauseSeconds < 1.5;
            return new Pace(again ? gapSeconds : periodSeconds, gapSeconds, patienceSeconds, gaps);
        }
        if (gapSeconds >= LONGEST_SECONDS) return this;
        // The first gaps count in full, so that a slow probe's pace is known by its second reading.
        double share = gaps == 0 ? 1 : NEW_SHARE;
        double period = periodSeconds + share * (gapSeconds - periodSeconds);
        return new Pace(Math.min(LONGEST_SECONDS, Math.max(SHORTEST_SECONDS, period)), 0, patienceSeconds, gaps + 1);
    }

    /** After how long without a reading the last one is not the present one any more, s. */
    double overdueSeconds() {
        double usual = Math.max(SILENCE_SECONDS, SILENT_PERIODS * periodSeconds);
        return gaps == 0 ? Math.max(usual, patienceSeconds) : usual;
    }
}
