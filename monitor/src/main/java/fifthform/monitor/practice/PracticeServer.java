package fifthform.monitor.practice;

import fifthform.curves.check.Require;
import fifthform.probe.link.LinkException;
import fifthform.probe.link.LinkSource;
import fifthform.simulator.device.KitchenVoice;
import fifthform.simulator.device.RunningKitchen;
import java.time.Duration;
import java.time.Instant;

/**
 * Lets a pretend kitchen speak through a real line, most often a serial port at whose other end another program watches, at
 * the speed of life or some times faster. The port is opened with the line settings of the adapter's language.
 */
public final class PracticeServer implements AutoCloseable {
    /** Faster ones a serial line cannot carry. */
    public static final double FASTEST = 10;

    private final KitchenVoice voice;

    /**
     * @param kitchen started, and not read by anybody else
     * @param port where to speak
     * @param speed how many times faster than life, 1 to {@link #FASTEST}
     */
    public PracticeServer(RunningKitchen kitchen, LinkSource port, double speed) {
        this.voice = new KitchenVoice(kitchen, port, new RealPace(kitchen.now(), speed));
    }

    /**
     * Speaks, and answers where it is asked, until the batch is over or {@link #close()} is called from another thread.
     *
     * @throws LinkException the port cannot be opened, or has gone
     */
    public void serve() throws LinkException, InterruptedException {
        voice.speak();
    }

    @Override
    public void close() {
        voice.close();
    }

    /** The kitchen's time against the computer's, which begins to run with the first wait. */
    private static final class RealPace implements KitchenVoice.Pace {
        private final Instant begins;
        private final double speed;
        private boolean running;
        private long beganNanos;

        RealPace(Instant begins, double speed) {
            this.begins = begins;
            this.speed = Require.within(speed, 1, FASTEST, "speed");
        }

        @Override
        public void until(Instant kitchenTime) throws InterruptedException {
            if (!running) beganNanos = System.nanoTime();
            running = true;
            long due = (long) (Duration.between(begins, kitchenTime).toNanos() / speed);
            long wait = beganNanos + due - System.nanoTime();
            if (wait > 0) Thread.sleep(Duration.ofNanos(wait).toMillis());
        }
    }
}
