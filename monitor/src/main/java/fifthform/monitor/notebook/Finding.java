package fifthform.monitor.notebook;

import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;

/**
 * What all looked-at batches of one chocolate say together. It is made elsewhere, over all of them and not over those that
 * are shown: who looks at the marked ones only must not be told that nothing else happens.
 *
 * @param kind real or practice
 * @param batches names of the sessions it rests on
 * @param lines in words
 */
public record Finding(BatchKind kind, Set<String> batches, List<String> lines) {
    public Finding {
        Objects.requireNonNull(kind, "kind");
        batches = new TreeSet<>(batches);
        lines = List.copyOf(lines);
    }

    /** What is said beside these rows: of the chocolates whose batches are among them. */
    public static List<String> beside(List<BatchRow> rows, List<Finding> findings) {
        return findings.stream()
                .filter(finding -> finding.kind() == kind(rows))
                .filter(finding ->
                        rows.stream().anyMatch(row -> finding.batches().contains(row.name())))
                .flatMap(finding -> finding.lines().stream())
                .toList();
    }

    /** Of real ones where there are any, as {@link Together} has it. */
    public static BatchKind kind(List<BatchRow> rows) {
        boolean real = rows.stream().anyMatch(row -> row.counts() && row.kind() == BatchKind.REAL);
        return real ? BatchKind.REAL : BatchKind.PRACTICE;
    }
}
