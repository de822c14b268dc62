package fifthform.monitor.model;

import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.recipe.CelsiusRange;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.whatif.Answer;
import fifthform.curves.whatif.Answer.Refused;
import fifthform.curves.whatif.Answer.Simulated;
import fifthform.curves.whatif.Change;
import fifthform.curves.whatif.Change.BathShifted;
import fifthform.curves.whatif.Change.LiftMoved;
import fifthform.curves.whatif.PastLift;
import fifthform.monitor.settings.Units;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/** The answer to a what-if in words, always marked as simulated. */
public final class WhatIfWords {
    /** What every place that shows such a curve must say beside it. */
    public static final String MARK = "simulated";

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);

    private final Units units;
    private final ZoneId zone;
    private final Recipe recipe;

    public WhatIfWords(Units units, ZoneId zone, Recipe recipe) {
        this.units = Objects.requireNonNull(units, "units");
        this.zone = Objects.requireNonNull(zone, "zone");
        this.recipe = Objects.requireNonNull(recipe, "recipe");
    }

    /** Everything about the answer, a line each. */
    public List<String> lines(Answer answer) {
        return answer.fold(new Answer.Cases<>() {
            @Override
            public List<String> simulated(Simulated simulated) {
                return WhatIfWords.this.lines(simulated);
            }

            @Override
            public List<String> refused(Refused refused) {
                return List.of("No what-if: " + why(refused));
            }
        });
    }

    private List<String> lines(Simulated s) {
        List<String> lines = new ArrayList<>();
        lines.add("What if, " + MARK + ": " + change(s.change()) + " (" + lift(s.lift()) + ").");
        lines.add(turn(s));
        range(s).ifPresent(lines::add);
        s.seed()
                .ifPresent(word -> lines.add("Crystals at " + clock(s.until()) + ": " + word.word()
                        + s.measuredSeed()
                                .map(was -> was == word ? ", as it was" : "; as it was: " + was.word())
                                .orElse("")
                        + "; " + CrystalModel.LIMITS + "."));
        lines.add("Followed to " + clock(s.until()) + ": " + end(s) + ". The fitted kitchen leaves "
                + Units.format("%.2f", units.shownDifference(s.fit().residualKelvin())) + " " + units.symbol()
                + " of your readings over; its water had " + units.plain(s.fit().bathCelsius()) + " " + units.symbol()
                + ". Nothing of this was measured.");
        return lines;
    }

    /** The question in a few words, for example {@code lifted 10 s earlier}. */
    public String change(Change change) {
        return change.fold(new Change.Cases<>() {
            @Override
            public String liftMoved(LiftMoved moved) {
                double later = moved.laterSeconds();
                return "lifted " + Units.format("%.0f", Math.abs(later)) + " s " + (later < 0 ? "earlier" : "later");
            }

            @Override
            public String bathShifted(BathShifted shifted) {
                double hotter = shifted.hotterKelvin();
                return "the water " + units.difference(Math.abs(hotter)) + " " + (hotter < 0 ? "cooler" : "hotter")
                        + ", lifted when it was";
            }
        });
    }

    private String lift(PastLift lift) {
        String from = lift.from() == Place.COLD_WATER ? "cold water" : "the bath";
        return "lift " + lift.number() + ", off " + from + " at " + clock(lift.at()) + " and "
                + units.withUnit(lift.celsius());
    }

    private String turn(Simulated s) {
        Answer.Moment turn = s.turn();
        String measured = s.measuredTurnCelsius().isPresent()
                ? "; measured was " + units.withUnit(s.measuredTurnCelsius().getAsDouble())
                : "";
        String how = s.lift().from() == Place.COLD_WATER ? "coldest" : "hottest";
        return "The " + how + " after it: " + units.withUnit(turn.celsius()) + " at " + clock(turn.at())
                + ", nine times in ten between " + units.oneDecimal(turn.lowerCelsius()) + " and "
                + units.withUnit(turn.upperCelsius()) + measured + ".";
    }

    private Optional<String> range(Simulated s) {
        CelsiusRange work = recipe.work().range();
        String name = "Working range " + units.plain(work.lowCelsius()) + " to " + units.plain(work.highCelsius()) + " "
                + units.symbol() + ": ";
        return switch (s.range()) {
            case KEPT -> Optional.of(name + "kept.");
            case PASSED -> Optional.of(name + "passed.");
            case NOT_REACHED -> Optional.of(name + "not reached.");
            case UNSURE -> Optional.of(name + "it cannot be told; an end of the band lies outside.");
            case NOT_MEANT -> Optional.empty();
        };
    }

    private static String end(Simulated s) {
        return switch (s.end()) {
            case NEXT_ACT ->
                "there came your next act with the bowl or the probe, which would hardly have come the same way";
            case TEN_MINUTES -> "ten minutes, no guess reaches further";
            case RECORDING_ENDS -> "the readings end there";
        };
    }

    /** Why there is no answer, and what to do. */
    public String why(Refused refused) {
        double figure = refused.figure().orElse(Double.NaN);
        return switch (refused.why()) {
            case NO_LIFT -> "no lift off any water was told by key or seen in this session.";
            case NO_SUCH_LIFT ->
                "there is no lift " + refused.change().lift() + "; this session has " + Units.format("%.0f", figure)
                        + ".";
            case TOO_FAR ->
                "the bowl was not in the water for so long. It can be lifted at most " + Units.format("%.0f", figure)
                        + " s earlier.";
            case PROBE_NOT_IN_CHOCOLATE ->
                "there is a gap of " + Units.format("%.0f", figure)
                        + " s in the readings around this lift: the probe was out, faulty or in doubt.";
            case TOO_FEW_READINGS ->
                "too few readings around this lift show how the bowl answers. Choose another lift.";
            case NO_GOOD_FIT ->
                "no kitchen that we know follows these readings"
                        + (Double.isNaN(figure)
                                ? "."
                                : ": " + Units.format("%.2f", units.shownDifference(figure)) + " " + units.symbol()
                                        + " are left over.")
                        + " Something else happened around this lift.";
        };
    }

    private String clock(Instant at) {
        return CLOCK.format(at.atZone(zone));
    }
}
