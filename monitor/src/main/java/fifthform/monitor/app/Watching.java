package fifthform.monitor.app;

import fifthform.curves.input.Input;
import fifthform.curves.input.MakerAction.Noted;
import fifthform.curves.input.StoreTrouble;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.Origin;
import fifthform.curves.setup.Setup;
import fifthform.monitor.analyse.BatchFigures;
import fifthform.monitor.intake.LiveSource;
import fifthform.monitor.intake.LiveSource.Ticking;
import fifthform.monitor.intake.SessionClock;
import fifthform.monitor.model.Key;
import fifthform.monitor.model.Look;
import fifthform.monitor.model.ScreenFeed;
import fifthform.monitor.model.WatchModel;
import fifthform.monitor.model.WatchPicture;
import fifthform.monitor.model.WatchPicture.Mark;
import fifthform.monitor.practice.DebriefText;
import fifthform.monitor.practice.OwnHands;
import fifthform.monitor.practice.Training;
import fifthform.monitor.practice.TrainingPicture;
import fifthform.monitor.session.SessionListener;
import fifthform.monitor.session.SessionLoop;
import fifthform.monitor.session.SessionSnapshot;
import fifthform.monitor.settings.Units;
import fifthform.monitor.sound.SoundDesk;
import fifthform.monitor.sound.Speaker;
import fifthform.monitor.store.JournalWriter;
import fifthform.monitor.store.StoreException;
import fifthform.monitor.texts.LiveText;
import fifthform.probe.reader.ProbeLine;
import fifthform.probe.reader.ProbeReader;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.UnaryOperator;

/**
 * One session put together: readers → intake → loop → journal, sound and screen; and taken apart in the same order, so
 * that nothing that was read is lost.
 */
final class Watching {
    private final Setup setup;
    private final SessionClock clock;
    private final Wiring wiring;
    private final Units units;
    private final Choices choices;
    private final ZoneOffset zone;
    private final LiveSource intake;
    private final Speaker speaker;

    /** Time as hands and ears know it: monotonic, so that a wall clock that is set back silences nothing. */
    private final SessionClock handsClock = new SessionClock(Instant.now(), 1, System::nanoTime);

    private final AtomicBoolean stopping = new AtomicBoolean();
    private final CountDownLatch over = new CountDownLatch(1);
    private final AtomicReference<Optional<Throwable>> stumbled = new AtomicReference<>(Optional.empty());
    private final AtomicReference<List<ProbeReader>> reading = new AtomicReference<>(List.of());
    private final AtomicReference<Optional<String>> soundTrouble = new AtomicReference<>(Optional.empty());
    private final AtomicReference<Optional<String>> notice = new AtomicReference<>(Optional.empty());

    /**
     * A session about to begin.
     *
     * @param taken how many inputs it has already taken, where it goes on after a cut
     */
    Watching(
            Setup setup,
            SessionClock clock,
            ProbeChoice choice,
            long taken,
            Units units,
            Choices choices,
            ZoneOffset zone)
            throws Refusal {
        this(
                setup,
                clock,
                choice,
                taken,
                units,
                choices,
                zone,
                Speaker.open(choices.settings().volume()));
    }

    /** With a speaker of the caller's, for measuring. */
    Watching(
            Setup setup,
            SessionClock clock,
            ProbeChoice choice,
            long taken,
            Units units,
            Choices choices,
            ZoneOffset zone,
            Speaker speaker)
            throws Refusal {
        this.speaker = speaker;
        this.setup = setup;
        this.clock = clock;
        this.wiring = choice.wire(clock, this::put);
        this.units = units;
        this.choices = choices;
        this.zone = zone;
        this.intake =
                new LiveSource(clock, wiring.ticking(), taken, wiring.lines().size());
    }

    /** Where everything that happens is handed in. */
    void put(Input input) {
        intake.put(input);
    }

    /** The journal's complaints become inputs like any other. */
    void storeTrouble(StoreTrouble.What what) {
        intake.put(new StoreTrouble(intake.instant(), what));
    }

    /** A standing line on the screen. */
    void notice(Optional<String> line) {
        notice.set(line);
    }

    /** Asks the session to end; what has been read is still recorded. */
    void stop() {
        stopping.set(true);
    }

    /** Training is not over with the batch: the debrief stands on the screen until it has been read. */
    private void quit() {
        wiring.training().map(Training::hands).ifPresentOrElse(OwnHands::finish, this::stop);
    }

    /** The loop for this session. */
    SessionLoop loop(Instant start, JournalWriter journal) {
        List<SessionListener> listeners = new ArrayList<>(wiring.listeners());
        SoundDesk sound = new SoundDesk(speaker::play, handsClock);
        listeners.add((snapshot, events) -> {
            try {
                sound.stepped(snapshot, events);
            } catch (RuntimeException fault) {
                soundTrouble.set(Optional.of(LiveText.SOUND_STUMBLED.say()));
                throw fault;
            }
        });
        return new SessionLoop(setup, start, intake, new JournalRecord(journal), listeners, System::nanoTime);
    }

    /**
     * Runs the session to its end behind a screen; returns its last snapshot. {@code tap} may record the raw bytes of
     * each line.
     */
    SessionSnapshot run(
            SessionLoop loop,
            JournalWriter journal,
            Showing screens,
            Optional<ScreenChoice> choice,
            List<Recipe> recipes,
            UnaryOperator<ProbeLine> tap)
            throws StoreException, InterruptedException {
        List<ProbeReader> readers = wiring.lines().stream()
                .map(line -> new ProbeReader(tap.apply(line), clock, intake::put, intake::sourceEnded))
                .toList();
        Thread session = new Thread(() -> runLoop(loop), "session");
        KeyDesk keys = new KeyDesk(
                loop::snapshot,
                intake::put,
                () -> loop.snapshot().state().at(),
                handsClock,
                recipes,
                units,
                choices.keys(),
                new KeyDesk.Levers(
                        wiring.speed(),
                        grip(readers),
                        this::quit,
                        wiring.training().map(Training::hands)));
        reading.set(readers);
        readers.forEach(ProbeReader::start);
        session.start();
        try {
            screens.show(choice, feed(loop, keys), () -> elapsed(loop.snapshot()));
        } finally {
            // In the order of the flow, so that what has been read is also taken and recorded.
            readers.forEach(ProbeReader::stop);
            intake.stop();
            session.join();
            speaker.close();
            close(journal, loop.snapshot());
        }
        if (stumbled.get().isPresent())
            throw new IllegalStateException(
                    "the session ended early", stumbled.get().get());
        return loop.snapshot();
    }

    /** Real ports can be let go; a simulated bowl has none. */
    private Optional<KeyDesk.Grip> grip(List<ProbeReader> readers) {
        return wiring.ticking() == Ticking.BY_THE_CLOCK ? Optional.of(new PortGrip(readers)) : Optional.empty();
    }

    private static void close(JournalWriter journal, SessionSnapshot last) throws StoreException {
        journal.summary(BatchFigures.of(last.setup(), last.tally(), last.state().started()));
        journal.close();
    }

    private void runLoop(SessionLoop loop) {
        try {
            loop.run();
        } catch (RuntimeException | Error bug) {
            // Told once the journal is closed: a session that ends by itself must not look like one that was stopped.
            stumbled.set(Optional.of(bug));
        } finally {
            over.countDown();
        }
    }

    private ScreenFeed feed(SessionLoop loop, KeyDesk keys) {
        return new ScreenFeed(
                () -> picture(loop, keys),
                () -> isOver() ? System.nanoTime() : loop.snapshot().publishedNanos(),
                System::nanoTime,
                typed -> !isOver() && keys.typed(typed),
                choices.keys(),
                key -> taken(key, keys),
                this::stop,
                () -> stopping.get() || isOver() && wiring.training().isEmpty(),
                () -> speaker.state() != Speaker.State.SOUND);
    }

    private boolean isOver() {
        return over.getCount() == 0;
    }

    private WatchPicture picture(SessionLoop loop, KeyDesk keys) {
        WatchPicture picture = WatchModel.picture(loop.snapshot(), look(keys));
        if (wiring.training().isEmpty()) return picture;
        if (!isOver()) return TrainingPicture.during(picture);
        return TrainingPicture.after(
                picture, new DebriefText(wiring.training().get().debrief(), units), choices.keys());
    }

    /** Once the batch is over, keys have nothing to do but close the screen. */
    private void taken(Key key, KeyDesk keys) {
        if (isOver()) {
            if (key == Key.QUIT) stop();
            return;
        }
        try {
            keys.accept(key);
        } catch (RuntimeException fault) {
            keys.stumbled(key);
            put(new Noted(intake.instant(), LiveText.FAULT_AT_KEY.say(key.id(), fault)));
        }
    }

    private Look look(KeyDesk keys) {
        boolean sound = speaker.state() == Speaker.State.SOUND;
        List<Mark> marks = new ArrayList<>();
        wiring.training().ifPresent(t -> marks.add(new Mark(t.hands().words(), true)));
        if (setup.origin() == Origin.SIMULATED)
            marks.add(new Mark(LiveText.SPEED_MARK.say(Math.round(clock.speed())), true));
        marks.add(new Mark(sound ? LiveText.SOUND_MARK.say() : speaker.state().words(), sound));
        boolean unheard =
                choices.settings().hearing().filter(hearing -> !hearing.heard()).isPresent();
        if (sound && unheard) marks.add(new Mark(LiveText.SOUND_NOT_HEARD_AT_THE_STOVE.say(), false));
        String row = choices.keys()
                .fill((wiring.training().isPresent() ? LiveText.KEYS_OF_TRAINING : LiveText.KEYS_OF_WATCH).say());
        return new Look(
                units,
                zone,
                marks,
                choices.keys(),
                row,
                keys.line().or(() -> soundTrouble.get()).or(this::complaint),
                notice.get(),
                Look.Asking.ANSWERED,
                keys.back(),
                keys.again());
    }

    /** What only the adapter's own way of talking knows: a wrong register, a damaged answer. A pulled plug has its alarm. */
    private Optional<String> complaint() {
        return reading.get().stream()
                .filter(ProbeReader::isReading)
                .flatMap(reader -> reader.trouble().stream())
                .map(trouble -> trouble.place() + ": " + trouble.getMessage() + " " + trouble.whatToDo())
                .findFirst();
    }

    private static Duration elapsed(SessionSnapshot snapshot) {
        return Duration.between(snapshot.state().started(), snapshot.state().at());
    }
}
