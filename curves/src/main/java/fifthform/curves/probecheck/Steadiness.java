package fifthform.curves.probecheck;

import fifthform.curves.probecheck.CheckInput.Reading;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * Readings that follow each other, oldest first, and how steady they are.
 *
 * <p>Slope and scatter are those of a least-squares line. The mean's standard uncertainty joins the scatter over the
 * readings that count as independent (JCGM 100:2008, 4.2.3), the last digit (4.3.7) and what the slope moves between the
 * middle and an end of the readings, taken as rectangular.
 *
 * @param readings in the order of their times
 */
record Steadiness(List<Reading> readings) {
    static final Steadiness NOTHING = new Steadiness(List.of());

    /** Readings closer than this share their noise: bubbles, eddies, the tip's own lag. Own choice. */
    private static final double INDEPENDENT_SECONDS = 1;

    Steadiness {
        readings = List.copyOf(readings);
    }

    Steadiness with(Reading reading) {
        List<Reading> more = new ArrayList<>(readings);
        more.add(reading);
        return new Steadiness(more);
    }

    /** Without those that are older than {@code span} before the last, as far as {@code fewest} remain. */
    Steadiness newest(Duration span, int fewest) {
        int first = 0;
        while (readings.size() - first > fewest && age(first).compareTo(span) > 0) first++;
        return first == 0 ? this : new Steadiness(readings.subList(first, readings.size()));
    }

    private Duration age(int index) {
        return Duration.between(readings.get(index).at(), last().at());
    }

    int size() {
        return readings.size();
    }

    Duration span() {
        return readings.isEmpty() ? Duration.ZERO : age(0);
    }

    Reading last() {
        return readings.get(readings.size() - 1);
    }

    double meanCelsius() {
        return readings.stream().mapToDouble(Reading::celsius).average().orElseThrow();
    }

    double stepSigmaKelvin() {
        return readings.stream().mapToDouble(Reading::stepSigmaKelvin).max().orElse(0);
    }

    /** Whether the number has not moved at all. */
    boolean isFrozen() {
        return readings.stream().mapToDouble(Reading::celsius).distinct().count() == 1;
    }

    double slopeKelvinPerMinute() {
        return 60 * slopeKelvinPerSecond();
    }

    /** What noise alone makes of the slope: one standard deviation. */
    double slopeSigmaKelvinPerMinute() {
        double spread = secondsSquared();
        double noise = Math.max(scatterKelvin(), stepSigmaKelvin());
        return spread > 0 ? 60 * noise / Math.sqrt(spread) : 0;
    }

    /** Standard deviation about the line, n − 2 degrees of freedom. */
    double scatterKelvin() {
        if (size() < 3) return 0;
        double slope = slopeKelvinPerSecond();
        double middle = meanSeconds();
        double mean = meanCelsius();
        double squares = 0;
        for (Reading r : readings) {
            double off = r.celsius() - mean - slope * (seconds(r.at()) - middle);
            squares += off * off;
        }
        return Math.sqrt(squares / (size() - 2));
    }

    double meanSigmaKelvin() {
        double independent = Math.max(1, Math.min(size(), span().toMillis() / 1000.0 / INDEPENDENT_SECONDS));
        double noise = scatterKelvin() / Math.sqrt(independent);
        double moved = Math.abs(slopeKelvinPerSecond()) * span().toMillis() / 2000.0 / Math.sqrt(3);
        double step = stepSigmaKelvin();
        return Math.sqrt(noise * noise + step * step + moved * moved);
    }

    private double slopeKelvinPerSecond() {
        double spread = secondsSquared();
        if (spread <= 0) return 0;
        double middle = meanSeconds();
        double product = 0;
        for (Reading r : readings) product += (seconds(r.at()) - middle) * r.celsius();
        return product / spread;
    }

    private double secondsSquared() {
        if (size() < 2) return 0;
        double middle = meanSeconds();
        double squares = 0;
        for (Reading r : readings) {
            double off = seconds(r.at()) - middle;
            squares += off * off;
        }
        return squares;
    }

    private double meanSeconds() {
        return readings.stream().mapToDouble(r -> seconds(r.at())).average().orElse(0);
    }

    private double seconds(Instant at) {
        return Duration.between(readings.get(0).at(), at).toNanos() / 1e9;
    }
}
