package fifthform.curves.engine;

import fifthform.curves.alarm.AlarmBank;
import fifthform.curves.input.Input;
import fifthform.curves.input.MakerAction;
import fifthform.curves.input.MakerAction.AlarmAcknowledged;
import fifthform.curves.input.MakerAction.AlarmShelved;
import fifthform.curves.input.MakerAction.BowlMoved;
import fifthform.curves.input.MakerAction.Noted;
import fifthform.curves.input.MakerAction.OtherThermometer;
import fifthform.curves.input.MakerAction.PhaseConfirmed;
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
import fifthform.curves.phase.Batch;
import fifthform.curves.recipe.Phase;
import fifthform.curves.setup.Setup;
import fifthform.curves.situation.ProbePlace;
import java.time.Instant;
import java.util.Optional;

/** What an input says by itself, before anything is concluded from it. */
final class Telling implements Input.Cases<State>, MakerAction.Acts<State> {
    private final Setup setup;
    private final State before;

    Telling(Setup header, State before) {
        this.setup = before.setupInForce(header);
        this.before = before;
    }

    @Override
    public State sample(Sample sample) {
        return with(sample, before.tracks().with(sample, setup));
    }

    @Override
    public State fault(ProbeFault fault) {
        return with(fault, before.tracks().with(fault));
    }

    @Override
    public State tick(Tick tick) {
        return with(tick, before.tracks());
    }

    @Override
    public State storeTrouble(StoreTrouble trouble) {
        Optional<StoreTrouble.What> still =
                trouble.what() == StoreTrouble.What.WRITES_AGAIN ? Optional.empty() : Optional.of(trouble.what());
        State b = before;
        return told(trouble, b.changedSetup(), b.batch(), b.alarms(), b.probe(), still, b.undoable());
    }

    @Override
    public State action(MakerAction action) {
        return action.act(this);
    }

    @Override
    public State bowlMoved(BowlMoved action) {
        return undoably(action, before.changedSetup(), before.batch().moved(action.to(), time(action)), before.probe());
    }

    @Override
    public State phaseConfirmed(PhaseConfirmed action) {
        Batch confirmed = before.batch().confirmed(action.phase(), time(action));
        // Melting or cooling again is a decision about a batch that has lost its crystals.
        boolean decides = action.phase() == Phase.COOL || action.phase() == Phase.MELT;
        State after = undoably(action, before.changedSetup(), confirmed, before.probe());
        return decides ? withAlarms(after, after.alarms().chosen()) : after;
    }

    @Override
    public State setupChanged(SetupChanged action) {
        return undoably(action, Optional.of(action.setup()), before.batch(), before.probe());
    }

    @Override
    public State probeTakenOut(ProbeTakenOut action) {
        return undoably(action, before.changedSetup(), before.batch(), ProbePlace.OUT);
    }

    @Override
    public State probePutBack(ProbePutBack action) {
        return undoably(action, before.changedSetup(), before.batch(), ProbePlace.IN_THE_CHOCOLATE);
    }

    @Override
    public State alarmAcknowledged(AlarmAcknowledged action) {
        return withAlarms(kept(action), before.alarms().seen(action.alarm(), time(action)));
    }

    @Override
    public State alarmShelved(AlarmShelved action) {
        return withAlarms(kept(action), before.alarms().shelved(action.alarm(), action.duration(), time(action)));
    }

    @Override
    public State seedAdded(SeedAdded action) {
        return withAlarms(kept(action), before.alarms().chosen());
    }

    @Override
    public State sampleProved(SampleProved action) {
        return withAlarms(kept(action), before.alarms().chosen());
    }

    @Override
    public State stirringSaid(StirringSaid action) {
        return kept(action);
    }

    @Override
    public State noted(Noted action) {
        return kept(action);
    }

    @Override
    public State otherThermometer(OtherThermometer action) {
        return kept(action);
    }

    /** Only the latest act can be taken back, and only once. */
    @Override
    public State undone(Undone action) {
        Optional<Undoable> back = before.undoable().filter(u -> u.sequence() == action.sequence());
        if (back.isEmpty()) return kept(action);
        Undoable u = back.get();
        State b = before;
        return told(action, u.changedSetup(), u.batch(), b.alarms(), u.probe(), b.storeTrouble(), Optional.empty());
    }

    private State undoably(Input input, Optional<Setup> changedSetup, Batch batch, ProbePlace probe) {
        State b = before;
        Undoable undoable = new Undoable(b.inputs() + 1, b.batch(), b.changedSetup(), b.probe());
        return told(input, changedSetup, batch, b.alarms(), probe, b.storeTrouble(), Optional.of(undoable));
    }

    private State kept(Input input) {
        return with(input, before.tracks());
    }

    private State with(Input input, Tracks tracks) {
        State b = before;
        State same = told(input, b.changedSetup(), b.batch(), b.alarms(), b.probe(), b.storeTrouble(), b.undoable());
        return new State(
                same.inputs(),
                same.started(),
                same.at(),
                same.changedSetup(),
                tracks,
                same.window(),
                same.estimate(),
                same.batch(),
                same.coasting(),
                same.forecast(),
                same.alarms(),
                same.cues(),
                same.probe(),
                same.storeTrouble(),
                same.undoable());
    }

    private State told(
            Input input,
            Optional<Setup> changedSetup,
            Batch batch,
            AlarmBank alarms,
            ProbePlace probe,
            Optional<StoreTrouble.What> storeTrouble,
            Optional<Undoable> undoable) {
        return new State(
                before.inputs() + 1,
                before.started(),
                time(input),
                changedSetup,
                before.tracks(),
                before.window(),
                before.estimate(),
                batch,
                before.coasting(),
                before.forecast(),
                alarms,
                before.cues(),
                probe,
                storeTrouble,
                undoable);
    }

    private static State withAlarms(State s, AlarmBank alarms) {
        return new State(
                s.inputs(),
                s.started(),
                s.at(),
                s.changedSetup(),
                s.tracks(),
                s.window(),
                s.estimate(),
                s.batch(),
                s.coasting(),
                s.forecast(),
                alarms,
                s.cues(),
                s.probe(),
                s.storeTrouble(),
                s.undoable());
    }

    /** Time never goes back: a late input counts as of the moment the engine learns of it. */
    private Instant time(Input input) {
        return input.at().isBefore(before.at()) ? before.at() : input.at();
    }
}
