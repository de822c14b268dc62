package fifthform.monitor.notebook;

import fifthform.curves.review.Verdict;
import fifthform.monitor.looks.LookTime;
import fifthform.monitor.texts.NotebookText;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Looks at bars that are due: after a day, two days, a week and four weeks, where none was made by then. */
public final class Reminders {
    /** After this the bars are eaten or forgotten, and a reminder would stand for ever. Own choice. */
    private static final double FORGOTTEN_HOURS = 9 * 7 * 24;

    /** More names than this are counted and no longer told. */
    private static final int NAMED = 3;

    private Reminders() {}

    /** The look that is due at the bars of this batch; none of practice, nor where nothing can have been poured. */
    public static Optional<LookTime> due(BatchRow row, Instant now) {
        boolean poured =
                row.kind() == BatchKind.REAL && row.counts() && row.figures().verdict() != Verdict.UNFINISHED;
        double age = Duration.between(row.ended(), now).toMinutes() / 60.0;
        if (!poured || age > FORGOTTEN_HOURS) return Optional.empty();
        double last = row.looks().stream()
                .mapToDouble(look -> look.look().ageHours())
                .max()
                .orElse(0);
        return LookTime.reached(age).filter(time -> last < time.hadFromHours());
    }

    /** What is due, in words; empty where nothing is. */
    public static List<String> lines(List<BatchRow> rows, Instant now) {
        List<String> lines = new ArrayList<>();
        line(rows, now, LookTime.DAY, NotebookText.DUE_DAY).ifPresent(lines::add);
        line(rows, now, LookTime.TWO_DAYS, NotebookText.DUE_TWO_DAYS).ifPresent(lines::add);
        line(rows, now, LookTime.WEEK, NotebookText.DUE_WEEK).ifPresent(lines::add);
        line(rows, now, LookTime.FOUR_WEEKS, NotebookText.DUE_FOUR_WEEKS).ifPresent(lines::add);
        return lines;
    }

    private static Optional<String> line(List<BatchRow> rows, Instant now, LookTime wanted, NotebookText words) {
        List<String> names = rows.stream()
                .filter(row -> due(row, now).filter(wanted::equals).isPresent())
                .map(RowWords::inShort)
                .toList();
        if (names.isEmpty()) return Optional.empty();
        String told = names.stream().limit(NAMED).collect(Collectors.joining(", "));
        String more =
                names.size() > NAMED ? ", " + NotebookText.AND_MORE.say(Integer.toString(names.size() - NAMED)) : "";
        return Optional.of(words.say(told + more));
    }
}
