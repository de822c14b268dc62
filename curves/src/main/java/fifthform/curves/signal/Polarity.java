package fifthform.curves.signal;

import fifthform.curves.input.Sample;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/**
 * Whether the thermocouple's two wires are swapped. Such a probe reads as far below its junction as the chocolate is
 * above it, so it falls when the bowl is warmed and rises when it is cooled. It takes both to be believed: a key that
 * was pressed the wrong way round also turns the sense, but not the side of the junction.
 *
 * <p>Source: a reversed pair gives the EMF of the same temperature difference with the other sign (law of the simple
 * thermoelectric circuit; from memory).
 *
 * @param toldAt the move into water that is being watched
 * @param fromCelsius the reading when it was made, °C
 * @param reversed since when the wires are thought to be swapped
 */
public record Polarity(Optional<Instant> toldAt, double fromCelsius, Optional<Instant> reversed) {
    /** Nothing seen yet. */
    public static final Polarity UNSEEN = new Polarity(Optional.empty(), 0, Optional.empty());

    private static final double WATCHED_SECONDS = 40;
    private static final double MOVED_KELVIN = 2;

    /** Nearer to the junction than this the side says nothing. Own choice. */
    private static final double SIDE_KELVIN = 1;

    public Polarity {
        Objects.requireNonNull(toldAt, "toldAt");
        Objects.requireNonNull(reversed, "reversed");
    }

    Polarity with(Sample sample, Surroundings around) {
        double celsius = sample.tipCelsius();
        double side = celsius - sample.junctionCelsius().orElse(around.roomCelsius());
        Optional<Instant> still = side > SIDE_KELVIN ? Optional.empty() : reversed;
        Optional<Water> told = around.said();
        if (told.isEmpty()) return new Polarity(Optional.empty(), 0, still);
        Instant moved = told.get().since();
        if (!toldAt.equals(Optional.of(moved))) return new Polarity(Optional.of(moved), celsius, still);
        double asItShould = told.get().sense() * (celsius - fromCelsius);
        if (asItShould >= MOVED_KELVIN) return new Polarity(toldAt, fromCelsius, Optional.empty());
        boolean swapped = asItShould <= -MOVED_KELVIN
                && side < -SIDE_KELVIN
                && Track.seconds(moved, sample.at()) >= WATCHED_SECONDS;
        return new Polarity(toldAt, fromCelsius, swapped ? Optional.of(still.orElse(sample.at())) : still);
    }
}
