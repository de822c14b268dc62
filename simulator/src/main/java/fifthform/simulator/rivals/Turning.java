package fifthform.simulator.rivals;

import fifthform.simulator.bench.Batch;
import fifthform.simulator.bench.Moment;
import fifthform.simulator.bench.Program;
import fifthform.simulator.maker.Judging;
import java.time.Duration;
import java.util.HashMap;
import java.util.Map;

/**
 * What would really come of a lift at a moment: the same hands lift at once, stir as usual, and the highest of the bulk
 * counts. A moment that was asked before is not gone through again, for until the lift nothing that a program says
 * changes the batch.
 */
final class Turning {
    private static final Duration LONGEST_COAST = Duration.ofMinutes(6);
    /** So long after the highest, and so far below it, it will not be passed again. */
    private static final Duration TURNED_FOR = Duration.ofSeconds(30);

    private static final double TURNED_KELVIN = 0.01;

    private final Batch batch;
    private final Map<Long, Double> known = new HashMap<>();

    Turning(Batch batch) {
        this.batch = batch;
    }

    /** The highest bulk if lifted at this moment, °C in truth. */
    double ifLiftedCelsius(Moment moment) {
        return known.computeIfAbsent(moment.steps(), step -> through(moment));
    }

    private double through(Moment from) {
        Judging maker = (Judging) from.maker();
        Moment moment = from.advisedBy(Program.SILENT).inHandsOf(maker.lifting(from.at()));
        double highest = from.kitchen().bulkCelsius();
        Duration highestAfter = Duration.ZERO;
        Duration gone = Duration.ZERO;
        while (gone.compareTo(LONGEST_COAST) < 0) {
            moment = batch.next(moment).after();
            gone = gone.plus(Batch.STEP);
            double celsius = moment.kitchen().bulkCelsius();
            if (celsius > highest) {
                highest = celsius;
                highestAfter = gone;
            } else if (gone.minus(highestAfter).compareTo(TURNED_FOR) >= 0 && highest - celsius > TURNED_KELVIN) {
                break;
            }
        }
        return highest;
    }
}
