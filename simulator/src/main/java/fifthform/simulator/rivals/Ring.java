package fifthform.simulator.rivals;

import fifthform.curves.recipe.Phase;
import fifthform.curves.setup.LearnedCoast;
import fifthform.simulator.bench.Moment;
import fifthform.simulator.bench.Program;
import fifthform.simulator.bowl.Spot;
import fifthform.simulator.maker.Interruption;
import fifthform.simulator.maker.Interruption.FirstAt;
import fifthform.simulator.maker.Interruption.What;
import fifthform.simulator.maker.Judging;
import fifthform.simulator.maker.Keys;
import fifthform.simulator.maker.Luck;
import fifthform.simulator.maker.Manner;
import fifthform.simulator.rivals.WarningWatch.Warned;
import java.time.Duration;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** One kitchen in which rivals are tried one after the other. What they share is gone through once. */
final class Ring {
    /** Earlier batches of a bowl before its fifth. */
    private static final int EARLIER = 4;

    /** Numbers of the kitchens in which those took place, far from those that judge. */
    private static final long OTHER_DAYS = 1_000_000;

    /** Water of a bowl that is forgotten over it, above melt-out, K. Invented. */
    private static final double LEAST_WARMER_KELVIN = 3;

    private static final double MORE_WARMER_KELVIN = 6;

    private static final Duration PROBE_OUT_FOR = Duration.ofSeconds(10);
    private static final Duration WALL_FOR = Duration.ofSeconds(25);
    private static final double MISHAP_WITHIN_SECONDS = 60;

    private final Contest contest;
    private final JudgedKitchen kitchen;
    private final Trial trial;
    private final Map<Manner, Moment> cools = new EnumMap<>(Manner.class);

    Ring(Contest contest, JudgedKitchen kitchen) {
        this.contest = contest;
        this.kitchen = kitchen;
        trial = new Trial(kitchen);
    }

    JudgedKitchen kitchen() {
        return kitchen;
    }

    /** A rule that knows nothing but the readings begins in the cool range; what was before is the same for all. */
    Tried rule(Rival rule, Manner manner) {
        Moment cool = cools.computeIfAbsent(manner, this::cool);
        return trial.run(cool.advisedBy(rule));
    }

    private Moment cool(Manner manner) {
        return trial.until(
                beginning(manner, Keys.NONE, Program.SILENT), m -> ((Judging) m.maker()).phase() == Phase.SEED);
    }

    private Moment beginning(Manner manner, Keys keys, Program program) {
        return kitchen.beginning(manner, keys, program);
    }

    /** Any rival that has to hear the whole batch. */
    Tried whole(Rival rival, Manner manner, Keys keys) {
        return trial.run(beginning(manner, keys, rival));
    }

    Tried engine(Knowledge knowledge, Manner manner, Keys keys) {
        return whole(EngineRival.beginning(kitchen, knowledge, manner), manner, keys);
    }

    /** The engine with readings that are spoilt on their way. */
    Tried spoilt(Spoilt.How how, Manner manner) {
        Rival engine = EngineRival.beginning(kitchen, Knowledge.NOTHING, manner);
        return whole(new Spoilt(engine, how, 0, new Luck(kitchen.number()).branch(7)), manner, Keys.NONE);
    }

    /** The engine with a probe to which something happens in the rewarm. */
    Tried mishap(What what, Manner manner) {
        Luck luck = new Luck(kitchen.number()).branch(8);
        Duration after = Duration.ofMillis(Math.round(1000 * MISHAP_WITHIN_SECONDS * luck.uniform()));
        Duration lasting = what == What.PROBE_AT_WALL ? WALL_FOR : PROBE_OUT_FOR;
        JudgedKitchen unlucky = kitchen.with(new Interruption(what, new FirstAt(Spot.WARM_BATH), after, lasting));
        return new Ring(contest, unlucky).engine(Knowledge.NOTHING, manner, Keys.NONE);
    }

    /** The engine after four batches of the same bowl and amount on other days. */
    Tried fifth(Manner manner) {
        Optional<LearnedCoast> learned = Optional.empty();
        for (int day = 1; day <= EARLIER; day++) {
            JudgedKitchen then = kitchen.onAnotherDay(contest.kitchen(kitchen.number() + day * OTHER_DAYS));
            Tried batch = new Ring(contest, then).engine(Knowledge.of(learned), manner, Keys.NONE);
            learned = ((EngineRival) batch.last().program()).learned();
        }
        return engine(Knowledge.of(learned), manner, Keys.NONE);
    }

    /** How long before melt-out a rival warned of a bowl that was forgotten over lukewarm water. */
    Optional<Warned> drift(Function<JudgedKitchen, Rival> rival) {
        double warmer = LEAST_WARMER_KELVIN
                + MORE_WARMER_KELVIN * new Luck(kitchen.number()).branch(9).uniform();
        return trial.drift(beginning(Manner.STEADY, Keys.NONE, rival.apply(kitchen)), warmer);
    }

    /** How far this bowl goes on after a lift in the middle of the working range, and how long it takes to get there. */
    Coast coast() {
        double middle = kitchen.recipe().work().range().midCelsius();
        Moment cool = cools.computeIfAbsent(Manner.STAYS_ON, this::cool);
        Moment on = trial.until(cool, m -> ((Judging) m.maker()).phase() == Phase.REWARM);
        Moment warm = trial.until(on, m -> m.kitchen().bulkCelsius() >= middle);
        double seconds = Duration.between(on.at(), warm.at()).toMillis() / 1000.0;
        double celsius = warm.kitchen().bulkCelsius();
        boolean came = celsius >= middle && !warm.maker().done();
        double coast = came ? new Turning(kitchen.batch()).ifLiftedCelsius(warm) - celsius : Double.NaN;
        return new Coast(
                coast,
                seconds,
                on.kitchen().bulkCelsius() - kitchen.recipe().cool().range().midCelsius());
    }

    /**
     * A lift in the middle of the working range.
     *
     * @param kelvin how far the bulk went on, K; not a number where it never came there
     * @param dipSeconds over the water before
     * @param beganBesideKelvin where the bulk was before, above the middle of the cool range, K
     */
    record Coast(double kelvin, double dipSeconds, double beganBesideKelvin) {}
}
