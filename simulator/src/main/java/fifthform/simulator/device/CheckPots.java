package fifthform.simulator.device;

import fifthform.curves.check.Require;
import fifthform.probe.link.Arrival;
import fifthform.probe.link.LinkSource;
import fifthform.simulator.maker.StandardNormal;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SplittableRandom;

/**
 * A cup of ice water, a pot of boiling water and a probe that can be dipped into either, to try a probe check on. The
 * probe reads wrong by a gain and an offset, as real ones do, and is heard through the bytes of a real adapter. Time goes
 * on only when its line is read.
 *
 * <p>Not safe for several threads: whoever reads also dips.
 */
public final class CheckPots {
    /** How fast a thin sheath follows stirred water, s; common practice, no source. */
    private static final double WATER_LAG_SECONDS = 3;
    /** And how slowly air. */
    private static final double AIR_LAG_SECONDS = 25;
    /** Eddies around melting ice. */
    private static final double ICE_UNREST_KELVIN = 0.01;
    /** Bubbles at a rolling boil. */
    private static final double BOIL_UNREST_KELVIN = 0.08;

    private final Adapter adapter;
    private final SplittableRandom unrest;
    private Instant now;
    private double aroundCelsius;
    private double unrestKelvin;
    private double lagSeconds = AIR_LAG_SECONDS;
    private double tipCelsius;

    /**
     * How the probe reads: {@code gain · tip + offset}.
     *
     * @param gain 0.9 to 1.1
     * @param offsetKelvin −10 to 10 K
     * @param roomCelsius temperature of the kitchen, 5 to 40 °C
     */
    public record Make(double gain, double offsetKelvin, double roomCelsius) {
        /** An invented probe, wrong by an everyday amount. */
        public static final Make DEMO = new Make(1.003, 0.62, 22);

        public Make {
            Require.within(gain, 0.9, 1.1, "gain");
            Require.within(offsetKelvin, -10, 10, "offsetKelvin");
            Require.within(roomCelsius, 5, 40, "roomCelsius");
        }

        private AdapterSettings adapter(Language language) {
            Duration interval = RunningKitchen.TICK.multipliedBy(2);
            return new AdapterSettings(language, 0.01, 0.02, gain, offsetKelvin, 0, roomCelsius, interval, List.of());
        }
    }

    /** The probe lies on the table at first, and its adapter speaks in text lines. */
    public CheckPots(Make make, Instant startsAt, SplittableRandom random) {
        this(make, Language.TEXT_LINES, startsAt, random);
    }

    /** The same with an adapter that speaks {@code language}. */
    public CheckPots(Make make, Language language, Instant startsAt, SplittableRandom random) {
        this.adapter = new Adapter("practice pots", make.adapter(language), startsAt, random.split());
        this.unrest = random.split();
        this.now = Objects.requireNonNull(startsAt, "startsAt");
        this.aroundCelsius = make.roomCelsius();
        this.tipCelsius = make.roomCelsius();
    }

    /** The tip goes into stirred ice water. */
    public void dipIntoIce() {
        into(0, ICE_UNREST_KELVIN);
    }

    /** The tip goes into water that boils at {@code boilCelsius}. */
    public void dipIntoBoil(double boilCelsius) {
        into(Require.within(boilCelsius, 60, 110, "boilCelsius"), BOIL_UNREST_KELVIN);
    }

    /** The tip goes into a stirred bath. */
    public void dipIntoBath(double celsius) {
        into(Require.within(celsius, 0, 100, "celsius"), ICE_UNREST_KELVIN);
    }

    private void into(double celsius, double kelvin) {
        aroundCelsius = celsius;
        unrestKelvin = kelvin;
        lagSeconds = WATER_LAG_SECONDS;
    }

    /** Where the probe is plugged in. */
    public LinkSource source() {
        return SingleLine.source(adapter, this::tick);
    }

    private Arrival tick() {
        now = now.plus(RunningKitchen.TICK);
        double seconds = seconds(RunningKitchen.TICK);
        double around = aroundCelsius + unrestKelvin * StandardNormal.draw(unrest);
        tipCelsius = around + (tipCelsius - around) * StrictMath.exp(-seconds / lagSeconds);
        adapter.tick(now, tipCelsius, Map.of());
        return adapter.poll().orElse(Arrival.silence(now));
    }

    private static double seconds(Duration duration) {
        return duration.toNanos() / 1e9;
    }
}
