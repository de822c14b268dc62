package fifthform.curves.alarm;

import static fifthform.curves.recipe.Phase.COOL;
import static fifthform.curves.recipe.Phase.MELT;
import static fifthform.curves.recipe.Phase.REST;
import static fifthform.curves.recipe.Phase.REWARM;
import static fifthform.curves.recipe.Phase.SEED;
import static fifthform.curves.recipe.Phase.WORK;

import fifthform.curves.input.AlarmId;
import fifthform.curves.recipe.Phase;
import java.time.Duration;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;

/**
 * Every alarm there is. Limits come from the recipe; deadbands and delays are our own choice for a process that leaves
 * 10 to 60 seconds (plants with minutes to respond use longer ones).
 */
public final class AlarmTable {
    private static final Map<AlarmId, AlarmSetting> SETTINGS = settings();

    private AlarmTable() {}

    public static AlarmSetting of(AlarmId id) {
        return SETTINGS.get(id);
    }

    private static Map<AlarmId, AlarmSetting> settings() {
        Map<AlarmId, AlarmSetting> table = new EnumMap<>(AlarmId.class);
        temperatureAlarms(table);
        coolAlarms(table);
        instrumentAlarms(table);
        return table;
    }

    private static void temperatureAlarms(Map<AlarmId, AlarmSetting> table) {
        Set<Phase> hot = EnumSet.of(REWARM, WORK);
        add(
                table,
                AlarmId.HEADING_OVER,
                0.2,
                1,
                5,
                hot,
                Consequence.BATCH,
                TimeAvailable.UP_TO_THREE_MINUTES,
                Ending.WHEN_OVER,
                "Off the heat, stir, wipe the bottom of the bowl; a cool cloth if it still goes over.");
        add(
                table,
                AlarmId.OVER_RANGE,
                0.3,
                3,
                10,
                hot,
                Consequence.BATCH,
                TimeAvailable.UP_TO_THREE_MINUTES,
                Ending.WHEN_OVER,
                "Off the heat, stir until it is back in the working range.");
        add(
                table,
                AlarmId.NEAR_MELT_OUT,
                0.3,
                1,
                10,
                hot,
                Consequence.BATCH,
                TimeAvailable.UNDER_HALF_A_MINUTE,
                Ending.WHEN_SEEN,
                "Cool water under the bowl now; add seed if you have it.");
        add(
                table,
                AlarmId.MELT_OUT,
                0.3,
                0,
                10,
                hot,
                Consequence.BATCH,
                TimeAvailable.UNDER_HALF_A_MINUTE,
                Ending.BY_CHOICE,
                "Cool now and stop pouring; prove a sample, and if it fails cool again or add seed.");
        add(
                table,
                AlarmId.HEADING_UNDER,
                0.2,
                5,
                10,
                EnumSet.of(WORK),
                Consequence.QUALITY,
                TimeAvailable.LONGER,
                Ending.WHEN_OVER,
                "A few seconds of warmth, then stir.");
        add(
                table,
                AlarmId.TOO_COOL,
                0.3,
                10,
                10,
                EnumSet.of(WORK),
                Consequence.QUALITY,
                TimeAvailable.UP_TO_THREE_MINUTES,
                Ending.WHEN_OVER,
                "Warm it in short touches, stirring; not past the range.");
    }

    private static void coolAlarms(Map<AlarmId, AlarmSetting> table) {
        add(
                table,
                AlarmId.OVER_COOLED,
                0.3,
                5,
                10,
                EnumSet.of(COOL, SEED),
                Consequence.QUALITY,
                TimeAvailable.UP_TO_THREE_MINUTES,
                Ending.WHEN_OVER,
                "Lift it out of the water and stir.");
        add(
                table,
                AlarmId.MELT_TOO_HOT,
                0.5,
                5,
                10,
                EnumSet.of(MELT),
                Consequence.QUALITY,
                TimeAvailable.UP_TO_THREE_MINUTES,
                Ending.WHEN_OVER,
                "Turn the heat down and stir.");
        add(
                table,
                AlarmId.BATH_HOT,
                1.0,
                10,
                30,
                EnumSet.allOf(Phase.class),
                Consequence.BATCH,
                TimeAvailable.LONGER,
                Ending.WHEN_OVER,
                "Add cool water or lift the bowl. Steam and hot water scald.");
    }

    private static void instrumentAlarms(Map<AlarmId, AlarmSetting> table) {
        Set<Phase> all = EnumSet.allOf(Phase.class);
        add(
                table,
                AlarmId.PROBE_FAULT,
                0,
                0,
                3,
                all,
                Consequence.BATCH,
                TimeAvailable.UP_TO_THREE_MINUTES,
                Ending.WHEN_SEEN,
                "Push in the plug and check the lead; use a second thermometer meanwhile.");
        add(
                table,
                AlarmId.NO_READING,
                0,
                0,
                0,
                all,
                Consequence.BATCH,
                TimeAvailable.UP_TO_THREE_MINUTES,
                Ending.WHEN_OVER,
                "Check the USB plug; it is tried again by itself.");
        add(
                table,
                AlarmId.READING_DOUBTFUL,
                0,
                2,
                10,
                all,
                Consequence.BATCH,
                TimeAvailable.UP_TO_THREE_MINUTES,
                Ending.WHEN_OVER,
                "Is the tip touching the bowl, or out of the chocolate?");
        add(
                table,
                AlarmId.NOT_RECORDING,
                0,
                0,
                5,
                all,
                Consequence.BATCH,
                TimeAvailable.UP_TO_THREE_MINUTES,
                Ending.WHEN_SEEN,
                "Free some space or choose another folder; readings are kept in memory.");
        // A rinse, a stir or a mould takes a minute or two; after three it has been forgotten. Own choice.
        add(
                table,
                AlarmId.PROBE_OUT,
                0,
                180,
                0,
                EnumSet.complementOf(EnumSet.of(REST)),
                Consequence.BATCH,
                TimeAvailable.LONGER,
                Ending.WHEN_OVER,
                "Put the probe back into the chocolate and say so by key: nothing is watched while it is out.");
    }

    private static void add(
            Map<AlarmId, AlarmSetting> table,
            AlarmId id,
            double deadbandKelvin,
            int onSeconds,
            int offSeconds,
            Set<Phase> phases,
            Consequence consequence,
            TimeAvailable time,
            Ending ending,
            String action) {
        Duration on = Duration.ofSeconds(onSeconds);
        Duration off = Duration.ofSeconds(offSeconds);
        table.put(id, new AlarmSetting(id, deadbandKelvin, on, off, phases, consequence, time, ending, action));
    }
}
