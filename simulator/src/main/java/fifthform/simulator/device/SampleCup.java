package fifthform.simulator.device;

import fifthform.probe.link.Arrival;
import fifthform.probe.link.LinkSource;
import fifthform.simulator.maker.StandardNormal;
import fifthform.simulator.tube.FatMake;
import fifthform.simulator.tube.Tube;
import fifthform.simulator.tube.TubeCup;
import fifthform.simulator.tube.TubeSample;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Stream;

/**
 * A cup of ice water, an invented bowl of chocolate and a small cup for samples of it, to try a proof of temper on. The
 * probe is heard through the bytes of a real adapter. Time goes on only when its line is read.
 *
 * <p>Not safe for several threads: whoever reads also dips.
 */
public final class SampleCup {
    /** What the bowl is like from which samples come. */
    public enum Bowl {
        IN_TEMPER(0.018),
        NO_TEMPER(0),
        UNDER(0.0022),
        OVER(0.12),
        /** In temper, and somebody stirs in the sample. */
        STIRRED(0.018),
        /** In temper, and the tip leans on the cup's wall. */
        AT_WALL(0.018);

        private final double seedFraction;

        Bowl(double seedFraction) {
            this.seedFraction = seedFraction;
        }

        /** The word after {@code practice:}. */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        /** The bowl with this word. */
        public static Optional<Bowl> named(String word) {
            return Stream.of(values()).filter(b -> b.word().equals(word)).findFirst();
        }
    }

    /** Grams of an invented sample. */
    public static final double GRAMS = 12;

    private static final TubeCup CUP = new TubeCup(3.7, GRAMS, 0.35, 0.4, 0.45, 0.1, 0.04, 4, 0.1);
    private static final double FAT_FRACTION = 0.38;
    private static final double WORK_CELSIUS = 31.4;
    private static final double MELTED_CELSIUS = 34.2;
    private static final double ROOM_CELSIUS = 22;
    private static final double WATER_LAG_SECONDS = 3;
    private static final double AIR_LAG_SECONDS = 25;
    private static final double ICE_UNREST_KELVIN = 0.01;
    /** From bowl to ice. */
    private static final double WAIT_SECONDS = 20;

    private final Adapter adapter;
    private final SplittableRandom random;
    private final Bowl bowl;
    private Instant now;
    private double tipCelsius = ROOM_CELSIUS;
    private double aroundCelsius = ROOM_CELSIUS;
    private double lagSeconds = AIR_LAG_SECONDS;
    private Optional<Tube> sample = Optional.empty();
    private double waited;

    /** The probe lies on the table at first, and its adapter speaks in text lines, once a second. */
    public SampleCup(Bowl bowl, Instant startsAt, SplittableRandom random) {
        this.bowl = Objects.requireNonNull(bowl, "bowl");
        this.random = random.split();
        this.now = Objects.requireNonNull(startsAt, "startsAt");
        AdapterSettings settings = new AdapterSettings(
                Language.TEXT_LINES, 0.01, 0.03, 1, 0.1, 0, ROOM_CELSIUS, Duration.ofSeconds(1), List.of());
        this.adapter = new Adapter("practice cup", settings, startsAt, random.split());
    }

    /** The tip goes into stirred ice water. */
    public void dipIntoIce() {
        sample = Optional.empty();
        aroundCelsius = 0;
        lagSeconds = WATER_LAG_SECONDS;
    }

    /** The cup is filled from the bowl, the tip hung into it; soon it goes into the ice. */
    public void takeSample() {
        FatMake fat = FatMake.OF_THE_TABLES;
        take(new TubeSample(fat, FAT_FRACTION, bowl.seedFraction, GRAMS, WORK_CELSIUS));
    }

    /** The same with chocolate that was held at 50 °C and cooled to 34. */
    public void takeMelted() {
        double grams = GRAMS * (1 + 0.02 * StandardNormal.draw(random));
        take(new TubeSample(FatMake.OF_THE_TABLES, FAT_FRACTION, 0, grams, MELTED_CELSIUS));
    }

    private void take(TubeSample taken) {
        Tube tube = new Tube(CUP, taken);
        if (bowl == Bowl.AT_WALL) tube.moveTip(1);
        sample = Optional.of(tube);
        waited = 0;
    }

    /** Where the probe is plugged in. */
    public LinkSource source() {
        return SingleLine.source(adapter, this::tick);
    }

    private Arrival tick() {
        now = now.plus(RunningKitchen.TICK);
        double seconds = RunningKitchen.TICK.toNanos() / 1e9;
        if (sample.isPresent()) cool(sample.get(), seconds);
        else {
            double around = aroundCelsius + ICE_UNREST_KELVIN * StandardNormal.draw(random);
            tipCelsius = around + (tipCelsius - around) * StrictMath.exp(-seconds / lagSeconds);
        }
        adapter.tick(now, tipCelsius, Map.of());
        return adapter.poll().orElse(Arrival.silence(now));
    }

    private void cool(Tube tube, double seconds) {
        waited += seconds;
        if (waited < WAIT_SECONDS) tube.stand(seconds);
        else tube.cool(0, seconds);
        boolean strokes = bowl == Bowl.STIRRED && waited > WAIT_SECONDS && random.nextDouble() < seconds / 3;
        if (strokes) tube.stir(0.4, 0.12);
        tipCelsius = tube.tipCelsius();
    }
}
