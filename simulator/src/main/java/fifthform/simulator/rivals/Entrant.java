package fifthform.simulator.rivals;

import fifthform.simulator.maker.Interruption.What;
import fifthform.simulator.maker.Keys;
import fifthform.simulator.maker.Manner;
import java.util.function.Function;

/** Who is tried in every kitchen, and with what. */
enum Entrant {
    THRESHOLD("fixed threshold", ring -> ring.rule(rule(Tuned.THRESHOLD, ring), Manner.ONE_LIFT)),
    LINE("straight line", ring -> ring.rule(rule(Tuned.LINE, ring), Manner.ONE_LIFT)),
    EXPONENTIAL("exponential fit", ring -> ring.rule(rule(Tuned.EXPONENTIAL, ring), Manner.ONE_LIFT)),
    KALMAN("plain Kalman filter", ring -> ring.rule(rule(Tuned.KALMAN, ring), Manner.ONE_LIFT)),
    ORACLE("oracle", ring -> ring.whole(Oracle.beginning(ring.kitchen()), Manner.ONE_LIFT, Keys.EXACT)),
    ENGINE("engine", ring -> ring.engine(Knowledge.NOTHING, Manner.ONE_LIFT, Keys.NONE)),
    ENGINE_KEYS("engine, keys late", ring -> ring.engine(Knowledge.NOTHING, Manner.ONE_LIFT, Keys.LATE)),
    ENGINE_EXACT("engine, keys exact", ring -> ring.engine(Knowledge.NOTHING, Manner.ONE_LIFT, Keys.EXACT)),
    ENGINE_BATH(
            "engine, bath and amount told", ring -> ring.engine(Knowledge.BOWL_AND_BATH, Manner.ONE_LIFT, Keys.NONE)),
    ENGINE_ALL(
            "engine, bath, amount and keys", ring -> ring.engine(Knowledge.BOWL_AND_BATH, Manner.ONE_LIFT, Keys.LATE)),
    FIFTH("engine, fifth batch", ring -> ring.fifth(Manner.ONE_LIFT)),
    TOUCH_RULE("touches by rule", ring -> ring.whole(touchRule(ring), Manner.TOUCHES, Keys.EXACT)),
    TOUCHES("engine, touches", ring -> ring.engine(Knowledge.NOTHING, Manner.TOUCHES, Keys.NONE)),
    TOUCHES_KEYS("engine, touches, keys late", ring -> ring.engine(Knowledge.NOTHING, Manner.TOUCHES, Keys.LATE)),
    STAYS_ON("engine, stays on", ring -> ring.engine(Knowledge.NOTHING, Manner.STAYS_ON, Keys.NONE)),
    LINE_STAYS_ON("straight line, stays on", ring -> ring.rule(rule(Tuned.LINE, ring), Manner.STAYS_ON)),
    STEADY("engine, steady", ring -> ring.engine(Knowledge.NOTHING, Manner.STEADY, Keys.NONE)),
    LINE_STEADY("straight line, steady", ring -> ring.rule(rule(Tuned.LINE, ring), Manner.STEADY)),
    PROBE_OUT("probe out 10 s", ring -> ring.mishap(What.PROBE_SLIPPED, Manner.ONE_LIFT)),
    WALL_TOUCH("tip at the wall 25 s", ring -> ring.mishap(What.PROBE_AT_WALL, Manner.ONE_LIFT)),
    QUARTER_STEPS("quarter steps", ring -> ring.spoilt(Spoilt.How.QUARTER_STEPS, Manner.ONE_LIFT)),
    LOST("one in five lost", ring -> ring.spoilt(Spoilt.How.ONE_IN_FIVE_LOST, Manner.ONE_LIFT)),
    SPIKES("a spike a minute", ring -> ring.spoilt(Spoilt.How.SPIKE_A_MINUTE, Manner.ONE_LIFT)),
    FAHRENHEIT("Fahrenheit device", ring -> ring.spoilt(Spoilt.How.FAHRENHEIT, Manner.ONE_LIFT)),
    STEADY_QUARTER_STEPS("steady, quarter steps", ring -> ring.spoilt(Spoilt.How.QUARTER_STEPS, Manner.STEADY)),
    STEADY_LOST("steady, one in five lost", ring -> ring.spoilt(Spoilt.How.ONE_IN_FIVE_LOST, Manner.STEADY)),
    STEADY_SPIKES("steady, a spike a minute", ring -> ring.spoilt(Spoilt.How.SPIKE_A_MINUTE, Manner.STEADY)),
    STEADY_PROBE_OUT("steady, probe out 10 s", ring -> ring.mishap(What.PROBE_SLIPPED, Manner.STEADY));

    private static final double TOUCH_SHARE = 0.55;

    /** So many kitchens apart are those in which it is tried: what takes long, and what needs fewer figures. */
    private static final int SOME = 4;

    private final String title;
    private final Function<Ring, Tried> trial;

    Entrant(String title, Function<Ring, Tried> trial) {
        this.title = title;
        this.trial = trial;
    }

    String title() {
        return title;
    }

    /** Whether it is tried in the kitchen of this number. */
    boolean comesTo(long number) {
        return ordinal() < ORACLE.ordinal() || everywhere() || number % SOME == 0;
    }

    private boolean everywhere() {
        return switch (this) {
            case ENGINE, ENGINE_KEYS, ENGINE_BATH, TOUCH_RULE, TOUCHES, TOUCHES_KEYS, STAYS_ON -> true;
            default -> false;
        };
    }

    Tried in(Ring ring) {
        return trial.apply(ring);
    }

    private static Rival rule(Tuned tuned, Ring ring) {
        return tuned.rival(ring.kitchen().recipe());
    }

    private static Rival touchRule(Ring ring) {
        return TouchRule.waiting(ring.kitchen().recipe(), TOUCH_SHARE);
    }
}
