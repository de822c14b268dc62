package fifthform.curves.alarm;

import fifthform.curves.alarm.AlarmState.Suppressed.Reason;
import fifthform.curves.input.AlarmId;
import fifthform.curves.recipe.Phase;
import java.time.Duration;
import java.time.Instant;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** All alarms of a batch. */
public record AlarmBank(Map<AlarmId, Standing> standings) {
    /** Alarms that say the number itself is not good; while one stands, no forecast is believed. */
    private static final Set<AlarmId> MEASUREMENT =
            EnumSet.of(AlarmId.PROBE_FAULT, AlarmId.NO_READING, AlarmId.READING_DOUBTFUL);

    private static final Set<AlarmId> WORSE = EnumSet.of(AlarmId.NEAR_MELT_OUT, AlarmId.MELT_OUT);
    private static final Set<AlarmId> SPOKEN_FOR = EnumSet.of(AlarmId.OVER_RANGE, AlarmId.HEADING_OVER);
    /** What asks for warmth. */
    private static final Set<AlarmId> WARMTH = EnumSet.of(AlarmId.HEADING_UNDER, AlarmId.TOO_COOL);

    private static final Set<AlarmId> FORECAST = EnumSet.of(AlarmId.HEADING_OVER, AlarmId.HEADING_UNDER);

    /** What holds others back, and all others. */
    private static final Set<AlarmId> CAUSES = causes();

    private static final Set<AlarmId> OTHERS = EnumSet.complementOf(EnumSet.copyOf(CAUSES));
    private static final int ALL = AlarmId.values().length;

    private static final Duration SHORTEST_SHELF = Duration.ofMinutes(1);
    private static final Duration LONGEST_SHELF = Duration.ofMinutes(15);
    /** How many may be set aside at once. */
    public static final int MOST_SHELVED = 2;

    public AlarmBank {
        EnumMap<AlarmId, Standing> copy = new EnumMap<>(standings);
        if (copy.size() < ALL) for (AlarmId id : AlarmId.values()) copy.putIfAbsent(id, Standing.QUIET);
        standings = Collections.unmodifiableMap(copy);
    }

    /** Nothing is wrong. */
    public static AlarmBank quiet() {
        return new AlarmBank(new EnumMap<>(AlarmId.class));
    }

    public Standing of(AlarmId id) {
        return standings.get(id);
    }

    /** The alarms the maker should know of, in the order of their ids. */
    public List<AlarmId> standing() {
        return standings.keySet().stream()
                .filter(id -> of(id).state().isStanding())
                .toList();
    }

    /** The bank after one more look at every alarm. */
    public AlarmBank next(Function<AlarmId, Finding> look, Phase phase, Instant now) {
        EnumMap<AlarmId, Standing> after = new EnumMap<>(AlarmId.class);
        // Causes first, so that what they hold back knows of them at once.
        for (AlarmId id : CAUSES) after.put(id, judged(id, look, phase, now, Optional.empty()));
        Map<AlarmId, Reason> held = heldBack(after, look, now);
        for (AlarmId id : OTHERS) after.put(id, judged(id, look, phase, now, Optional.ofNullable(held.get(id))));
        return new AlarmBank(after);
    }

    private Standing judged(
            AlarmId id, Function<AlarmId, Finding> look, Phase phase, Instant now, Optional<Reason> held) {
        AlarmSetting setting = AlarmTable.of(id);
        // A bowl that gets so hot that it counts as melting again, or is left to set, has not been decided about. One
        // that has been cooled down to where crystals form again has: that act is a choice.
        boolean undecided =
                setting.ending() == Ending.BY_CHOICE && of(id).state().isStanding() && phase != Phase.SEED;
        if (!undecided && !setting.phases().contains(phase))
            return of(id).with(new AlarmState.Suppressed(Reason.NOT_IN_THIS_PHASE));
        if (held.isPresent()) return of(id).with(new AlarmState.Suppressed(held.get()));
        return of(id).next(setting, look.apply(id), now);
    }

    private Map<AlarmId, Reason> heldBack(Map<AlarmId, Standing> bank, Function<AlarmId, Finding> look, Instant now) {
        EnumMap<AlarmId, Reason> held = new EnumMap<>(AlarmId.class);
        if (anySpeaks(bank, MEASUREMENT, now)) for (AlarmId id : FORECAST) held.put(id, Reason.NO_TRUE_READING);
        if (bank.get(AlarmId.MELT_OUT).state().isStanding()) {
            // Until it is decided about, cooling again is one of the choices: nothing asks for warmth beside it.
            for (AlarmId id : WARMTH) held.put(id, Reason.WORSE_ALARM_STANDS);
            // The way down from it is no news; only what rises anew is.
            boolean onTheWayDown = of(AlarmId.OVER_RANGE).isSpokenFor()
                    && look.apply(AlarmId.OVER_RANGE).condition() != Condition.OVER;
            if (onTheWayDown) held.put(AlarmId.OVER_RANGE, Reason.WORSE_ALARM_STANDS);
        }
        if (anySpeaks(bank, WORSE, now)) for (AlarmId id : SPOKEN_FOR) held.put(id, Reason.WORSE_ALARM_STANDS);
        return held;
    }

    private static boolean anySpeaks(Map<AlarmId, Standing> bank, Set<AlarmId> ids, Instant now) {
        for (AlarmId id : ids) if (bank.get(id).state().speaksForOthers(AlarmTable.of(id), now)) return true;
        return false;
    }

    private static Set<AlarmId> causes() {
        EnumSet<AlarmId> causes = EnumSet.copyOf(MEASUREMENT);
        causes.addAll(WORSE);
        return causes;
    }

    /** The maker has seen this alarm. */
    public AlarmBank seen(AlarmId id, Instant now) {
        EnumMap<AlarmId, Standing> after = new EnumMap<>(standings);
        after.put(id, of(id).seen(now));
        return new AlarmBank(after);
    }

    /** The maker has decided what to do after a melt-out. */
    public AlarmBank chosen() {
        return with(AlarmId.MELT_OUT, of(AlarmId.MELT_OUT).state().chosen());
    }

    /**
     * The maker sets an alarm aside, or with zero takes it back. Urgent alarms are never set aside, nor more than two at
     * once, nor for less than a minute or more than a quarter of an hour: then nothing changes.
     */
    public AlarmBank shelved(AlarmId id, Duration duration, Instant now) {
        AlarmState state = of(id).state();
        if (state instanceof AlarmState.Shelved shelf && duration.isZero()) return with(id, shelf.taken(now));
        long already = standings.values().stream()
                .filter(s -> s.state() instanceof AlarmState.Shelved)
                .count();
        boolean allowed = state.isStanding()
                && of(id).priority() != Priority.URGENT
                && already < MOST_SHELVED
                && duration.compareTo(SHORTEST_SHELF) >= 0
                && duration.compareTo(LONGEST_SHELF) <= 0;
        return allowed ? with(id, new AlarmState.Shelved(now.plus(duration), Condition.MET)) : this;
    }

    private AlarmBank with(AlarmId id, AlarmState state) {
        EnumMap<AlarmId, Standing> after = new EnumMap<>(standings);
        after.put(id, of(id).with(state));
        return new AlarmBank(after);
    }
}
