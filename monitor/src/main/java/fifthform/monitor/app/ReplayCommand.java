package fifthform.monitor.app;

import fifthform.curves.input.Recorded;
import fifthform.curves.setup.Bowl;
import fifthform.curves.setup.Setup;
import fifthform.curves.whatif.Answer;
import fifthform.curves.whatif.PastBatch;
import fifthform.curves.whatif.PastLift;
import fifthform.curves.whatif.Rerun;
import fifthform.monitor.intake.SessionClock;
import fifthform.monitor.intake.TapeInputs;
import fifthform.monitor.model.AgainWords;
import fifthform.monitor.model.BowlLine;
import fifthform.monitor.model.CauseWords;
import fifthform.monitor.model.ClosingLine;
import fifthform.monitor.model.HoldLine;
import fifthform.monitor.model.Key;
import fifthform.monitor.model.KeyMap;
import fifthform.monitor.model.Look;
import fifthform.monitor.model.ScreenFeed;
import fifthform.monitor.model.SurvivedWords;
import fifthform.monitor.model.WatchModel;
import fifthform.monitor.model.WatchPicture.Mark;
import fifthform.monitor.model.WhatIfWords;
import fifthform.monitor.session.SessionLoop;
import fifthform.monitor.session.SessionSnapshot;
import fifthform.monitor.settings.Settings;
import fifthform.monitor.settings.Units;
import fifthform.monitor.store.JournalReader;
import fifthform.monitor.store.MadeAgain;
import fifthform.monitor.store.Session;
import fifthform.monitor.texts.CommandText;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A recorded session again, on the same screens, through the same engine. */
@Command(name = "replay", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class ReplayCommand implements Callable<Integer> {
    private static final double USUAL_SPEED = 30;

    /** A week: no session is longer. */
    private static final double LONGEST_SECONDS = 7 * 86_400;

    @Mixin
    private CommonOptions common;

    @Parameters(paramLabel = "SESSION")
    private String name;

    @Option(names = "--screen")
    private ScreenChoice screen;

    @Option(names = "--speed", paramLabel = "N|max")
    private String speed;

    @Option(names = "--from", paramLabel = "SECONDS", defaultValue = "0")
    private double fromSeconds;

    @Option(names = "--to", paramLabel = "SECONDS")
    private Double toSeconds;

    @Option(names = "--what-if", paramLabel = "ACT=BY")
    private String whatIf;

    @Option(names = "--of-lift", paramLabel = "N")
    private Integer ofLift;

    @Option(names = "--as-watched")
    private boolean asWatched;

    @Override
    public Integer call() throws Refusal, InterruptedException {
        checkSpan();
        Path file = SessionNames.find(name, common.folders());
        Choices choices = Choices.load(common.folders(), common.err());
        Units units = common.units(choices.settings());
        boolean onDesk = whatIf == null && !asWatched;
        if (onDesk && Optional.ofNullable(screen).orElseGet(Screens::best) == ScreenChoice.WINDOW) {
            Optional<Integer> shown = onDesk(choices.settings(), units).show(file, wish());
            if (shown.isPresent()) return shown.get();
            screen = Screens.hasTerminal() ? ScreenChoice.TERMINAL : ScreenChoice.LINES;
        }
        Session session = Answers.orRefuse(JournalReader.read(file), Exit.FILE);
        session.problems().forEach(common.err()::println);
        if (whatIf != null) return whatIf(session, units).code();
        Told told = new Told(session);
        SessionSnapshot last = show(session, told, choices, units);
        PrintWriter out = common.out();
        out.println(ClosingLine.of(last.setup(), last.tally(), units));
        HoldLine.closing(last.setup(), last.state()).ifPresent(out::println);
        AgainWords.links(
                        session.header().setup().beginning(),
                        MadeAgain.from(file, session.header().session()))
                .forEach(out::println);
        SurvivedWords.closing(last, units, session.header().zone()).forEach(out::println);
        Bowl bowl = last.setup().bowl();
        out.println(
                CommandText.OF_THE_BOWL.say(BowlLine.notice(bowl, last.state().coasting())
                        .orElseGet(() -> BowlLine.of(bowl, last.state().coasting(), units))));
        told.crystals().forEach(out::println);
        if (toSeconds == null) causes(session, units).forEach(out::println);
        if (toSeconds == null) told.report(out);
        boolean damaged = !session.problems().isEmpty();
        return (damaged || (toSeconds == null && told.differs()) ? Exit.ANSWER_IS_NO : Exit.DONE).code();
    }

    private Exit whatIf(Session session, Units units) throws Refusal {
        WhatIfQuestion question = WhatIfQuestion.parse(whatIf, units);
        if (ofLift != null && ofLift < 1) {
            throw new Refusal(Exit.NOT_UNDERSTOOD, CommandText.OF_LIFT_WAS_NOTHING_WAS_DONE.say(ofLift));
        }
        PastBatch batch = PastBatch.of(
                session.header().setup(),
                session.header().start(),
                session.inputs().map(Recorded::input).toList());
        int lift =
                ofLift != null ? ofLift : batch.mainLift().map(PastLift::number).orElse(1);
        Answer answer = Rerun.of(batch, question.of(lift));
        new WhatIfWords(units, session.header().zone(), batch.setup().recipe())
                .lines(answer)
                .forEach(common.out()::println);
        return answer instanceof Answer.Refused ? Exit.ANSWER_IS_NO : Exit.DONE;
    }

    private static List<String> causes(Session session, Units units) {
        return new CauseWords(units, session.header().zone()).lines(EarlierBatch.causes(session));
    }

    private ReplayOnDesk onDesk(Settings settings, Units units) {
        return new ReplayOnDesk(common.out(), common.err(), settings, units);
    }

    private ReplayOnDesk.Wish wish() throws Refusal {
        Optional<WatchSpeed> pace = speed == null ? Optional.empty() : Optional.of(WatchSpeed.parse(speed));
        return new ReplayOnDesk.Wish(fromSeconds, Optional.ofNullable(toSeconds), pace);
    }

    private void checkSpan() throws Refusal {
        double to = toSeconds == null ? LONGEST_SECONDS : toSeconds;
        if (fromSeconds >= 0 && to >= fromSeconds && to <= LONGEST_SECONDS) return;
        throw new Refusal(
                Exit.NOT_UNDERSTOOD, CommandText.FROM_WAS_AND_TO_NOTHING_WAS_REPLAY_COMMAND.say(fromSeconds, to));
    }

    private SessionSnapshot show(Session session, Told told, Choices choices, Units units)
            throws Refusal, InterruptedException {
        Setup setup = session.header().setup();
        Instant start = session.header().start();
        WatchSpeed wish = speed == null ? WatchSpeed.USUAL : WatchSpeed.parse(speed);
        boolean unpaced = wish.asFastAsPossible() || screen == ScreenChoice.NONE;
        SessionClock clock = new SessionClock(start, wish.factor().orElse(USUAL_SPEED), System::nanoTime);
        Duration from = Duration.ofMillis(Math.round(1000 * fromSeconds));
        Optional<Instant> to = Optional.ofNullable(toSeconds).map(s -> start.plusMillis(Math.round(1000 * s)));
        TapeInputs tape = new TapeInputs(
                session.inputs().toList(), start.plus(from), to, unpaced ? Optional.empty() : Optional.of(clock));
        SessionLoop loop = new SessionLoop(setup, start, tape, told, List.of(), System::nanoTime);
        CountDownLatch over = new CountDownLatch(1);
        Thread player = new Thread(
                () -> {
                    try {
                        loop.run();
                    } finally {
                        over.countDown();
                    }
                },
                "session");
        player.start();
        Screens screens = new Screens(
                common.out(), common.err(), choices.theme(), choices.settings().motion());
        screens.show(
                Optional.ofNullable(screen),
                feed(loop, clock, tape, over, units, choices.keys(), session),
                () -> elapsed(loop.snapshot()));
        tape.stop();
        player.join();
        return loop.snapshot();
    }

    private static ScreenFeed feed(
            SessionLoop loop,
            SessionClock clock,
            TapeInputs tape,
            CountDownLatch over,
            Units units,
            KeyMap keys,
            Session session) {
        Look look = new Look(
                units,
                session.header().zone(),
                List.of(new Mark(CommandText.REPLAY_MARK.say(), true)),
                keys,
                keys.fill(CommandText.FASTER_FASTER_SLOWER_SLOWER.say()),
                Optional.empty(),
                Optional.of(CommandText.REPLAY_OF_WHAT_THE_ENGINE_SAYS.say(
                        session.header().session())),
                Look.Asking.POINTLESS);
        return new ScreenFeed(
                () -> WatchModel.picture(loop.snapshot(), look),
                // A replay that waits for its next reading is not hanging; only a live session is watched for that.
                System::nanoTime,
                System::nanoTime,
                ScreenFeed.CharTaker.NOBODY,
                keys,
                key -> press(key, clock, tape),
                tape::stop,
                () -> over.getCount() == 0,
                () -> false);
    }

    private static void press(Key key, SessionClock clock, TapeInputs tape) {
        if (key == Key.FASTER) clock.runAt(Math.min(100, 2 * clock.speed()));
        if (key == Key.SLOWER) clock.runAt(Math.max(1, clock.speed() / 2));
        if (key == Key.QUIT) tape.stop();
    }

    private static Duration elapsed(SessionSnapshot snapshot) {
        return Duration.between(snapshot.state().started(), snapshot.state().at());
    }
}
