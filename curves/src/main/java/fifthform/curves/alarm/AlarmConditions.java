package fifthform.curves.alarm;

import fifthform.curves.estimate.Estimate;
import fifthform.curves.forecast.Forecast;
import fifthform.curves.input.AlarmId;
import fifthform.curves.input.ProbeFault.Cause;
import fifthform.curves.recipe.CelsiusRange;
import fifthform.curves.recipe.Phase;
import fifthform.curves.signal.Doubt;
import fifthform.curves.signal.Track;
import fifthform.curves.situation.ProbePlace;
import fifthform.curves.situation.Reason;
import fifthform.curves.situation.Situation;
import java.time.Duration;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/** Looks at a situation and says of each alarm whether its condition holds. */
public final class AlarmConditions {
    /** Faster than any bowl of chocolate over warm water: a tip that comes back from elsewhere. Own choice. */
    private static final double TIP_MOVES_KELVIN_PER_MINUTE = 20;

    private static final Duration OVER_COOLED_AHEAD = Duration.ofSeconds(20);
    private static final Duration MINUTE = Duration.ofSeconds(60);

    /** A tip leans on the wall for about 25 s; a limit that is not the last one may wait for its end. Own choice. */
    private static final Duration GUARD_CONTESTED = Duration.ofSeconds(15);

    /** Nobody waits so long for the last one. Own choice. */
    private static final Duration LIMIT_CONTESTED = Duration.ofSeconds(8);

    private static final double UNDER_MARGIN_KELVIN = 0.3;
    private static final double TOO_COOL_KELVIN = 0.5;

    /** How far below the cool range {@code over-cooled} begins, K; the ladder draws the same limit. */
    public static final double OVER_COOLED_KELVIN = 1.0;

    /** How far above its plan the warm bath counts as too hot, K; its tile shows the same limit. */
    public static final double BATH_MARGIN_KELVIN = 3;

    private static final int VALID_READINGS_FOR_MELT_OUT = 2;
    private static final int FAULTS_IN_A_ROW = 3;
    private static final int GOOD_IN_A_ROW = 3;
    /** A deadband below four standard deviations of the noise would let noise alone raise and clear an alarm. */
    private static final double DEADBAND_SIGMAS = 4;

    private final Situation situation;

    public AlarmConditions(Situation situation) {
        this.situation = situation;
    }

    /** What the situation says of this alarm, and where its condition holds, why. */
    public Finding of(AlarmId id) {
        Finding found = look(id);
        return found.condition() == Condition.MET ? found.because(reason(id, found)) : found;
    }

    private Finding look(AlarmId id) {
        return switch (id) {
            case HEADING_OVER -> new HeadingOver(situation).look(deadband(id));
            case OVER_RANGE -> above(id, situation.recipe().meltOut().warnCelsius());
            case NEAR_MELT_OUT ->
                unlessContested(id, situation.recipe().meltOut().guardCelsius(), GUARD_CONTESTED);
            case MELT_OUT -> meltOut();
            case HEADING_UNDER -> headingUnder();
            case TOO_COOL -> tooCool();
            case OVER_COOLED -> overCooled();
            case MELT_TOO_HOT -> above(id, situation.recipe().scorchCelsius());
            case BATH_HOT -> bathHot();
            case PROBE_FAULT -> probeFault();
            case NO_READING -> noReading();
            case READING_DOUBTFUL -> readingDoubtful();
            case PROBE_OUT ->
                new Finding(Condition.when(situation.probe() == ProbePlace.OUT), usual(id), OptionalDouble.empty());
            case NOT_RECORDING ->
                new Finding(Condition.when(situation.storeTrouble().isPresent()), usual(id), OptionalDouble.empty());
        };
    }

    private Optional<Reason> reason(AlarmId id, Finding found) {
        AlarmReasons reasons = new AlarmReasons(situation);
        double figure = found.figureCelsius().orElse(Double.NaN);
        return switch (id) {
            case HEADING_OVER -> Optional.of(new HeadingOver(situation).reason(reasons));
            case OVER_RANGE ->
                Optional.of(reasons.past(situation.recipe().meltOut().warnCelsius(), deadband(id)));
            case NEAR_MELT_OUT ->
                Optional.of(reasons.past(situation.recipe().meltOut().guardCelsius(), deadband(id)));
            case MELT_OUT ->
                Optional.of(reasons.past(situation.recipe().meltOut().limitCelsius()));
            case HEADING_UNDER ->
                Optional.of(reasons.courseReaches(work().lowCelsius() - UNDER_MARGIN_KELVIN, Forecast.HORIZON, figure));
            case TOO_COOL -> Optional.of(reasons.past(work().lowCelsius() - TOO_COOL_KELVIN, deadband(id)));
            case OVER_COOLED -> Optional.of(overCooledReason(reasons));
            case MELT_TOO_HOT -> Optional.of(reasons.past(situation.recipe().scorchCelsius(), deadband(id)));
            case BATH_HOT -> Optional.of(reasons.bathPast(figure, bathLimitCelsius()));
            case PROBE_FAULT, NO_READING, READING_DOUBTFUL, PROBE_OUT, NOT_RECORDING -> reasons.ofInstrument(id);
        };
    }

    private Reason overCooledReason(AlarmReasons reasons) {
        Estimate estimate = situation.trusted().orElseThrow();
        return estimate.chocolateCelsius() <= overCooledCelsius()
                ? reasons.past(overCooledCelsius(), deadband(AlarmId.OVER_COOLED))
                : reasons.courseReaches(overCooledCelsius(), OVER_COOLED_AHEAD, coolestSoon(estimate));
    }

    /**
     * Only a choice ends it, so one number alone must not begin it: the first reading after a gap stands for itself.
     */
    private Finding meltOut() {
        Finding hot =
                unlessContested(AlarmId.MELT_OUT, situation.recipe().meltOut().limitCelsius(), LIMIT_CONTESTED);
        boolean alone = situation.bowl().goodInARow() < VALID_READINGS_FOR_MELT_OUT;
        return alone && hot.condition() == Condition.MET ? unknown(AlarmId.MELT_OUT) : hot;
    }

    private Finding headingUnder() {
        Optional<Forecast> forecast = situation.forecast();
        if (forecast.isEmpty() || situation.trusted().isEmpty()) return unknown(AlarmId.HEADING_UNDER);
        double limit = work().lowCelsius() - UNDER_MARGIN_KELVIN;
        double soon = forecast.get().at(Forecast.HORIZON).celsius();
        double deadband = deadband(AlarmId.HEADING_UNDER);
        Condition condition = Condition.high(limit - soon, deadband)
                .with(Condition.high(limit - asTheLastMinute(situation.trusted().get()), deadband));
        // What is under already heads nowhere: that is the business of too-cool.
        boolean under = situation.trusted().get().chocolateCelsius() < limit;
        return new Finding(under ? Condition.OVER : condition, usual(AlarmId.HEADING_UNDER), OptionalDouble.of(soon));
    }

    /** Where it would be at the horizon if it went on as in the last minute: the spoon moves a rate, hardly a minute. */
    private double asTheLastMinute(Estimate estimate) {
        double celsius = estimate.chocolateCelsius();
        double then =
                situation.window().celsiusAt(situation.now().minus(MINUTE)).orElse(celsius);
        return celsius + (celsius - then) * Forecast.HORIZON.toSeconds() / MINUTE.toSeconds();
    }

    private Finding tooCool() {
        double limit = work().lowCelsius() - TOO_COOL_KELVIN;
        return judged(AlarmId.TOO_COOL, e -> limit - e.chocolateCelsius());
    }

    private Finding overCooled() {
        return judged(AlarmId.OVER_COOLED, e -> overCooledCelsius() - coolestSoon(e));
    }

    private double overCooledCelsius() {
        return situation.recipe().cool().range().lowCelsius() - OVER_COOLED_KELVIN;
    }

    private double coolestSoon(Estimate estimate) {
        double soon =
                situation.forecast().map(f -> f.at(OVER_COOLED_AHEAD).celsius()).orElse(estimate.chocolateCelsius());
        return Math.min(estimate.chocolateCelsius(), soon);
    }

    private Finding bathHot() {
        Optional<Track> bath = situation.bath().filter(b -> b.isTrustedAt(situation.now()));
        if (bath.isEmpty()) return unknown(AlarmId.BATH_HOT);
        boolean rewarm = situation.batch().phase() == Phase.REWARM;
        TimeAvailable time = rewarm ? TimeAvailable.UP_TO_THREE_MINUTES : TimeAvailable.LONGER;
        double celsius = bath.get().lastCelsius().orElseThrow();
        // The melting bath is meant to be hot, and cold water is judged by the bowl: only the rewarm has a plan to
        // pass. Half of the hold is time to make the bath ready, the other half to cool what is still too hot.
        boolean planned = rewarm || situation.batch().phase() == Phase.WORK || isHalfHeld();
        double deadband = deadband(AlarmId.BATH_HOT, bath.get().noiseKelvin());
        Condition condition = planned ? Condition.high(celsius - bathLimitCelsius(), deadband) : Condition.OVER;
        return new Finding(condition, time.with(Consequence.BATCH), OptionalDouble.of(celsius));
    }

    private boolean isHalfHeld() {
        Duration hold = situation.recipe().cool().dwell();
        return situation.batch().phase() == Phase.SEED
                && situation.batch().progress().dwell().multipliedBy(2).compareTo(hold) >= 0;
    }

    private double bathLimitCelsius() {
        double plan = situation.setup().bathCelsius().orElse(situation.recipe().rewarmBathCelsius());
        return plan + BATH_MARGIN_KELVIN;
    }

    private Finding probeFault() {
        Track bowl = situation.bowl();
        boolean electrical = bowl.fault().filter(Cause::isOfTheWire).isPresent();
        boolean met = electrical && bowl.faultsInARow() >= FAULTS_IN_A_ROW;
        Condition condition = electrical && !met ? Condition.BETWEEN : Condition.when(met);
        return instrument(AlarmId.PROBE_FAULT, condition);
    }

    private Finding noReading() {
        Track bowl = situation.bowl();
        boolean electrical = bowl.fault()
                .filter(c -> c != Cause.SILENT && c != Cause.UNPLUGGED)
                .isPresent();
        // While the adapter says why there is no temperature, that is the alarm; silence is for when it says nothing.
        boolean met = !electrical && bowl.overdueAt(situation.now());
        Condition back = bowl.goodInARow() >= GOOD_IN_A_ROW ? Condition.OVER : Condition.BETWEEN;
        return instrument(AlarmId.NO_READING, met ? Condition.MET : electrical ? Condition.OVER : back);
    }

    private Finding readingDoubtful() {
        boolean heard = situation.bowl().freshAt(situation.now());
        Condition condition = heard
                ? Condition.when(
                        situation.bowl().doubt().filter(Doubt::needsHands).isPresent())
                : Condition.UNKNOWN;
        if (situation.probe() == ProbePlace.OUT) condition = Condition.OVER;
        return new Finding(condition, usual(AlarmId.READING_DOUBTFUL), OptionalDouble.empty());
    }

    /** Without a true temperature the hot phases leave no time; elsewhere a minute or two. */
    private Finding instrument(AlarmId id, Condition condition) {
        Phase phase = situation.batch().phase();
        boolean hot = phase == Phase.REWARM || phase == Phase.WORK;
        TimeAvailable time = hot ? TimeAvailable.UNDER_HALF_A_MINUTE : TimeAvailable.UP_TO_THREE_MINUTES;
        Condition asked = situation.probe() == ProbePlace.OUT ? Condition.OVER : condition;
        return new Finding(asked, time.with(AlarmTable.of(id).consequence()), OptionalDouble.empty());
    }

    /**
     * A reading past a limit that the network is sure the chocolate cannot reach is a tip that leans on a warm wall, as
     * long as it lasts no longer than hands hold it there. What stays is believed, whatever the network says.
     */
    private Finding unlessContested(AlarmId id, double limitCelsius, Duration atMost) {
        Finding hot = above(id, limitCelsius);
        boolean contested = hot.condition() == Condition.MET && situation.isContested(limitCelsius, atMost);
        return contested ? new Finding(Condition.BETWEEN, hot.priority(), hot.figureCelsius()) : hot;
    }

    private Finding above(AlarmId id, double limitCelsius) {
        return judged(id, e -> e.chocolateCelsius() - limitCelsius);
    }

    private Finding judged(AlarmId id, ToDoubleFunction<Estimate> beyondKelvin) {
        return situation
                .trusted()
                .filter(e -> Math.abs(e.rateKelvinPerMinute()) < TIP_MOVES_KELVIN_PER_MINUTE)
                .map(e -> new Finding(
                        Condition.high(beyondKelvin.applyAsDouble(e), deadband(id)),
                        usual(id),
                        OptionalDouble.of(e.chocolateCelsius())))
                .orElse(unknown(id));
    }

    private double deadband(AlarmId id) {
        return deadband(id, situation.bowl().noiseKelvin());
    }

    private static double deadband(AlarmId id, double noiseKelvin) {
        double usual = AlarmTable.of(id).deadbandKelvin();
        return Math.max(usual, Math.min(1, DEADBAND_SIGMAS * noiseKelvin));
    }

    private static Finding unknown(AlarmId id) {
        return new Finding(Condition.UNKNOWN, usual(id), OptionalDouble.empty());
    }

    private static Priority usual(AlarmId id) {
        return AlarmTable.of(id).usualPriority();
    }

    private CelsiusRange work() {
        return situation.recipe().work().range();
    }
}
