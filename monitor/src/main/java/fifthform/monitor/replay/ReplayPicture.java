package fifthform.monitor.replay;

import java.util.List;

/**
 * All that the Replay screen shows at one moment, in words and numbers.
 *
 * @param title which batch
 * @param subject chocolate, bowl, length
 * @param marks what must be known of it, for example that it is simulated
 * @param headline the finding, in a few words
 * @param headlineAside what the headline is
 * @param chart what is drawn
 * @param clock where we are
 * @param pace how fast it goes on
 * @param playing whether it goes on
 * @param span which part is on the screen
 * @param moment the moment that the comparison is about
 * @param compared told then beside computed now
 * @param agreement whether all that was told then is told now
 * @param findings what went wrong
 * @param whatIfs what would have been
 * @param alarms the alarms with their lead
 * @param notes notes and marks
 * @param laid the batches laid beside this one
 * @param said what the last act did
 */
public record ReplayPicture(
        String title,
        String subject,
        List<String> marks,
        String headline,
        String headlineAside,
        ReplayChart chart,
        String clock,
        String pace,
        boolean playing,
        String span,
        String moment,
        List<Compared> compared,
        String agreement,
        List<ListRow> findings,
        List<ListRow> whatIfs,
        List<ListRow> alarms,
        List<ListRow> notes,
        List<ListRow> laid,
        String said) {
    public ReplayPicture {
        marks = List.copyOf(marks);
        compared = List.copyOf(compared);
        findings = List.copyOf(findings);
        whatIfs = List.copyOf(whatIfs);
        alarms = List.copyOf(alarms);
        notes = List.copyOf(notes);
        laid = List.copyOf(laid);
    }
}
