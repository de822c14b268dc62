package fifthform.monitor.bars;

import fifthform.curves.fault.Clue;
import fifthform.curves.fault.Diagnosis;
import fifthform.curves.fault.FaultBook;
import fifthform.curves.fault.FaultFinder;
import fifthform.monitor.model.CauseWords;
import fifthform.monitor.settings.Units;
import fifthform.monitor.store.Session;
import fifthform.monitor.texts.WhyText;
import java.util.ArrayList;
import java.util.List;

/** Why the bars of one batch came out as they did, from all that is kept of it, without asking. */
public final class WhyOf {
    private WhyOf() {}

    /** The answer of {@code why --dont-ask}, the command that asks on last. */
    public static List<String> lines(Session session, Units units) {
        BatchClues known = BatchClues.of(session);
        Diagnosis diagnosis = new FaultFinder(FaultBook.PACKED).find(known.clues());
        CauseWords causes = new CauseWords(units, session.header().zone());
        List<String> lines = new ArrayList<>(new WhyWords(FaultBook.PACKED, causes).lines(diagnosis, known.faults()));
        known.problems().forEach(problem -> lines.add(problem.toString()));
        if (diagnosis.word() == Diagnosis.Word.NOT_LOOKED) lines.add(WhyText.LOOK_FIRST.say());
        if (diagnosis.question().isPresent()) {
            Clue asked = diagnosis.question().get();
            lines.add(WhyText.WOULD_HELP.say(
                    FaultBook.PACKED.of(asked).question(), session.header().session()));
        }
        return lines;
    }
}
