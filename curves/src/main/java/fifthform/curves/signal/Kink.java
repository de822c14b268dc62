package fifthform.curves.signal;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Whether the curve bends as no bowl of chocolate can: within two seconds it leaves the line on which it lay for ten. That
 * is how a tip begins that slips to the wall, is pulled out for a moment, or is put back; {@link TipPlace} says later
 * which of them it was. Heat reaches the chocolate through the wall and takes many seconds to change a rate: in the home
 * fleet, 40 batches with the chocolate melted, 1 reading in 2 000 lay 0.4 K off that line, and of the tips that came to
 * feel the wall or the air by 1 K or more 97 in 100 were further off within four seconds, half of them within 1.5 s.
 *
 * @param recent the readings of the last ten seconds, oldest first
 * @param noise of one reading
 * @param away since the curve bent, until it is back or goes on smoothly elsewhere
 */
public record Kink(List<Point> recent, Noise noise, Optional<Away> away) {
    /** Nothing seen yet. */
    public static final Kink NONE = new Kink(List.of(), Noise.UNKNOWN, Optional.empty());

    /**
     * Noise of one reading as second differences show it, which a slope leaves at zero: of white noise their mean size is
     * √6 · √(2/π) σ (computed).
     *
     * @param kelvin σ
     * @param readings how many it rests on
     */
    record Noise(double kelvin, int readings) {
        static final Noise UNKNOWN = new Noise(0, 0);
        private static final double SIZE_PER_SIGMA = Math.sqrt(6) * Math.sqrt(2 / Math.PI);
        private static final int MEMORY = 120;

        /** Too few say nothing; their number is then no bend either. */
        private static final int ENOUGH = 12;

        private Noise with(double older, double middle, double newer) {
            double sigma = Math.abs(newer - 2 * middle + older) / SIZE_PER_SIGMA;
            double capped = readings >= ENOUGH ? Math.min(sigma, 4 * kelvin + 0.1) : sigma;
            int count = Math.min(MEMORY, readings + 1);
            return new Noise(kelvin + (capped - kelvin) / count, count);
        }

        private boolean isKnown() {
            return readings >= ENOUGH;
        }
    }

    /** A reading. */
    record Point(Instant at, double celsius) {}

    /**
     * A curve that has left its line.
     *
     * @param at when
     * @param celsius where the line was then, °C
     * @param kelvinPerSecond its slope, K/s
     * @param farthestKelvin the farthest from it so far, signed
     * @param lastMoved when it last moved quickly
     */
    record Away(Instant at, double celsius, double kelvinPerSecond, double farthestKelvin, Instant lastMoved) {
        /** The chocolate goes on meanwhile; how long as before, nobody knows. */
        private double lineAt(Instant now) {
            return celsius + kelvinPerSecond * Math.min(LINE_HOLDS_SECONDS, Track.seconds(at, now));
        }

        private Away seen(double offKelvin, Instant moved) {
            boolean farther = Math.abs(offKelvin) > Math.abs(farthestKelvin);
            return new Away(at, celsius, kelvinPerSecond, farther ? offKelvin : farthestKelvin, moved);
        }
    }

    private static final double MEMORY_SECONDS = 10;
    private static final double OLDER_SECONDS = 6;
    private static final double NEWER_SECONDS = 2;

    /** Ten readings a second tell no more of ten seconds than four. */
    private static final double SPACING_SECONDS = 0.24;

    /** A slower adapter shows no bend in time; a jump of it is a stray. */
    private static final int LEAST_IN_A_BLOCK = 3;

    private static final double LEAST_KELVIN = 0.3;

    /** Line and middle reading together are about as unsure as one reading; the other parts of the limit make it six sigma. */
    private static final double SIGMAS = 3;

    private static final double LINE_HOLDS_SECONDS = 20;
    /** A line steeper than this was no bowl's to begin with: 6 K/min. Own choice. */
    private static final double FASTEST_KELVIN_PER_SECOND = 0.1;

    private static final double BACK_FRACTION = 0.25;
    private static final double STILL_SECONDS = 2;

    /** Back on its line is nearer than what counts as having left it. */
    private static final double BACK_KELVIN = 0.15;

    /** A curve that goes on smoothly for so long is believed to be the chocolate's: cold seed went in, maybe. */
    private static final double BELIEVED_SECONDS = 12;

    /** Over water the wall is another temperature for as long as the tip rests on it. */
    private static final double BELIEVED_OVER_WATER_SECONDS = 30;

    /** No tip slips for longer; readings that still swing then are this stirring's, and silence would cost the lift. */
    private static final double LONGEST_SECONDS = 40;

    public Kink {
        recent = List.copyOf(recent);
        Objects.requireNonNull(noise, "noise");
        Objects.requireNonNull(away, "away");
    }

    /** The chocolate's rate before it left its line, K/s. */
    OptionalDouble slopeBefore() {
        return away.filter(left -> Math.abs(left.kelvinPerSecond()) <= FASTEST_KELVIN_PER_SECOND)
                .map(left -> OptionalDouble.of(left.kelvinPerSecond()))
                .orElse(OptionalDouble.empty());
    }

    Optional<Doubt> doubt() {
        return away.map(left -> Doubt.JUMPS);
    }

    Kink with(Instant at, double read, double stepKelvin, Surroundings around) {
        if (around.chocolate() == Surroundings.Chocolate.MELTING) return NONE;
        if (!recent.isEmpty() && Track.seconds(newest().at(), at) < SPACING_SECONDS) return this;
        Kink next = new Kink(remembering(at, read), noise, away);
        if (next.recent.size() < 3) return next;
        return away.map(left -> next.following(left, stepKelvin, around))
                .orElseGet(() -> next.heard().watching(stepKelvin));
    }

    private List<Point> remembering(Instant at, double read) {
        List<Point> kept = new ArrayList<>(recent.size() + 1);
        boolean interrupted = !recent.isEmpty() && Track.seconds(newest().at(), at) > OLDER_SECONDS;
        for (Point p : recent) if (!interrupted && Track.seconds(p.at(), at) <= MEMORY_SECONDS) kept.add(p);
        kept.add(new Point(at, read));
        return kept;
    }

    private Kink heard() {
        int n = recent.size();
        Noise heard = noise.with(
                recent.get(n - 3).celsius(),
                recent.get(n - 2).celsius(),
                recent.get(n - 1).celsius());
        return new Kink(recent, heard, away);
    }

    private Kink watching(double stepKelvin) {
        Instant now = newest().at();
        Block older = block(now, OLDER_SECONDS, MEMORY_SECONDS);
        Block newer = block(now, NEWER_SECONDS, OLDER_SECONDS);
        boolean few = older.count() < LEAST_IN_A_BLOCK || newer.count() < LEAST_IN_A_BLOCK;
        if (few || !noise.isKnown()) return this;
        double slope = (newer.celsius() - older.celsius()) / (older.ageSeconds() - newer.ageSeconds());
        Point middle = recent.get(recent.size() - 2);
        double line = newer.celsius() + slope * (newer.ageSeconds() - Track.seconds(middle.at(), now));
        double off = lately() - line;
        // Noise of a third of a step smooths the rounding out of the line; without it a step more may be in its slope.
        double rounding = noise.kelvin() >= stepKelvin / 3 ? stepKelvin : 2 * stepKelvin;
        double limit = LEAST_KELVIN + rounding + SIGMAS * noise.kelvin();
        return Math.abs(off) > limit && together(line, off)
                ? new Kink(recent, noise, Optional.of(new Away(middle.at(), line, slope, off, now)))
                : this;
    }

    /** Noise that has just begun goes to and fro; a tip that has left goes on. */
    private boolean together(double line, double off) {
        int n = recent.size();
        double newest = (recent.get(n - 1).celsius() - line) / off;
        double before = (recent.get(n - 2).celsius() - line) / off;
        return newest > 0.5 && before > 0.5;
    }

    private Kink following(Away left, double stepKelvin, Surroundings around) {
        Instant now = newest().at();
        double off = lately() - left.lineAt(now);
        Block before = block(now, STILL_SECONDS, OLDER_SECONDS);
        boolean moves = before.count() > 0 && Math.abs(lately() - before.celsius()) > LEAST_KELVIN + stepKelvin;
        Away seen = left.seen(off, moves ? now : left.lastMoved());
        double still = Track.seconds(seen.lastMoved(), now);
        double near = Math.max(BACK_KELVIN + stepKelvin / 2, BACK_FRACTION * Math.abs(seen.farthestKelvin()));
        double believed = around.water().isPresent() ? BELIEVED_OVER_WATER_SECONDS : BELIEVED_SECONDS;
        boolean longEnough = Track.seconds(seen.at(), now) >= LONGEST_SECONDS;
        boolean over = longEnough || still >= believed || still >= STILL_SECONDS && Math.abs(off) <= near;
        // What was read elsewhere is no line to measure against.
        return over ? new Kink(List.of(newest()), noise, Optional.empty()) : new Kink(recent, noise, Optional.of(seen));
    }

    /** The middle one of the last three readings, so that one alone is no bend. */
    private double lately() {
        int n = recent.size();
        return TipPlace.median(
                recent.get(n - 3).celsius(),
                recent.get(n - 2).celsius(),
                recent.get(n - 1).celsius());
    }

    /** Mean, without the highest and the lowest so that a spike is not heard, and mean age of some neighbours. */
    private record Block(int count, double celsius, double ageSeconds) {}

    private Block block(Instant now, double fromSeconds, double toSeconds) {
        double[] celsius = new double[recent.size()];
        int count = 0;
        double age = 0;
        for (Point p : recent) {
            double seconds = Track.seconds(p.at(), now);
            if (seconds < fromSeconds || seconds >= toSeconds) continue;
            celsius[count++] = p.celsius();
            age += seconds;
        }
        if (count == 0) return new Block(0, 0, 0);
        Arrays.sort(celsius, 0, count);
        int left = count < 3 ? 0 : 1;
        double sum = 0;
        for (int i = left; i < count - left; i++) sum += celsius[i];
        return new Block(count, sum / (count - 2 * left), age / count);
    }

    private Point newest() {
        return recent.get(recent.size() - 1);
    }
}
