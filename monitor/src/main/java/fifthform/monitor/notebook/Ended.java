package fifthform.monitor.notebook;

import java.util.Locale;

/** What is said of a batch's end, worst first where several are true. */
public enum Ended {
    UNREADABLE,
    UNREAD,
    GOING_ON,
    /** Heat likely cost the temper its seed, and it was not made again. */
    SEED_LOST,
    MELT_OUT,
    OVER_RANGE,
    NOT_COOLED,
    UNFINISHED,
    IN_RANGE;

    static Ended of(BatchRow row) {
        if (row.condition() == Condition.UNREADABLE) return UNREADABLE;
        if (row.condition() == Condition.UNREAD) return UNREAD;
        if (row.condition() == Condition.GOING_ON) return GOING_ON;
        Figures figures = row.figures();
        boolean madeAgain = figures.crystals().filter("enough"::equals).isPresent();
        if (figures.seedLost() && !madeAgain) return SEED_LOST;
        return switch (figures.verdict()) {
            case IN_RANGE -> IN_RANGE;
            case OVER_RANGE -> OVER_RANGE;
            case MELT_OUT -> MELT_OUT;
            case NOT_COOLED -> NOT_COOLED;
            case UNFINISHED -> UNFINISHED;
        };
    }

    /** The word in answers and commands. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
