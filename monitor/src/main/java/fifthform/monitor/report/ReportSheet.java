package fifthform.monitor.report;

import fifthform.monitor.replay.ReplayChart;
import java.time.Instant;
import java.util.List;
import java.util.Objects;

/**
 * What stands on the report of one batch.
 *
 * @param title which batch
 * @param subject chocolate, amount, bowl, length
 * @param marks what must be known of it, for example that it is simulated
 * @param headline the finding, in a few words
 * @param aside what the headline is
 * @param chart the curve
 * @param blocks the rest, the most important first
 * @param foot what all of it rests on
 * @param made when it was made, as was handed in
 */
public record ReportSheet(
        String title,
        String subject,
        List<String> marks,
        String headline,
        String aside,
        ReplayChart chart,
        List<Block> blocks,
        String foot,
        Instant made) {
    /** Lines under a heading. */
    public record Block(String heading, List<String> lines) {
        public Block {
            Objects.requireNonNull(heading, "heading");
            lines = List.copyOf(lines);
        }
    }

    public ReportSheet {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(subject, "subject");
        marks = List.copyOf(marks);
        Objects.requireNonNull(headline, "headline");
        Objects.requireNonNull(aside, "aside");
        Objects.requireNonNull(chart, "chart");
        blocks = List.copyOf(blocks);
        Objects.requireNonNull(foot, "foot");
        Objects.requireNonNull(made, "made");
    }
}
