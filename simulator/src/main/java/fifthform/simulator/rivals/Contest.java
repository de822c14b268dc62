package fifthform.simulator.rivals;

import fifthform.simulator.bench.Fleet;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Function;
import java.util.stream.LongStream;

/** Goes through many kitchens of a fleet, on several cores, with the same answer on any number of them. */
final class Contest {
    private final Fleet fleet;
    private final int cores;

    Contest(Fleet fleet, int cores) {
        this.fleet = fleet;
        this.cores = cores;
    }

    JudgedKitchen kitchen(long number) {
        return JudgedKitchen.draw(fleet, number, Shelf::recipe);
    }

    /** What each of the kitchens from this number on gives, in their order. */
    <T> List<T> each(long from, int kitchens, Function<JudgedKitchen, T> trial) {
        List<Long> numbers = LongStream.range(from, from + kitchens).boxed().toList();
        return together(numbers, number -> trial.apply(kitchen(number)));
    }

    /** What each of these gives, in their order. */
    <S, T> List<T> together(List<S> all, Function<S, T> trial) {
        ExecutorService pool = Executors.newFixedThreadPool(cores);
        try {
            List<Callable<T>> tasks = new ArrayList<>();
            for (S each : all) tasks.add(() -> trial.apply(each));
            List<T> results = new ArrayList<>();
            for (Future<T> each : pool.invokeAll(tasks)) results.add(each.get());
            return results;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted within a contest", e);
        } catch (ExecutionException e) {
            throw new IllegalStateException("a kitchen failed", e.getCause());
        } finally {
            pool.shutdown();
        }
    }
}
