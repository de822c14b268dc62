package fifthform.simulator.alarms;

import fifthform.curves.cue.CueId;
import fifthform.curves.engine.Event;
import fifthform.curves.engine.Event.AlarmCleared;
import fifthform.curves.engine.Event.AlarmRaised;
import fifthform.curves.engine.Event.AlarmSeen;
import fifthform.curves.engine.Event.CueGiven;
import fifthform.curves.engine.State;
import fifthform.curves.input.AlarmId;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.recipe.Recipe;
import fifthform.simulator.alarms.AlarmFigures.Course;
import fifthform.simulator.alarms.FalseWarnings.When;
import fifthform.simulator.alarms.MeltOutTruth.Alarm;
import fifthform.simulator.alarms.MeltOutTruth.Melt;
import fifthform.simulator.alarms.MeltOutTruth.Probe;
import fifthform.simulator.bench.Batch;
import fifthform.simulator.bench.Moment;
import fifthform.simulator.bowl.Hands.Towel;
import fifthform.simulator.bowl.ProbePlace;
import fifthform.simulator.bowl.Spot;
import fifthform.simulator.maker.Acts;
import fifthform.simulator.scenario.ProbeScale;
import fifthform.simulator.scenario.Scenario;
import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Follows one batch, moment by moment, and counts what its alarms were worth. */
final class AlarmWatch {
    private static final Set<AlarmId> OF_MELT_OUT = EnumSet.of(AlarmId.NEAR_MELT_OUT, AlarmId.MELT_OUT);

    /** As far below the range as {@code too-cool} begins, for as long as an alarm may stand. */
    private static final double THICK_KELVIN = 0.5;

    private static final long THICK_STEPS = 10 * 60 * 2;

    private final Recipe recipe;
    private final ProbeScale scale;
    private final TruePhase phase;
    private final Annunciations ears = new Annunciations();
    private final LiftWords lifts;
    private final MeltOutTruth meltOuts;
    private final FalseWarnings falseWarnings;
    private long moments;
    private long workMoments;
    private long phaseRight;
    private long placeRight;
    private long cues;
    private Acts.Probe lastProbe = Acts.Probe.IN_THE_CHOCOLATE;
    private long thickMoments;
    private boolean reached;
    private boolean passed;

    AlarmWatch(Scenario scenario, Recipe recipe) {
        this.recipe = recipe;
        this.scale = ProbeScale.of(scenario);
        this.phase = new TruePhase(recipe);
        this.lifts = new LiftWords(scenario.kitchen(), scale, recipe.work().range());
        this.meltOuts = new MeltOutTruth(recipe);
        this.falseWarnings = new FalseWarnings(recipe.meltOut().warnCelsius());
    }

    /**
     * One step of the batch.
     *
     * @param probe where its probe was
     */
    void saw(Moment before, Moment after, Acts.Probe probe, List<Event> events) {
        State state = ((SeenByMaker) after.program()).engine().state();
        double shown = scale.shows(after.kitchen().bulkCelsius());
        Instant at = after.at();
        Spot spot = after.hands().spot();
        phase.saw(at, spot, shown);
        lifts.saw(after);
        boolean acted = spot != before.hands().spot() || after.hands().towel() == Towel.WIPING || probe != lastProbe;
        lastProbe = probe;
        if (acted) ears.acted(at);
        for (Event event : events) heard(event, after);
        ears.tick(at);
        falseWarnings.saw(at, shown);
        boolean stands = state.alarms().of(AlarmId.MELT_OUT).state().isStanding();
        boolean reads = probe == Acts.Probe.IN_THE_CHOCOLATE && after.hands().probe() == ProbePlace.IN_CHOCOLATE;
        meltOuts.saw(
                at,
                shown,
                phase.leftTheMelt() ? Melt.LEFT : Melt.GOES_ON,
                reads ? Probe.READS : Probe.ELSEWHERE,
                stands ? Alarm.STANDS : Alarm.QUIET);
        count(state, shown, spot, at);
    }

    private void count(State state, double shown, Spot spot, Instant at) {
        moments++;
        if (phase.isWork()) workMoments++;
        if (phase.isRight(state.batch().phase(), at)) phaseRight++;
        if (state.batch().place() == place(spot)) placeRight++;
        reached |= phase.isWork() && shown >= recipe.work().range().lowCelsius();
        passed |= phase.leftTheMelt()
                && phase.isWork()
                && shown >= recipe.meltOut().warnCelsius();
    }

    private void heard(Event event, Moment after) {
        if (event instanceof CueGiven given) {
            cues++;
            if (given.cue() == CueId.LIFT_NOW) lifts.lift(after);
        }
        if (event instanceof AlarmRaised raised) {
            ears.raised(raised);
            When when = phase.isWork() ? When.IN_WORK : When.EARLIER;
            if (OF_MELT_OUT.contains(raised.alarm())) warned(raised, when);
        }
        if (event instanceof AlarmSeen seen) ears.seen(seen.alarm(), seen.at());
        if (event instanceof AlarmCleared cleared) ears.cleared(cleared.alarm(), cleared.at());
    }

    /** While it is being melted on purpose any warning of melt-out is false, however warm. */
    private void warned(AlarmRaised raised, When when) {
        if (phase.leftTheMelt()) falseWarnings.raised(raised.at(), when);
        else falseWarnings.plainlyFalse();
    }

    private static Place place(Spot spot) {
        return switch (spot) {
            case HOT_BATH, WARM_BATH -> Place.BATH;
            case COLD_WATER -> Place.COLD_WATER;
            case TABLE, COOL_CLOTH, WARM_CLOTH, WARM_BOX, FRIDGE -> Place.TABLE;
        };
    }

    AlarmFigures figures(long number) {
        falseWarnings.ended();
        double hoursAStep = Batch.STEP.toMillis() / 3.6e6;
        return new AlarmFigures(
                number,
                reached && !passed ? Course.NORMAL : Course.TROUBLED,
                moments * hoursAStep,
                workMoments * hoursAStep,
                ears.count(),
                ears.mostInTenMinutes(),
                ears.chattering(),
                ears.fleeting(),
                ears.standing(),
                ears.byPriority(),
                ears.byAlarm(),
                cues,
                lifts.leadSeconds(),
                lifts.offBath(),
                lifts.tooSoon(),
                lifts.hoursOff(),
                meltOuts.ended(),
                falseWarnings.all(),
                falseWarnings.inWork(),
                moments,
                phaseRight,
                placeRight);
    }
}
