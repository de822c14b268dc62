package fifthform.monitor.app;

import fifthform.curves.input.Recorded;
import fifthform.curves.review.Causes;
import fifthform.curves.setup.Origin;
import fifthform.curves.setup.Setup;
import fifthform.monitor.analyse.Analysis;
import fifthform.monitor.model.AgainWords;
import fifthform.monitor.settings.Units;
import fifthform.monitor.store.JournalReader;
import fifthform.monitor.store.Session;
import fifthform.monitor.store.SessionFiles;
import fifthform.monitor.texts.CommandText;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;

/** A batch that is over, once more through the engine. */
final class EarlierBatch {
    private final Session session;

    private EarlierBatch(Session session) {
        this.session = Objects.requireNonNull(session, "session");
    }

    /** The batch in this file, to be melted again in a kitchen of this origin. */
    static EarlierBatch read(Path file, Origin origin) throws Refusal {
        Session session = Answers.orRefuse(JournalReader.read(file), Exit.FILE);
        boolean practice = session.header().setup().origin() == Origin.SIMULATED;
        if (practice && origin == Origin.REAL) {
            throw new Refusal(
                    Exit.NOT_UNDERSTOOD, CommandText.IS_A_PRACTICE_BATCH_OF_WHICH.say(SessionFiles.name(file)));
        }
        if (SessionFiles.isHeld(file)) {
            throw new Refusal(
                    Exit.NOT_UNDERSTOOD, CommandText.IS_STILL_BEING_WATCHED_NOTHING.say(SessionFiles.name(file)));
        }
        return new EarlierBatch(session);
    }

    String name() {
        return session.header().session();
    }

    Setup setup() {
        return session.header().setup();
    }

    /** Of what went wrong in it and what to do otherwise now, a line each. */
    List<String> lines(Units units) {
        return new AgainWords(units, session.header().zone()).lines(name(), causes(session));
    }

    /** What is told of a batch must not hang on how it was shown. */
    static Causes causes(Session session) {
        Analysis analysis = new Analysis(
                session.header().session(),
                session.header().setup(),
                session.header().start());
        session.inputs().map(Recorded::input).forEach(analysis::take);
        return analysis.causes();
    }
}
