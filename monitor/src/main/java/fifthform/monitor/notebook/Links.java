package fifthform.monitor.notebook;

import fifthform.monitor.texts.NotebookText;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/** Which batch was made from the bars of which, both ways: a header names only the batch before it. */
public final class Links {
    private Links() {}

    /** The names of those of {@code all} that were made from the bars of {@code row}, oldest first. */
    public static List<String> madeFrom(BatchRow row, Collection<BatchRow> all) {
        return all.stream()
                .filter(each ->
                        each.beginning().again().filter(row.name()::equals).isPresent())
                .sorted(Comparator.comparing(BatchRow::start))
                .map(BatchRow::name)
                .toList();
    }

    /**
     * A sentence for each of the rows that was made again, or was tempered again.
     *
     * @param all where the other end may be, shown or not
     */
    public static List<String> sentences(List<BatchRow> rows, Collection<BatchRow> all) {
        List<String> sentences = new ArrayList<>();
        for (BatchRow row : rows) {
            row.beginning().again().ifPresent(from -> sentences.add(NotebookText.SENTENCE_FROM.say(row.name(), from)));
            List<String> made = madeFrom(row, all);
            if (!made.isEmpty()) sentences.add(NotebookText.SENTENCE_IN.say(row.name(), String.join(", ", made)));
        }
        return sentences;
    }
}
