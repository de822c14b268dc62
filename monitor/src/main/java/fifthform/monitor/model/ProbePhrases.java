package fifthform.monitor.model;

import fifthform.curves.input.ProbeFault.Cause;
import fifthform.curves.signal.Doubt;

/** What is wrong with a probe or its reading, and what to do about it: a headline, and the rest beside it. */
final class ProbePhrases {
    private ProbePhrases() {}

    /** What a doubt asks for, in one imperative line. */
    static String headline(Doubt doubt) {
        return switch (doubt) {
            case DEAD_LINE -> "Only zeros come: check the converter";
            case STUCK -> "Reading stands still: replug the adapter";
            case FAHRENHEIT -> "Sends °F? Switch the device to °C";
            case REVERSED -> "Falls when warmed: swap the two wires";
            case JUNCTION -> "Adapter too hot or cold: move it away";
            case OUT_OF_CHOCOLATE -> "Out of the chocolate? Put the tip in";
            case AT_WALL -> "Tip at the bowl? Move it to the middle";
            case SETTLING -> "Tip settles: wait a few seconds";
            case JUMPS -> "Reading jumps: look at the tip";
            case TOO_FAST -> "Too quick to be true: look at the tip";
            case NOISY -> "Reading is noisy: hold the tip still";
        };
    }

    /** Why, or what else to try. */
    static String detail(Doubt doubt, KeyMap keys) {
        return switch (doubt) {
            case DEAD_LINE -> "hold the tip: does it move?";
            case STUCK -> "second thermometer meanwhile";
            case FAHRENHEIT -> "nothing is watched until then";
            case REVERSED -> "plus and minus at the plug";
            case JUNCTION -> "off the stove, out of the steam";
            case OUT_OF_CHOCOLATE -> keys.fill("{probe-out} if it is out on purpose");
            case AT_WALL -> "clear of the wall and the bottom";
            case SETTLING -> "just dipped";
            case JUMPS -> "loose plug, spoon on the lead?";
            case TOO_FAST -> "in the chocolate, off the wall?";
            case NOISY -> "loose plug, lead beside mains?";
        };
    }

    /** Why there is no temperature, as one imperative line. */
    static String headline(Cause cause) {
        return switch (cause) {
            case OPEN_CIRCUIT -> "No contact: push in the probe's plug";
            case SHORT_CIRCUIT -> "Short circuit: dry the plug, check it";
            case OUT_OF_RANGE -> "Impossible number: check the probe";
            case GARBLED -> "Unreadable: check the adapter's setting";
            case SILENT -> "No reading: check the USB plug";
            case UNPLUGGED -> "Adapter gone: plug it in again";
            case FLOODED -> "Adapter floods: unplug it, plug it in";
        };
    }

    /** What else to try. */
    static String detail(Cause cause) {
        return switch (cause) {
            case OPEN_CIRCUIT -> "or the wire is broken: second one";
            case SHORT_CIRCUIT -> "wet, or bare wire on metal?";
            case OUT_OF_RANGE -> "right type set? second thermometer";
            case GARBLED -> "speed and protocol; we keep trying";
            case SILENT -> "we keep trying; second thermometer";
            case UNPLUGGED -> "it is found by itself; meanwhile lift";
            case FLOODED -> "only its newest readings are taken";
        };
    }
}
