package fifthform.monitor.app;

import fifthform.curves.input.Sample;
import fifthform.curves.setup.Origin;
import fifthform.monitor.store.Session;
import fifthform.monitor.store.SessionFiles;
import fifthform.monitor.store.StoreException;
import fifthform.monitor.texts.LiveText;
import java.io.PrintWriter;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** Looks for a session that was cut off, says so, and offers to go on with it. */
final class CutOff {
    private final SessionFiles sessions;
    private final BowlMemory bowls;
    private final PrintWriter err;

    /** @param bowls learns what a session saw that nobody goes on with */
    CutOff(SessionFiles sessions, BowlMemory bowls, PrintWriter err) {
        this.bowls = Objects.requireNonNull(bowls, "bowls");
        this.sessions = Objects.requireNonNull(sessions, "sessions");
        this.err = Objects.requireNonNull(err, "err");
    }

    /** The session to go on with, where the maker wants that and there is one. */
    Optional<Session> find(boolean goOn) throws Refusal {
        List<Session> unfinished;
        try {
            unfinished = sessions.unfinished(Instant.now());
        } catch (StoreException e) {
            throw new Refusal(Exit.FILE, e.getMessage());
        }
        for (Session session : unfinished) say(session);
        Optional<Session> latest = unfinished.stream().filter(CutOff::canGoOn).findFirst();
        if (!goOn) {
            for (Session session : unfinished) bowls.learn(session).ifPresent(err::println);
            return Optional.empty();
        }
        if (latest.isEmpty()) {
            throw new Refusal(Exit.ANSWER_IS_NO, LiveText.THERE_IS_NO_BATCH_TO_GO.say());
        }
        return latest;
    }

    /** What could be gone on with, to be offered; says and learns nothing. */
    Optional<Session> offered() {
        try {
            return sessions.unfinished(Instant.now()).stream()
                    .filter(CutOff::canGoOn)
                    .findFirst();
        } catch (StoreException unreadable) {
            return Optional.empty();
        }
    }

    /** A real session goes on only with a real probe. */
    static void mustFit(Session session, ProbeChoice choice) throws Refusal {
        if (choice instanceof PortProbe) return;
        throw new Refusal(
                Exit.NOT_UNDERSTOOD,
                LiveText.THE_BATCH_OF_WAS_MEASURED_WITH.say(session.header().session()));
    }

    /** A simulated bowl is gone with its program, and recorded bytes begin again from the start. */
    private static boolean canGoOn(Session session) {
        boolean real = session.header().setup().origin() == Origin.REAL;
        return real && !session.header().setup().bowlProbe().place().startsWith(TapeProbe.PLACE);
    }

    private void say(Session session) {
        boolean real = session.header().setup().origin() == Origin.REAL;
        long readings = session.inputs()
                .filter(recorded -> recorded.input() instanceof Sample)
                .count();
        err.println(LiveText.THAT_BEGAN_AT_WAS_CUT_OFF.say(
                real ? LiveText.A_BATCH.say() : LiveText.A_PRACTICE_BATCH.say(),
                session.header()
                        .start()
                        .atOffset(session.header().zone())
                        .toLocalTime()
                        .withNano(0),
                readings,
                session.file()));
        session.problems().forEach(p -> err.println("  " + p));
        if (canGoOn(session)) err.println(LiveText.TO_GO_ON_WITH_IT_MONITOR.say());
    }
}
