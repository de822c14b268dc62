package fifthform.monitor.model;

import fifthform.curves.situation.Reason;
import fifthform.curves.situation.Reason.Figure;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.HoldText;
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
        return HoldText.WHY_KEPT.say(
                celsius(Figure.CHOCOLATE_C), celsius(Figure.RANGE_LOW_C), celsius(Figure.RANGE_HIGH_C));
    }

    String notMelted() {
        return HoldText.WHY_NOT_MELTED.say(units.withUnit(36), celsius(Figure.RANGE_LOW_C));
    }

    String seedOut() {
        return HoldText.WHY_SEED_OUT.say(celsius(Figure.CHOCOLATE_C), celsius(Figure.RANGE_HIGH_C));
    }

    String box() {
        return HoldText.WHY_BOX.say(
                drift(), celsius(Figure.SETTLES_C), celsius(Figure.RANGE_LOW_C), celsius(Figure.RANGE_HIGH_C));
    }

    String thick() {
        return HoldText.WHY_THICK.say(
                CrystalModel.digit(reason.figure(Figure.SEED_PCT).orElse(0)), celsius(Figure.RANGE_HIGH_C));
    }

    String over() {
        String held = Spans.words(
                Duration.ofSeconds(Math.round(reason.figure(Figure.HELD_S).orElse(0))));
        return has(Figure.IN_RANGE_PCT)
                ? HoldText.WHY_OVER_WITH_SHARE.say(
                        held,
                        Long.toString(
                                Math.round(reason.figure(Figure.IN_RANGE_PCT).getAsDouble())))
                : HoldText.WHY_OVER.say(held);
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
