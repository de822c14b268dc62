package fifthform.simulator.rivals;

import fifthform.curves.cue.CueId;
import fifthform.curves.engine.Event;
import fifthform.curves.engine.Event.AlarmRaised;
import fifthform.curves.engine.Event.CueGiven;
import fifthform.curves.recipe.Phase;
import fifthform.simulator.bench.Batch;
import fifthform.simulator.bench.Moment;
import fifthform.simulator.bowl.Spot;
import fifthform.simulator.maker.Judging;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;

/**
 * False words in steady work: warnings of melt-out after which the chocolate did not even come to the warning
 * temperature within three minutes, and cues to lift a bowl that stands on the table.
 */
final class SteadyWatch implements Watch {
    private static final Duration COMES_WITHIN = Duration.ofMinutes(3);
    private static final int OFF_FOR_STEPS = 8;

    private final JudgedKitchen kitchen;
    private final Deque<Instant> open = new ArrayDeque<>();
    private double hours;
    private double hoursOff;
    private long falseWarnings;
    private long falseLifts;
    private int offSteps;

    SteadyWatch(JudgedKitchen kitchen) {
        this.kitchen = kitchen;
    }

    @Override
    public void saw(Moment before, Moment after, List<Event> events) {
        double step = Batch.STEP.toMillis() / 3.6e6;
        boolean off = after.hands().spot() == Spot.TABLE;
        offSteps = off ? offSteps + 1 : 0;
        if (off) hoursOff += step;
        boolean working = ((Judging) after.maker()).phase() == Phase.WORK;
        if (working) hours += step;
        for (Event event : events) {
            boolean lift = event instanceof CueGiven given && given.cue() == CueId.LIFT_NOW;
            if (lift && offSteps > OFF_FOR_STEPS) falseLifts++;
            boolean warns = event instanceof AlarmRaised raised && WarningWatch.OF_MELT_OUT.contains(raised.alarm());
            if (warns && working) open.add(event.at());
        }
        double shown = kitchen.scale().shows(after.kitchen().bulkCelsius());
        if (shown >= kitchen.recipe().meltOut().warnCelsius()) open.clear();
        while (!open.isEmpty() && open.peek().plus(COMES_WITHIN).isBefore(after.at())) {
            open.poll();
            falseWarnings++;
        }
    }

    Steady steady() {
        return new Steady(hours, falseWarnings + open.size(), hoursOff, falseLifts);
    }

    /**
     * False words in a batch.
     *
     * @param hours of work
     * @param falseWarnings of melt-out in them
     * @param hoursOff on the table in the whole batch
     * @param falseLifts cues to lift in those
     */
    record Steady(double hours, long falseWarnings, double hoursOff, long falseLifts) {}
}
