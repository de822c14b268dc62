package fifthform.monitor.model;

import fifthform.curves.situation.Reason;
import fifthform.curves.situation.Reason.Figure;
import fifthform.monitor.settings.Units;
import java.time.Duration;
import java.util.OptionalDouble;

/** Why a step of a re-temper, of chocolate that came in temper, or of a planned hold is due. */
final class HoldWords {
    private final Reason reason;
    private final Units units;

    HoldWords(Reason reason, Units units) {
        this.reason = reason;
        this.units = units;
    }

    String kept() {
        return "It came in temper and stands at " + celsius(Figure.CHOCOLATE_C) + "; it is to be warmed to "
                + celsius(Figure.RANGE_LOW_C) + " to " + celsius(Figure.RANGE_HIGH_C)
                + " and never melted out: no cold water, nothing to make anew.";
    }

    String notMelted() {
        return "Bars of a failed batch: form VI of a bloom melts only above about " + units.withUnit(36)
                + ", and nobody saw it held at " + celsius(Figure.RANGE_LOW_C)
                + " for long enough. What is left would seed the wrong crystals.";
    }

    String seedOut() {
        return "It stands at " + celsius(Figure.CHOCOLATE_C) + ", under " + celsius(Figure.RANGE_HIGH_C)
                + ": lumps of seed melt no more here.";
    }

    String box() {
        return "In the box it is " + drift() + ", and would settle at about " + celsius(Figure.SETTLES_C)
                + "; the range is " + celsius(Figure.RANGE_LOW_C) + " to " + celsius(Figure.RANGE_HIGH_C)
                + ". A box is slow: the next word on it comes in some minutes.";
    }

    String thick() {
        return "Crystals have grown to about "
                + CrystalModel.digit(reason.figure(Figure.SEED_PCT).orElse(0))
                + " % of the fat, as the model has it; the upper end of the range, " + celsius(Figure.RANGE_HIGH_C)
                + ", melts some of them.";
    }

    String over() {
        return "Held for "
                + Spans.words(Duration.ofSeconds(
                        Math.round(reason.figure(Figure.HELD_S).orElse(0))))
                + ", as planned"
                + (has(Figure.IN_RANGE_PCT)
                        ? "; " + Math.round(reason.figure(Figure.IN_RANGE_PCT).getAsDouble()) + " % of it in range"
                        : "")
                + ".";
    }

    private String drift() {
        OptionalDouble drift = reason.figure(Figure.DRIFT_K_PER_MIN);
        return ReasonWords.rate(drift.orElse(0), units);
    }

    private boolean has(Figure figure) {
        return reason.figure(figure).isPresent();
    }

    private String celsius(Figure figure) {
        OptionalDouble value = reason.figure(figure);
        return value.isPresent() ? units.withUnit(value.getAsDouble()) : "–";
    }
}
