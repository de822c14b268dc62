package fifthform.monitor.model;

import fifthform.monitor.model.WatchPicture.Band;
import fifthform.monitor.model.WatchPicture.Direction;
import fifthform.monitor.model.WatchPicture.Ladder;
import fifthform.monitor.model.WatchPicture.Numeral;
import fifthform.monitor.model.WatchPicture.Tone;
import fifthform.monitor.model.WatchPicture.Trace;
import fifthform.monitor.texts.WatchText;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The screen's own watchdog. Should the session behind it hang, the last picture must not stand there as if it were
 * true: it is struck out, its forecast is taken away and the headline says so.
 */
final class NotUpdating {
    /** Pictures come at least each half second; six missed ones are no hiccup. Our own choice. */
    static final Duration PATIENCE = Duration.ofSeconds(3);

    private NotUpdating() {}

    static WatchPicture mark(WatchPicture picture, long ageNanos) {
        if (ageNanos < PATIENCE.toNanos()) return picture;
        long seconds = Duration.ofNanos(ageNanos).toSeconds();
        Numeral last = picture.numeral();
        return new WatchPicture(
                picture.kitchen(),
                picture.heading(),
                picture.subject(),
                picture.marks(),
                picture.clock(),
                new Band(
                        Tone.URGENT,
                        Direction.NONE,
                        WatchText.NOT_UPDATING_FOR_S.say(seconds),
                        WatchText.LIFT_THE_BOWL_USE_A_SECOND.say(),
                        true),
                new Numeral(
                        last.whole(),
                        last.hundredths(),
                        last.unit(),
                        Optional.of(WatchText.OVER_S_OLD.say(seconds)),
                        last.doubt(),
                        last.trust()),
                WatchText.NO_FORECAST_FROM_AN_OLD.say(),
                List.of(),
                withoutForecast(picture.ladder()),
                withoutForecast(picture.trace()),
                picture.tiles(),
                picture.foot(),
                picture.alarms(),
                picture.keys(),
                picture.undo(),
                picture.banner(),
                picture.notice(),
                List.of(),
                WatchPicture.Crystals.NONE,
                picture.asked());
    }

    private static Ladder withoutForecast(Ladder ladder) {
        return new Ladder(
                ladder.bottomShown(),
                ladder.topShown(),
                ladder.stepShown(),
                ladder.bandLowShown(),
                ladder.bandHighShown(),
                ladder.bandName(),
                ladder.bandDetail(),
                ladder.limits().stream()
                        .map(limit -> new WatchPicture.Limit(limit.atShown(), limit.name(), "", limit.weight()))
                        .toList(),
                ladder.nowShown(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    private static Trace withoutForecast(Trace trace) {
        return new Trace(
                trace.from(),
                trace.now(),
                trace.to(),
                trace.bottomShown(),
                trace.topShown(),
                trace.bandLowShown(),
                trace.bandHighShown(),
                trace.limitShown(),
                trace.points(),
                List.of(),
                trace.flags(),
                trace.gaps(),
                trace.crystals(),
                trace.past());
    }
}
