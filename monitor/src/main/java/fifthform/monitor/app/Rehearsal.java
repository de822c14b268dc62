package fifthform.monitor.app;

import fifthform.monitor.view.FxStart;
import java.util.concurrent.TimeUnit;

/**
 * Opens Watch on a practice batch where nobody sees it, and ends. {@code monitor/run} starts it once after a build with
 * {@code -XX:ArchiveClassesAtExit}: what a start loads is then read from one file, already checked, at each start that
 * follows. Nothing depends on it; where it fails, starts are slower and that is all.
 */
public final class Rehearsal {
    /** What a screen loads comes with its first seconds, not with its first picture alone. */
    private static final long PLAYED_SECONDS = 4;

    private static final long PATIENCE_SECONDS = 60;

    private Rehearsal() {}

    public static void main(String[] args) throws InterruptedException {
        Thread program = new Thread(
                () -> Main.main(new String[] {"watch", "--probe", "practice", "--screen", "window"}), "rehearsed");
        program.setDaemon(true);
        program.start();
        long until = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
        while (!FxStart.opened()) {
            if (System.nanoTime() > until) System.exit(Exit.FAULT.code());
            TimeUnit.MILLISECONDS.sleep(50);
        }
        TimeUnit.SECONDS.sleep(PLAYED_SECONDS);
        System.exit(Exit.DONE.code());
    }
}
