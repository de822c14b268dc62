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
import fifthform.monitor.texts.CauseText;
import fifthform.monitor.texts.InWords;
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
    public static final CauseText MARK = CauseText.SIMULATED;

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
                return List.of(CauseText.NO_WHAT_IF.say(why(refused)));
            }
        });
    }

    private List<String> lines(Simulated s) {
        List<String> lines = new ArrayList<>();
        lines.add(CauseText.WHAT_IF.say(MARK.say(), change(s.change()), lift(s.lift())));
        lines.add(turn(s));
        range(s).ifPresent(lines::add);
        s.seed()
                .ifPresent(word -> lines.add(CauseText.CRYSTALS_AT.say(
                        clock(s.until()),
                        InWords.of(word),
                        s.measuredSeed()
                                .map(was -> was == word
                                        ? CauseText.AS_IT_WAS.say()
                                        : CauseText.AS_IT_WAS_WITH_WAS_WORD.say(InWords.of(was)))
                                .orElse(""),
                        CrystalModel.LIMITS.say())));
        lines.add(CauseText.FOLLOWED_TO_THE_FITTED_KITCHEN.say(
                clock(s.until()),
                end(s),
                Units.format("%.2f", units.shownDifference(s.fit().residualKelvin())),
                units.symbol(),
                units.plain(s.fit().bathCelsius()),
                units.symbol()));
        return lines;
    }

    /** The question in a few words, for example {@code lifted 10 s earlier}. */
    public String change(Change change) {
        return change.fold(new Change.Cases<>() {
            @Override
            public String liftMoved(LiftMoved moved) {
                double later = moved.laterSeconds();
                return CauseText.LIFTED_S.say(
                        Units.format("%.0f", Math.abs(later)),
                        later < 0 ? CauseText.EARLIER.say() : CauseText.LATER.say());
            }

            @Override
            public String bathShifted(BathShifted shifted) {
                double hotter = shifted.hotterKelvin();
                return CauseText.THE_WATER_LIFTED_WHEN_IT_WAS.say(
                        units.difference(Math.abs(hotter)),
                        hotter < 0 ? CauseText.COOLER.say() : CauseText.HOTTER.say());
            }
        });
    }

    private String lift(PastLift lift) {
        String from = lift.from() == Place.COLD_WATER ? CauseText.COLD_WATER.say() : CauseText.THE_BATH.say();
        return CauseText.LIFT_OFF_AT_AND.say(lift.number(), from, clock(lift.at()), units.withUnit(lift.celsius()));
    }

    private String turn(Simulated s) {
        Answer.Moment turn = s.turn();
        String measured = s.measuredTurnCelsius().isPresent()
                ? CauseText.MEASURED_WAS.say(
                        units.withUnit(s.measuredTurnCelsius().getAsDouble()))
                : "";
        String how = s.lift().from() == Place.COLD_WATER ? CauseText.COLDEST.say() : CauseText.HOTTEST.say();
        return CauseText.THE_AFTER_IT_AT_NINE_TIMES.say(
                how,
                units.withUnit(turn.celsius()),
                clock(turn.at()),
                units.oneDecimal(turn.lowerCelsius()),
                units.withUnit(turn.upperCelsius()),
                measured);
    }

    private Optional<String> range(Simulated s) {
        CelsiusRange work = recipe.work().range();
        String name = CauseText.WORKING_RANGE_TO.say(
                units.plain(work.lowCelsius()), units.plain(work.highCelsius()), units.symbol());
        return switch (s.range()) {
            case KEPT -> Optional.of(CauseText.KEPT.say(name));
            case PASSED -> Optional.of(CauseText.PASSED.say(name));
            case NOT_REACHED -> Optional.of(CauseText.NOT_REACHED.say(name));
            case UNSURE -> Optional.of(CauseText.IT_CANNOT_BE_TOLD_AN_END.say(name));
            case NOT_MEANT -> Optional.empty();
        };
    }

    private static String end(Simulated s) {
        return switch (s.end()) {
            case NEXT_ACT -> CauseText.THERE_CAME_YOUR_NEXT_ACT_WITH.say();
            case TEN_MINUTES -> CauseText.TEN_MINUTES_NO_GUESS_REACHES.say();
            case RECORDING_ENDS -> CauseText.THE_READINGS_END_THERE.say();
        };
    }

    /** Why there is no answer, and what to do. */
    public String why(Refused refused) {
        double figure = refused.figure().orElse(Double.NaN);
        return switch (refused.why()) {
            case NO_LIFT -> CauseText.NO_LIFT_OFF_ANY_WATER_WAS.say();
            case NO_SUCH_LIFT ->
                CauseText.THERE_IS_NO_LIFT_THIS_SESSION.say(refused.change().lift(), Units.format("%.0f", figure));
            case TOO_FAR -> CauseText.THE_BOWL_WAS_NOT_IN_THE.say(Units.format("%.0f", figure));
            case PROBE_NOT_IN_CHOCOLATE -> CauseText.THERE_IS_A_GAP_OF_S.say(Units.format("%.0f", figure));
            case TOO_FEW_READINGS -> CauseText.TOO_FEW_READINGS_AROUND_THIS.say();
            case NO_GOOD_FIT ->
                CauseText.NO_KITCHEN_THAT_WE_KNOW.say(
                        Double.isNaN(figure)
                                ? "."
                                : CauseText.ARE_LEFT_OVER.say(
                                        Units.format("%.2f", units.shownDifference(figure)), units.symbol()));
        };
    }

    private String clock(Instant at) {
        return CLOCK.format(at.atZone(zone));
    }
}
