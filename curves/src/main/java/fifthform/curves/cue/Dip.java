package fifthform.curves.cue;

import fifthform.curves.check.Require;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/**
 * One short stay over the bath: asked for, going on, or over and its peak awaited.
 *
 * @param stage how far it is
 * @param purpose what for
 * @param askedAt when it was asked for; where nobody asked, when it began
 * @param seconds how long it should last, s; once it is over: how long it did last, as far as known
 * @param since when the stage began
 * @param fromCelsius temperature when it was asked for, °C
 * @param driftKelvinPerSecond rate of the resting bowl then, at most 0, K/s
 * @param highestCelsius highest temperature since, °C
 * @param fastestKelvinPerMinute highest rate since, K/min
 * @param mark how it stood early in the look, against which its end shows how late this bowl is
 */
public record Dip(
        Stage stage,
        Purpose purpose,
        Instant askedAt,
        double seconds,
        Instant since,
        double fromCelsius,
        double driftKelvinPerSecond,
        double highestCelsius,
        double fastestKelvinPerMinute,
        Optional<Mark> mark) {
    /** How far a dip is. */
    public enum Stage {
        /** The maker has been asked to put the bowl over the bath. */
        ASKED,
        OVER_BATH,
        /** Off the bath; its peak is awaited. */
        LOOKING
    }

    /**
     * A moment of a coast.
     *
     * @param celsius temperature, °C
     * @param kelvinPerSecond its pace, K/s
     */
    public record Mark(double celsius, double kelvinPerSecond) {
        public Mark {
            Require.finite(celsius, "celsius");
            Require.finite(kelvinPerSecond, "kelvinPerSecond");
        }
    }

    /** What a dip is for. */
    public enum Purpose {
        /** Up to the working range. */
        REACH,
        /** To stay in it. */
        HOLD
    }

    public Dip {
        Objects.requireNonNull(stage, "stage");
        Objects.requireNonNull(purpose, "purpose");
        Objects.requireNonNull(askedAt, "askedAt");
        Require.within(seconds, 0, 3600, "seconds");
        Objects.requireNonNull(since, "since");
        Require.finite(fromCelsius, "fromCelsius");
        Require.within(driftKelvinPerSecond, -1e3, 0, "driftKelvinPerSecond");
        Require.finite(highestCelsius, "highestCelsius");
        Require.finite(fastestKelvinPerMinute, "fastestKelvinPerMinute");
        Objects.requireNonNull(mark, "mark");
    }

    public boolean is(Stage other) {
        return stage == other;
    }

    /** Whether somebody was asked for these seconds and counts them; else the bowl was put over the bath unasked. */
    boolean isCounted() {
        return stage == Stage.ASKED || since.isAfter(askedAt);
    }

    /** How long the stage has lasted, s. */
    public double secondsAt(Instant now) {
        return Duration.between(since, now).toMillis() / 1000.0;
    }

    Dip reaching(double celsius, double kelvinPerMinute) {
        return new Dip(
                stage,
                purpose,
                askedAt,
                seconds,
                since,
                fromCelsius,
                driftKelvinPerSecond,
                Math.max(highestCelsius, celsius),
                Math.max(fastestKelvinPerMinute, kelvinPerMinute),
                mark);
    }

    Dip overBath(Instant from) {
        return new Dip(
                Stage.OVER_BATH,
                purpose,
                askedAt,
                seconds,
                from,
                fromCelsius,
                driftKelvinPerSecond,
                highestCelsius,
                fastestKelvinPerMinute,
                mark);
    }

    /** Off the bath since {@code from}, after {@code lasted} s over it. */
    Dip looking(Instant from, double lasted) {
        return new Dip(
                Stage.LOOKING,
                purpose,
                askedAt,
                Math.max(0, lasted),
                from,
                fromCelsius,
                driftKelvinPerSecond,
                highestCelsius,
                fastestKelvinPerMinute,
                mark);
    }

    Dip marked(Mark moment) {
        return new Dip(
                stage,
                purpose,
                askedAt,
                seconds,
                since,
                fromCelsius,
                driftKelvinPerSecond,
                highestCelsius,
                fastestKelvinPerMinute,
                Optional.of(moment));
    }

    /** What it gave up to its peak, what the room took meanwhile put back, K. */
    double riseKelvin(Instant peakSeenAt) {
        double time = Duration.between(askedAt, peakSeenAt).toMillis() / 1000.0;
        return highestCelsius - fromCelsius - driftKelvinPerSecond * time;
    }
}
