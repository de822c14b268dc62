package fifthform.monitor.store;

import static org.junit.jupiter.api.Assertions.fail;

import fifthform.curves.alarm.Priority;
import fifthform.curves.bowlcheck.OtherBowl;
import fifthform.curves.crystal.SeedRange;
import fifthform.curves.crystal.SeedWord;
import fifthform.curves.cue.CueId;
import fifthform.curves.engine.Event;
import fifthform.curves.engine.Event.AlarmCleared;
import fifthform.curves.engine.Event.AlarmRaised;
import fifthform.curves.engine.Event.AlarmSeen;
import fifthform.curves.engine.Event.BowlDoubted;
import fifthform.curves.engine.Event.BowlSeen;
import fifthform.curves.engine.Event.CueEnded;
import fifthform.curves.engine.Event.CueGiven;
import fifthform.curves.engine.Event.LagMeasured;
import fifthform.curves.engine.Event.OtherCompared;
import fifthform.curves.engine.Event.PhaseChanged;
import fifthform.curves.engine.Event.ProbeBack;
import fifthform.curves.engine.Event.ProbeLost;
import fifthform.curves.engine.Event.ReadingDoubted;
import fifthform.curves.engine.Event.SeedJudged;
import fifthform.curves.engine.Event.SeedLost;
import fifthform.curves.engine.Event.Turned;
import fifthform.curves.input.AlarmId;
import fifthform.curves.input.Input;
import fifthform.curves.input.MakerAction.AlarmAcknowledged;
import fifthform.curves.input.MakerAction.AlarmShelved;
import fifthform.curves.input.MakerAction.BowlConfirmed;
import fifthform.curves.input.MakerAction.BowlMoved;
import fifthform.curves.input.MakerAction.Noted;
import fifthform.curves.input.MakerAction.OtherThermometer;
import fifthform.curves.input.MakerAction.PhaseConfirmed;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.input.MakerAction.ProbePutBack;
import fifthform.curves.input.MakerAction.ProbeTakenOut;
import fifthform.curves.input.MakerAction.SampleProved;
import fifthform.curves.input.MakerAction.SeedAdded;
import fifthform.curves.input.MakerAction.SetupChanged;
import fifthform.curves.input.MakerAction.StirringSaid;
import fifthform.curves.input.MakerAction.Undone;
import fifthform.curves.input.ProbeFault;
import fifthform.curves.input.Sample;
import fifthform.curves.input.StoreTrouble;
import fifthform.curves.input.Tick;
import fifthform.curves.recipe.Phase;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.recipe.RecipeText;
import fifthform.curves.setup.Approach;
import fifthform.curves.setup.Beginning;
import fifthform.curves.setup.Bowl;
import fifthform.curves.setup.BowlAnswers;
import fifthform.curves.setup.BowlMaterial;
import fifthform.curves.setup.Correction;
import fifthform.curves.setup.LearnedCoast;
import fifthform.curves.setup.Origin;
import fifthform.curves.setup.ProbeId;
import fifthform.curves.setup.ProbeSetup;
import fifthform.curves.setup.Role;
import fifthform.curves.setup.Setup;
import fifthform.curves.setup.Usual;
import fifthform.curves.signal.Doubt;
import fifthform.curves.situation.Reason;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** An invented batch that holds every kind of line once; nothing in it was measured. */
final class Demo {
    static final Instant START = Instant.parse("2026-02-03T14:15:16.123456789Z");
    static final ProbeId BOWL = new ProbeId("bowl");

    static final Recipe RECIPE =
            RecipeText.parse("demo", """
                    id = demo
                    name = Demo № 1
                    basis = invented for tests
                    cocoa butter = 35.7 %  # invented
                    milk fat = 2.3 %
                    sugar = 30 %
                    other solids = 32 %
                    melt low = 45 C
                    melt high = 50 C
                    melt hold = 5 min
                    cool low = 27 C
                    cool high = 28 C
                    cool hold = 90.5 s
                    work low = 31 C  # invented
                    work high = 32 C
                    warn = 32.5 C
                    melt-out = 33.8 C
                    scorch = 55 C
                    bath = 45 C
                    """).fold(recipe -> recipe, problems -> fail(problems.toString()));

    static final Setup SETUP = new Setup(
            RECIPE,
            new Bowl(
                    "blue",
                    BowlMaterial.STEEL,
                    OptionalDouble.of(812.5),
                    Optional.of(new LearnedCoast(41.25, 0.3, 7)),
                    new BowlAnswers(new Usual(3, 2.75, 0.125), Usual.NEVER, new Usual(1, -1.5, 0))),
            List.of(
                    new ProbeSetup(BOWL, Role.BOWL, "text-lines", "/dev/demo0", new Correction(1.01, -0.35, 0.2), 4),
                    new ProbeSetup(
                            new ProbeId("bath"), Role.BATH, "text-lines", "/dev/demo1", Correction.UNCHECKED, 6.5)),
            Duration.ofMillis(3500),
            OptionalDouble.of(38),
            OptionalDouble.empty(),
            Origin.SIMULATED,
            Approach.ONE_LIFT,
            OptionalDouble.of(60),
            Beginning.WHOLE,
            Optional.empty());

    static final SessionHeader HEADER =
            new SessionHeader("0.1.0", "demo", "2026-02-03-151516-demo", START, ZoneOffset.ofHours(1), SETUP);

    static final List<Input> INPUTS = List.of(
            new Tick(at(0)),
            new Sample(at(0.5), BOWL, 45.123456, 0.002887, OptionalDouble.of(23.5), OptionalDouble.of(0.913)),
            new Sample(at(1.25), BOWL, -0.1, 0.29, OptionalDouble.empty(), OptionalDouble.empty()),
            new ProbeFault(START.plusNanos(1_250_000_001), BOWL, ProbeFault.Cause.OPEN_CIRCUIT),
            new StoreTrouble(at(2), StoreTrouble.What.CANNOT_WRITE),
            new BowlMoved(at(3), Place.COLD_WATER),
            new StirringSaid(at(3), StirringSaid.Stirring.STILL),
            new SeedAdded(at(4), 12.5),
            new PhaseConfirmed(at(5), Phase.REWARM),
            new AlarmAcknowledged(at(6), AlarmId.HEADING_OVER),
            new AlarmShelved(at(7), AlarmId.TOO_COOL, Duration.ofMinutes(5)),
            new SampleProved(at(8), SampleProved.Verdict.NOT_IN_TEMPER),
            new Noted(at(9), "\"too thick\" \\ café\n🍫\ttaste"),
            new ProbeTakenOut(at(10)),
            new ProbePutBack(at(11)),
            new OtherThermometer(at(12), 31.9),
            new BowlConfirmed(at(12)),
            new SetupChanged(at(13), SETUP),
            new Undone(at(14), 6));

    static final List<Event> EVENTS = List.of(
            new PhaseChanged(at(1), Phase.MELT, Phase.COOL),
            new BowlSeen(at(2), Place.TABLE, BowlSeen.Evidence.INFERRED),
            new AlarmRaised(at(3), AlarmId.HEADING_OVER, Priority.URGENT, OptionalDouble.of(33.4)),
            new AlarmRaised(at(3), AlarmId.NO_READING, Priority.PROMPT, OptionalDouble.empty()),
            new AlarmCleared(at(4), AlarmId.HEADING_OVER),
            new AlarmSeen(at(5), AlarmId.NO_READING),
            new CueGiven(at(6), CueId.GET_READY, OptionalDouble.of(10)),
            new CueGiven(at(6), CueId.LIFT_NOW, OptionalDouble.empty()),
            new CueGiven(
                    at(7),
                    CueId.PUT_BACK,
                    OptionalDouble.of(8),
                    Optional.of(new Reason(
                            Reason.Rule.SIZED_BY_EARLIER_DIPS,
                            Map.of(Reason.Figure.AIM_C, 31.4, Reason.Figure.DIP_K_PER_S, 0.0503)))),
            new CueEnded(at(7), CueId.LIFT_NOW),
            new Turned(at(8), 31.625, 0.875),
            new ProbeLost(at(9), BOWL, ProbeFault.Cause.UNPLUGGED),
            new ProbeBack(at(10), BOWL, 4.25),
            new ReadingDoubted(at(11), BOWL, Doubt.OUT_OF_CHOCOLATE),
            new LagMeasured(at(12), BOWL, 3.25, 0.125),
            new OtherCompared(at(13), 31.9, OptionalDouble.of(-0.375), 2.125),
            new OtherCompared(at(14), 31.9, OptionalDouble.empty(), 2),
            new BowlDoubted(at(14), OtherBowl.HEAVIER),
            new SeedJudged(at(15), SeedWord.ENOUGH, true, new SeedRange(8.5 / 100, 6.25 / 100, 0.75 / 100)),
            new SeedLost(
                    at(16),
                    35.125,
                    92.5,
                    new SeedRange(4.5 / 100, 2.0 / 100, 0.75 / 100),
                    new SeedRange(1.5 / 100, 0.375 / 100, 0)));

    private Demo() {}

    static Instant at(double seconds) {
        return START.plusMillis(Math.round(seconds * 1000));
    }
}
