package fifthform.simulator.training;

import fifthform.simulator.device.AdapterSettings;
import fifthform.simulator.maker.Acts.Probe;
import fifthform.simulator.maker.Dice;
import fifthform.simulator.maker.Luck;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The numbers of one session's thermometer as the program believes them: noise, offset, rounding, and what is lost. Of a
 * probe in the air the program sometimes believes the numbers and sometimes not. Shares invented. For one thread.
 */
final class Readings {
    private static final double LOSING_SHARE = 0.15;
    private static final double LOST_FRACTION = 0.2;
    private static final double SILENT_SHARE = 0.15;
    private static final double NOTICED_SHARE = 0.6;

    /** A probe put back takes so long to be believed again, s. */
    private static final double DOUBTED_SECONDS = 10;

    /** Neither probe nor line is there from one time to another, s. */
    private record Silence(double from, double to) {}

    private final AdapterSettings settings;
    private final Dice dice;
    private final double lostFraction;
    private final boolean outIsNoticed;
    private final List<Silence> silences = new ArrayList<>();
    private double doubtedUntil = -1;

    Readings(AdapterSettings settings, Luck luck) {
        this.settings = settings;
        dice = new Dice(luck);
        lostFraction = dice.happens(LOSING_SHARE) ? LOST_FRACTION : 0;
        outIsNoticed = dice.happens(NOTICED_SHARE);
        int count = dice.happens(SILENT_SHARE) ? 1 + dice.among(5) : 0;
        for (int i = 0; i < count; i++) {
            double from = dice.between(60, 1800);
            silences.add(new Silence(from, from + dice.logBetween(5, 40)));
        }
    }

    /** Whether the adapter measures at this time, of whole milliseconds. */
    boolean due(long millis) {
        return millis % settings.interval().toMillis() == 0;
    }

    /** What the program is told at this time; empty where it is lost or not believed. */
    OptionalDouble at(double seconds, double tipCelsius, Probe probe) {
        double noisy = inItsScale(tipCelsius) + settings.noiseKelvin() * dice.normal();
        boolean lost = dice.happens(lostFraction);
        if (probe == Probe.OUT) doubtedUntil = seconds + DOUBTED_SECONDS;
        boolean doubted = outIsNoticed && seconds < doubtedUntil;
        if (lost || doubted || silent(seconds)) return OptionalDouble.empty();
        return OptionalDouble.of(settings.resolutionKelvin() * Math.round(noisy / settings.resolutionKelvin()));
    }

    /** What a probe without lag and noise would show, °C. */
    double inItsScale(double celsius) {
        return settings.gain() * celsius + settings.offsetKelvin();
    }

    private boolean silent(double seconds) {
        for (Silence s : silences) if (seconds >= s.from() && seconds < s.to()) return true;
        return false;
    }
}
