package fifthform.monitor.model;

import fifthform.curves.cue.CueId;
import fifthform.curves.cue.OpenCue;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.situation.Reason;
import fifthform.curves.situation.Reason.Figure;
import fifthform.curves.situation.Reason.Rule;
import fifthform.monitor.settings.Units;
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
                        : "held " + Spans.words(recipe.melt().dwell());
            case STOP_COOLING -> "it sinks on to " + celsius(figure);
            case MELT_FIRST -> "hold it at " + celsius(figure);
            case WARM_UP -> figure.isPresent() ? firstDip(reason) : "never over " + celsius(warn());
            case SEED_OUT -> "they melt no more, and only thicken it";
            case TOUCH_OF_WARM_AIR -> "keep it moving, then stir";
            case BOX_WARMER, BOX_COOLER -> settles(reason);
            case KEEP_FLUID -> "or stir in a little melted chocolate";
            case HOLD_OVER -> inRange(reason);
            case STIR_ON -> "crystals are forming";
            case SEED_NOW -> "it keeps its crystals under " + celsius(keeps(reason));
            case CRYSTALS_ENOUGH -> figure.isPresent() ? firstDip(reason) : "gently, and keep stirring";
            case GET_READY -> turns(reason, "lifted, it turns at ");
            case LIFT_NOW -> liftNow(figure, reason);
            case OFF_NOW -> (figure.isPresent() ? seconds(figure) + " are over: " : "") + "look where it turns";
            case WIPE_AND_STIR -> figure.isPresent() ? onTheWay(figure, reason) : "heat is under way";
            case WEAK_BATH -> weakBath(figure, reason);
            case TOUCH_OF_WARMTH -> beforeItThickens(reason);
            case THICKENS_SOON -> "a touch of warmth, or pour";
            case PUT_BACK -> fellShort(reason);
            case IN_RANGE -> celsius(figure);
        };
    }

    private OptionalDouble warn() {
        return OptionalDouble.of(recipe.meltOut().warnCelsius());
    }

    private String settles(Reason reason) {
        OptionalDouble there = reason.figure(Figure.SETTLES_C);
        return there.isPresent() ? "as it is, it goes to " + celsius(there) : "";
    }

    private static String inRange(Reason reason) {
        OptionalDouble share = reason.figure(Figure.IN_RANGE_PCT);
        return share.isPresent() ? Math.round(share.getAsDouble()) + " % of it in range" : "";
    }

    private OptionalDouble keeps(Reason reason) {
        OptionalDouble said = reason.figure(Figure.RANGE_HIGH_C);
        return said.isPresent() ? said : OptionalDouble.of(recipe.meltOut().limitCelsius());
    }

    private String firstDip(Reason reason) {
        return reason.rule() == Rule.FIRST_DIP ? "unsure of this bowl: short dips" : "short, then look where it turns";
    }

    /** Where the band decided, the band and what to do; else the middle. */
    private String liftNow(OptionalDouble figure, Reason reason) {
        OptionalDouble upper = reason.figure(Figure.TURN_UPPER_C);
        return reason.rule() == Rule.UPPER_END_REACHES_RANGE && upper.isPresent()
                ? "unsure: up to " + celsius(upper) + "; then short dips"
                : "it goes on to " + celsius(figure);
    }

    private String turns(Reason reason, String words) {
        OptionalDouble lower = reason.figure(Figure.TURN_LOWER_C);
        OptionalDouble upper = reason.figure(Figure.TURN_UPPER_C);
        if (lower.isEmpty() || upper.isEmpty()) return "hands at the bowl";
        return words + units.oneDecimal(lower.getAsDouble()) + " to " + celsius(upper);
    }

    private String onTheWay(OptionalDouble figure, Reason reason) {
        boolean sinks = reason.figure(Figure.RATE_K_PER_MIN).orElse(0) < 0;
        return (sinks ? "it sinks on to about " : "it goes on to about ") + celsius(figure);
    }

    private String weakBath(OptionalDouble figure, Reason reason) {
        if (figure.isEmpty()) return "short dips hardly move it";
        OptionalDouble bath = reason.figure(Figure.BATH_C);
        return "dips gave only " + units.difference(figure.getAsDouble())
                + (bath.isPresent() ? "; bath " + celsius(bath) : "");
    }

    private String beforeItThickens(Reason reason) {
        OptionalDouble celsius = reason.figure(Figure.CHOCOLATE_C);
        OptionalDouble rate = reason.figure(Figure.RATE_K_PER_MIN);
        if (celsius.isEmpty() || rate.isEmpty()) return "before it thickens";
        return "before it thickens: " + celsius(celsius) + ", "
                + ReasonWords.rate(rate.getAsDouble(), units).replace(" a minute", "/min");
    }

    private String fellShort(Reason reason) {
        OptionalDouble celsius = reason.figure(Figure.CHOCOLATE_C);
        OptionalDouble aim = reason.figure(Figure.AIM_C);
        if (celsius.isEmpty() || aim.isEmpty()) return "it fell short";
        double missing = aim.getAsDouble() - celsius.getAsDouble();
        // The next dip may be asked for before this one's peak, where even all that is under way will not do.
        boolean rises = reason.figure(Figure.RATE_K_PER_MIN).orElse(0) >= RISES_KELVIN_PER_MINUTE;
        return (rises ? "it is " : "it turned ")
                + units.difference(Math.abs(missing))
                + (missing < 0 ? " above " : " short of ")
                + celsius(aim);
    }

    private String celsius(OptionalDouble figure) {
        return figure.isPresent() ? units.withUnit(figure.getAsDouble()) : "–";
    }

    private static String seconds(OptionalDouble figure) {
        return Spans.about(figure.orElse(0));
    }
}
