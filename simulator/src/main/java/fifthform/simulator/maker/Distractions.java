package fifthform.simulator.maker;

import fifthform.curves.cue.CueId;
import fifthform.simulator.bowl.Spot;
import fifthform.simulator.maker.Interruption.Cued;
import fifthform.simulator.maker.Interruption.FirstAt;
import fifthform.simulator.maker.Interruption.Moment;
import fifthform.simulator.maker.Interruption.What;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * All that keeps somebody from the batch: what was planned for a moment of it, and what comes by chance.
 *
 * @param planned whose moment has not come yet
 * @param spells whose moment has come
 * @param phone calls by chance
 * @param probeOut the probe taken out by chance
 */
record Distractions(List<Interruption> planned, List<Spell> spells, Calls phone, Calls probeOut) {
    /** One planned interruption, from when to when. */
    record Spell(What what, Instant from, Instant until) {
        boolean present(Instant now) {
            return !now.isBefore(from) && now.isBefore(until);
        }
    }

    Distractions {
        planned = List.copyOf(planned);
        spells = List.copyOf(spells);
        Objects.requireNonNull(phone, "phone");
        Objects.requireNonNull(probeOut, "probeOut");
    }

    Distractions at(Instant now) {
        Calls phoneNow = phone.at(now);
        Calls probeNow = probeOut.at(now);
        boolean same = phoneNow == phone && probeNow == probeOut;
        return same ? this : new Distractions(planned, spells, phoneNow, probeNow);
    }

    Distractions cued(Instant at, CueId cue) {
        return planned.isEmpty() ? this : reached(at, new Cued(cue));
    }

    Distractions stoodAt(Instant at, Spot spot) {
        return planned.isEmpty() ? this : reached(at, new FirstAt(spot));
    }

    private Distractions reached(Instant at, Moment moment) {
        List<Interruption> left = new ArrayList<>();
        List<Spell> begun = new ArrayList<>(spells);
        for (Interruption each : planned) {
            Instant from = at.plus(each.after());
            if (each.moment().equals(moment)) begun.add(new Spell(each.what(), from, from.plus(each.lasting())));
            else left.add(each);
        }
        return new Distractions(left, begun, phone, probeOut);
    }

    boolean handsAway(Instant now) {
        return phone.present(now) || spell(What.PHONE, now);
    }

    boolean probeOut(Instant now) {
        return probeOut.present(now) || spell(What.PROBE_OUT, now);
    }

    private boolean spell(What what, Instant now) {
        for (Spell each : spells) if (each.what() == what && each.present(now)) return true;
        return false;
    }
}
