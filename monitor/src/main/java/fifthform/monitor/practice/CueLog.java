package fifthform.monitor.practice;

import fifthform.curves.cue.CueId;
import fifthform.curves.engine.Event;
import fifthform.curves.engine.Event.CueEnded;
import fifthform.curves.engine.Event.CueGiven;
import fifthform.monitor.practice.OwnHands.Move;
import fifthform.simulator.bowl.Spot;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** The cues that ask for the bowl to be moved, and which move answered each. */
final class CueLog {
    /** A move ends its cue, and the program may know of it a moment before the kitchen does. Our own choice. */
    private static final Duration SLACK = Duration.ofSeconds(2);

    private final List<Given> given = new ArrayList<>();

    private record Given(CueId cue, Instant at, Optional<Instant> endedAt) {}

    void heard(Event event) {
        if (event instanceof CueGiven cue) given.add(new Given(cue.cue(), cue.at(), Optional.empty()));
        if (event instanceof CueEnded ended) given.replaceAll(g -> ended(g, ended));
    }

    private static Given ended(Given each, CueEnded event) {
        boolean it = each.cue() == event.cue() && each.endedAt().isEmpty();
        return it ? new Given(each.cue(), each.at(), Optional.of(event.at())) : each;
    }

    /** What became of each cue that asked for a move, given these moves. */
    List<CueAnswer> answers(List<Move> moves) {
        List<CueAnswer> answers = new ArrayList<>();
        for (Given each : given) {
            Optional<Predicate<Move>> wanted = wanted(each.cue());
            if (wanted.isEmpty()) continue;
            Optional<Duration> took = moves.stream()
                    .filter(move -> !move.at().isBefore(each.at()) && inTime(each, move))
                    .filter(wanted.get())
                    .findFirst()
                    .map(move -> Duration.between(each.at(), move.at()));
            answers.add(new CueAnswer(each.cue(), each.at(), took));
        }
        return answers;
    }

    private static boolean inTime(Given cue, Move move) {
        return cue.endedAt().filter(end -> move.at().isAfter(end.plus(SLACK))).isEmpty();
    }

    /** The move a cue asks for; empty where it asks for none. */
    private static Optional<Predicate<Move>> wanted(CueId cue) {
        return switch (cue) {
            case MELTED -> Optional.of(move -> move.from() == Spot.HOT_BATH);
            case STOP_COOLING -> Optional.of(move -> move.from() == Spot.COLD_WATER);
            case MELT_FIRST -> Optional.of(move -> move.to() == Spot.HOT_BATH);
            case CRYSTALS_ENOUGH, WARM_UP -> Optional.of(move -> move.to() == Spot.WARM_BATH);
            case LIFT_NOW, OFF_NOW -> Optional.of(move -> move.from() == Spot.WARM_BATH);
            case PUT_BACK -> Optional.of(move -> move.to() != Spot.TABLE);
            case TOUCH_OF_WARMTH -> Optional.of(move -> move.to() == Spot.WARM_BATH);
            case STIR_ON,
                    GET_READY,
                    IN_RANGE,
                    SEED_NOW,
                    SEED_OUT,
                    WIPE_AND_STIR,
                    WEAK_BATH,
                    TOUCH_OF_WARM_AIR,
                    BOX_WARMER,
                    BOX_COOLER,
                    KEEP_FLUID,
                    HOLD_OVER,
                    THICKENS_SOON -> Optional.empty();
        };
    }
}
