package fifthform.monitor.looks;

import fifthform.monitor.texts.LooksText;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * When bars are to be looked at, counted from the end of the batch.
 *
 * <p>Bloom of under-tempered bars begins within 24 h and has levelled out at 96 h: Afoakwa et al. 2009, J Food Eng
 * 91:571-581 (abstract, read). Two days, a week and four weeks: common practice, no source.
 */
public enum LookTime {
    DAY(24, 18, LooksText.LOOK_FOR_AFTER_A_DAY),
    TWO_DAYS(48, 36, LooksText.LOOK_FOR_AFTER_TWO_DAYS),
    WEEK(7 * 24, 6 * 24, LooksText.LOOK_FOR_AFTER_A_WEEK),
    FOUR_WEEKS(28 * 24, 24 * 24, LooksText.LOOK_FOR_AFTER_FOUR_WEEKS);

    private final int hours;
    private final int hadFromHours;
    private final LooksText lookFor;

    LookTime(int hours, int hadFromHours, LooksText lookFor) {
        this.hours = hours;
        this.hadFromHours = hadFromHours;
        this.lookFor = lookFor;
    }

    /** Age of the bars, h. */
    public int hours() {
        return hours;
    }

    /** A look from this age on counts as this one, h. Own choice. */
    public int hadFromHours() {
        return hadFromHours;
    }

    /** What to look for. */
    public String lookFor() {
        return lookFor.say();
    }

    /** How old the bars are then, in words. */
    public String age() {
        return switch (this) {
            case DAY -> LooksText.A_DAY.say();
            case TWO_DAYS -> LooksText.TWO_DAYS.say();
            case WEEK -> LooksText.A_WEEK.say();
            case FOUR_WEEKS -> LooksText.FOUR_WEEKS.say();
        };
    }

    /** When that is. */
    public Instant after(Instant ended) {
        return ended.plus(Duration.ofHours(hours));
    }

    /** The one that comes next at bars of this age; empty after the last. */
    public static Optional<LookTime> next(double ageHours) {
        return Stream.of(values()).filter(t -> ageHours < t.hadFromHours).findFirst();
    }

    /** The latest one whose time has come; empty before the first. */
    public static Optional<LookTime> reached(double ageHours) {
        return Stream.of(values()).filter(t -> ageHours >= t.hours).reduce((first, second) -> second);
    }
}
