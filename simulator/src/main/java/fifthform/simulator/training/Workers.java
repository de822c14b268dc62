package fifthform.simulator.training;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Threads that share the sessions among themselves. What comes of session i is left at place i, and whoever adds up goes
 * by the places: so neither the number of threads nor who was quicker shows in any bit.
 */
final class Workers implements AutoCloseable {
    /** What is done with the session at a place. */
    interface Task {
        void at(int place, NetworkPass pass);
    }

    private final ExecutorService threads;
    private final List<NetworkPass> passes = new ArrayList<>();

    Workers(int count, Shape shape) {
        threads = Executors.newFixedThreadPool(count);
        for (int i = 0; i < count; i++) passes.add(new NetworkPass(shape));
    }

    /** Does the task for places {@code 0} to {@code count − 1} and waits until all are done. */
    void each(int count, Task task) throws InterruptedException {
        AtomicInteger next = new AtomicInteger();
        List<Callable<Void>> shares = new ArrayList<>();
        for (NetworkPass pass : passes) shares.add(() -> share(next, count, task, pass));
        for (Future<Void> share : threads.invokeAll(shares)) {
            try {
                share.get();
            } catch (ExecutionException e) {
                throw new IllegalStateException("a worker gave up", e.getCause());
            }
        }
    }

    private static Void share(AtomicInteger next, int count, Task task, NetworkPass pass) {
        for (int place = next.getAndIncrement(); place < count; place = next.getAndIncrement()) task.at(place, pass);
        return null;
    }

    @Override
    public void close() {
        threads.shutdownNow();
    }
}
