package fifthform.simulator.maker;

import java.time.Instant;
import java.util.Objects;

/**
 * The spoon at one moment: stirring or resting, and until when.
 *
 * @param stirring how these hands stir
 * @param share of that vigour with which they really do, 0 to 1
 * @param bout whether it stirs or rests
 * @param until when that changes
 * @param vigourFraction how vigorously it stirs now, 0 to 1
 * @param luck for what is drawn next
 */
record Spoon(Stirring stirring, double share, Bout bout, Instant until, double vigourFraction, Luck luck) {
    enum Bout {
        STIRRING,
        RESTING
    }

    Spoon {
        Objects.requireNonNull(stirring, "stirring");
        Objects.requireNonNull(bout, "bout");
        Objects.requireNonNull(until, "until");
        Objects.requireNonNull(luck, "luck");
    }

    /** Not taken up yet. */
    static Spoon resting(Stirring stirring, double share, Luck luck) {
        return new Spoon(stirring, share, Bout.RESTING, Instant.MIN, 0, luck);
    }

    /** Taken up at once, and nothing interrupts for a while. */
    Spoon keptOn(Instant at) {
        return stirred(at.plus(stirring.afterAMove()));
    }

    /** At this moment. */
    Spoon at(Instant now) {
        if (now.isBefore(until)) return this;
        if (bout == Bout.RESTING) return stirred(now.plusMillis(millis(stirring.boutSeconds())));
        return new Spoon(
                stirring, share, Bout.RESTING, now.plusMillis(millis(stirring.pauseSeconds())), 0, luck.after());
    }

    private Spoon stirred(Instant end) {
        Luck next = luck.after();
        return new Spoon(stirring, share, Bout.STIRRING, end, stirring.vigour(next, share), next.after());
    }

    private long millis(double meanSeconds) {
        return Math.round(1000 * luck.exponential(meanSeconds));
    }
}
