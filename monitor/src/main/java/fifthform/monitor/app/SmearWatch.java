package fifthform.monitor.app;

import fifthform.curves.proof.Smear;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/** Times a film with the Enter key. */
final class SmearWatch {
    private static final long LOOK_MILLIS = 100;
    private static final double GIVE_UP_MINUTES = 20;

    private final CheckDesk desk;

    SmearWatch(CheckDesk desk) {
        this.desk = Objects.requireNonNull(desk, "desk");
    }

    /** How long it took, and whether it set at all. */
    record Timed(double minutes, boolean isSet) {}

    Timed time() throws Refusal, InterruptedException {
        Optional<String> spread = desk.ask("Press Enter the moment the film is spread.");
        if (spread.isEmpty())
            throw new Refusal(
                    Exit.NOT_UNDERSTOOD,
                    "Nobody can press Enter here, so no film can be timed. Nothing was done. Time it yourself and say --minutes"
                            + " and --look.");
        long begun = System.nanoTime();
        boolean told = false;
        desk.say("Press Enter when a finger leaves no mark.");
        while (true) {
            double minutes = (System.nanoTime() - begun) / 60e9;
            if (desk.entered()) return new Timed(minutes, true);
            if (minutes > GIVE_UP_MINUTES) return new Timed(minutes, false);
            if (!told && minutes > Smear.LONGEST_MINUTES) {
                told = true;
                desk.say("Ten minutes: if it is still wet, it is not in temper. It is watched on until 20 minutes.");
            }
            desk.value(
                    Instant.EPOCH.plus(Duration.ofNanos(System.nanoTime() - begun)), ProofReport.minutes(60 * minutes));
            Thread.sleep(LOOK_MILLIS);
        }
    }
}
