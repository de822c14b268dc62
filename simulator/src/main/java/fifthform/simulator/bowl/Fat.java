package fifthform.simulator.bowl;

import fifthform.curves.check.Require;

/**
 * How readily this chocolate's fat crystallises, against the middle of what is known of cocoa butter. The middle's
 * constants are known to a factor of two or three only, and butters differ, so kitchens that are drawn have factors of
 * their own.
 *
 * @param nucleationFactor new crystals, 0.1 to 10
 * @param growthFactor growth of those that are there, 0.2 to 5
 * @param meltingFactor how fast what is too warm melts, 0.2 to 5
 */
public record Fat(double nucleationFactor, double growthFactor, double meltingFactor) {
    /** The middle. */
    public static final Fat MIDDLE = new Fat(1, 1, 1);

    public Fat {
        Require.within(nucleationFactor, 0.1, 10, "nucleationFactor");
        Require.within(growthFactor, 0.2, 5, "growthFactor");
        Require.within(meltingFactor, 0.2, 5, "meltingFactor");
    }
}
