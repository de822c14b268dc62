package fifthform.monitor.model;

import fifthform.curves.setup.ProbeSetup;
import fifthform.curves.signal.Lag;
import fifthform.curves.thermocouple.Budget;
import fifthform.curves.thermocouple.Budget.Source;
import fifthform.monitor.settings.Units;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What the figure beside the reading is made of, and how slow its tip is: for who asks, and for who listens to lines. */
final class TrustWords {
    private TrustWords() {}

    /** The parts in the order of their sources; all of them, also those that are 0, so that nothing seems forgotten. */
    static String parts(Budget budget, Units units) {
        return "Within ±" + units.difference(budget.expandedKelvin())
                + " (95 in 100): twice the root of the sum of the squares of "
                + budget.parts().stream()
                        .map(part -> name(part.source()) + " "
                                + Units.format("%.2f", units.shownDifference(part.standardKelvin())))
                        .collect(Collectors.joining(", "))
                + " " + units.symbol() + ".";
    }

    private static String name(Source source) {
        return switch (source) {
            case TOLERANCE -> "wire";
            case JUNCTION -> "converter and its junction";
            case CORRECTION -> "what the check left";
            case RESOLUTION -> "last digit";
            case NOISE -> "noise";
        };
    }

    /** The tip's lag is a bias that is taken away, so it stands beside the figure and not in it. */
    static String lag(Optional<Lag> measured, ProbeSetup bowl) {
        return measured.map(TrustWords::dip)
                        .orElseGet(() -> "The tip lags "
                                + seconds(bowl.lagSeconds())
                                + ": assumed until it is dipped into melted chocolate")
                + "; what it lags by is taken off.";
    }

    /** What a dip showed, as news. */
    static String dip(Lag lag) {
        return "The dip shows that the tip lags " + seconds(lag.seconds()) + " (±" + seconds(2 * lag.sigmaSeconds())
                + ")";
    }

    private static String seconds(double seconds) {
        return Units.format("%.1f", seconds) + " s";
    }

    /** Both sentences. */
    static List<String> all(Budget budget, Units units, Optional<Lag> measured, ProbeSetup bowl) {
        return List.of(parts(budget, units), lag(measured, bowl));
    }
}
