package fifthform.monitor.app;

import fifthform.curves.input.MakerAction.PhaseConfirmed;
import fifthform.curves.recipe.Phase;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.Origin;
import fifthform.curves.setup.Setup;
import fifthform.monitor.intake.SessionClock;
import fifthform.monitor.model.ClosingLine;
import fifthform.monitor.model.HoldLine;
import fifthform.monitor.model.SurvivedWords;
import fifthform.monitor.session.SessionLoop;
import fifthform.monitor.session.SessionSnapshot;
import fifthform.monitor.settings.Units;
import fifthform.monitor.store.JournalWriter;
import fifthform.monitor.store.Session;
import fifthform.monitor.store.SessionFiles;
import fifthform.monitor.store.SessionHeader;
import fifthform.monitor.store.StoreException;
import fifthform.monitor.texts.LiveText;
import java.io.PrintWriter;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** One batch from opening the probe to the closing line. */
final class LiveBatch {
    private final Plan plan;
    private final SessionFiles sessions;
    private final Units units;
    private final Choices choices;
    private final PrintWriter out;
    private final PrintWriter err;

    /**
     * What is to be watched.
     *
     * @param cutOff the session to go on with; empty for a new one
     * @param join the phase that the batch is in already
     * @param keepBytes whether the raw bytes are kept beside the session
     */
    record Plan(Setup setup, ProbeChoice choice, Optional<Session> cutOff, Optional<Phase> join, boolean keepBytes) {
        Plan {
            Objects.requireNonNull(setup, "setup");
            Objects.requireNonNull(choice, "choice");
            Objects.requireNonNull(cutOff, "cutOff");
            Objects.requireNonNull(join, "join");
        }

        boolean isPractice() {
            return setup.origin() == Origin.SIMULATED;
        }

        /** Bytes that carry their own time, from a simulated bowl or a file. */
        boolean bringsItsOwnTime() {
            return isPractice() || choice instanceof TapeProbe;
        }
    }

    LiveBatch(Plan plan, SessionFiles sessions, Units units, Choices choices, PrintWriter out, PrintWriter err) {
        this.plan = Objects.requireNonNull(plan, "plan");
        this.sessions = Objects.requireNonNull(sessions, "sessions");
        this.units = Objects.requireNonNull(units, "units");
        this.choices = Objects.requireNonNull(choices, "choices");
        this.out = Objects.requireNonNull(out, "out");
        this.err = Objects.requireNonNull(err, "err");
    }

    /** Who wants to know of a session's beginning and end. */
    interface Around {
        /** The probe is open and the journal begun. */
        void begun();

        /** The journal is closed; a signal that ends the program still waits. */
        void ended(SessionSnapshot last, String session);

        /** Nobody. */
        Around NOTHING = new Around() {
            @Override
            public void begun() {}

            @Override
            public void ended(SessionSnapshot last, String session) {}
        };
    }

    /** Watches until the maker stops or the bytes end. */
    void watch(Showing screens, Optional<ScreenChoice> screen, List<Recipe> recipes, Around around)
            throws Refusal, InterruptedException {
        Instant now = Instant.now().truncatedTo(ChronoUnit.MICROS);
        Instant start = plan.cutOff().map(s -> s.header().start()).orElse(now);
        ZoneOffset zone = ZoneId.systemDefault().getRules().getOffset(now);
        HeldNanos nanos = plan.bringsItsOwnTime() ? HeldNanos.held() : HeldNanos.running();
        SessionClock clock = new SessionClock(now, plan.choice().usualSpeed(), nanos);
        long taken = plan.cutOff().map(s -> s.nextSequence() - 1).orElse(0L);
        Watching watching = new Watching(plan.setup(), clock, plan.choice(), taken, units, choices, zone);
        watching.notice(Optional.of(choices.keys().fill(plan.choice().notice())));
        try (StayAwake awake = StayAwake.begin()) {
            if (!awake.isHeld() && !plan.isPractice()) {
                err.println(LiveText.THIS_COMPUTER_MAY_GO_TO_SLEEP.say());
            }
            JournalWriter journal = journal(start, zone, watching);
            SessionLoop loop = watching.loop(start, journal);
            plan.cutOff().ifPresent(loop::catchUp);
            RawBytes raw = plan.keepBytes()
                    ? RawBytes.beside(journal.file(), start, plan.setup().origin(), err)
                    : RawBytes.none();
            // Getting ready took a moment; bytes with their own time begin at the session's start, not before it.
            nanos.release();
            plan.join().ifPresent(phase -> watching.put(new PhaseConfirmed(clock.instant(), phase)));
            around.begun();
            StopSignal signal = StopSignal.listen(watching::stop);
            Exit how = Exit.FILE;
            try {
                SessionSnapshot last = watching.run(loop, journal, screens, screen, recipes, raw::tap);
                raw.close();
                out.println(ClosingLine.of(last.setup(), last.tally(), units));
                HoldLine.closing(last.setup(), last.state()).ifPresent(out::println);
                SurvivedWords.closing(last, units, zone).forEach(out::println);
                out.println(LiveText.KEPT_IN.say(journal.file()));
                around.ended(last, SessionFiles.name(journal.file()));
                how = Exit.DONE;
            } catch (StoreException e) {
                // Said before the signal's hook may end the process.
                err.println(e.getMessage());
                throw e;
            } finally {
                signal.ended(how);
            }
        } catch (StoreException e) {
            throw new Refusal(Exit.FILE, e.getMessage());
        }
    }

    private JournalWriter journal(Instant start, ZoneOffset zone, Watching watching) throws StoreException {
        InstantSource wall = InstantSource.system();
        if (plan.cutOff().isPresent()) return JournalWriter.resume(plan.cutOff().get(), wall, watching::storeTrouble);
        var file = sessions.reserve(start, zone, plan.setup().recipe().id());
        SessionHeader header = new SessionHeader(
                Version.number(), Version.commit(), SessionFiles.name(file), start, zone, plan.setup());
        return JournalWriter.create(file, header, wall, watching::storeTrouble);
    }
}
