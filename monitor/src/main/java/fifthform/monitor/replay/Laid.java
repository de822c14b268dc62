package fifthform.monitor.replay;

import java.util.OptionalLong;

/**
 * Another batch over this one.
 *
 * @param recording what was recorded of it
 * @param name how it is called on the screen
 */
record Laid(Recording recording, String name) {
    /** How far its curve is moved so that the turning points meet, ns; empty where one of the two has none. */
    OptionalLong shift(Recording own, TurningPoint match) {
        OptionalLong ours = match.in(own);
        OptionalLong theirs = match.in(recording);
        return ours.isPresent() && theirs.isPresent()
                ? OptionalLong.of(ours.getAsLong() - theirs.getAsLong())
                : OptionalLong.empty();
    }
}
