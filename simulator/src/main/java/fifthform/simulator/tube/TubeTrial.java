package fifthform.simulator.tube;

import fifthform.simulator.maker.StandardNormal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;

/**
 * One test in a kitchen: the cup is filled, put into the ice, left alone or not, and read until the sample is cold.
 *
 * @param cup what it hangs in
 * @param sample what is in it
 * @param adapter how it is read
 * @param iceCelsius temperature of good ice water here, 0 to 2 °C
 * @param trouble what goes wrong
 */
public record TubeTrial(TubeCup cup, TubeSample sample, TubeAdapter adapter, double iceCelsius, TubeTrouble trouble) {
    private static final double LONGEST_SECONDS = 30 * 60;
    private static final double ENOUGH_CELSIUS = 6.5;
    private static final double TICK = 0.25;

    public TubeTrial {
        Objects.requireNonNull(cup, "cup");
        Objects.requireNonNull(sample, "sample");
        Objects.requireNonNull(adapter, "adapter");
        Objects.requireNonNull(trouble, "trouble");
    }

    /**
     * What was read, and what was so.
     *
     * @param readings as an adapter said them
     * @param truth the tip once a second, without noise
     * @param bathCelsius the bath when the cup went in
     * @param iceLeft whether there was ice in it at the end
     */
    public record Ran(List<TubeReading> readings, List<TubeReading> truth, double bathCelsius, boolean iceLeft) {
        public Ran {
            readings = List.copyOf(readings);
            truth = List.copyOf(truth);
        }
    }

    /** Runs it; the same luck gives the same readings. */
    public Ran run(SplittableRandom random) {
        Tube tube = new Tube(cup, sample);
        if (trouble == TubeTrouble.AT_WALL) tube.moveTip(TubeCup.between(random, 0.95, 1));
        double waits = TubeCup.between(random, 8, 25);
        double warm = warmBath(random);
        double climbs = TubeCup.between(random, 2.5, 5) / 60;
        double happens = waits + TubeCup.between(random, 45, 150);
        double stops = waits + TubeCup.between(random, 60, 110);
        boolean iceAtTheEnd = trouble != TubeTrouble.WARMING_BATH && warm <= 4;
        List<TubeReading> readings = new ArrayList<>();
        List<TubeReading> truth = new ArrayList<>();
        double next = 0;
        boolean happened = false;
        double coldSince = -1;
        for (double t = 0; t <= LONGEST_SECONDS; t += TICK) {
            if (t < waits) tube.stand(TICK);
            else {
                double bath = warm;
                if (trouble == TubeTrouble.WARMING_BATH) bath += Math.min(14, climbs * (t - waits));
                tube.cool(bath, TICK);
            }
            if (trouble == TubeTrouble.STIRRED && t > waits && random.nextDouble() < TICK / 3)
                tube.stir(TubeCup.between(random, 0.2, 0.6), TubeCup.between(random, 0, 0.15));
            if (!happened && t >= happens) {
                happened = true;
                if (trouble == TubeTrouble.MOVED) tube.moveTip(cup.offAxis() + TubeCup.between(random, 0.4, 0.7));
                if (trouble == TubeTrouble.PULLED_OUT) tube.pullProbe();
            }
            if (t % 1 < TICK / 2) truth.add(new TubeReading(t, tube.tipCelsius()));
            if (t + 1e-9 >= next) {
                next += adapter.intervalSeconds();
                readings.add(new TubeReading(t, adapter.says(tube.tipCelsius(), random)));
            }
            if (trouble == TubeTrouble.TOO_SHORT && t > stops) break;
            if (coldSince < 0 && tube.tipCelsius() < ENOUGH_CELSIUS) coldSince = t;
            if (coldSince >= 0 && t > coldSince + 20) break;
            if (trouble == TubeTrouble.PULLED_OUT && t > happens + 180) break;
        }
        return new Ran(spoilt(readings, random), truth, warm, iceAtTheEnd);
    }

    private double warmBath(SplittableRandom random) {
        return switch (trouble) {
            case WARM_BATH -> TubeCup.between(random, 5, 14);
            case NOT_IN_ICE -> TubeCup.between(random, 16, 22);
            default -> iceCelsius;
        };
    }

    private List<TubeReading> spoilt(List<TubeReading> readings, SplittableRandom random) {
        List<TubeReading> spoilt = new ArrayList<>(readings);
        if (trouble == TubeTrouble.GAP) {
            double from = TubeCup.between(random, 70, 140);
            double to = from + TubeCup.between(random, 45, 90);
            spoilt.removeIf(r -> r.seconds() > from && r.seconds() < to);
        }
        if (trouble == TubeTrouble.BAD_TIMES) {
            int at = readings.size() / 4 + random.nextInt(Math.max(1, readings.size() / 3));
            double back = TubeCup.between(random, 20, 90);
            for (int i = at; i < spoilt.size(); i++)
                spoilt.set(
                        i,
                        new TubeReading(
                                spoilt.get(i).seconds() - back, spoilt.get(i).celsius()));
        }
        return spoilt;
    }

    /** A trial as chance has it: the cup's usual mass within a tenth, 30 to 32.5 °C, ice water of 0 to 0.8 °C. */
    public static TubeTrial drawn(
            TubeCup cup, FatMake fat, double fatFraction, double seed, TubeTrouble trouble, SplittableRandom random) {
        double grams = cup.usualGrams() * (1 + Math.max(-0.1, Math.min(0.1, 0.04 * StandardNormal.draw(random))));
        double start = switch (trouble) {
            case START_COLD -> TubeCup.between(random, 20, 25.5);
            case START_HOT -> TubeCup.between(random, 36, 44);
            default -> TubeCup.between(random, 30, 32.5);
        };
        TubeAdapter drawn = TubeAdapter.drawn(random);
        TubeAdapter adapter = switch (trouble) {
            case TOO_FEW ->
                new TubeAdapter(
                        TubeCup.between(random, 15, 40), drawn.noiseKelvin(), drawn.stepKelvin(), drawn.offsetKelvin());
            case COARSE -> new TubeAdapter(drawn.intervalSeconds(), drawn.noiseKelvin(), 1, drawn.offsetKelvin());
            default -> drawn;
        };
        TubeCup held = cup.withOffAxis(cup.offAxis() + 0.05 * StandardNormal.draw(random));
        return new TubeTrial(
                held,
                new TubeSample(fat, fatFraction, seed, grams, start),
                adapter,
                TubeCup.between(random, 0, 0.8),
                trouble);
    }
}
