package fifthform.monitor.app;

import fifthform.curves.input.Input;
import fifthform.curves.setup.Approach;
import fifthform.curves.setup.Beginning;
import fifthform.curves.setup.Bowl;
import fifthform.curves.setup.Holding;
import fifthform.curves.setup.Origin;
import fifthform.curves.setup.ProbeSetup;
import fifthform.curves.setup.Role;
import fifthform.monitor.intake.LiveSource.Ticking;
import fifthform.monitor.intake.PacedSource;
import fifthform.monitor.intake.SessionClock;
import fifthform.monitor.practice.PracticePace;
import fifthform.monitor.session.SessionListener;
import fifthform.probe.link.ByteLink;
import fifthform.probe.link.LinkException;
import fifthform.probe.link.LinkSource;
import fifthform.probe.reader.ProbeLine;
import fifthform.simulator.device.RunningKitchen;
import fifthform.simulator.scenario.Scenario;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;

/** A simulated bowl with a simulated maker, through real bytes. */
final class PracticeProbe implements ProbeChoice {
    private final Scenario scenario;
    private final double speed;
    private final PracticePace.AtCues atCues;

    /** Practice of this scenario at {@code speed} times the speed of life. */
    PracticeProbe(Scenario scenario, double speed, PracticePace.AtCues atCues) {
        this.scenario = Objects.requireNonNull(scenario, "scenario");
        this.speed = speed;
        this.atCues = Objects.requireNonNull(atCues, "atCues");
    }

    @Override
    public Origin origin() {
        return Origin.SIMULATED;
    }

    @Override
    public List<ProbeSetup> probes() {
        return probes(scenario);
    }

    static List<ProbeSetup> probes(Scenario scenario) {
        String place = "practice: " + scenario.id();
        String talk = scenario.bowlAdapter().language().talk().toString();
        return List.of(
                Setups.probe(Setups.BOWL, Role.BOWL, talk, place),
                Setups.probe(Setups.BATH, Role.BATH, Protocols.TEXT, place));
    }

    @Override
    public Approach approach() {
        return scenario.habits().plan().approach();
    }

    @Override
    public Beginning beginning() {
        return scenario.habits().plan().beginning();
    }

    @Override
    public Optional<Holding> holding() {
        return scenario.habits().plan().holding();
    }

    @Override
    public Optional<Bowl> bowl() {
        return Optional.of(scenario.bowl());
    }

    @Override
    public Optional<String> chocolate() {
        return Optional.of(scenario.chocolate());
    }

    @Override
    public double usualSpeed() {
        return speed;
    }

    @Override
    public Wiring wire(SessionClock clock, Consumer<Input> hands) throws Refusal {
        RunningKitchen kitchen = scenario.start(clock.instant());
        PracticePace pace = new PracticePace(clock, speed, atCues);
        SessionListener maker = (snapshot, events) -> {
            events.forEach(kitchen::told);
            // This maker tells by key what the hands do, as a maker well may; the curve would show it a little later.
            kitchen.takePresses().forEach(hands);
        };
        return wired(scenario, kitchen, clock, List.of(maker, pace), speed(pace));
    }

    /** A kitchen's two lines, each at the kitchen's time. */
    static Wiring wired(
            Scenario scenario,
            RunningKitchen kitchen,
            SessionClock clock,
            List<SessionListener> listeners,
            KeyDesk.Speed keys)
            throws Refusal {
        return new Wiring(
                List.of(
                        new ProbeLine(
                                "bowl",
                                new PacedSource(inStep(kitchen, clock), clock),
                                scenario.bowlAdapter().language().protocol(),
                                Map.of(ProbeLine.FIRST_TO_SPEAK, Setups.BOWL)),
                        new ProbeLine(
                                "bath",
                                new PacedSource(kitchen.bathSource(), clock),
                                Protocols.named(Protocols.TEXT).protocol(),
                                Map.of(ProbeLine.FIRST_TO_SPEAK, Setups.BATH))),
                listeners,
                keys,
                // At thirty times life a hiccup of this computer is a long silence in the kitchen: let the bytes tell
                // time.
                Ticking.BY_THE_DATA);
    }

    /** The speed keys. */
    static KeyDesk.Speed speed(PracticePace pace) {
        return new KeyDesk.Speed() {
            @Override
            public void faster() {
                pace.faster();
            }

            @Override
            public void slower() {
                pace.slower();
            }
        };
    }

    /**
     * The bowl's line. While it is unplugged nobody reads, and a kitchen that only moves when read would stand still: each
     * further try to open it lets the kitchen catch up with the session. Not the first: what this computer needs to begin is
     * no silence in the kitchen.
     */
    private static LinkSource inStep(RunningKitchen kitchen, SessionClock clock) {
        LinkSource bowl = kitchen.bowlSource();
        return new LinkSource() {
            private boolean tried;

            @Override
            public String place() {
                return bowl.place();
            }

            @Override
            public ByteLink open() throws LinkException {
                if (tried) kitchen.advanceTo(clock.instant());
                tried = true;
                return bowl.open();
            }
        };
    }
}
