package fifthform.simulator.maker;

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
import fifthform.simulator.maker.Response.CoolDown;
import fifthform.simulator.maker.Response.FirstDip;
import fifthform.simulator.maker.Response.GoOn;
import fifthform.simulator.maker.Response.OutOfTheWater;
import fifthform.simulator.maker.Response.PutBack;
import fifthform.simulator.maker.Response.TurnBox;
import fifthform.simulator.maker.Response.WarmAir;
import fifthform.simulator.maker.Response.WarmBath;
import java.time.Duration;
import java.util.EnumSet;
import java.util.Optional;
import java.util.OptionalDouble;

/** What a maker who follows the program does when it says something. */
final class Training implements Event.Cases<Optional<Response>> {
    /** Seconds back in the water when the program names none. */
    private static final double USUAL_DIP_SECONDS = 5;

    private static final double LONGEST_DIP_SECONDS = 120;
    private static final Duration ON_THE_CLOTH = Duration.ofSeconds(12);

    @Override
    public Optional<Response> cueGiven(CueGiven event) {
        return toCue(event.cue(), event.figure());
    }

    private static Optional<Response> toCue(CueId cue, OptionalDouble figure) {
        return switch (cue) {
            case MELTED -> Optional.of(GoOn.to(Stage.COOLING, Stage.MELTING));
            case STOP_COOLING -> Optional.of(OutOfTheWater.of(Stage.COOLING, Stage.COOLING, Stage.HOLDING));
            case MELT_FIRST -> Optional.of(GoOn.to(Stage.MELTING, Stage.COOLING));
            case CRYSTALS_ENOUGH -> Optional.of(upwards(figure));
            // A stay is asked for again where it was lifted too soon.
            case WARM_UP ->
                Optional.of(
                        figure.isPresent()
                                ? upwards(figure)
                                : GoOn.to(Stage.WARMING, Stage.HOLDING, Stage.COOLING, Stage.SETTLING));
            case LIFT_NOW, OFF_NOW ->
                Optional.of(OutOfTheWater.of(Stage.WARMING, Stage.WARMING, Stage.SETTLING, Stage.POURING));
            case PUT_BACK -> Optional.of(dip(figure, Stage.HOLDING, Stage.SETTLING, Stage.POURING));
            case TOUCH_OF_WARMTH -> Optional.of(dip(figure, Stage.SETTLING, Stage.POURING));
            case TOUCH_OF_WARM_AIR ->
                Optional.of(
                        new WarmAir(time(figure.orElse(USUAL_DIP_SECONDS)), EnumSet.of(Stage.SETTLING, Stage.POURING)));
            case BOX_WARMER -> Optional.of(new TurnBox(figure.orElse(0), EnumSet.of(Stage.SETTLING, Stage.POURING)));
            case BOX_COOLER -> Optional.of(new TurnBox(-figure.orElse(0), EnumSet.of(Stage.SETTLING, Stage.POURING)));
            case IN_RANGE -> Optional.of(GoOn.to(Stage.POURING, Stage.SETTLING));
            case WEAK_BATH -> Optional.of(new WarmBath(Acts.CUP_OF_HOT_WATER_KELVIN, EnumSet.of(Stage.WARMING)));
            case STIR_ON, GET_READY, SEED_NOW, SEED_OUT, WIPE_AND_STIR, KEEP_FLUID, HOLD_OVER, THICKENS_SOON ->
                Optional.empty();
        };
    }

    /** On to the warm water: until told to lift, or for a first short dip where seconds are named. */
    private static Response upwards(OptionalDouble seconds) {
        if (seconds.isEmpty()) return GoOn.to(Stage.WARMING, Stage.HOLDING, Stage.COOLING);
        return FirstDip.of(time(seconds.getAsDouble()), Stage.HOLDING, Stage.COOLING);
    }

    private static Response dip(OptionalDouble seconds, Stage first, Stage... others) {
        return new PutBack(time(seconds.orElse(USUAL_DIP_SECONDS)), EnumSet.of(first, others));
    }

    private static Duration time(double seconds) {
        return Duration.ofMillis(Math.round(1000 * Math.max(1, Math.min(LONGEST_DIP_SECONDS, seconds))));
    }

    @Override
    public Optional<Response> alarmRaised(AlarmRaised event) {
        return toAlarm(event.alarm());
    }

    private static Optional<Response> toAlarm(AlarmId alarm) {
        return switch (alarm) {
            case HEADING_OVER, OVER_RANGE, NEAR_MELT_OUT, MELT_OUT -> Optional.of(new CoolDown(ON_THE_CLOTH));
            case HEADING_UNDER, OVER_COOLED -> Optional.of(GoOn.to(Stage.HOLDING, Stage.COOLING));
            case TOO_COOL -> Optional.of(dip(OptionalDouble.empty(), Stage.SETTLING, Stage.POURING));
            case MELT_TOO_HOT -> Optional.of(GoOn.to(Stage.COOLING, Stage.MELTING));
            case BATH_HOT, PROBE_FAULT, NO_READING, READING_DOUBTFUL, NOT_RECORDING, PROBE_OUT -> Optional.empty();
        };
    }

    @Override
    public Optional<Response> phaseChanged(PhaseChanged event) {
        return Optional.empty();
    }

    @Override
    public Optional<Response> bowlSeen(BowlSeen event) {
        return Optional.empty();
    }

    @Override
    public Optional<Response> alarmCleared(AlarmCleared event) {
        return Optional.empty();
    }

    @Override
    public Optional<Response> alarmSeen(AlarmSeen event) {
        return Optional.empty();
    }

    @Override
    public Optional<Response> cueEnded(CueEnded event) {
        return Optional.empty();
    }

    @Override
    public Optional<Response> turned(Turned event) {
        return Optional.empty();
    }

    @Override
    public Optional<Response> probeLost(ProbeLost event) {
        return Optional.empty();
    }

    @Override
    public Optional<Response> probeBack(ProbeBack event) {
        return Optional.empty();
    }

    @Override
    public Optional<Response> readingDoubted(ReadingDoubted event) {
        return Optional.empty();
    }

    @Override
    public Optional<Response> lagMeasured(LagMeasured event) {
        return Optional.empty();
    }

    @Override
    public Optional<Response> seedJudged(SeedJudged event) {
        return Optional.empty();
    }

    @Override
    public Optional<Response> seedLost(SeedLost event) {
        return Optional.empty();
    }

    @Override
    public Optional<Response> otherCompared(OtherCompared event) {
        return Optional.empty();
    }

    @Override
    public Optional<Response> bowlDoubted(BowlDoubted event) {
        return Optional.empty();
    }
}
