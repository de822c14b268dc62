package fifthform.curves.recipe;

import java.util.Locale;
import java.util.Optional;

/** The steps of a tempering, in the order in which they come. */
public enum Phase {
    /** Over the hot bath until every crystal is gone. */
    MELT,
    /** In cold water, down to the cool range. */
    COOL,
    /** Held in the cool range and stirred, so that crystals form. */
    SEED,
    /** Over the warm bath, up to the working range. */
    REWARM,
    /** In or near the working range, pouring. */
    WORK,
    /** Done: what is left sets or waits. */
    REST;

    /** The word in files and on screens: {@code melt}, {@code cool}, … */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The phase after this one; empty after the last. */
    public Optional<Phase> following() {
        return this == REST ? Optional.empty() : Optional.of(values()[ordinal() + 1]);
    }

    /** The phase with this {@link #word()}, if there is one. */
    public static Optional<Phase> fromWord(String word) {
        for (Phase phase : values()) if (phase.word().equals(word)) return Optional.of(phase);
        return Optional.empty();
    }
}
