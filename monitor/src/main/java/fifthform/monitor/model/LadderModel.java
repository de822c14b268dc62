package fifthform.monitor.model;

import fifthform.curves.alarm.AlarmConditions;
import fifthform.curves.engine.State;
import fifthform.curves.estimate.Estimate;
import fifthform.curves.forecast.Outlook;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.recipe.CelsiusRange;
import fifthform.curves.recipe.Phase;
import fifthform.curves.recipe.Recipe;
import fifthform.monitor.model.WatchPicture.Ladder;
import fifthform.monitor.model.WatchPicture.Limit;
import fifthform.monitor.model.WatchPicture.Limit.Weight;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.WatchText;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The ladder: limits of the phase, to scale, with how far away they are in degrees and time. */
final class LadderModel {
    private final Recipe recipe;
    private final State state;
    private final Units units;
    private final Phrases phrases;

    LadderModel(Recipe recipe, State state, Units units, Phrases phrases) {
        this.recipe = recipe;
        this.state = state;
        this.units = units;
        this.phrases = phrases;
    }

    Ladder ladder() {
        CelsiusRange band = band(recipe, state);
        CelsiusRange scale = scale();
        Optional<Outlook> turn = Ahead.turn(state);
        return new Ladder(
                units.shown(scale.lowCelsius()),
                units.shown(scale.highCelsius()),
                step(units.shownDifference(scale.widthKelvin())),
                units.shown(band.lowCelsius()),
                units.shown(band.highCelsius()),
                bandName(),
                phrases.bareRange(band),
                limits(scale),
                shown(state.estimate().map(Estimate::chocolateCelsius)),
                shown(turn.map(Outlook::celsius)),
                shown(turn.map(Outlook::lowerCelsius)),
                shown(turn.map(Outlook::upperCelsius)));
    }

    /** The range that is aimed for. */
    static CelsiusRange band(Recipe recipe, State state) {
        return switch (Ahead.aimedFor(state)) {
            case MELT -> recipe.melt().range();
            case COOL, SEED -> recipe.cool().range();
            case REWARM, WORK, REST -> recipe.work().range();
        };
    }

    private String bandName() {
        return switch (phase()) {
            case MELT -> WatchText.MELTED.say();
            case COOL, SEED -> WatchText.COOL.say();
            case REWARM, WORK, REST -> WatchText.WORKING.say();
        };
    }

    /**
     * Each phase has its own scale; it does not follow the reading, or nothing could be compared by eye. It reaches a degree
     * past the limits and more: what has gone past one is still seen against it.
     */
    private CelsiusRange scale() {
        double limit = recipe.meltOut().limitCelsius();
        double workLow = recipe.work().range().lowCelsius();
        double coolLow = recipe.cool().range().lowCelsius();
        return switch (phase()) {
            case MELT -> new CelsiusRange(Math.floor(workLow) - 1, Math.ceil(recipe.scorchCelsius()) + 2);
            case COOL ->
                celsius() > workLow + 3
                        ? new CelsiusRange(
                                Math.floor(coolLow) - 3,
                                Math.ceil(recipe.melt().range().highCelsius()))
                        : new CelsiusRange(Math.floor(coolLow) - 2, Math.ceil(limit));
            case SEED -> new CelsiusRange(Math.floor(coolLow) - 2, Math.floor(workLow));
            case REWARM -> new CelsiusRange(Math.floor(coolLow) - 1.5, Math.ceil(limit) + 1);
            case WORK, REST -> new CelsiusRange(Math.floor(workLow) - 2, Math.ceil(limit) + 1);
        };
    }

    private List<Limit> limits(CelsiusRange scale) {
        List<Limit> limits = new ArrayList<>();
        switch (phase()) {
            case MELT -> add(limits, scale, recipe.scorchCelsius(), WatchText.TOO_HOT.say(), Weight.STRONG);
            case COOL, SEED -> {
                add(limits, scale, recipe.meltOut().limitCelsius(), WatchText.MELT_OUT.say(), Weight.THIN);
                double tooCold = recipe.cool().range().lowCelsius() - AlarmConditions.OVER_COOLED_KELVIN;
                add(limits, scale, tooCold, WatchText.TOO_COLD.say(), Weight.STRONG);
            }
            case REWARM, WORK, REST -> {
                add(limits, scale, recipe.meltOut().limitCelsius(), WatchText.MELT_OUT.say(), Weight.STRONG);
                add(limits, scale, recipe.meltOut().guardCelsius(), WatchText.GUARD.say(), Weight.THIN);
            }
        }
        return limits;
    }

    private void add(List<Limit> limits, CelsiusRange scale, double atCelsius, String name, Weight weight) {
        if (scale.contains(atCelsius)) limits.add(new Limit(units.shown(atCelsius), name, wayTo(atCelsius), weight));
    }

    /**
     * Degrees left, and the time at the present rate where it leads there. It stands beside a limit's name, so a bare
     * figure would be read as where the limit lies. Melt-out threatens on the way up only: down it is to be passed.
     */
    private String wayTo(double limitCelsius) {
        if (state.forecast().isEmpty()) return WatchText.AT.say(units.withUnit(limitCelsius));
        Estimate e = state.estimate().orElseThrow();
        double way = limitCelsius - e.chocolateCelsius();
        boolean threatensBelow = limitCelsius < recipe.work().range().lowCelsius();
        boolean cooling = phase() == Phase.COOL || phase() == Phase.SEED;
        boolean passed = threatensBelow ? way > 0 : way < 0 && !cooling;
        String degrees = units.difference(Math.abs(way)) + (passed ? WatchText.PAST_IT.say() : WatchText.AWAY.say());
        double rate = e.rateKelvinPerMinute();
        boolean drifts = state.batch().place() != Place.TABLE;
        boolean threatens = threatensBelow == way < 0 && !passed;
        boolean leads = drifts
                && Ahead.isSettled(state)
                && threatens
                && Math.abs(rate) > 0.1
                && way / rate > 0
                && way / rate < 30;
        return leads ? degrees + " · " + Spans.about(60 * way / rate) : degrees;
    }

    private double celsius() {
        return state.estimate().map(Estimate::chocolateCelsius).orElse(0.0);
    }

    private OptionalDouble shown(Optional<Double> celsius) {
        return celsius.map(c -> OptionalDouble.of(units.shown(c))).orElse(OptionalDouble.empty());
    }

    private static double step(double width) {
        for (double step : new double[] {0.5, 1, 2, 5, 10, 20}) if (width / step <= 8) return step;
        return 50;
    }

    private Phase phase() {
        return Ahead.aimedFor(state);
    }
}
