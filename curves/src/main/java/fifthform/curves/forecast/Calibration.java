package fifthform.curves.forecast;

import fifthform.curves.check.Require;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.phase.Batch;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * How wide the network's bands must be in this kitchen. After each coast that was seen to its end the factor rises by
 * 0.9 steps if the turning point lay outside the 90 % band given at the lift, and falls by 0.1 steps if inside: it rests
 * where one in ten lies outside. Source: adaptive conformal inference (Gibbs and Candès 2021, arXiv:2106.00170), from
 * memory; step and bounds from our trials.
 *
 * @param factor what the network's half widths are multiplied by
 * @param said bands of late, oldest first
 * @param awaited the band given at the lift whose turning point is awaited
 */
public record Calibration(double factor, List<Band> said, Optional<Band> awaited) {
    static final double LEAST_FACTOR = 0.7;
    static final double MOST_FACTOR = 2.5;
    private static final double STEP = 0.05;
    private static final double OUTSIDE_FRACTION = 0.1;

    /** Two a step and 40 s back: a lift that the curve shows is known some time after it happened. */
    private static final int KEPT = 20;

    /** Before the first coast. */
    public static final Calibration USUAL = new Calibration(1, List.of(), Optional.empty());

    /**
     * A band that was given.
     *
     * @param at when
     * @param lowerCelsius 5 % point of the turning point after a lift then, °C
     * @param upperCelsius 95 % point
     */
    public record Band(Instant at, double lowerCelsius, double upperCelsius) {
        public Band {
            Objects.requireNonNull(at, "at");
            Require.finite(lowerCelsius, "lowerCelsius");
            Require.within(upperCelsius, lowerCelsius, 1e6, "upperCelsius");
        }

        private boolean holds(double celsius) {
            return lowerCelsius <= celsius && celsius <= upperCelsius;
        }
    }

    public Calibration {
        Require.within(factor, LEAST_FACTOR, MOST_FACTOR, "factor");
        said = List.copyOf(said);
        Objects.requireNonNull(awaited, "awaited");
    }

    /** Once the bowl has gone on from {@code before} to {@code after} and stands as {@code batch} says. */
    public Calibration followed(Coasting before, Coasting after, Batch batch, Optional<Saying> saying) {
        if (!after.lastTurn().equals(before.lastTurn())) return learned(after.lastTurn());
        if (after.lift().isPresent())
            return awaited.isPresent() ? this : lifted(after.lift().get());
        Calibration idle = awaited.isEmpty() ? this : new Calibration(factor, said, Optional.empty());
        return batch.place() == Place.TABLE ? idle : saying.map(idle::saying).orElse(idle);
    }

    private Calibration lifted(Lift lift) {
        Optional<Band> given =
                said.stream().filter(band -> !band.at().isAfter(lift.at())).reduce((earlier, later) -> later);
        return given.isEmpty() && said.isEmpty() ? this : new Calibration(factor, List.of(), given);
    }

    private Calibration learned(Optional<Turn> turn) {
        if (awaited.isEmpty() || turn.isEmpty()) return new Calibration(factor, said, Optional.empty());
        boolean inside = awaited.get().holds(turn.get().celsius());
        double moved = factor + STEP * (inside ? -OUTSIDE_FRACTION : 1 - OUTSIDE_FRACTION);
        return new Calibration(Math.min(MOST_FACTOR, Math.max(LEAST_FACTOR, moved)), List.of(), Optional.empty());
    }

    private Calibration saying(Saying saying) {
        if (!said.isEmpty() && !said.get(said.size() - 1).at().isBefore(saying.at())) return this;
        Spread spread = saying.ifNow();
        List<Band> latest = new ArrayList<>(said.subList(Math.max(0, said.size() + 1 - KEPT), said.size()));
        latest.add(new Band(
                saying.at(), spread.celsius() - spread.belowKelvin(), spread.celsius() + spread.aboveKelvin()));
        return new Calibration(factor, latest, Optional.empty());
    }
}
