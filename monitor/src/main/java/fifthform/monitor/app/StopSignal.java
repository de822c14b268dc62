package fifthform.monitor.app;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/** Lets Ctrl-C and a polite kill end a session in good order: asked to stop, then waited for. */
final class StopSignal {
    private static final long PATIENCE_SECONDS = 20;

    private final CountDownLatch closed = new CountDownLatch(1);
    private volatile Exit exit = Exit.FAULT;
    private final Thread hook;

    private StopSignal(Runnable stop) {
        hook = new Thread(
                () -> {
                    stop.run();
                    try {
                        boolean inTime = closed.await(PATIENCE_SECONDS, TimeUnit.SECONDS);
                        // The session has ended as it should; only a session that hung is worth another code.
                        if (inTime) Runtime.getRuntime().halt(exit.code());
                    } catch (InterruptedException e) {
                        Thread.currentThread().interrupt();
                    }
                },
                "stop");
    }

    static StopSignal listen(Runnable stop) {
        StopSignal signal = new StopSignal(stop);
        Runtime.getRuntime().addShutdownHook(signal.hook);
        return signal;
    }

    /** The session is closed and its last words are said; this is how it went. */
    void ended(Exit how) {
        exit = how;
        closed.countDown();
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException alreadyStopping) {
            // The signal came; the hook ends the process.
        }
    }
}
