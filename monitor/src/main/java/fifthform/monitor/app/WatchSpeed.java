package fifthform.monitor.app;

import fifthform.monitor.practice.PracticePace;
import fifthform.monitor.texts.LiveText;
import java.util.OptionalDouble;

/** What {@code --speed} says. */
record WatchSpeed(OptionalDouble factor, boolean asFastAsPossible) {
    static final WatchSpeed USUAL = new WatchSpeed(OptionalDouble.empty(), false);
    private static final double SLOWEST = 1;
    private static final double FASTEST = 60;

    static WatchSpeed parse(String text) throws Refusal {
        if (text.equals("max")) return new WatchSpeed(OptionalDouble.of(FASTEST), true);
        try {
            double factor = Double.parseDouble(text);
            if (factor >= SLOWEST && factor <= FASTEST) return new WatchSpeed(OptionalDouble.of(factor), false);
        } catch (NumberFormatException notANumber) {
            // Said below, together with a number out of range.
        }
        throw new Refusal(Exit.NOT_UNDERSTOOD, LiveText.SPEED_WAS_NOTHING_WAS_DONE.say(text));
    }

    /** What practice does where a cue has to be read: goes slowly, unless it is to go as fast as it can. */
    PracticePace.AtCues atCues() {
        return asFastAsPossible ? PracticePace.AtCues.GO_ON : PracticePace.AtCues.SLOW_DOWN;
    }
}
