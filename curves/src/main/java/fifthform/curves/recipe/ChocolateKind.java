package fifthform.curves.recipe;

import java.util.List;
import java.util.Locale;

/** How a kind of chocolate is melted: rows "recommended default" of the reference table of targets, baths as in the built-in recipes. */
enum ChocolateKind {
    DARK(0.00, new CelsiusRange(45, 50), 55, 45, "dark"),
    DARK_MILK(0.10, new CelsiusRange(43, 47), 50, 43, "dark", "milk"),
    MILK(0.17, new CelsiusRange(43, 45), 50, 42, "milk"),
    WHITE(0.21, new CelsiusRange(40, 43), 50, 40, "white");

    final double milkFatInFatFraction;
    final CelsiusRange melt;
    final double scorchCelsius;
    final double bathCelsius;
    /** The kinds by which prints call it. */
    final List<String> printedAs;

    ChocolateKind(
            double milkFatInFatFraction,
            CelsiusRange melt,
            double scorchCelsius,
            double bathCelsius,
            String... printedAs) {
        this.milkFatInFatFraction = milkFatInFatFraction;
        this.melt = melt;
        this.scorchCelsius = scorchCelsius;
        this.bathCelsius = bathCelsius;
        this.printedAs = List.of(printedAs);
    }

    static ChocolateKind nearest(double milkFatInFatFraction) {
        ChocolateKind best = DARK;
        for (ChocolateKind kind : values()) {
            if (kind.away(milkFatInFatFraction) < best.away(milkFatInFatFraction)) best = kind;
        }
        return best;
    }

    private double away(double fraction) {
        return Math.abs(milkFatInFatFraction - fraction);
    }

    String words() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
