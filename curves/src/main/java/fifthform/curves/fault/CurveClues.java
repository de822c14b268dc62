package fifthform.curves.fault;

import fifthform.curves.recipe.Phase;
import fifthform.curves.review.Cause;
import fifthform.curves.review.Cause.Kind;
import fifthform.curves.review.PhaseSpan;
import fifthform.curves.review.Tally;
import java.time.Duration;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** What a batch's own curve says; a curve that never came to the working range says nothing of bars. */
public final class CurveClues {
    private static final Set<Kind> COOL = EnumSet.of(Kind.COOLED_TOO_LITTLE, Kind.HELD_TOO_SHORT);
    /** Above the warning temperature: a late lift that only passed the working range costs no crystals. */
    private static final Set<Kind> HEAT = EnumSet.of(Kind.OVERSHOT, Kind.SEED_LOST);

    private static final Set<Kind> THICK = EnumSet.of(Kind.COOLED_TOO_DEEP, Kind.COOLED_TOO_LONG, Kind.WORKED_TOO_COOL);
    private static final Set<Kind> MILD = EnumSet.of(Kind.MELTED_TOO_COOL, Kind.MELTED_TOO_SHORT);
    private static final Set<Kind> UNSEEN =
            EnumSet.of(Kind.PROBE_OUT, Kind.PROBE_FAULTY, Kind.READINGS_DOUBTFUL, Kind.READINGS_MISSING);

    /** Longer than this in the working range it thickens: 30 to 40 min, common practice, no source. */
    private static final Duration LONG_WORK = Duration.ofMinutes(40);

    private CurveClues() {}

    /** The kinds of finding in the curve that a clue rests on. */
    public static Set<Kind> kinds(Clue clue) {
        return switch (clue) {
            case COOL_SHORT -> EnumSet.copyOf(COOL);
            case HEAT -> EnumSet.copyOf(HEAT);
            case SEED_GONE -> EnumSet.of(Kind.SEED_LOST);
            case THICKENED -> EnumSet.copyOf(THICK);
            case STILL -> EnumSet.of(Kind.NOT_STIRRED);
            case MILD_MELT -> EnumSet.copyOf(MILD);
            case HOT_MELT -> EnumSet.of(Kind.MELTED_TOO_HOT);
            case UNSEEN -> EnumSet.copyOf(UNSEEN);
            default -> EnumSet.noneOf(Kind.class);
        };
    }

    /** These clues and those of the curve. */
    public static Clues with(Clues clues, List<Cause> faults, Tally tally) {
        Clues here = clues;
        for (Clue clue : Clue.values()) {
            Set<Kind> kinds = kinds(clue);
            if (!kinds.isEmpty()) here = here.with(clue, faults.stream().anyMatch(f -> kinds.contains(f.kind())));
        }
        boolean thick = tally.crystals().filter(w -> w.contains("thick")).isPresent();
        if (thick) here = here.with(Clue.THICKENED, true);
        if (tally.crystals().isPresent()) {
            String word = tally.crystals().get();
            here = here.with(Clue.WORD_FEW, word.startsWith("too few"));
            here = here.with(Clue.WORD_ENOUGH, word.startsWith("enough"));
        }
        return here.with(Clue.LONG_WORK, worked(tally).compareTo(LONG_WORK) > 0);
    }

    private static Duration worked(Tally tally) {
        Duration sum = Duration.ZERO;
        for (PhaseSpan span : tally.spans())
            if (span.phase() == Phase.WORK) sum = sum.plus(Duration.between(span.from(), span.to()));
        return sum;
    }
}
