package fifthform.monitor.looks;

import fifthform.curves.learning.BarLook;
import fifthform.curves.learning.BarLook.Sureness;
import fifthform.curves.learning.BarPlace;
import fifthform.curves.learning.Bloom;
import fifthform.curves.learning.Gloss;
import fifthform.curves.learning.Kept;
import fifthform.curves.learning.Release;
import fifthform.curves.learning.Sign;
import fifthform.curves.learning.Snap;
import fifthform.monitor.json.Decimal;
import fifthform.monitor.texts.LooksText;
import fifthform.monitor.texts.UnitText;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What is said of looks at the bars. */
public final class LookWords {
    private static final double DAY_HOURS = 24;

    private LookWords() {}

    /** How it is said. */
    public static String of(Bloom bloom) {
        return switch (bloom) {
            case NONE -> LooksText.NO_BLOOM.say();
            case VEIL -> LooksText.A_GREY_OR_WHITE_VEIL.say();
            case STREAKS -> LooksText.STREAKS.say();
            case BLOTCHES -> LooksText.BLOTCHES.say();
            case SUGAR -> LooksText.A_ROUGH_DRY_COAT_THAT_DOES.say();
            case OILY -> LooksText.SPOTS_OR_RINGS_OF_OIL.say();
            case FUZZY -> LooksText.SOMETHING_FUZZY_THAT_GROWS.say();
        };
    }

    /** How it is said. */
    public static String of(BarPlace place) {
        return switch (place) {
            case ALL_OVER -> LooksText.ALL_OVER.say();
            case THICK_PART -> LooksText.THE_THICK_PART.say();
            case EDGES -> LooksText.THE_EDGES.say();
            case MOULD_SIDE -> LooksText.THE_SIDE_FROM_THE_MOULD.say();
            case OPEN_SIDE -> LooksText.THE_OPEN_SIDE.say();
            case OVER_PIECES -> LooksText.OVER_NUTS_OR_PIECES.say();
            case FEW_BARS -> LooksText.ON_A_FEW_BARS_ONLY.say();
        };
    }

    /** How it is said. */
    public static String of(Snap snap) {
        return switch (snap) {
            case CLEAN -> LooksText.BREAKS_WITH_A_CLEAN_SNAP.say();
            case SOFT -> LooksText.BREAKS_SOFTLY.say();
            case BENDS -> LooksText.BENDS_BEFORE_IT_BREAKS.say();
        };
    }

    /** How it is said. */
    public static String of(Gloss gloss) {
        return switch (gloss) {
            case BRIGHT -> LooksText.BRIGHT.say();
            case SATIN -> LooksText.SATIN.say();
            case DULL -> LooksText.DULL.say();
        };
    }

    /** How it is said. */
    public static String of(Release release) {
        return switch (release) {
            case BY_ITSELF -> LooksText.CAME_OUT_BY_ITSELF.say();
            case TAPPED -> LooksText.CAME_OUT_WITH_A_TAP.say();
            case SOME_STUCK -> LooksText.SOME_STUCK.say();
            case STUCK -> LooksText.STUCK.say();
        };
    }

    /** How it is said. */
    public static String of(Kept kept) {
        return switch (kept) {
            case COOL -> LooksText.KEPT_COOL_15_TO_20_C.say();
            case FRIDGE -> LooksText.KEPT_IN_THE_FRIDGE.say();
            case WARM -> LooksText.KEPT_WARM_ABOVE_24_C_FOR.say();
            case SWINGS -> LooksText.KEPT_WARM_AND_COOL_BY_TURNS.say();
        };
    }

    /** An age as people say it: {@code 6 h}, {@code 2.5 days}. */
    public static String age(double hours) {
        if (hours < 1) return UnitText.MINUTES.say(Math.round(60 * hours));
        if (hours < 2 * DAY_HOURS) return LooksText.HOURS.say(Decimal.of(hours, hours < 10 ? 1 : 0));
        return LooksText.DAYS.say(Decimal.of(hours / DAY_HOURS, hours < 10 * DAY_HOURS ? 1 : 0));
    }

    /** What was seen, on one line. */
    public static String seen(BarLook look) {
        List<String> parts = new ArrayList<>();
        if (!look.bloom().isEmpty()) {
            String where = look.places().stream().map(LookWords::of).collect(Collectors.joining(", "));
            parts.add(look.bloom().stream().map(LookWords::of).collect(Collectors.joining(", "))
                    + (where.isEmpty() ? "" : " (" + where + ")"));
        }
        look.snap().map(LookWords::of).ifPresent(parts::add);
        look.gloss().map(LookWords::of).ifPresent(parts::add);
        look.release().map(LookWords::of).ifPresent(parts::add);
        look.kept().map(LookWords::of).ifPresent(parts::add);
        if (look.sureness() == Sureness.UNSURE) parts.add(LooksText.NOT_SURE_OF_IT.say());
        return String.join("; ", parts);
    }

    /** A kept look, on one line. */
    public static String line(KeptLook kept) {
        String photos = kept.photos().isEmpty() ? "" : LooksText.PHOTOS.say(String.join(", ", kept.photos()));
        String note = kept.note().map(n -> "; \"" + n + "\"").orElse("");
        return plain(LooksText.LOOK_AFTER_THE_BATCH.say(
                kept.number(), age(kept.look().ageHours()), seen(kept.look()), photos, note));
    }

    /** What the look counts as. */
    public static String sign(BarLook look) {
        return switch (look.sign()) {
            case CLEAN ->
                look.ageHours() < LookTime.DAY.hadFromHours()
                        ? LooksText.FINE_SO_FAR.say()
                        : LooksText.IT_COUNTS_AS_FINE.say();
            case LOST_TEMPER -> LooksText.IT_COUNTS_AS_MARKS_OF_LOST.say();
            case OTHER_BLOOM -> LooksText.THIS_HAS_ANOTHER_CAUSE_THAN.say();
            case THICK_PART_ONLY -> LooksText.IN_THE_THICK_PART_ONLY_IT.say();
            case FEW_BARS_ONLY -> LooksText.ON_A_FEW_BARS_ONLY_IT.say();
            case STORAGE -> LooksText.BARS_THAT_WERE_KEPT_WARM_BLOOM.say();
            case FUZZY -> LooksText.THIS_IS_NO_BLOOM.say();
            case UNCLEAR -> LooksText.ONE_WEAK_SIGN_OR_TOO_LITTLE.say();
        };
    }

    /** What to do with these bars now, where anything. */
    public static Optional<String> toDo(Sign sign) {
        return switch (sign) {
            case FUZZY -> Optional.of(LooksText.THROW_THE_WHOLE_BATCH_AWAY_AND.say());
            case LOST_TEMPER, THICK_PART_ONLY, FEW_BARS_ONLY, STORAGE ->
                Optional.of(LooksText.THESE_BARS_CAN_BE_MELTED_AND.say());
            case CLEAN, OTHER_BLOOM, UNCLEAR -> Optional.empty();
        };
    }

    /** When the next look is due; empty once four weeks have passed. */
    public static Optional<String> next(double ageHours) {
        return LookTime.next(ageHours).map(time -> switch (time) {
            case DAY -> LooksText.TOO_EARLY_TO_SAY_MUCH_LOOK.say();
            case TWO_DAYS -> LooksText.LOOK_AGAIN_AFTER_2_DAYS_7.say();
            case WEEK -> LooksText.LOOK_AGAIN_AFTER_7_DAYS_AND.say();
            case FOUR_WEEKS -> LooksText.LOOK_AGAIN_AFTER_4_WEEKS_WHAT.say();
        });
    }

    /** What people wrote must not command the terminal. */
    public static String plain(String text) {
        return text.codePoints()
                .map(c -> Character.isISOControl(c) ? '?' : c)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }
}
