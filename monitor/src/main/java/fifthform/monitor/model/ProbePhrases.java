package fifthform.monitor.model;

import fifthform.curves.input.ProbeFault.Cause;
import fifthform.curves.signal.Doubt;
import fifthform.monitor.texts.CueText;

/** What is wrong with a probe or its reading, and what to do about it: a headline, and the rest beside it. */
final class ProbePhrases {
    private ProbePhrases() {}

    /** What a doubt asks for, in one imperative line. */
    static String headline(Doubt doubt) {
        return switch (doubt) {
            case DEAD_LINE -> CueText.ONLY_ZEROS_COME_CHECK_THE.say();
            case STUCK -> CueText.READING_STANDS_STILL_REPLUG.say();
            case FAHRENHEIT -> CueText.SENDS_F_SWITCH_THE_DEVICE_TO.say();
            case REVERSED -> CueText.FALLS_WHEN_WARMED_SWAP_THE_TWO.say();
            case JUNCTION -> CueText.ADAPTER_TOO_HOT_OR_COLD_MOVE.say();
            case OUT_OF_CHOCOLATE -> CueText.OUT_OF_THE_CHOCOLATE_PUT_THE.say();
            case AT_WALL -> CueText.TIP_AT_THE_BOWL_MOVE_IT.say();
            case SETTLING -> CueText.TIP_SETTLES_WAIT_A_FEW_SECONDS.say();
            case JUMPS -> CueText.READING_JUMPS_LOOK_AT_THE_TIP.say();
            case TOO_FAST -> CueText.TOO_QUICK_TO_BE_TRUE_LOOK.say();
            case NOISY -> CueText.READING_IS_NOISY_HOLD_THE_TIP.say();
        };
    }

    /** Why, or what else to try. */
    static String detail(Doubt doubt, KeyMap keys) {
        return switch (doubt) {
            case DEAD_LINE -> CueText.HOLD_THE_TIP_DOES_IT_MOVE.say();
            case STUCK -> CueText.SECOND_THERMOMETER_MEANWHILE.say();
            case FAHRENHEIT -> CueText.NOTHING_IS_WATCHED_UNTIL_THEN.say();
            case REVERSED -> CueText.PLUS_AND_MINUS_AT_THE_PLUG.say();
            case JUNCTION -> CueText.OFF_THE_STOVE_OUT_OF_THE.say();
            case OUT_OF_CHOCOLATE -> keys.fill(CueText.PROBE_OUT_IF_IT_IS_OUT.say());
            case AT_WALL -> CueText.CLEAR_OF_THE_WALL_AND_THE.say();
            case SETTLING -> CueText.JUST_DIPPED.say();
            case JUMPS -> CueText.LOOSE_PLUG_SPOON_ON_THE_LEAD.say();
            case TOO_FAST -> CueText.IN_THE_CHOCOLATE_OFF_THE_WALL.say();
            case NOISY -> CueText.LOOSE_PLUG_LEAD_BESIDE_MAINS.say();
        };
    }

    /** Why there is no temperature, as one imperative line. */
    static String headline(Cause cause) {
        return switch (cause) {
            case OPEN_CIRCUIT -> CueText.NO_CONTACT_PUSH_IN_THE_PROBES.say();
            case SHORT_CIRCUIT -> CueText.SHORT_CIRCUIT_DRY_THE_PLUG.say();
            case OUT_OF_RANGE -> CueText.IMPOSSIBLE_NUMBER_CHECK_THE.say();
            case GARBLED -> CueText.UNREADABLE_CHECK_THE_ADAPTERS.say();
            case SILENT -> CueText.NO_READING_CHECK_THE_USB_PLUG.say();
            case UNPLUGGED -> CueText.ADAPTER_GONE_PLUG_IT_IN_AGAIN.say();
            case FLOODED -> CueText.ADAPTER_FLOODS_UNPLUG_IT_PLUG.say();
        };
    }

    /** What else to try. */
    static String detail(Cause cause) {
        return switch (cause) {
            case OPEN_CIRCUIT -> CueText.OR_THE_WIRE_IS_BROKEN_SECOND.say();
            case SHORT_CIRCUIT -> CueText.WET_OR_BARE_WIRE_ON_METAL.say();
            case OUT_OF_RANGE -> CueText.RIGHT_TYPE_SET_SECOND.say();
            case GARBLED -> CueText.SPEED_AND_PROTOCOL_WE_KEEP.say();
            case SILENT -> CueText.WE_KEEP_TRYING_SECOND.say();
            case UNPLUGGED -> CueText.IT_IS_FOUND_BY_ITSELF.say();
            case FLOODED -> CueText.ONLY_ITS_NEWEST_READINGS_ARE.say();
        };
    }
}
