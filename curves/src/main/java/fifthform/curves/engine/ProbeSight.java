package fifthform.curves.engine;

import fifthform.curves.setup.Setup;
import fifthform.curves.signal.Track;
import fifthform.curves.signal.Trend;
import fifthform.curves.signal.Window.Point;
import fifthform.curves.situation.ProbePlace;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * Sees a probe back in the chocolate that was said to be out and never said to be back. The word "out" silences every
 * temperature alarm, and hands that put a probe back forget the key: so the readings may end it, where for a while they have
 * been what only chocolate can have shown. Water for rinsing runs off and air cools a tip; neither stays near the chocolate,
 * well above the room, and slow.
 */
final class ProbeSight {
    /** So long must the readings look like chocolate. Own choice. */
    private static final Duration STEADY = Duration.ofSeconds(45);

    /** As fast as a bowl of a kilogram over hot water; twice that is a tip in something else. Own choice. */
    private static final double FASTEST_KELVIN_PER_MINUTE = 6;

    /** How far from where it was the chocolate may be found again, and how much further for each minute. Own choice. */
    private static final double NEAR_KELVIN = 4;

    private static final double NEAR_KELVIN_PER_MINUTE = 2;
    private static final double FARTHEST_KELVIN = 12;

    /** Air never holds a tip this far above the room. Own choice. */
    private static final double ABOVE_ROOM_KELVIN = 3;

    private ProbeSight() {}

    /** The state once the latest reading has been looked at. */
    static State noticed(State told, Setup setup) {
        if (told.probe() != ProbePlace.OUT) return told;
        boolean like = isLikeChocolate(told, setup);
        Optional<Instant> since = told.told().likeChocolateSince();
        if (!like) return since.isEmpty() ? told : told.withTold(told.told().withLikeChocolate(Optional.empty()));
        if (since.isEmpty()) return told.withTold(told.told().withLikeChocolate(Optional.of(told.at())));
        boolean longEnough = Duration.between(since.get(), told.at()).compareTo(STEADY) >= 0;
        return longEnough ? told.withTold(told.told().withProbeIn()) : told;
    }

    private static boolean isLikeChocolate(State told, Setup setup) {
        Optional<Track> bowl = told.tracks().of(setup.bowlProbe().id()).filter(t -> t.freshAt(told.at()));
        List<Point> points = told.window().points();
        if (bowl.isEmpty() || bowl.get().trend().isEmpty() || points.isEmpty()) return false;
        Trend trend = bowl.get().trend().get();
        double minutesOut = Duration.between(told.probeOutSince().orElse(told.at()), told.at())
                        .toMillis()
                / 60_000.0;
        double near = Math.min(FARTHEST_KELVIN, NEAR_KELVIN + NEAR_KELVIN_PER_MINUTE * minutesOut);
        boolean found = Math.abs(trend.level() - points.get(points.size() - 1).celsius()) <= near;
        boolean slow = Math.abs(60 * trend.slope()) <= FASTEST_KELVIN_PER_MINUTE;
        return found && slow && trend.level() > Around.of(told, setup).roomCelsius() + ABOVE_ROOM_KELVIN;
    }
}
