package fifthform.monitor.notebook;

import fifthform.monitor.settings.Units;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/**
 * Which rows are shown; what is empty asks for nothing.
 *
 * @param chocolate a recipe's id
 * @param bowl a bowl's name
 * @param kinds real, practice or both
 * @param end how it ended
 * @param looks looked at or not
 * @param search words that all must stand somewhere in the row
 */
public record RowFilter(
        Optional<String> chocolate,
        Optional<String> bowl,
        Kinds kinds,
        Optional<Ended> end,
        Looks looks,
        String search) {
    /** Real batches, all of them. */
    public static final RowFilter USUAL =
            new RowFilter(Optional.empty(), Optional.empty(), Kinds.REAL, Optional.empty(), Looks.ANY, "");

    public RowFilter {
        Objects.requireNonNull(chocolate, "chocolate");
        Objects.requireNonNull(bowl, "bowl");
        Objects.requireNonNull(kinds, "kinds");
        Objects.requireNonNull(end, "end");
        Objects.requireNonNull(looks, "looks");
        Objects.requireNonNull(search, "search");
    }

    /** Which kinds of batches. */
    public enum Kinds {
        REAL,
        PRACTICE,
        BOTH;

        boolean take(BatchRow row) {
            // Of what cannot be read nobody knows whether it was practice; it is never hidden.
            if (row.condition() == Condition.UNREADABLE || row.condition() == Condition.UNREAD) return true;
            return this == BOTH || (row.kind() == BatchKind.REAL) == (this == REAL);
        }
    }

    /** Which looks there must be. */
    public enum Looks {
        ANY,
        LOOKED,
        NOT_LOOKED,
        /** One is due. */
        DUE
    }

    public RowFilter withChocolate(Optional<String> other) {
        return new RowFilter(other, bowl, kinds, end, looks, search);
    }

    public RowFilter withBowl(Optional<String> other) {
        return new RowFilter(chocolate, other, kinds, end, looks, search);
    }

    public RowFilter withKinds(Kinds other) {
        return new RowFilter(chocolate, bowl, other, end, looks, search);
    }

    public RowFilter withEnd(Optional<Ended> other) {
        return new RowFilter(chocolate, bowl, kinds, other, looks, search);
    }

    public RowFilter withLooks(Looks other) {
        return new RowFilter(chocolate, bowl, kinds, end, other, search);
    }

    public RowFilter withSearch(String words) {
        return new RowFilter(chocolate, bowl, kinds, end, looks, words);
    }

    /** Those of {@code rows} that fit, in their order. */
    public List<BatchRow> of(List<BatchRow> rows, Units units, Instant now) {
        return of(rows, row -> RowWords.all(row, units), now);
    }

    /**
     * Those of {@code rows} that fit, in their order.
     *
     * @param all all words of a row, in small letters
     */
    List<BatchRow> of(List<BatchRow> rows, Function<BatchRow, String> all, Instant now) {
        List<String> words = Arrays.stream(search.toLowerCase(Locale.ROOT).split("\\s+"))
                .filter(word -> !word.isEmpty())
                .toList();
        return rows.stream()
                .filter(row -> fits(row, now))
                .filter(row -> says(row, words, all))
                .toList();
    }

    private boolean fits(BatchRow row, Instant now) {
        return chocolate.filter(id -> !id.equals(row.chocolateId())).isEmpty()
                && bowl.filter(name -> !name.equalsIgnoreCase(row.bowl())).isEmpty()
                && kinds.take(row)
                && end.filter(wanted -> wanted != row.end()).isEmpty()
                && hasLooks(row, now);
    }

    private boolean hasLooks(BatchRow row, Instant now) {
        return switch (looks) {
            case ANY -> true;
            case LOOKED -> !row.looks().isEmpty();
            case NOT_LOOKED -> row.looks().isEmpty();
            case DUE -> Reminders.due(row, now).isPresent();
        };
    }

    private static boolean says(BatchRow row, List<String> words, Function<BatchRow, String> all) {
        if (words.isEmpty()) return true;
        String said = all.apply(row);
        return words.stream().allMatch(said::contains);
    }
}
