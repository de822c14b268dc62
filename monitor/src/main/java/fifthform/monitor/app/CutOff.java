package fifthform.monitor.app;

import fifthform.curves.input.Sample;
import fifthform.curves.setup.Origin;
import fifthform.monitor.store.Session;
import fifthform.monitor.store.SessionFiles;
import fifthform.monitor.store.StoreException;
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
            throw new Refusal(
                    Exit.ANSWER_IS_NO,
                    "There is no batch to go on with: none was cut off within the last two hours. Nothing was started. Leave --go-on out.");
        }
        return latest;
    }

    /** A real session goes on only with a real probe. */
    static void mustFit(Session session, ProbeChoice choice) throws Refusal {
        if (choice instanceof PortProbe) return;
        throw new Refusal(
                Exit.NOT_UNDERSTOOD,
                "The batch of " + session.header().session() + " was measured with a real probe. Nothing was started,"
                        + " so that nothing simulated gets into it. Name a port with --probe, or leave --go-on out.");
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
        err.println((real ? "A batch" : "A practice batch") + " that began at "
                + session.header()
                        .start()
                        .atOffset(session.header().zone())
                        .toLocalTime()
                        .withNano(0) + " was cut off; its " + readings + " readings are kept in " + session.file()
                + ".");
        session.problems().forEach(p -> err.println("  " + p));
        if (canGoOn(session)) err.println("To go on with it: monitor/run watch --go-on");
    }
}
