package fifthform.curves.plan;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * How far each unknown may be off, and what that does to a figure: each is moved one standard deviation up and down, the
 * halves of what the figure moves add in squares (JCGM 100:2008, 5.1.2, with its note on finite steps).
 */
final class Doubts {
    /** One of the parts of a figure's uncertainty. */
    record Part(Unknown unknown, double deviation) {}

    private final EnumMap<Unknown, Double> deviations = new EnumMap<>(Unknown.class);

    Doubts(Map<Unknown, Double> deviations) {
        this.deviations.putAll(deviations);
    }

    double of(Unknown unknown) {
        return deviations.getOrDefault(unknown, 0.0);
    }

    /** Everything as it is expected. */
    Guess expected() {
        return new Guess(this, Optional.empty(), 0);
    }

    /** What each unknown does to the figure; those that do nothing are left out. */
    List<Part> parts(ToDoubleFunction<Guess> figure) {
        List<Part> parts = new ArrayList<>();
        for (Map.Entry<Unknown, Double> doubt : deviations.entrySet()) {
            double up = figure.applyAsDouble(new Guess(this, Optional.of(doubt.getKey()), 1));
            double down = figure.applyAsDouble(new Guess(this, Optional.of(doubt.getKey()), -1));
            double half = Math.abs(up - down) / 2;
            if (half > 0) parts.add(new Part(doubt.getKey(), half));
        }
        return parts;
    }

    /** The parts that matter, for example {@code bath 0.27, loss 0.11}. */
    String inWords(ToDoubleFunction<Guess> figure) {
        List<String> words = new ArrayList<>();
        for (Part part : parts(figure)) {
            if (part.deviation() < 0.005) continue;
            words.add(Formula.of("%s %.2f", part.unknown().name().toLowerCase(Locale.ROOT), part.deviation()));
        }
        return String.join(", ", words);
    }

    /** The standard deviation of the figure, in its own unit. */
    double deviation(ToDoubleFunction<Guess> figure) {
        double squares = 0;
        for (Part part : parts(figure)) squares += part.deviation() * part.deviation();
        return Math.sqrt(squares);
    }
}
