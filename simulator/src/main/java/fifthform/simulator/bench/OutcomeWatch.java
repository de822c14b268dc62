package fifthform.simulator.bench;

import fifthform.simulator.bowl.Spot;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Follows how a batch really goes, moment by moment, and keeps only what the {@link Outcome} needs. */
final class OutcomeWatch {
    private enum Part {
        MELT,
        COOL,
        AFTER
    }

    private final List<Lift> lifts = new ArrayList<>();
    private Part part = Part.MELT;
    private Optional<Instant> first = Optional.empty();
    private Instant last = Instant.MIN;
    private Spot spot = Spot.TABLE;
    private double highestMelt = Double.NEGATIVE_INFINITY;
    private double lowestCool = Double.POSITIVE_INFINITY;
    private double highestAfter = Double.NEGATIVE_INFINITY;
    private Optional<Lift> open = Optional.empty();

    void saw(Instant at, double bulkCelsius, Spot now) {
        boolean beginning = first.isEmpty();
        if (beginning) first = Optional.of(at);
        // Chocolate in temper goes to the warm water at once.
        if (part == Part.MELT && now == Spot.WARM_BATH) part = Part.COOL;
        if (part == Part.MELT && now == Spot.COLD_WATER) part = Part.COOL;
        boolean rewarmBegins = part == Part.COOL && now == Spot.WARM_BATH;
        if (rewarmBegins) part = Part.AFTER;
        if (part == Part.MELT || beginning) highestMelt = Math.max(highestMelt, bulkCelsius);
        if (part == Part.COOL) lowestCool = Math.min(lowestCool, bulkCelsius);
        if (part == Part.AFTER) {
            highestAfter = Math.max(highestAfter, bulkCelsius);
            if (!rewarmBegins) lift(at, bulkCelsius, now);
        }
        spot = now;
        last = at;
    }

    private void lift(Instant at, double bulkCelsius, Spot now) {
        if (now == Spot.WARM_BATH) close();
        else if (spot == Spot.WARM_BATH) open = Optional.of(new Lift(at, bulkCelsius, at, bulkCelsius));
        else if (open.isPresent() && bulkCelsius > open.get().turnedCelsius()) {
            open = Optional.of(new Lift(open.get().at(), open.get().celsius(), at, bulkCelsius));
        }
    }

    private void close() {
        open.ifPresent(lifts::add);
        open = Optional.empty();
    }

    /** Whether the rewarm has begun. */
    boolean rewarmed() {
        return part == Part.AFTER;
    }

    Outcome outcome() {
        close();
        return new Outcome(
                Duration.between(first.orElseThrow(), last),
                highestMelt,
                finite(lowestCool),
                finite(highestAfter),
                lifts);
    }

    private static OptionalDouble finite(double celsius) {
        return Double.isInfinite(celsius) ? OptionalDouble.empty() : OptionalDouble.of(celsius);
    }
}
