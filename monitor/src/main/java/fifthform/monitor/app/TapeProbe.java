package fifthform.monitor.app;

import fifthform.curves.input.Input;
import fifthform.curves.setup.Origin;
import fifthform.curves.setup.ProbeSetup;
import fifthform.curves.setup.Role;
import fifthform.monitor.intake.LiveSource.Ticking;
import fifthform.monitor.intake.PacedSource;
import fifthform.monitor.intake.SessionClock;
import fifthform.monitor.notebook.BatchKind;
import fifthform.probe.Spoken;
import fifthform.probe.link.LinkSource;
import fifthform.probe.link.TapeSource;
import fifthform.probe.reader.ProbeLine;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Consumer;

/** Bytes recorded earlier, in their own time. */
final class TapeProbe implements ProbeChoice {
    /** How the place of recorded bytes begins in a set-up. */
    static final String PLACE = BatchKind.RECORDED_PLACE;

    private static final double FASTEST = 60;

    private final Path file;
    private final Spoken spoken;
    private final Duration interval;
    private final WatchSpeed speed;

    /**
     * Recorded bytes.
     *
     * @param spoken how the adapter talked; what it tells of its converter holds for its bytes too
     * @param interval between the lines of a plain text file
     */
    TapeProbe(Path file, Spoken spoken, Duration interval, WatchSpeed speed) {
        this.file = Objects.requireNonNull(file, "file");
        this.spoken = Objects.requireNonNull(spoken, "spoken");
        this.interval = Objects.requireNonNull(interval, "interval");
        this.speed = Objects.requireNonNull(speed, "speed");
    }

    @Override
    public Origin origin() {
        return RawBytes.saysSimulated(file) ? Origin.SIMULATED : Origin.REAL;
    }

    @Override
    public List<ProbeSetup> probes() {
        return List.of(Setups.unchecked(Setups.BOWL, Role.BOWL, spoken, PLACE + file.getFileName()));
    }

    @Override
    public double usualSpeed() {
        return speed.factor().orElse(1);
    }

    @Override
    public Wiring wire(SessionClock clock, Consumer<Input> hands) throws Refusal {
        TapeSource tape = Answers.orRefuse(TapeSource.read(file, clock.instant(), interval), Exit.FILE);
        boolean paced = !speed.asFastAsPossible();
        LinkSource source = paced ? new PacedSource(tape, clock) : tape;
        ProbeLine line =
                new ProbeLine("bowl", source, spoken.protocol(), Map.of(ProbeLine.FIRST_TO_SPEAK, Setups.BOWL));
        return new Wiring(List.of(line), List.of(), keys(clock), Ticking.BY_THE_DATA);
    }

    private static KeyDesk.Speed keys(SessionClock clock) {
        return new KeyDesk.Speed() {
            @Override
            public void faster() {
                clock.runAt(Math.min(FASTEST, 2 * clock.speed()));
            }

            @Override
            public void slower() {
                clock.runAt(Math.max(1, clock.speed() / 2));
            }
        };
    }
}
