package fifthform.curves.learning;

import java.util.List;
import java.util.Locale;

/**
 * What a look says of the temper. Lost temper has several signs, and every one of them has other causes too; where another
 * cause is as likely, the look counts for neither side.
 *
 * <p>The rules follow this project's table of faults, most of it common practice, no source; bloom within 24 h on
 * under-tempered bars: Afoakwa et al. 2009, J Food Eng 91:571-581 (abstract).
 */
public enum Sign {
    /** No bloom, and nothing else that is amiss. */
    CLEAN,
    /** Marks of lost temper. */
    LOST_TEMPER,
    /** Of another kind: sugar drawn out by water, or oil out of pieces. */
    OTHER_BLOOM,
    /** In the thick part only: heat of setting that could not get away. */
    THICK_PART_ONLY,
    /** On some bars only: the whole bowl had the same heat. */
    FEW_BARS_ONLY,
    /** Late, on bars that were kept warm. */
    STORAGE,
    /** Something grows on them. */
    FUZZY,
    /** It says too little, or one weak sign only. */
    UNCLEAR;

    /** Temper that was lost shows within days; later marks on bars kept warm may be the store's. Own choice. */
    private static final double STORAGE_FROM_HOURS = 48;

    /** A bar may still be setting. Own choice. */
    private static final double SET_AFTER_HOURS = 12;

    static Sign of(BarLook look) {
        List<Bloom> bloom = look.bloom();
        if (bloom.contains(Bloom.FUZZY)) return FUZZY;
        boolean pattern = bloom.contains(Bloom.VEIL) || bloom.contains(Bloom.STREAKS) || bloom.contains(Bloom.BLOTCHES);
        if (pattern) return ofPattern(look);
        if (bloom.contains(Bloom.SUGAR) || bloom.contains(Bloom.OILY)) return OTHER_BLOOM;
        boolean set = look.ageHours() >= SET_AFTER_HOURS;
        boolean bends = look.snap().filter(s -> s == Snap.BENDS).isPresent();
        int weak = weakSigns(look);
        if (set && (bends || weak >= 2)) return LOST_TEMPER;
        return bloom.isEmpty() || bends || weak > 0 ? UNCLEAR : CLEAN;
    }

    private static Sign ofPattern(BarLook look) {
        boolean warm =
                look.kept().filter(k -> k == Kept.WARM || k == Kept.SWINGS).isPresent();
        if (warm && look.ageHours() > STORAGE_FROM_HOURS) return STORAGE;
        if (onlyAt(look, BarPlace.THICK_PART)) return THICK_PART_ONLY;
        if (onlyAt(look, BarPlace.OVER_PIECES)) return OTHER_BLOOM;
        return onlyAt(look, BarPlace.FEW_BARS) ? FEW_BARS_ONLY : LOST_TEMPER;
    }

    private static boolean onlyAt(BarLook look, BarPlace place) {
        return !look.places().isEmpty() && look.places().stream().allMatch(place::equals);
    }

    private static int weakSigns(BarLook look) {
        int signs = 0;
        if (look.gloss().filter(Gloss.DULL::equals).isPresent()) signs++;
        if (look.snap().filter(Snap.SOFT::equals).isPresent()) signs++;
        if (look.release().filter(Release.STUCK::equals).isPresent()) signs++;
        return signs;
    }

    /** The word in files. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
