package fifthform.monitor.app;

import fifthform.curves.proof.Smear;
import fifthform.monitor.texts.ProofText;
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
        Optional<String> spread = desk.ask(ProofText.PRESS_ENTER_THE_MOMENT_THE.say());
        if (spread.isEmpty()) throw new Refusal(Exit.NOT_UNDERSTOOD, ProofText.NOBODY_CAN_PRESS_ENTER_HERE_SO.say());
        long begun = System.nanoTime();
        boolean told = false;
        desk.say(ProofText.PRESS_ENTER_WHEN_A_FINGER.say());
        while (true) {
            double minutes = (System.nanoTime() - begun) / 60e9;
            if (desk.entered()) return new Timed(minutes, true);
            if (minutes > GIVE_UP_MINUTES) return new Timed(minutes, false);
            if (!told && minutes > Smear.LONGEST_MINUTES) {
                told = true;
                desk.say(ProofText.TEN_MINUTES_IF_IT_IS_STILL.say());
            }
            desk.value(
                    Instant.EPOCH.plus(Duration.ofNanos(System.nanoTime() - begun)), ProofReport.minutes(60 * minutes));
            Thread.sleep(LOOK_MILLIS);
        }
    }
}
