package fifthform.monitor.bars;

import fifthform.curves.fault.Clue;
import fifthform.curves.fault.CurveClues;
import fifthform.curves.fault.Diagnosis;
import fifthform.curves.fault.Fault;
import fifthform.curves.fault.FaultBook;
import fifthform.curves.fault.Suspect;
import fifthform.curves.review.Cause;
import fifthform.monitor.model.CauseWords;
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
            lines.add("If you see it again, think of: "
                    + diagnosis.suspects().stream()
                            .limit(SUSPECTS)
                            .map(s -> book.of(s.fault()).name())
                            .collect(Collectors.joining("; "))
                    + ".");
        }
        boolean tells = diagnosis.word() == Diagnosis.Word.LIKELY || diagnosis.word() == Diagnosis.Word.OPEN;
        if (!tells) {
            if (diagnosis.word() == Diagnosis.Word.BARS_ARE_GOOD && !faults.isEmpty())
                lines.add("The curve was not in order all the same (" + causes.what(faults.get(0))
                        + "), and the bars bore it.");
            return lines;
        }
        int told = 0;
        for (Suspect suspect : diagnosis.suspects()) {
            boolean worth = told == 0 || suspect.share() >= WORTH_TELLING;
            if (!worth || told == SUSPECTS) break;
            told++;
            lines.addAll(suspect(told, suspect, faults));
        }
        lines.add("Weighed by rules and figures of our own, which nobody has measured; prove a sample next time.");
        return lines;
    }

    private static String heading(Diagnosis diagnosis) {
        return switch (diagnosis.word()) {
            case NOT_LOOKED -> "Nobody has looked at these bars yet, so there is nothing to explain. Begin with: look";
            case BARS_ARE_GOOD -> "These bars are good, as far as you looked: no cause is looked for.";
            case WEAK -> "One weak sign, which good bars have as well: no cause is named.";
            case NOT_FOR_EATING ->
                "What is fuzzy on a bar is no bloom: throw the whole batch away and do not taste it. Wash and dry moulds"
                        + " and tools, and see SAFETY.md.";
            case LIKELY -> "Most likely:";
            case OPEN -> "Open: these are possible, and none stands out.";
        };
    }

    private List<String> suspect(int place, Suspect suspect, List<Cause> faults) {
        FaultBook.Entry entry = book.of(suspect.fault());
        List<String> lines = new ArrayList<>();
        lines.add(place + ". " + capital(entry.name()) + " (" + odds(suspect.share()) + ")");
        if (!suspect.supports().isEmpty()) lines.add("   for: " + reasons(suspect.supports(), faults));
        if (!suspect.opposes().isEmpty()) lines.add("   against: " + reasons(suspect.opposes(), faults));
        lines.add("   next time: " + entry.next());
        lines.add("   these bars: " + entry.bars());
        caution(suspect.fault()).ifPresent(words -> lines.add("   " + words));
        return lines;
    }

    private static Optional<String> caution(Fault fault) {
        return switch (fault) {
            case WATER -> Optional.of("Steam and hot water scald: lift the bowl away from you, far edge first.");
            case CONDENSATION -> Optional.of("If anything fuzzy grows on them, throw them away and do not taste it.");
            case COOLED_TOO_LITTLE, OVERSHOT, NOT_STIRRED, NOT_MELTED, OVER_TEMPERED, PROBE_WRONG, SEED_POOR, OIL ->
                Optional.of("What is in them stays in them, allergens too: label them as before.");
            default -> Optional.empty();
        };
    }

    /** In words: the figures rest on chances that nobody has counted. */
    public static String odds(double share) {
        if (share >= 0.9) return "very likely";
        if (share >= 0.6) return "likely";
        if (share >= 0.3) return "possible";
        return "less likely";
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
