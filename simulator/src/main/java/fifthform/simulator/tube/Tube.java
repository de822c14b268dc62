package fifthform.simulator.tube;

import java.util.Objects;

/**
 * The heat of one sample: core, shell, cup wall and the tip of the probe, with crystals of their own in core and shell.
 * It goes on in steps of a twentieth of a second by Euler's rule; the fastest of its rates is below one a second.
 *
 * <p>Heat capacities are shares of the sample's. Mutable, for one thread.
 */
public final class Tube {
    /** Chocolate, kJ/(kg K); the project's table of thermal properties. */
    private static final double HEAT_CAPACITY = 1.63;

    private static final double STEP_SECONDS = 0.05;

    private final double coreShare;
    private final double coreHeat;
    private final double wallHeat;
    private final double fatFraction;
    private final double lagMinutes;
    private final Fat coreFat;
    private final Fat shellFat;
    private double offAxis;
    private double within;
    private double toWall;
    private double toBath;
    private double bathCelsius;
    private double core;
    private double shell;
    private double wall;
    private double tip;
    private boolean probeIsOut;
    private double roomCelsius = 22;

    /** A sample in its cup in the kitchen, everything at the sample's temperature. */
    public Tube(TubeCup cup, TubeSample sample) {
        Objects.requireNonNull(cup, "cup");
        double mass = sample.grams() / cup.usualGrams();
        coreShare = cup.coreShare();
        coreHeat = coreShare + cup.probeHeat() / mass;
        wallHeat = Math.max(0.01, cup.wallHeat() / mass);
        fatFraction = sample.fatFraction();
        lagMinutes = cup.probeLagSeconds() / 60;
        offAxis = cup.offAxis();
        within = 1 / cup.withinShare();
        toWall = 1 / (1 - cup.withinShare() - cup.filmShare());
        toBath = 1 / cup.filmShare();
        coreFat = new Fat(sample.fat(), sample.seedFraction());
        shellFat = new Fat(sample.fat(), sample.seedFraction());
        core = shell = wall = tip = sample.startCelsius();
        // A body of the same shape cools with the square of its length.
        scaleTo(cup.tauMinutes() * StrictMath.pow(mass, 2.0 / 3));
    }

    /** Makes the slowest of the three nodes' time constants this one, as power iteration of the bare cup finds it. */
    private void scaleTo(double tauMinutes) {
        double a = 1;
        double b = 0.8;
        double c = 0.5;
        double step = 0.002;
        double shrink = 1;
        for (int i = 0; i < 200_000; i++) {
            double da = within * (b - a) / coreHeat;
            double db = (within * (a - b) + toWall * (c - b)) / (1 - coreShare);
            double dc = (toWall * (b - c) - toBath * c) / wallHeat;
            double slow = Math.min(step, 0.2 * wallHeat / (toWall + toBath));
            a += da * slow;
            b += db * slow;
            c += dc * slow;
            double size = a;
            double rate = -StrictMath.log(size) / slow;
            a /= size;
            b /= size;
            c /= size;
            if (Math.abs(rate / shrink - 1) < 1e-12) break;
            shrink = rate;
        }
        double faster = 1 / (shrink * tauMinutes);
        within *= faster;
        toWall *= faster;
        toBath *= faster;
    }

    /** The cup stands in the room. */
    public void stand(double seconds) {
        double kept = toBath;
        bathCelsius = roomCelsius;
        toBath = kept / 15;
        go(seconds);
        toBath = kept;
    }

    /** The cup hangs in a bath of this temperature. */
    public void cool(double inBathCelsius, double seconds) {
        bathCelsius = inBathCelsius;
        go(seconds);
    }

    private void go(double seconds) {
        long steps = Math.max(1, Math.round(seconds / STEP_SECONDS));
        double minutes = seconds / 60 / steps;
        for (long i = 0; i < steps; i++) step(minutes);
    }

    private void step(double minutes) {
        double coreGain = fatFraction * coreFat.step(core, minutes) / HEAT_CAPACITY * coreShare / coreHeat;
        double shellGain = fatFraction * shellFat.step(shell, minutes) / HEAT_CAPACITY;
        double inward = within * (shell - core) * minutes;
        double outward = toWall * (wall - shell) * minutes;
        double bath = toBath * (bathCelsius - wall) * minutes;
        core += inward / coreHeat + coreGain;
        shell += (outward - inward) / (1 - coreShare) + shellGain;
        wall += (bath - outward) / wallHeat;
        double around = probeIsOut ? roomCelsius : core + offAxis * (shell - core);
        double lag = probeIsOut ? 5 * lagMinutes : lagMinutes;
        tip += (around - tip) * (1 - StrictMath.exp(-minutes / lag));
    }

    /**
     * A stroke of a spoon: mixes core and shell by {@code share}, and brings chocolate from the wall past the tip, which
     * takes on {@code touch} of the difference.
     */
    public void stir(double share, double touch) {
        double mean = coreShare * core + (1 - coreShare) * shell;
        core += share * (mean - core);
        shell += share * (mean - shell);
        tip += touch * (wall - tip);
    }

    /** The tip hangs elsewhere from now on: 0 on the axis, 1 in the shell. */
    public void moveTip(double towardsShell) {
        offAxis = towardsShell;
    }

    /** The tip is pulled out of the chocolate. */
    public void pullProbe() {
        probeIsOut = true;
    }

    /** What the tip has, °C. */
    public double tipCelsius() {
        return tip;
    }

    /** What the chocolate on the axis has, °C. */
    public double axisCelsius() {
        return core;
    }

    /** What share of the fat is solid, over the whole sample. */
    public double solidFraction() {
        return coreShare * coreFat.solid() + (1 - coreShare) * shellFat.solid();
    }
}
