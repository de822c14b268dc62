package fifthform.curves.engine;

import fifthform.curves.crystal.Temper;
import fifthform.curves.estimate.Estimate;
import fifthform.curves.input.Input;
import fifthform.curves.input.MakerAction;
import fifthform.curves.input.MakerAction.AlarmAcknowledged;
import fifthform.curves.input.MakerAction.AlarmShelved;
import fifthform.curves.input.MakerAction.BowlConfirmed;
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
import fifthform.curves.recipe.Phase;
import fifthform.curves.setup.Setup;
import fifthform.curves.situation.ProbePlace;
import fifthform.curves.thermocouple.Budget;
import java.time.Duration;
import java.util.Optional;
import java.util.OptionalDouble;

/** What an input says by itself, before anything is concluded from it. */
final class Telling implements Input.Cases<State>, MakerAction.Acts<State> {
    /** The screen offers to take an act back for ten seconds; hands may be slower. Own choice. */
    private static final Duration UNDO_WITHIN = Duration.ofSeconds(30);

    /** A working range is about a kelvin wide. */
    private static final double MATTERS_KELVIN = 1;

    private final Setup setup;
    private final State heard;

    /** @param heard the state so far, with the input counted and its time taken */
    Telling(Setup header, State heard) {
        this.setup = heard.setupInForce(header);
        this.heard = heard;
    }

    @Override
    public State sample(Sample sample) {
        Sample read = sample.heardAt(heard.at());
        State judged = heard.withTracks(heard.tracks().with(read, setup, heard.probe(), Around.of(heard, setup)));
        return ProbeSight.noticed(judged, setup);
    }

    @Override
    public State fault(ProbeFault fault) {
        return heard.withTracks(heard.tracks().with(fault));
    }

    @Override
    public State tick(Tick tick) {
        return heard;
    }

    @Override
    public State storeTrouble(StoreTrouble trouble) {
        return heard.withTold(heard.told().withStoreTrouble(trouble.what()));
    }

    @Override
    public State action(MakerAction action) {
        return action.act(this);
    }

    @Override
    public State bowlMoved(BowlMoved action) {
        State undoable = undoably();
        return undoable.withTold(undoable.told().withMove(new BowlMoved(heard.at(), action.to())))
                .withBatch(heard.batch().moved(action.to(), heard.at()));
    }

    /** Melting or cooling again is also a choice after a melt-out. */
    @Override
    public State phaseConfirmed(PhaseConfirmed action) {
        // Of bars that failed no word stands for the melt.
        boolean saidMelted = heard.batch().phase() == Phase.MELT
                && action.phase() == Phase.COOL
                && setup.beginning().again().isEmpty();
        State confirmed = undoably(saidMelted ? heard.crystals() : Optional.empty())
                .withBatch(heard.batch().confirmed(action.phase(), heard.at()))
                .withCrystals(saidMelted ? heard.crystals().map(Temper::saidMelted) : heard.crystals());
        return action.phase() == Phase.MELT || action.phase() == Phase.COOL
                ? confirmed.withAlarms(heard.alarms().chosen())
                : confirmed;
    }

    @Override
    public State bowlConfirmed(BowlConfirmed action) {
        return heard.withCoasting(heard.coasting().confirmed());
    }

    @Override
    public State setupChanged(SetupChanged action) {
        State undoable = undoably();
        return undoable.withTold(undoable.told().withSetup(action.setup()));
    }

    @Override
    public State probeTakenOut(ProbeTakenOut action) {
        State undoable = undoably();
        return undoable.withTold(undoable.told().withProbeOut(heard.at()))
                .withTracks(heard.tracks().takenOut(setup.bowlProbe().id()));
    }

    @Override
    public State probePutBack(ProbePutBack action) {
        State undoable = undoably();
        return undoable.withTold(undoable.told().withProbeIn())
                .withTracks(heard.tracks().putBack(setup.bowlProbe().id(), heard.at()));
    }

    @Override
    public State alarmAcknowledged(AlarmAcknowledged action) {
        return heard.withAlarms(heard.alarms().seen(action.alarm(), heard.at()));
    }

    @Override
    public State alarmShelved(AlarmShelved action) {
        return heard.withAlarms(heard.alarms().shelved(action.alarm(), action.duration(), heard.at()));
    }

    @Override
    public State seedAdded(SeedAdded action) {
        return heard.withAlarms(heard.alarms().chosen())
                .withCues(heard.cues().seeded(action.grams()))
                .withCrystals(heard.crystals().map(c -> c.seeded(setup, action.grams())));
    }

    @Override
    public State sampleProved(SampleProved action) {
        State chosen = heard.withTold(heard.told().withProved(action))
                .withAlarms(heard.alarms().chosen());
        return action.verdict() == SampleProved.Verdict.IN_TEMPER
                ? chosen.withCrystals(heard.crystals().map(c -> c.provedKept(setup)))
                : chosen;
    }

    @Override
    public State stirringSaid(StirringSaid action) {
        return heard.withCrystals(heard.crystals().map(c -> c.said(action.stirring())));
    }

    @Override
    public State noted(Noted action) {
        return heard;
    }

    @Override
    public State otherThermometer(OtherThermometer action) {
        Optional<Estimate> trusted = heard.probe() == ProbePlace.OUT
                ? Optional.empty()
                : heard.estimate().filter(Estimate::isUsable);
        OptionalDouble above = trusted.map(e -> OptionalDouble.of(action.celsius() - e.chocolateCelsius()))
                .orElse(OptionalDouble.empty());
        double instrument = heard.budget(setup).map(Budget::standardKelvin).orElse(0.0);
        double random = trusted.map(Estimate::sigmaKelvin).orElse(0.0);
        double doubt = 2 * Math.sqrt(instrument * instrument + random * random);
        // Of an unchecked probe a difference that matters is reason enough to check it, though it may be as wrong as
        // that.
        double within = setup.bowlProbe().correction().isChecked() ? doubt : Math.min(doubt, MATTERS_KELVIN);
        return heard.withTold(heard.told().withOther(new OtherReading(heard.at(), action.celsius(), above, within)));
    }

    /** Only the latest act can be taken back, and only once. */
    @Override
    public State undone(Undone action) {
        return heard.undoable()
                .filter(act -> act.sequence() == action.sequence())
                // Later the batch has gone on, and a wet hand on the key would throw it back.
                .filter(act -> Duration.between(act.at(), heard.at()).compareTo(UNDO_WITHIN) <= 0)
                .map(act -> heard.withTold(heard.told().before(act))
                        .withBatch(act.batch())
                        .withCoasting(heard.coasting().awaitingAs(act.coasting()))
                        .withCrystals(act.crystals().isPresent() ? act.crystals() : heard.crystals()))
                .orElse(heard);
    }

    /** The state that remembers how things stood, in case this act is taken back. */
    private State undoably() {
        return undoably(Optional.empty());
    }

    private State undoably(Optional<Temper> crystals) {
        Undoable act = new Undoable(
                heard.inputs(),
                heard.at(),
                heard.batch(),
                heard.coasting(),
                heard.told().changedSetup(),
                heard.told().outSince(),
                heard.told().moved(),
                crystals);
        return heard.withTold(heard.told().withUndoable(act));
    }
}
