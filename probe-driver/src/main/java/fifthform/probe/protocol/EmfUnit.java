package fifthform.probe.protocol;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Units in which adapters write a thermo-EMF. */
enum EmfUnit {
    MILLIVOLT(1),
    MICROVOLT(1e-3);

    private final double millivolts;

    EmfUnit(double millivolts) {
        this.millivolts = millivolts;
    }

    /** The unit that a word names; the micro sign comes as Latin-1, or as UTF-8 read as Latin-1. */
    static Optional<EmfUnit> named(String word) {
        return switch (word.toLowerCase(Locale.ROOT)) {
            case "mv", "millivolt", "millivolts" -> Optional.of(MILLIVOLT);
            case "uv", "microvolt", "microvolts", "\u00B5v", "\u00E2\u00B5v", "\u00EE\u00BCv" -> Optional.of(MICROVOLT);
            default -> Optional.empty();
        };
    }

    /** The first unit that these words of a label name; {@code mV} was cut into {@code m v} there. */
    static Optional<EmfUnit> among(List<String> words) {
        for (int i = 0; i < words.size(); i++) {
            Optional<EmfUnit> whole = named(words.get(i));
            if (whole.isPresent()) return whole;
            Optional<EmfUnit> cut = i == 0 ? Optional.empty() : named(words.get(i - 1) + words.get(i));
            if (cut.isPresent()) return cut;
        }
        return Optional.empty();
    }

    /** mV, rounded to a millionth, so that recordings keep it exactly. */
    double millivolts(double value) {
        return Math.round(value * millivolts * 1e6) / 1e6;
    }

    /** A difference in this unit, in mV. */
    double step(double difference) {
        return difference * millivolts;
    }
}
