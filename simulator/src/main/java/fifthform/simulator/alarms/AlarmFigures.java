package fifthform.simulator.alarms;

import fifthform.curves.alarm.Priority;
import fifthform.curves.input.AlarmId;
import fifthform.simulator.alarms.MeltOutTruth.Stretch;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * The alarms of one batch, counted.
 *
 * @param number the batch's number in its fleet
 * @param course whether the chocolate went as it should
 * @param hours how long it lasted
 * @param workHours of those, since the bowl first left the warm water
 * @param raised alarms raised
 * @param mostInTenMinutes most of them within any ten minutes
 * @param chattering alarms that were raised three times within a minute
 * @param fleeting that were gone within a minute without anybody doing anything
 * @param standing that stood for more than ten minutes without change
 * @param byPriority alarms raised, by priority
 * @param byAlarm alarms raised, by alarm
 * @param cues cues given
 * @param leadSeconds for each lift asked for over the warm water, how long until the range would have been passed
 * @param falseLifts lifts asked for while the bowl was off the bath
 * @param earlyLifts lifts asked for so soon that the bowl would have turned well below the range
 * @param hoursOff off any bath
 * @param meltOuts melt-outs that really were
 * @param falseMeltOuts warnings of melt-out while the chocolate was nowhere near
 * @param falseInWork of those, in the work
 * @param moments looked at
 * @param phaseRight of those, with the right phase
 * @param placeRight of those, with the right place
 */
record AlarmFigures(
        long number,
        Course course,
        double hours,
        double workHours,
        long raised,
        int mostInTenMinutes,
        int chattering,
        long fleeting,
        int standing,
        Map<Priority, Long> byPriority,
        Map<AlarmId, Long> byAlarm,
        long cues,
        List<Double> leadSeconds,
        long falseLifts,
        long earlyLifts,
        double hoursOff,
        List<Stretch> meltOuts,
        long falseMeltOuts,
        long falseInWork,
        long moments,
        long phaseRight,
        long placeRight) {
    /** Whether the chocolate itself gave reason for alarms. */
    enum Course {
        /** Came into the working range, never past the warning above it, nor was left to thicken for ten minutes. */
        NORMAL,
        TROUBLED
    }

    AlarmFigures {
        Objects.requireNonNull(course, "course");
        EnumMap<Priority, Long> priorities = new EnumMap<>(Priority.class);
        priorities.putAll(byPriority);
        byPriority = priorities;
        EnumMap<AlarmId, Long> alarms = new EnumMap<>(AlarmId.class);
        alarms.putAll(byAlarm);
        byAlarm = alarms;
        leadSeconds = List.copyOf(leadSeconds);
        meltOuts = List.copyOf(meltOuts);
    }

    @Override
    public Map<Priority, Long> byPriority() {
        return new EnumMap<>(byPriority.isEmpty() ? new EnumMap<>(Priority.class) : byPriority);
    }

    @Override
    public Map<AlarmId, Long> byAlarm() {
        return new EnumMap<>(byAlarm.isEmpty() ? new EnumMap<>(AlarmId.class) : byAlarm);
    }

    long missed() {
        return meltOuts.stream().filter(s -> !s.told()).count();
    }
}
