package fifthform.monitor.model;

import fifthform.curves.alarm.AlarmState.Acknowledged;
import fifthform.curves.alarm.AlarmState.Unacknowledged;
import fifthform.curves.alarm.AlarmTable;
import fifthform.curves.alarm.Ending;
import fifthform.curves.alarm.Standing;
import fifthform.curves.crystal.Overshoot;
import fifthform.curves.engine.State;
import fifthform.curves.estimate.Estimate;
import fifthform.curves.input.AlarmId;
import fifthform.curves.recipe.Recipe;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.CueText;
import fifthform.monitor.texts.WhyText;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A melt-out that is no longer hot, and not decided about: its alarm stands until the maker chooses, but it tells what was,
 * and what ends it, and no longer to cool at once what is cool.
 */
final class MeltedOut {
    private final State state;
    private final Recipe recipe;
    private final Units units;
    private final KeyMap keys;

    private MeltedOut(State state, Recipe recipe, Units units, KeyMap keys) {
        this.state = state;
        this.recipe = recipe;
        this.units = units;
        this.keys = keys;
    }

    /** Empty where this alarm is another one, or its condition still holds. */
    static Optional<MeltedOut> of(AlarmId id, State state, Recipe recipe, Phrases phrases, Units units) {
        boolean over = AlarmTable.of(id).ending() == Ending.BY_CHOICE
                && overSince(state.alarms().of(id)).isPresent();
        return over ? Optional.of(new MeltedOut(state, recipe, units, phrases.keys())) : Optional.empty();
    }

    private static Optional<Instant> overSince(Standing standing) {
        if (standing.state() instanceof Unacknowledged alarm) return alarm.overSince();
        if (standing.state() instanceof Acknowledged alarm) return alarm.overSince();
        return Optional.empty();
    }

    String headline() {
        return CueText.MELTED_OUT_COOL_AGAIN_SEED_OR.say();
    }

    /** How hot it was, for the strip. */
    String peak() {
        OptionalDouble peak = peakCelsius();
        return peak.isPresent()
                ? CueText.IT_PEAKED_AT.say(units.withUnit(peak.getAsDouble()))
                : CueText.IT_WAS_PAST.say(units.withUnit(recipe.meltOut().limitCelsius()));
    }

    /** How hot it was, and which keys decide. */
    String detail() {
        return peak() + "; " + keys.fill(CueText.COOLS_AGAIN_PROVED.say());
    }

    List<String> why() {
        List<String> said = new ArrayList<>();
        OptionalDouble peak = peakCelsius();
        said.add(WhyText.IT_WAS_PAST_MELT_OUT.say(
                units.withUnit(recipe.meltOut().limitCelsius()),
                peak.isPresent() ? WhyText.AND_PEAKED_AT.say(units.withUnit(peak.getAsDouble())) : ""));
        state.estimate()
                .filter(Estimate::isUsable)
                .ifPresent(now -> said.add(WhyText.NOW_IT_STANDS_AT.say(
                        units.withUnit(now.chocolateCelsius()), ReasonWords.rate(now.rateKelvinPerMinute(), units))));
        said.add(keys.fill(WhyText.THE_ALARM_ENDS_BY_A_CHOICE.say()));
        return said;
    }

    /** As the watch over the crystals saw it; the alarm itself keeps only the last moment of it. */
    private OptionalDouble peakCelsius() {
        return state.crystals()
                .flatMap(temper -> temper.watch().overshoot())
                .map(Overshoot::highestCelsius)
                .filter(highest -> highest >= recipe.meltOut().limitCelsius())
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }
}
