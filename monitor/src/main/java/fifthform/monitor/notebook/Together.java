package fifthform.monitor.notebook;

import fifthform.curves.learning.Judged;
import fifthform.curves.learning.Outcome;
import fifthform.curves.review.Verdict;
import fifthform.monitor.looks.KeptLook;
import fifthform.monitor.texts.NotebookText;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * What batches say together: sentences of counts, each silent until enough batches stand on both of its sides. They count,
 * they do not judge; what heat does to temper is judged by {@code learn}.
 */
public final class Together {
    /** A side of a comparison needs so many. Own choice: below it one bar more or less turns the sentence round. */
    static final int LEAST = 5;

    /** So many of the last batches are held against as many before them. */
    private static final int RECENT = 10;

    private Together() {}

    /** The sentences about these rows: of the real ones among them, or of practice where there is no other. */
    public static List<String> sentences(List<BatchRow> rows) {
        boolean real = rows.stream().anyMatch(row -> row.counts() && row.kind() == BatchKind.REAL);
        List<BatchRow> finished = rows.stream()
                .filter(BatchRow::counts)
                .filter(row -> (row.kind() == BatchKind.REAL) == real)
                .filter(row -> row.figures().verdict() != Verdict.UNFINISHED)
                .sorted(Notebook.NEWEST_FIRST)
                .toList();
        if (finished.size() < LEAST) return List.of(NotebookText.TOGETHER_TOO_FEW.say(Integer.toString(LEAST)));
        List<String> said = new ArrayList<>();
        long inRange =
                finished.stream().filter(row -> row.end() == Ended.IN_RANGE).count();
        said.add(NotebookText.TOGETHER_ENDS.say(
                words(finished.size()),
                words(inRange),
                words(finished.stream().filter(Together::isOver).count())));
        heat(finished).ifPresent(said::add);
        crystals(finished).ifPresent(said::add);
        said.addAll(bowls(finished));
        time(finished).ifPresent(said::add);
        if (said.size() > 1) said.add(NotebookText.TOGETHER_CAUTION.say());
        return said;
    }

    private static boolean isOver(BatchRow row) {
        return row.end() == Ended.OVER_RANGE || row.end() == Ended.MELT_OUT || row.end() == Ended.SEED_LOST;
    }

    private static Optional<String> heat(List<BatchRow> rows) {
        return marks(
                rows.stream()
                        .filter(row -> row.targets().isKnown()
                                && row.figures().peakCelsius().isPresent())
                        .toList(),
                row -> row.figures().peakCelsius().orElseThrow() > row.targets().warnCelsius(),
                NotebookText.TOGETHER_HEAT);
    }

    private static Optional<String> crystals(List<BatchRow> rows) {
        return marks(
                rows.stream()
                        .filter(row -> row.figures().crystals().isPresent())
                        .toList(),
                row -> row.figures().crystals().orElseThrow().startsWith("enough"),
                NotebookText.TOGETHER_CRYSTALS);
    }

    /** Marks later in two groups, of those whose bars were looked at and say something of the temper. */
    private static Optional<String> marks(List<BatchRow> rows, Predicate<BatchRow> first, NotebookText words) {
        List<BatchRow> looked =
                rows.stream().filter(row -> marked(row).isPresent()).toList();
        Map<Boolean, List<BatchRow>> groups = looked.stream().collect(Collectors.partitioningBy(first));
        List<BatchRow> one = groups.get(true);
        List<BatchRow> other = groups.get(false);
        if (one.size() < LEAST || other.size() < LEAST) return Optional.empty();
        return Optional.of(words.say(words(one.size()), marked(one), words(other.size()), marked(other)));
    }

    /** Whether its looks found marks of lost temper; empty where they do not say. */
    private static Optional<Boolean> marked(BatchRow row) {
        if (row.looks().isEmpty()) return Optional.empty();
        Judged judged = Outcome.of(row.looks().stream().map(KeptLook::look).toList());
        return judged.outcome().map(Outcome::isMarked);
    }

    private static String marked(List<BatchRow> rows) {
        return words(rows.stream().filter(row -> marked(row).orElseThrow()).count());
    }

    /** Only of a bowl with at least twice the share of the others: smaller differences are mostly chance. */
    private static List<String> bowls(List<BatchRow> rows) {
        Map<String, List<BatchRow>> bowls =
                rows.stream().collect(Collectors.groupingBy(BatchRow::bowl, TreeMap::new, Collectors.toList()));
        List<String> said = new ArrayList<>();
        bowls.forEach((bowl, own) -> {
            int others = rows.size() - own.size();
            if (own.size() < LEAST || others < LEAST || bowl.isEmpty()) return;
            long over = own.stream().filter(Together::isOver).count();
            long overOthers = rows.stream().filter(Together::isOver).count() - over;
            double share = (double) over / own.size();
            double shareOthers = (double) overOthers / others;
            if (share < 2 * shareOthers || over < 2) return;
            said.add(NotebookText.TOGETHER_BOWL.say(
                    bowl, words(own.size()), words(over), words(others), words(overOthers)));
        });
        return said;
    }

    private static Optional<String> time(List<BatchRow> newestFirst) {
        if (newestFirst.size() < 2 * RECENT) return Optional.empty();
        return Optional.of(NotebookText.TOGETHER_TIME.say(
                words(RECENT),
                middle(newestFirst.subList(0, RECENT)),
                words(RECENT),
                middle(newestFirst.subList(RECENT, 2 * RECENT))));
    }

    private static String middle(List<BatchRow> rows) {
        List<Long> minutes = rows.stream()
                .map(row -> RowWords.minutes(row.length()))
                .sorted()
                .toList();
        return words(Math.round((minutes.get(RECENT / 2 - 1) + minutes.get(RECENT / 2)) / 2.0));
    }

    private static String words(long count) {
        return Long.toString(count);
    }
}
