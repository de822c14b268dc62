package fifthform.curves.fault;

import java.util.Locale;

/** One thing that speaks for some causes and against others, where it is known. */
public enum Clue {
    /** A veil, streaks or blotches. */
    PATTERN(From.LOOK),
    /** They came only after days. */
    PATTERN_LATE(From.LOOK),
    PATTERN_THICK_PART(From.LOOK),
    PATTERN_FEW_BARS(From.LOOK),
    PATTERN_MOULD_SIDE(From.LOOK),
    PATTERN_PIECES(From.LOOK),
    SUGAR(From.LOOK),
    OILY(From.LOOK),
    SOFT(From.LOOK),
    BENDS(From.LOOK),
    DULL(From.LOOK),
    STUCK(From.LOOK),
    SOME_STUCK(From.LOOK),
    MONTHS_OLD(From.LOOK),

    COOL_SHORT(From.CURVE),
    HEAT(From.CURVE),
    SEED_GONE(From.CURVE),
    THICKENED(From.CURVE),
    STILL(From.CURVE),
    MILD_MELT(From.CURVE),
    HOT_MELT(From.CURVE),
    WORD_FEW(From.CURVE),
    WORD_ENOUGH(From.CURVE),
    LONG_WORK(From.CURVE),
    UNSEEN(From.CURVE),

    SET_WARM(From.SETTING),
    SET_SHOCK(From.SETTING),
    SET_WET(From.SETTING),
    STORE_WARM(From.STORE),

    SAID_WATER(From.MAKER),
    SAID_OLD_STOCK(From.MAKER),
    SAID_UNSTIRRED(From.MAKER),
    SAID_THICK_BOWL(From.MAKER),
    SAID_ICE_OFF(From.MAKER),
    SAID_SEED_BAD(From.MAKER),
    SAID_UNMIXED(From.MAKER),
    SAID_BURNT(From.MAKER),
    SAID_WARM_PLACE(From.MAKER),
    SAID_FREEZER(From.MAKER),
    SAID_OUT_EARLY(From.MAKER),
    SAID_MOULD_COLD(From.MAKER),
    SAID_MOULD_DIRTY(From.MAKER),
    SAID_OPENED_COLD(From.MAKER),
    SAID_STORED_WARM(From.MAKER),
    SAID_PIECES(From.MAKER);

    /** Who knows it. */
    public enum From {
        /** Looks at the bars. */
        LOOK,
        /** The batch's own curve. */
        CURVE,
        /** The log of the setting. */
        SETTING,
        /** The log of the store. */
        STORE,
        /** Only the maker: it has no thermal sign, or nobody read it. */
        MAKER
    }

    private final From from;

    Clue(From from) {
        this.from = from;
    }

    public From from() {
        return from;
    }

    /** The word in tables, files and commands. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
