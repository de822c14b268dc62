package fifthform.curves.signal;

import fifthform.curves.input.MakerAction.Place;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/**
 * Where the tip is, as its own quick moves show: pulled out, it runs off towards the room; touching the wall, towards
 * the water behind it, and back as suddenly. Both are quicker than a bowl of chocolate, which is what gives them away.
 * A move counts once three readings in a row show it, so that a spike is no move.
 *
 * @param last the two readings before this one, °C; together with it their median is taken
 * @param anchor a reading of 5 to 10 s ago, against which moves are measured
 * @param next the anchor after that
 * @param quickReadings readings in a row that have run off from the anchor
 * @param strayed where the tip is thought to be instead of in the chocolate
 */
public record TipPlace(
        Last last, Optional<Mark> anchor, Optional<Mark> next, int quickReadings, Optional<Away> strayed) {
    /** In the chocolate, as far as known. */
    public static final TipPlace IN_CHOCOLATE =
            new TipPlace(new Last(Double.NaN, Double.NaN), Optional.empty(), Optional.empty(), 0, Optional.empty());

    /** Two readings; not a number before there were any. */
    record Last(double older, double newer) {}

    /** A reading to measure against. */
    record Mark(Instant at, double celsius) {}

    /**
     * A tip that is not where it should be.
     *
     * @param doubt out of the chocolate, or at the wall
     * @param fromCelsius the reading before it left
     * @param farthestCelsius the reading farthest from that
     * @param lastQuick when it last moved quickly
     */
    record Away(Doubt doubt, double fromCelsius, double farthestCelsius, Instant lastQuick) {
        private Away moved(double celsius, Instant quick) {
            boolean farther = Math.abs(celsius - fromCelsius) > Math.abs(farthestCelsius - fromCelsius);
            return new Away(doubt, fromCelsius, farther ? celsius : farthestCelsius, quick);
        }

        private boolean isBack(double celsius) {
            return (celsius - fromCelsius) / (farthestCelsius - fromCelsius) < 0.4;
        }
    }

    private static final double ANCHOR_SECONDS = 5;
    private static final double LONGEST_MOVE_SECONDS = 30;
    private static final int QUICK_READINGS = 3;

    /**
     * Quicker than a bowl: 200 g in an ice bath fall by about 15 K/min (estimate, no source), in other water by less;
     * where the bowl is known to stand in cold water twice that is asked.
     */
    private static final double QUICK_KELVIN_PER_MINUTE = 20;

    private static final double QUICK_IN_COLD_KELVIN_PER_MINUTE = 30;
    private static final double LEAST_MOVE_KELVIN = 2;

    /** Nearer than this, the room or the water is no place to run off to. Own choice. */
    private static final double LEAST_WAY_KELVIN = 4;

    private static final double NEAR_ROOM_KELVIN = 3;

    /** A tip that neither comes back nor moves on for so long is believed again: something was poured in, maybe. */
    private static final double BELIEVED_SECONDS = 60;

    public TipPlace {
        Objects.requireNonNull(last, "last");
        Objects.requireNonNull(anchor, "anchor");
        Objects.requireNonNull(next, "next");
        Objects.requireNonNull(strayed, "strayed");
    }

    Optional<Doubt> doubt() {
        return strayed.map(Away::doubt);
    }

    TipPlace with(Instant at, double read, double stepKelvin, Surroundings around) {
        double celsius = Double.isNaN(last.older()) ? read : median(last.older(), last.newer(), read);
        Last seen = new Last(last.newer(), read);
        Mark here = new Mark(at, celsius);
        boolean lostSight = anchor.isEmpty() || Track.seconds(anchor.get().at(), at) > LONGEST_MOVE_SECONDS;
        if (lostSight) return new TipPlace(seen, Optional.of(here), Optional.of(here), 0, settled(here, around));
        boolean quick = isQuick(anchor.get(), here, stepKelvin, around);
        int quickNow = quick ? quickReadings + 1 : 0;
        // What it is measured against lies where the tip no longer is.
        boolean cameBack = strayed.filter(away -> away.isBack(celsius)).isPresent();
        if (cameBack) return new TipPlace(seen, Optional.of(here), Optional.of(here), 0, Optional.empty());
        boolean turn = quickNow == 0 && Track.seconds(next.get().at(), at) >= ANCHOR_SECONDS;
        return new TipPlace(
                seen,
                turn ? next : anchor,
                turn ? Optional.of(here) : next,
                quickNow,
                quickNow >= QUICK_READINGS ? ranOff(anchor.get(), here, around) : settled(here, around));
    }

    private static boolean isQuick(Mark from, Mark to, double stepKelvin, Surroundings around) {
        double seconds = Track.seconds(from.at(), to.at());
        // Rounding alone may add a step of the adapter to a move.
        double moved = Math.abs(to.celsius() - from.celsius()) - stepKelvin;
        double quick = isCold(around) ? QUICK_IN_COLD_KELVIN_PER_MINUTE : QUICK_KELVIN_PER_MINUTE;
        return moved >= LEAST_MOVE_KELVIN && 60 * moved >= quick * Math.max(1, seconds);
    }

    private Optional<Away> ranOff(Mark from, Mark to, Surroundings around) {
        if (strayed.isPresent()) {
            return Optional.of(strayed.get().moved(to.celsius(), to.at()));
        }
        return whereTo(from, to, around).map(doubt -> new Away(doubt, from.celsius(), to.celsius(), to.at()));
    }

    private static Optional<Doubt> whereTo(Mark from, Mark to, Surroundings around) {
        double move = to.celsius() - from.celsius();
        double toRoom = around.roomCelsius() - from.celsius();
        boolean outwards = move * toRoom > 0 && Math.abs(toRoom) >= LEAST_WAY_KELVIN;
        boolean fromAir = Math.abs(toRoom) < LEAST_WAY_KELVIN;
        double toWater = around.water().map(w -> w.celsius() - from.celsius()).orElse(0.0);
        boolean wallwards = move * toWater > 0 && Math.abs(toWater) >= LEAST_WAY_KELVIN && !fromAir;
        if (wallwards && (!outwards || isCold(around))) return Optional.of(Doubt.AT_WALL);
        // Half the way to the room in half a minute, and not past it: no bowl does that, nor any other fault.
        double left = around.roomCelsius() - to.celsius();
        boolean past = left * toRoom < 0 && Math.abs(left) > NEAR_ROOM_KELVIN;
        return outwards && !past && Math.abs(left) <= 0.5 * Math.abs(toRoom)
                ? Optional.of(Doubt.OUT_OF_CHOCOLATE)
                : Optional.empty();
    }

    private Optional<Away> settled(Mark here, Surroundings around) {
        if (strayed.isEmpty()) return strayed;
        Away away = strayed.get();
        boolean inAir = away.doubt() == Doubt.OUT_OF_CHOCOLATE
                && Math.abs(here.celsius() - around.roomCelsius()) < NEAR_ROOM_KELVIN;
        boolean believed = !inAir && Track.seconds(away.lastQuick(), here.at()) >= BELIEVED_SECONDS;
        return believed ? Optional.empty() : Optional.of(away.moved(here.celsius(), away.lastQuick()));
    }

    private static boolean isCold(Surroundings around) {
        return around.water().filter(w -> w.place() == Place.COLD_WATER).isPresent();
    }

    static double median(double a, double b, double c) {
        return Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
    }
}
