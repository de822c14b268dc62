package fifthform.monitor.model;

import fifthform.curves.cue.CueId;
import fifthform.curves.cue.OpenCue;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.situation.Reason;
import fifthform.curves.situation.Reason.Figure;
import fifthform.curves.situation.Reason.Rule;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.CueText;
import fifthform.monitor.texts.HoldText;
import java.util.OptionalDouble;

/** What stands beside a step that is due: why, with the figure that matters, or what comes of it. */
final class Asides {
    /** Above this the screen calls it rising, and nobody would believe that it has turned. */
    private static final double RISES_KELVIN_PER_MINUTE = 0.15;

    private final Units units;
    private final Recipe recipe;

    Asides(Units units, Recipe recipe) {
        this.units = units;
        this.recipe = recipe;
    }

    String of(CueId cue, OpenCue open) {
        OptionalDouble figure = open.figure();
        Reason reason = open.reason();
        return switch (cue) {
            case MELTED ->
                recipe.melt().dwell().isZero()
                        ? ""
                        : CueText.HELD.say(Spans.words(recipe.melt().dwell()));
            case STOP_COOLING -> CueText.IT_SINKS_ON_TO.say(celsius(figure));
            case MELT_FIRST -> CueText.HOLD_IT_AT.say(celsius(figure));
            case WARM_UP -> figure.isPresent() ? firstDip(reason) : CueText.NEVER_OVER.say(celsius(warn()));
            case SEED_OUT -> CueText.LUMPS_MELT_NO_MORE.say();
            case TOUCH_OF_WARM_AIR -> CueText.KEEP_IT_MOVING_THEN_STIR.say();
            case BOX_WARMER, BOX_COOLER -> settles(reason);
            case KEEP_FLUID -> CueText.OR_A_LITTLE_MELTED_CHOCOLATE.say();
            case HOLD_OVER -> inRange(reason);
            case STIR_ON -> CueText.CRYSTALS_ARE_FORMING.say();
            case SEED_NOW -> CueText.IT_KEEPS_ITS_CRYSTALS_UNDER.say(celsius(keeps(reason)));
            case CRYSTALS_ENOUGH -> figure.isPresent() ? firstDip(reason) : CueText.GENTLY_AND_KEEP_STIRRING.say();
            case GET_READY -> turns(reason, CueText.LIFTED_IT_TURNS_AT.say());
            case LIFT_NOW -> liftNow(figure, reason);
            case OFF_NOW ->
                CueText.LOOK_WHERE_IT_TURNS.say(figure.isPresent() ? CueText.ARE_OVER.say(seconds(figure)) : "");
            case WIPE_AND_STIR -> figure.isPresent() ? onTheWay(figure, reason) : CueText.HEAT_IS_UNDER_WAY.say();
            case WEAK_BATH -> weakBath(figure, reason);
            case TOUCH_OF_WARMTH -> beforeItThickens(reason);
            case THICKENS_SOON -> CueText.A_TOUCH_OF_WARMTH_OR_POUR.say();
            case PUT_BACK -> fellShort(reason);
            case IN_RANGE -> celsius(figure);
        };
    }

    private OptionalDouble warn() {
        return OptionalDouble.of(recipe.meltOut().warnCelsius());
    }

    private String settles(Reason reason) {
        OptionalDouble there = reason.figure(Figure.SETTLES_C);
        return there.isPresent() ? HoldText.AS_IT_IS.say(celsius(there)) : "";
    }

    private static String inRange(Reason reason) {
        OptionalDouble share = reason.figure(Figure.IN_RANGE_PCT);
        return share.isPresent() ? HoldText.SHARE_IN_RANGE.say(Long.toString(Math.round(share.getAsDouble()))) : "";
    }

    private OptionalDouble keeps(Reason reason) {
        OptionalDouble said = reason.figure(Figure.RANGE_HIGH_C);
        return said.isPresent() ? said : OptionalDouble.of(recipe.meltOut().limitCelsius());
    }

    private String firstDip(Reason reason) {
        return reason.rule() == Rule.FIRST_DIP
                ? CueText.UNSURE_OF_THIS_BOWL_SHORT_DIPS.say()
                : CueText.SHORT_THEN_LOOK_WHERE_IT_TURNS.say();
    }

    /** Where the band decided, the band and what to do; else the middle. */
    private String liftNow(OptionalDouble figure, Reason reason) {
        OptionalDouble upper = reason.figure(Figure.TURN_UPPER_C);
        return reason.rule() == Rule.UPPER_END_REACHES_RANGE && upper.isPresent()
                ? CueText.UNSURE_UP_TO_THEN_SHORT_DIPS.say(celsius(upper))
                : CueText.IT_GOES_ON_TO.say(celsius(figure));
    }

    private String turns(Reason reason, String words) {
        OptionalDouble lower = reason.figure(Figure.TURN_LOWER_C);
        OptionalDouble upper = reason.figure(Figure.TURN_UPPER_C);
        if (lower.isEmpty() || upper.isEmpty()) return CueText.HANDS_AT_THE_BOWL.say();
        return CueText.WORDS_FROM_TO.say(words, units.oneDecimal(lower.getAsDouble()), celsius(upper));
    }

    private String onTheWay(OptionalDouble figure, Reason reason) {
        double chocolate = reason.figure(Figure.CHOCOLATE_C).orElse(Double.POSITIVE_INFINITY);
        // A dip that only slows the fall leaves a bowl that still falls and turns above where it is.
        boolean below = figure.orElse(Double.NEGATIVE_INFINITY) < chocolate;
        boolean sinks = reason.figure(Figure.RATE_K_PER_MIN).orElse(0) < 0 && below;
        return (sinks ? CueText.IT_SINKS_ON_TO_ABOUT.say() : CueText.IT_GOES_ON_TO_ABOUT.say()) + celsius(figure);
    }

    private String weakBath(OptionalDouble figure, Reason reason) {
        if (figure.isEmpty()) return CueText.SHORT_DIPS_HARDLY_MOVE_IT.say();
        OptionalDouble bath = reason.figure(Figure.BATH_C);
        CueText only = reason.rule() == Rule.STAY_GIVES_TOO_LITTLE ? CueText.RISES_ONLY : CueText.DIPS_GAVE_ONLY;
        return only.say(
                units.difference(figure.getAsDouble()),
                bath.isPresent() ? CueText.OVER_BATH_OF.say(celsius(bath)) : "");
    }

    private String beforeItThickens(Reason reason) {
        OptionalDouble celsius = reason.figure(Figure.CHOCOLATE_C);
        OptionalDouble rate = reason.figure(Figure.RATE_K_PER_MIN);
        if (celsius.isEmpty() || rate.isEmpty()) return CueText.BEFORE_IT_THICKENS.say();
        CueText thickens =
                rate.getAsDouble() < 0 ? CueText.BEFORE_IT_THICKENS_FALLING : CueText.BEFORE_IT_THICKENS_RISING;
        return thickens.say(celsius(celsius), units.difference(Math.abs(rate.getAsDouble())));
    }

    private String fellShort(Reason reason) {
        OptionalDouble celsius = reason.figure(Figure.CHOCOLATE_C);
        OptionalDouble aim = reason.figure(Figure.AIM_C);
        if (celsius.isEmpty() || aim.isEmpty()) return CueText.IT_FELL_SHORT.say();
        double missing = aim.getAsDouble() - celsius.getAsDouble();
        // The next dip may be asked for before this one's peak, where even all that is under way will not do.
        boolean rises = reason.figure(Figure.RATE_K_PER_MIN).orElse(0) >= RISES_KELVIN_PER_MINUTE;
        return (rises ? CueText.IT_IS.say() : CueText.IT_TURNED.say())
                + units.difference(Math.abs(missing))
                + (missing < 0 ? CueText.ABOVE_AIM.say() : CueText.SHORT_OF_AIM.say())
                + celsius(aim);
    }

    private String celsius(OptionalDouble figure) {
        return figure.isPresent() ? units.withUnit(figure.getAsDouble()) : "–";
    }

    private static String seconds(OptionalDouble figure) {
        return Spans.about(figure.orElse(0));
    }
}
