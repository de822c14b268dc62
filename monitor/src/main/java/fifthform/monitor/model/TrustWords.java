package fifthform.monitor.model;

import fifthform.curves.setup.ProbeSetup;
import fifthform.curves.signal.Lag;
import fifthform.curves.thermocouple.Budget;
import fifthform.curves.thermocouple.Budget.Source;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.WatchText;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What the figure beside the reading is made of, and how slow its tip is: for who asks, and for who listens to lines. */
final class TrustWords {
    private TrustWords() {}

    /** The parts in the order of their sources; all of them, also those that are 0, so that nothing seems forgotten. */
    static String parts(Budget budget, Units units) {
        return WatchText.WITHIN_95_IN_100_TWICE_THE.say(
                units.difference(budget.expandedKelvin()),
                budget.parts().stream()
                        .map(part -> name(part.source()) + " "
                                + Units.format("%.2f", units.shownDifference(part.standardKelvin())))
                        .collect(Collectors.joining(", ")),
                units.symbol());
    }

    private static String name(Source source) {
        return switch (source) {
            case TOLERANCE -> WatchText.WIRE.say();
            case JUNCTION -> WatchText.CONVERTER_AND_ITS_JUNCTION.say();
            case CORRECTION -> WatchText.WHAT_THE_CHECK_LEFT.say();
            case RESOLUTION -> WatchText.LAST_DIGIT.say();
            case NOISE -> WatchText.NOISE.say();
        };
    }

    /** The tip's lag is a bias that is taken away, so it stands beside the figure and not in it. */
    static String lag(Optional<Lag> measured, ProbeSetup bowl) {
        return WatchText.WHAT_IT_LAGS_BY_IS_TAKEN.say(measured.map(TrustWords::dip)
                .orElseGet(() -> WatchText.THE_TIP_LAGS_ASSUMED_UNTIL_IT.say(seconds(bowl.lagSeconds()))));
    }

    /** What a dip showed, as news. */
    static String dip(Lag lag) {
        return WatchText.THE_DIP_SHOWS_THAT_THE_TIP.say(seconds(lag.seconds()), seconds(2 * lag.sigmaSeconds()));
    }

    private static String seconds(double seconds) {
        return WatchText.SECONDS.say(Units.format("%.1f", seconds));
    }

    /** Both sentences. */
    static List<String> all(Budget budget, Units units, Optional<Lag> measured, ProbeSetup bowl) {
        return List.of(parts(budget, units), lag(measured, bowl));
    }
}
