package fifthform.curves.network;

import fifthform.curves.check.Require;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.setup.BowlMaterial;
import fifthform.curves.setup.LearnedCoast;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Readings as they come, made into the network's inputs every 2 s; an immutable value. Engine and training use this one
 * class, so that the network meets in the kitchen what it met in training.
 *
 * <p>Times are seconds since the session's start and never go back: a reading that comes late counts as of the step that is
 * being filled. Step k holds what came in [2k, 2k + 2) s and is finished by the first {@link #until} at or
 * after its end. Steps before the first reading are not made. An empty step holds the last reading; what was before the
 * first reading, and before one that ends a silence of {@value #FORGET_SECONDS} s, is taken to have been the same.
 */
public final class Blocks {
    /** Length of a step, s. */
    public static final double STEP_SECONDS = 2;

    /** How many numbers the network is told each step. */
    public static final int INPUTS = 26;

    private static final double FORGET_SECONDS = 180;

    /** After a longer pause without any input the steps after its first are left out, so that no reading costs much. */
    private static final int MOST_STEPS_AT_ONCE = 60;

    /** 60 s: the longest two means that are compared. */
    private static final int KEPT = 30;

    /** The last thing said about the bowl's place, and when, s. */
    private record Word(Place place, double atSeconds) {}

    /** A session that begins. */
    public static final Blocks START = new Blocks(0, 0, 0, 0, 0, new double[0], Optional.empty());

    private final long step;
    private final double sum;
    private final int count;
    private final double lastCelsius;
    private final double lastSeconds;
    private final double[] means;
    private final Optional<Word> word;

    private Blocks(
            long step,
            double sum,
            int count,
            double lastCelsius,
            double lastSeconds,
            double[] means,
            Optional<Word> word) {
        this.step = step;
        this.sum = sum;
        this.count = count;
        this.lastCelsius = lastCelsius;
        this.lastSeconds = lastSeconds;
        this.means = means;
        this.word = word;
    }

    /**
     * What {@link #until} leads to.
     *
     * @param after the readings from then on
     * @param moments the steps that were finished, in their order
     */
    public record Run(Blocks after, List<Moment> moments) {
        public Run {
            Objects.requireNonNull(after, "after");
            moments = List.copyOf(moments);
        }
    }

    /**
     * One more reading that is believed. Call {@link #until} with its time first, so that it falls into its own step.
     *
     * @param seconds when it was read, s since the start
     * @param celsius as the probe's correction makes it, °C
     */
    public Blocks reading(double seconds, double celsius) {
        Require.finite(celsius, "celsius");
        double at = notBefore(seconds);
        boolean anew = means.length == 0 || at - lastSeconds > FORGET_SECONDS;
        double[] kept = anew ? filled(celsius) : means;
        return new Blocks(step, sum + celsius, count + 1, celsius, at, kept, word);
    }

    /** The maker says where the bowl stands since {@code seconds}; of this time it may be the past. */
    public Blocks told(Place place, double seconds) {
        Objects.requireNonNull(place, "place");
        Word said = new Word(place, Require.finite(seconds, "seconds"));
        return new Blocks(step, sum, count, lastCelsius, lastSeconds, means, Optional.of(said));
    }

    /** Nobody has said where the bowl stands, or it was taken back. */
    public Blocks untold() {
        return new Blocks(step, sum, count, lastCelsius, lastSeconds, means, Optional.empty());
    }

    /**
     * Finishes the steps that have ended by {@code nowSeconds}.
     *
     * @param given what is known beside the readings at this time
     */
    public Run until(double nowSeconds, Given given) {
        Require.finite(nowSeconds, "nowSeconds");
        long current = (long) Math.floor(nowSeconds / STEP_SECONDS);
        if (current <= step) return new Run(this, List.of());
        if (means.length == 0) return new Run(new Blocks(current, 0, 0, 0, 0, means, word), List.of());
        List<Moment> moments = new ArrayList<>();
        Blocks blocks = this;
        while (blocks.step < current) {
            boolean read = blocks.count > 0;
            blocks = blocks.ended();
            moments.add(blocks.moment(read, given));
            blocks = blocks.leaping(current - MOST_STEPS_AT_ONCE);
        }
        return new Run(blocks, moments);
    }

    private double notBefore(double seconds) {
        return Math.max(Require.finite(seconds, "seconds"), step * STEP_SECONDS);
    }

    /** Not before this step; what is left out held the last reading. */
    private Blocks leaping(long to) {
        return step >= to ? this : new Blocks(to, 0, 0, lastCelsius, lastSeconds, filled(lastCelsius), word);
    }

    private static double[] filled(double celsius) {
        double[] all = new double[KEPT];
        Arrays.fill(all, celsius);
        return all;
    }

    /** The step closed: its mean is now the newest, and the next one is open. */
    private Blocks ended() {
        double[] shifted = new double[KEPT];
        shifted[0] = count > 0 ? sum / count : lastCelsius;
        System.arraycopy(means, 0, shifted, 1, KEPT - 1);
        return new Blocks(step + 1, 0, 0, lastCelsius, lastSeconds, shifted, word);
    }

    private Moment moment(boolean read, Given given) {
        double now = step * STEP_SECONDS;
        double low = given.lowCelsius();
        double base = mean(0, 2);
        double[] x = new double[INPUTS];
        x[0] = clipped((lastCelsius - low) / 5, 4);
        x[1] = read ? 1 : 0;
        x[2] = Math.min(2, Math.max(0, now - lastSeconds) / 10);
        x[3] = clipped(base - mean(2, 2), 3);
        x[4] = clipped(mean(0, 5) - mean(5, 5), 3);
        x[5] = clipped((mean(0, 15) - mean(15, 15)) / 2, 3);
        x[6] = clipped((mean(0, 5) - low) / 2, 6);
        word.ifPresent(w -> {
            x[7 + place(w.place())] = 1;
            x[10] = Math.min(2, Math.max(0, now - w.atSeconds()) / 60);
        });
        given.bathCelsius().ifPresent(bath -> {
            x[11] = 1;
            x[12] = (bath - low) / 20;
        });
        given.amountGrams().ifPresent(grams -> {
            x[13] = 1;
            x[14] = StrictMath.log(grams / 800);
        });
        material(x, given.material());
        given.learned().ifPresent(learned -> learned(x, learned));
        given.roomCelsius().ifPresent(room -> {
            x[21] = 1;
            x[22] = (room - 22) / 10;
        });
        given.lagSeconds().ifPresent(lag -> {
            x[23] = 1;
            x[24] = StrictMath.log(lag / 4);
        });
        x[25] = 1;
        return new Moment(now, base, lastSeconds, lastCelsius, x);
    }

    private static int place(Place place) {
        return switch (place) {
            case BATH -> 0;
            case TABLE -> 1;
            case COLD_WATER -> 2;
        };
    }

    private static void material(double[] x, BowlMaterial material) {
        switch (material) {
            case STEEL, ALUMINIUM -> x[15] = 1;
            case GLASS -> x[16] = 1;
            case PLASTIC -> x[17] = 1;
            case UNKNOWN -> {}
        }
    }

    private static void learned(double[] x, LearnedCoast learned) {
        x[18] = 1;
        x[19] = StrictMath.log(learned.coastSeconds() / 45);
        x[20] = learned.logSpread();
    }

    /** Mean of {@code length} steps, the newest of which ended {@code from} steps ago. */
    private double mean(int from, int length) {
        double total = 0;
        for (int i = from; i < from + length; i++) total += means[i];
        return total / length;
    }

    private static double clipped(double value, double most) {
        return Math.max(-most, Math.min(most, value));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Blocks b
                && step == b.step
                && count == b.count
                && Double.compare(sum, b.sum) == 0
                && Double.compare(lastCelsius, b.lastCelsius) == 0
                && Double.compare(lastSeconds, b.lastSeconds) == 0
                && Arrays.equals(means, b.means)
                && word.equals(b.word);
    }

    @Override
    public int hashCode() {
        return Objects.hash(step, count, sum, lastCelsius, lastSeconds, Arrays.hashCode(means), word);
    }

    @Override
    public String toString() {
        return "Blocks[step " + step + ", last " + lastCelsius + " °C at " + lastSeconds + " s, " + word + "]";
    }
}
