package fifthform.curves.cue;

import fifthform.curves.estimate.Estimate;
import fifthform.curves.situation.ProbePlace;
import fifthform.curves.situation.Situation;

/** Which steps are due. Each cue has what begins it and what ends it; most end by the maker's act, seen or said. */
public final class CueRules {
    /** A band of the turning point that is wider than this makes one lift a gamble, K. */
    public static final double UNSURE_KELVIN = Look.UNSURE_KELVIN;

    private CueRules() {}

    /** The board after one more look. Without a good reading nothing new is said, and only what the
     * maker has done by key is taken back. */
    public static CueBoard next(Situation situation, CueBoard before) {
        if (situation.probe() == ProbePlace.OUT) return before.cleared();
        if (situation.trusted().isEmpty())
            return before.fitting(situation.batch().place());
        return look(situation, situation.trusted().get(), before);
    }

    private static CueBoard look(Situation situation, Estimate estimate, CueBoard before) {
        Look look = new Look(situation, estimate, before);
        MeltCues.collect(look);
        SeedCues.collect(look);
        CoolCues.collect(look);
        Dips followed = new DipWatch(look).next();
        Dips dips = DipCues.collect(look, followed);
        WeakBath.collect(look, dips);
        LiftWait lift = LiftCues.collect(look, dips);
        StirCues.collect(look, dips);
        WorkCues.collect(look, dips);
        HoldCues.collect(look);
        Done done = before.done().after(look, look.phase());
        Held held = before.held().after(look, done.inRangeAt());
        return before.next(look.due(), lift, dips, done, held, situation.now());
    }
}
