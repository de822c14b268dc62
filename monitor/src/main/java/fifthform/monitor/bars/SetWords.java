package fifthform.monitor.bars;

import fifthform.curves.setting.Condensation;
import fifthform.curves.setting.CoolingPlace;
import fifthform.curves.setting.SetEvent;
import fifthform.curves.setting.SetPlan;
import fifthform.monitor.model.Spans;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.BarsText;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** What is said of bars that set. */
public final class SetWords {
    private final Units units;

    public SetWords(Units units) {
        this.units = Objects.requireNonNull(units, "units");
    }

    /** What to do, before the moulds go in. */
    public List<String> plan(SetPlan plan) {
        List<String> lines = new ArrayList<>();
        lines.add(
                switch (plan.place()) {
                    case ROOM -> BarsText.IN_THE_ROOM_18_TO_20.say(source(BarsText.COMMON_PRACTICE_NO_SOURCE.say()));
                    case COOL -> BarsText.IN_A_COOL_PLACE_12_TO.say(source(BarsText.SUPPLIERS_PAGE_READ_2_H_OR.say()));
                    case FRIDGE -> BarsText.IN_THE_FRIDGE_8_TO_12.say(source(BarsText.COMMON_PRACTICE_NO_SOURCE.say()));
                });
        if (!plan.place().range().contains(plan.placeCelsius())) {
            lines.add(BarsText.IT_IS_THERE_WHICH_IS_THAN.say(
                    units.withUnit(plan.placeCelsius()),
                    plan.placeCelsius() > plan.place().range().highCelsius()
                            ? BarsText.WARMER.say()
                            : BarsText.COLDER.say()));
        }
        lines.add(plan.toSet()
                .map(t -> BarsText.BY_HEAT_ALONE_BARS_OF_MM.say(
                        Units.format("%.0f", plan.millimetres()),
                        Spans.words(rounded(t)),
                        Spans.words(rounded(plan.look())),
                        Spans.words(rounded(plan.longest()))))
                .orElse(BarsText.AT_THEY_DO_NOT_SET_THE.say(units.withUnit(plan.placeCelsius()))));
        lines.add(BarsText.THEY_ARE_READY_WHEN_THEY_PULL.say());
        lines.add(plan.air().map(a -> out(plan, a)).orElse(BarsText.SAY_ROOM_AND_HUMIDITY_AND_THE.say()));
        return lines;
    }

    private String out(SetPlan plan, Condensation air) {
        String dew = BarsText.THE_DEW_POINT_OF_YOUR_ROOM.say(units.withUnit(air.dewCelsius()));
        if (!air.wets(plan.placeCelsius())) {
            return BarsText.AT_NO_WATER_COMES_ONTO_THEM.say(dew, units.withUnit(plan.placeCelsius()));
        }
        return BarsText.BELOW_WATER_COMES_ONTO_BARS.say(
                dew, units.withUnit(air.safeCelsius()), closed(air.closedFor(plan.placeCelsius(), plan.millimetres())));
    }

    private String closed(Optional<Duration> time) {
        return time.map(t -> BarsText.TAKE_THEM_OUT_IN_A_CLOSED.say(Spans.words(rounded(t))))
                .orElse(BarsText.IN_THIS_AIR_THEY_MAY_NEVER.say());
    }

    private static Duration rounded(Duration time) {
        return Duration.ofMinutes(Math.max(1, Math.round(time.toSeconds() / 60.0)));
    }

    private static String source(String what) {
        return "(" + what + ").";
    }

    /** One event. */
    public String of(SetEvent event, SetPlan plan) {
        String celsius =
                event.celsius().isPresent() ? units.withUnit(event.celsius().getAsDouble()) : "";
        return switch (event.kind()) {
            case BEGUN -> BarsText.THEY_ARE_IN_NOTHING_TO_DO.say();
            case TOO_WARM -> BarsText.IT_HAS_BEEN_ABOVE_24_C.say(celsius);
            case TOO_COLD -> BarsText.IT_IS_IN_THE_FIRST_TEN.say(celsius);
            case TOO_FAST -> BarsText.IT_FALLS_FASTER_THAN_3_C.say();
            case LOOK -> BarsText.LOOK_NOW_AFTER_DO_THEY_PULL.say(minutes(event));
            case COME_OUT ->
                plan.place() == CoolingPlace.FRIDGE
                        ? BarsText.LONG_ENOUGH_FOR_A_FRIDGE_TAKE.say(minutes(event))
                        : BarsText.LONG_ENOUGH_LONGER_DOES_NO.say(minutes(event));
            case PULLS_AWAY -> BarsText.THEY_PULL_AWAY_TAKE_THEM_OUT.say();
            case KEEP_CLOSED ->
                BarsText.THEY_COME_OUT_AT_AND_WATER.say(
                        celsius,
                        units.withUnit(event.limitCelsius().orElse(Double.NaN)),
                        event.time()
                                .map(t -> BarsText.ABOUT.say(Spans.words(rounded(t))))
                                .orElse(BarsText.THIS_AIR_IS_TOO_DAMP_TO.say()));
            case MAYBE_WET -> BarsText.THEY_COME_OUT_AT_THE_HUMIDITY.say(celsius);
            case MAY_OPEN -> BarsText.THEY_MAY_BE_OPENED_NO_WATER.say();
            case SILENT -> BarsText.NO_READING_FOR_A_MINUTE_LOOK.say();
            case READS_AGAIN -> BarsText.IT_READS_AGAIN.say(celsius);
        };
    }

    private static String minutes(SetEvent event) {
        return event.time().map(t -> Spans.words(rounded(t))).orElse(BarsText.A_WHILE.say());
    }
}
