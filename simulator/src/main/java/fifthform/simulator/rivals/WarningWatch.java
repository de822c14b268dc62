package fifthform.simulator.rivals;

import fifthform.curves.cue.CueId;
import fifthform.curves.engine.Event;
import fifthform.curves.engine.Event.AlarmCleared;
import fifthform.curves.engine.Event.AlarmRaised;
import fifthform.curves.engine.Event.CueGiven;
import fifthform.curves.input.AlarmId;
import fifthform.curves.recipe.Phase;
import fifthform.simulator.bench.Moment;
import fifthform.simulator.maker.Judging;
import java.time.Duration;
import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** How long before the chocolate passed melt-out, in the readings' scale, the first word of it came. */
final class WarningWatch implements Watch {
    static final Set<AlarmId> OF_MELT_OUT =
            Set.copyOf(EnumSet.of(AlarmId.HEADING_OVER, AlarmId.NEAR_MELT_OUT, AlarmId.MELT_OUT));

    private final JudgedKitchen kitchen;
    private final Set<AlarmId> standing = EnumSet.noneOf(AlarmId.class);
    private Optional<Instant> from = Optional.of(Instant.MIN);
    private Optional<Instant> began = Optional.empty();
    private Optional<Instant> warned = Optional.empty();
    private Optional<Instant> passed = Optional.empty();

    WarningWatch(JudgedKitchen kitchen) {
        this.kitchen = kitchen;
    }

    /** One that only notes what stands until it is told to begin. */
    static WarningWatch waiting(JudgedKitchen kitchen) {
        WarningWatch waiting = new WarningWatch(kitchen);
        waiting.from = Optional.empty();
        return waiting;
    }

    void begin(Instant at) {
        from = Optional.of(at);
    }

    @Override
    public void saw(Moment before, Moment after, List<Event> events) {
        boolean over = from.isPresent() && ((Judging) after.maker()).phase() == Phase.REWARM;
        if (over && began.isEmpty()) {
            began = Optional.of(before.at());
            if (!standing.isEmpty()) warned = began;
        }
        for (Event event : events) heard(event, over);
        double shown = kitchen.scale().shows(after.kitchen().bulkCelsius());
        if (began.isPresent()
                && passed.isEmpty()
                && shown >= kitchen.recipe().meltOut().limitCelsius()) {
            passed = Optional.of(after.at());
        }
    }

    private void heard(Event event, boolean over) {
        boolean says = event instanceof CueGiven given && given.cue() == CueId.LIFT_NOW;
        if (event instanceof AlarmRaised raised && OF_MELT_OUT.contains(raised.alarm())) {
            standing.add(raised.alarm());
            says = true;
        }
        if (event instanceof AlarmCleared cleared) standing.remove(cleared.alarm());
        if (says && over && warned.isEmpty()) warned = Optional.of(event.at());
    }

    /** Empty where it never passed melt-out. */
    Optional<Warned> warned() {
        return passed.map(at -> {
            double lead = warned.map(w -> seconds(w, at)).orElse(Double.NEGATIVE_INFINITY);
            return new Warned(lead, seconds(began.orElseThrow(), at));
        });
    }

    private static double seconds(Instant from, Instant to) {
        return Duration.between(from, to).toMillis() / 1000.0;
    }

    /**
     * Of a bowl that passed melt-out.
     *
     * @param leadSeconds from the first word of it; not above 0 where it came too late, −∞ where never
     * @param waySeconds from the water's first touch: no word could have come sooner
     */
    record Warned(double leadSeconds, double waySeconds) {
        boolean missed() {
            return !(leadSeconds > 0);
        }
    }
}
