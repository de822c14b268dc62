package fifthform.monitor.app;

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

/** A simulated bowl, heard through real bytes; whose hands are at it, a subclass says. */
abstract class KitchenProbe implements ProbeChoice {
    private final Scenario scenario;
    private final double speed;
    private final PracticePace.AtCues atCues;

    /** @param speed so many times as fast as life, until the maker says otherwise */
    KitchenProbe(Scenario scenario, double speed, PracticePace.AtCues atCues) {
        this.scenario = Objects.requireNonNull(scenario, "scenario");
        this.speed = speed;
        this.atCues = Objects.requireNonNull(atCues, "atCues");
    }

    final Scenario scenario() {
        return scenario;
    }

    @Override
    public final Origin origin() {
        return Origin.SIMULATED;
    }

    @Override
    public final List<ProbeSetup> probes() {
        String place = "practice: " + scenario.id();
        String talk = scenario.bowlAdapter().language().talk().toString();
        return List.of(
                Setups.probe(Setups.BOWL, Role.BOWL, talk, place),
                Setups.probe(Setups.BATH, Role.BATH, Protocols.TEXT, place));
    }

    @Override
    public final Approach approach() {
        return scenario.habits().plan().approach();
    }

    @Override
    public final Beginning beginning() {
        return scenario.habits().plan().beginning();
    }

    @Override
    public final Optional<Holding> holding() {
        return scenario.habits().plan().holding();
    }

    @Override
    public final Optional<Bowl> bowl() {
        return Optional.of(scenario.bowl());
    }

    @Override
    public final Optional<String> chocolate() {
        return Optional.of(scenario.chocolate());
    }

    @Override
    public final double usualSpeed() {
        return speed;
    }

    /** The kitchen's two lines, each at the kitchen's time; {@code maker} hears the session, and so does the pace. */
    final Wiring wired(RunningKitchen kitchen, SessionClock clock, SessionListener maker) throws Refusal {
        PracticePace pace = new PracticePace(clock, speed, atCues);
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
                List.of(maker, pace),
                keys(pace),
                // At thirty times life a hiccup of this computer is a long silence in the kitchen: let the bytes tell
                // time.
                Ticking.BY_THE_DATA);
    }

    private static KeyDesk.Speed keys(PracticePace pace) {
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
