package fifthform.curves.thermocouple;

import fifthform.curves.check.Require;
import java.util.List;
import java.util.Objects;

/**
 * How far a reading can be trusted, part by part. The parts are independent standard uncertainties and add in squares
 * (JCGM 100:2008, 5.1.2).
 *
 * @param parts what it is made of, in the order of {@link Source}
 */
public record Budget(List<Part> parts) {
    /** Where a part comes from. */
    public enum Source {
        /** The wire's alloy against the reference function. */
        TOLERANCE,
        /** The converter and its measurement of the cold junction. */
        JUNCTION,
        /** What the probe's last check left; takes the place of tolerance and junction. */
        CORRECTION,
        /** The last digit on the line. */
        RESOLUTION,
        /** Scatter of the readings around their curve. */
        NOISE
    }

    /**
     * One part.
     *
     * @param standardKelvin standard uncertainty, K, 0 to 100
     */
    public record Part(Source source, double standardKelvin) {
        /** No part is larger, K. */
        public static final double MOST_KELVIN = 100;

        public Part {
            Objects.requireNonNull(source, "source");
            Require.within(standardKelvin, 0, MOST_KELVIN, "standardKelvin");
        }
    }

    public Budget {
        parts = List.copyOf(parts);
    }

    /** The whole: combined standard uncertainty, K. */
    public double standardKelvin() {
        return Math.sqrt(parts.stream()
                .mapToDouble(part -> part.standardKelvin() * part.standardKelvin())
                .sum());
    }

    /** What people are shown: two standard uncertainties, about 95 % (JCGM 100:2008, 6.2 and G.6.6). */
    public double expandedKelvin() {
        return 2 * standardKelvin();
    }
}
