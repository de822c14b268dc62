package fifthform.monitor.app;

import fifthform.curves.check.Problem;
import fifthform.monitor.replay.CauseFindings;
import fifthform.monitor.replay.Finding;
import fifthform.monitor.replay.Recording;
import fifthform.monitor.replay.ReplayDesk;
import fifthform.monitor.settings.Settings;
import fifthform.monitor.settings.Units;
import fifthform.monitor.store.SessionFiles;
import fifthform.monitor.store.StoreException;
import fifthform.monitor.texts.CommandText;
import fifthform.monitor.view.ReplayFeed;
import fifthform.monitor.view.ReplayWindow;
import fifthform.monitor.view.Theme;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** A recorded session in the Replay window. */
final class ReplayOnDesk {
    private final PrintWriter out;
    private final PrintWriter err;
    private final Settings settings;
    private final Units units;

    ReplayOnDesk(PrintWriter out, PrintWriter err, Settings settings, Units units) {
        this.out = out;
        this.err = err;
        this.settings = settings;
        this.units = units;
    }

    /** What part of it, and how fast. */
    record Wish(double fromSeconds, Optional<Double> toSeconds, Optional<WatchSpeed> speed) {}

    /**
     * Shows it until the window is closed.
     *
     * @return the exit code; empty where there is no window, which has been said then
     */
    Optional<Integer> show(Path file, Wish wish) throws Refusal {
        Recording recording = Answers.orRefuse(Recording.read(file), Exit.FILE);
        recording.problems().forEach(err::println);
        ReplayDesk desk = desk(recording);
        desk.startAt(nanos(wish.fromSeconds()), wish.toSeconds().map(ReplayOnDesk::nanos));
        wish.speed()
                .ifPresent(speed -> desk.startPace(speed.asFastAsPossible() ? OptionalDouble.empty() : speed.factor()));
        desk.begin();
        Optional<String> refused = ReplayWindow.open(new ReplayFeed(desk, () -> others(file)), theme());
        desk.close();
        if (refused.isPresent()) {
            err.println(CommandText.NO_WINDOW_GOING_ON_WITHOUT_IT.say(refused.get()));
            return Optional.empty();
        }
        for (Finding finding : desk.findings())
            out.println(finding.words() + (finding.words().endsWith(".") ? "" : "."));
        out.println(desk.agreement());
        boolean no = !recording.problems().isEmpty() || desk.differs();
        return Optional.of((no ? Exit.ANSWER_IS_NO : Exit.DONE).code());
    }

    /**
     * Shows it in a further window, from within one that is open; the caller is on the FX thread.
     *
     * @return why it cannot be shown; empty where it is
     */
    Optional<String> showFurther(Path file) {
        return Recording.read(file)
                .fold(
                        recording -> {
                            ReplayDesk desk = desk(recording);
                            desk.begin();
                            ReplayWindow.openFurther(new ReplayFeed(desk, () -> others(file)), theme());
                            return Optional.empty();
                        },
                        problems -> Optional.of(
                                problems.stream().map(Problem::toString).collect(Collectors.joining(" "))));
    }

    private ReplayDesk desk(Recording recording) {
        CauseFindings causes = new CauseFindings(recording, units);
        return new ReplayDesk(recording, units, causes, causes, InstantSource.system());
    }

    private Theme theme() {
        return Choices.theme(settings);
    }

    private static long nanos(double seconds) {
        return Math.round(1e9 * seconds);
    }

    /** The other sessions of the same folder, newest first; none where it cannot be listed. */
    private static List<Path> others(Path file) {
        Path folder = file.toAbsolutePath().getParent();
        try {
            return new SessionFiles(folder)
                    .all().stream()
                            .filter(other -> !other.getFileName().equals(file.getFileName()))
                            .toList();
        } catch (StoreException e) {
            return List.of();
        }
    }
}
