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
            case NONE -> "no bloom";
            case VEIL -> "a grey or white veil";
            case STREAKS -> "streaks";
            case BLOTCHES -> "blotches";
            case SUGAR -> "a rough, dry coat that does not melt under a finger";
            case OILY -> "spots or rings of oil";
            case FUZZY -> "something fuzzy that grows";
        };
    }

    /** How it is said. */
    public static String of(BarPlace place) {
        return switch (place) {
            case ALL_OVER -> "all over";
            case THICK_PART -> "the thick part";
            case EDGES -> "the edges";
            case MOULD_SIDE -> "the side from the mould";
            case OPEN_SIDE -> "the open side";
            case OVER_PIECES -> "over nuts or pieces";
            case FEW_BARS -> "on a few bars only";
        };
    }

    /** How it is said. */
    public static String of(Snap snap) {
        return switch (snap) {
            case CLEAN -> "breaks with a clean snap";
            case SOFT -> "breaks softly";
            case BENDS -> "bends before it breaks";
        };
    }

    /** How it is said. */
    public static String of(Gloss gloss) {
        return switch (gloss) {
            case BRIGHT -> "bright";
            case SATIN -> "satin";
            case DULL -> "dull";
        };
    }

    /** How it is said. */
    public static String of(Release release) {
        return switch (release) {
            case BY_ITSELF -> "came out by itself";
            case TAPPED -> "came out with a tap";
            case SOME_STUCK -> "some stuck";
            case STUCK -> "stuck";
        };
    }

    /** How it is said. */
    public static String of(Kept kept) {
        return switch (kept) {
            case COOL -> "kept cool, 15 to 20 °C";
            case FRIDGE -> "kept in the fridge";
            case WARM -> "kept warm, above 24 °C for a while";
            case SWINGS -> "kept warm and cool by turns";
        };
    }

    /** An age as people say it: {@code 6 h}, {@code 2.5 days}. */
    public static String age(double hours) {
        if (hours < 1) return Math.round(60 * hours) + " min";
        if (hours < 2 * DAY_HOURS) return Decimal.of(hours, hours < 10 ? 1 : 0) + " h";
        return Decimal.of(hours / DAY_HOURS, hours < 10 * DAY_HOURS ? 1 : 0) + " days";
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
        if (look.sureness() == Sureness.UNSURE) parts.add("not sure of it");
        return String.join("; ", parts);
    }

    /** A kept look, on one line. */
    public static String line(KeptLook kept) {
        String photos = kept.photos().isEmpty() ? "" : "; photos " + String.join(", ", kept.photos());
        String note = kept.note().map(n -> "; \"" + n + "\"").orElse("");
        return plain("look " + kept.number() + ", " + age(kept.look().ageHours()) + " after the batch: "
                + seen(kept.look()) + photos + note);
    }

    /** What the look counts as. */
    public static String sign(BarLook look) {
        return switch (look.sign()) {
            case CLEAN -> look.ageHours() < LookTime.DAY.hadFromHours() ? "Fine so far." : "It counts as fine.";
            case LOST_TEMPER -> "It counts as marks of lost temper.";
            case OTHER_BLOOM ->
                "This has another cause than temper (water or oil), so it does not count for the limits.";
            case THICK_PART_ONLY ->
                "In the thick part only, it is more likely the heat of setting, so it does not count for the limits.";
            case FEW_BARS_ONLY -> "On a few bars only, it is not the bowl's heat, so it does not count for the limits.";
            case STORAGE -> "Bars that were kept warm bloom by that alone, so it does not count for the limits.";
            case FUZZY -> "This is no bloom.";
            case UNCLEAR -> "One weak sign, or too little said: it does not count for the limits.";
        };
    }

    /** What to do with these bars now, where anything. */
    public static Optional<String> toDo(Sign sign) {
        return switch (sign) {
            case FUZZY ->
                Optional.of(
                        "Throw the whole batch away and do not taste it: what grows is no bloom. Wash and dry moulds"
                                + " and tools, and see SAFETY.md.");
            case LOST_TEMPER, THICK_PART_ONLY, FEW_BARS_ONLY, STORAGE ->
                Optional.of("These bars can be melted and tempered again. What is in them stays in them, allergens too:"
                        + " label them as before.");
            case CLEAN, OTHER_BLOOM, UNCLEAR -> Optional.empty();
        };
    }

    /** When the next look is due; empty once four weeks have passed. */
    public static Optional<String> next(double ageHours) {
        return LookTime.next(ageHours).map(time -> switch (time) {
            case DAY ->
                "Too early to say much. Look again a day after the batch, and after 2 days, 7 days and 4 weeks.";
            case TWO_DAYS -> "Look again after 2 days, 7 days and 4 weeks: some marks come late.";
            case WEEK -> "Look again after 7 days and 4 weeks: some marks come late.";
            case FOUR_WEEKS -> "Look again after 4 weeks: what the store does to bars comes late.";
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
