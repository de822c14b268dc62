package fifthform.monitor.intake;

import fifthform.curves.input.MakerAction;
import fifthform.curves.input.MakerAction.BowlMoved;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.input.MakerAction.ProbePutBack;
import fifthform.curves.input.MakerAction.ProbeTakenOut;
import fifthform.curves.input.MakerAction.SeedAdded;
import fifthform.curves.input.MakerAction.StirringSaid;
import fifthform.curves.input.MakerAction.StirringSaid.Stirring;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** What the maker did, in the words of the column {@code event}. */
final class CsvEvents {
    static final List<String> WORDS =
            List.of("on-bath", "off-bath", "in-cold", "out-of-cold", "stir", "still", "seed", "probe-out", "probe-in");

    private CsvEvents() {}

    static Optional<MakerAction> action(String word, Instant at) {
        return switch (word) {
            case "on-bath" -> Optional.of(new BowlMoved(at, Place.BATH));
            case "in-cold" -> Optional.of(new BowlMoved(at, Place.COLD_WATER));
            case "off-bath", "out-of-cold" -> Optional.of(new BowlMoved(at, Place.TABLE));
            case "stir" -> Optional.of(new StirringSaid(at, Stirring.STIRRED));
            case "still" -> Optional.of(new StirringSaid(at, Stirring.STILL));
            // The table does not say how much went in; 0 g stands for "not weighed".
            case "seed" -> Optional.of(new SeedAdded(at, 0));
            case "probe-out" -> Optional.of(new ProbeTakenOut(at));
            case "probe-in" -> Optional.of(new ProbePutBack(at));
            default -> Optional.empty();
        };
    }
}
