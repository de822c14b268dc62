package fifthform.monitor.bars;

import fifthform.curves.check.Problem;
import fifthform.curves.fault.Clue;
import fifthform.curves.fault.Clues;
import fifthform.curves.fault.CurveClues;
import fifthform.curves.input.Recorded;
import fifthform.curves.learning.BarLook;
import fifthform.curves.review.Cause;
import fifthform.monitor.analyse.Analysis;
import fifthform.monitor.looks.LookFile;
import fifthform.monitor.store.Session;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * All that is known of a batch and its bars: its curve through the engine, looks, logs and answers beside it.
 *
 * @param clues for the finder
 * @param faults what went wrong in the curve, for words
 * @param looks what was seen, youngest bars first
 * @param problems what could not be read
 */
public record BatchClues(Clues clues, List<Cause> faults, List<BarLook> looks, List<Problem> problems) {
    public BatchClues {
        Objects.requireNonNull(clues, "clues");
        faults = List.copyOf(faults);
        looks = List.copyOf(looks);
        problems = List.copyOf(problems);
    }

    /** Of a session; what was seen just now may be added to what is kept. */
    public static BatchClues of(Session session) {
        String name = session.header().session();
        List<Problem> problems = new ArrayList<>();
        Analysis analysis =
                new Analysis(name, session.header().setup(), session.header().start());
        for (Recorded recorded : session.inputs().toList()) analysis.take(recorded.input());
        LookFile.Loaded looks = LookFile.beside(session.file(), name).load();
        problems.addAll(looks.problems());
        List<BarLook> seen = looks.seen().stream()
                .sorted(Comparator.comparingDouble(BarLook::ageHours))
                .toList();
        SetLog.Loaded set = SetLog.beside(session.file(), name).load();
        problems.addAll(set.problems());
        StoreLog.Loaded store = StoreLog.beside(session.file(), name).load();
        problems.addAll(store.problems());
        MarkFile.Loaded answers = MarkFile.beside(session.file(), name).load();
        problems.addAll(answers.problems());
        Clues clues = CurveClues.with(Clues.none().seen(seen), analysis.causes().faults(), analysis.tally());
        clues = clues.set(set.record()).stored(Optional.of(store.watch().record()));
        for (Map.Entry<Clue, Boolean> answer : answers.answers().entrySet())
            clues = clues.with(answer.getKey(), answer.getValue());
        return new BatchClues(clues, analysis.causes().faults(), seen, problems);
    }
}
