package fifthform.curves.signal;

import java.util.Locale;
import java.util.Optional;

/**
 * Why a number should not be trusted although the adapter sent it as a good one.
 *
 * <p>Where several hold at once the first in this order is told: what is wrong with the instrument itself comes before
 * where its tip is, since no other reading helps until it is put right; a cause that is known comes before the bare
 * signs (jumps, haste, noise) by which every cause shows itself first.
 */
public enum Doubt {
    /** Zeros for ever, without having come down to them: a converter that sends nothing but 0. */
    DEAD_LINE,
    /** The same number for ever, though the bowl is being heated or cooled or the readings used to scatter. */
    STUCK,
    /** Numbers that no chocolate has in °C, and every chocolate in °F. */
    FAHRENHEIT,
    /** It falls when the bowl is warmed and rises when it is cooled: the two wires are swapped. */
    REVERSED,
    /** The cold junction is at a temperature no kitchen has. */
    JUNCTION,
    /** It ran off towards the room: the tip has been pulled out, or hangs in the air. */
    OUT_OF_CHOCOLATE,
    /** It ran off towards the water under the bowl: the tip touches the wall. */
    AT_WALL,
    /** The tip has just been dipped and still takes up the temperature: nothing is wrong, but it is not there yet. */
    SETTLING,
    /** It jumped as chocolate cannot. */
    JUMPS,
    /** It moves faster than chocolate can. */
    TOO_FAST,
    /** It is far noisier than it was at rest. */
    NOISY;

    /** The word in files: {@code dead-line}, … */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Whether somebody has to do something about it; what only takes its time is no alarm. */
    public boolean needsHands() {
        return this != SETTLING;
    }

    /** Whether the instrument itself is in doubt, wherever its tip is. */
    public boolean isOfInstrument() {
        return this == DEAD_LINE || this == STUCK || this == FAHRENHEIT || this == REVERSED || this == JUNCTION;
    }

    /** Of two judgements the one that is told. */
    static Optional<Doubt> first(Optional<Doubt> a, Optional<Doubt> b) {
        if (a.isEmpty()) return b;
        if (b.isEmpty()) return a;
        return a.get().compareTo(b.get()) <= 0 ? a : b;
    }
}
