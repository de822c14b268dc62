package fifthform.monitor.bars;

import fifthform.curves.fault.Clue;
import fifthform.curves.fault.CurveClues;
import fifthform.curves.fault.Diagnosis;
import fifthform.curves.fault.Fault;
import fifthform.curves.fault.FaultBook;
import fifthform.curves.fault.Suspect;
import fifthform.curves.review.Cause;
import fifthform.monitor.model.CauseWords;
import fifthform.monitor.texts.BarsText;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/** What is said of why bars came out as they did. */
public final class WhyWords {
    /** What is told at the most, and what of each. */
    private static final int SUSPECTS = 3;

    private static final int REASONS = 4;

    /** A cause less likely than this is not worth its lines. */
    private static final double WORTH_TELLING = 0.08;

    private final FaultBook book;
    private final CauseWords causes;

    public WhyWords(FaultBook book, CauseWords causes) {
        this.book = Objects.requireNonNull(book, "book");
        this.causes = Objects.requireNonNull(causes, "causes");
    }

    /** The whole answer. */
    public List<String> lines(Diagnosis diagnosis, List<Cause> faults) {
        List<String> lines = new ArrayList<>();
        lines.add(heading(diagnosis));
        if (diagnosis.word() == Diagnosis.Word.WEAK) {
            lines.add(BarsText.IF_YOU_SEE_IT_AGAIN_THINK.say(diagnosis.suspects().stream()
                    .limit(SUSPECTS)
                    .map(s -> book.of(s.fault()).name())
                    .collect(Collectors.joining("; "))));
        }
        boolean tells = diagnosis.word() == Diagnosis.Word.LIKELY || diagnosis.word() == Diagnosis.Word.OPEN;
        if (!tells) {
            if (diagnosis.word() == Diagnosis.Word.BARS_ARE_GOOD && !faults.isEmpty())
                lines.add(BarsText.THE_CURVE_WAS_NOT_IN_ORDER.say(causes.what(faults.get(0))));
            return lines;
        }
        int told = 0;
        for (Suspect suspect : diagnosis.suspects()) {
            boolean worth = told == 0 || suspect.share() >= WORTH_TELLING;
            if (!worth || told == SUSPECTS) break;
            told++;
            lines.addAll(suspect(told, suspect, faults));
        }
        lines.add(BarsText.WEIGHED_BY_RULES_AND_FIGURES.say());
        return lines;
    }

    private static String heading(Diagnosis diagnosis) {
        return switch (diagnosis.word()) {
            case NOT_LOOKED -> BarsText.NOBODY_HAS_LOOKED_AT_THESE.say();
            case BARS_ARE_GOOD -> BarsText.THESE_BARS_ARE_GOOD_AS_FAR.say();
            case WEAK -> BarsText.ONE_WEAK_SIGN_WHICH_GOOD_BARS.say();
            case NOT_FOR_EATING -> BarsText.WHAT_IS_FUZZY_ON_A_BAR.say();
            case LIKELY -> BarsText.MOST_LIKELY.say();
            case OPEN -> BarsText.OPEN_THESE_ARE_POSSIBLE_AND.say();
        };
    }

    private List<String> suspect(int place, Suspect suspect, List<Cause> faults) {
        FaultBook.Entry entry = book.of(suspect.fault());
        List<String> lines = new ArrayList<>();
        lines.add(place + ". " + capital(entry.name()) + " (" + odds(suspect.share()) + ")");
        if (!suspect.supports().isEmpty()) lines.add(BarsText.FOR_IT.say(reasons(suspect.supports(), faults)));
        if (!suspect.opposes().isEmpty()) lines.add(BarsText.AGAINST_IT.say(reasons(suspect.opposes(), faults)));
        lines.add(BarsText.NEXT_TIME.say(entry.next()));
        lines.add(BarsText.THESE_BARS.say(entry.bars()));
        caution(suspect.fault()).ifPresent(words -> lines.add("   " + words));
        return lines;
    }

    private static Optional<String> caution(Fault fault) {
        return switch (fault) {
            case WATER -> Optional.of(BarsText.STEAM_AND_HOT_WATER_SCALD_LIFT.say());
            case CONDENSATION -> Optional.of(BarsText.IF_ANYTHING_FUZZY_GROWS_ON.say());
            case COOLED_TOO_LITTLE, OVERSHOT, NOT_STIRRED, NOT_MELTED, OVER_TEMPERED, PROBE_WRONG, SEED_POOR, OIL ->
                Optional.of(BarsText.WHAT_IS_IN_THEM_STAYS_IN.say());
            default -> Optional.empty();
        };
    }

    /** In words: the figures rest on chances that nobody has counted. */
    public static String odds(double share) {
        if (share >= 0.9) return BarsText.VERY_LIKELY.say();
        if (share >= 0.6) return BarsText.LIKELY.say();
        if (share >= 0.3) return BarsText.POSSIBLE.say();
        return BarsText.LESS_LIKELY.say();
    }

    private String reasons(List<Suspect.Evidence> evidence, List<Cause> faults) {
        return evidence.stream().limit(REASONS).map(e -> reason(e, faults)).collect(Collectors.joining("; "));
    }

    /** One reason; what the curve found is told with its figures. */
    public String reason(Suspect.Evidence evidence, List<Cause> faults) {
        if (evidence.there() && evidence.clue().from() == Clue.From.CURVE) {
            for (Cause cause : faults) {
                if (CurveClues.kinds(evidence.clue()).contains(cause.kind())) return causes.line(cause);
            }
        }
        FaultBook.Words words = book.of(evidence.clue());
        return evidence.there() ? words.there() : words.notThere();
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
