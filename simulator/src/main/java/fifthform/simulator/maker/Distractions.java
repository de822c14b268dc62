package fifthform.simulator.maker;

import fifthform.curves.cue.CueId;
import fifthform.simulator.bowl.Blower;
import fifthform.simulator.bowl.ProbePlace;
import fifthform.simulator.bowl.Spot;
import fifthform.simulator.maker.Interruption.Cued;
import fifthform.simulator.maker.Interruption.FirstAt;
import fifthform.simulator.maker.Interruption.Moment;
import fifthform.simulator.maker.Interruption.What;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * All that keeps somebody from the batch: what was planned for a moment of it, and what comes by chance.
 *
 * @param planned whose moment has not come yet
 * @param spells whose moment has come
 * @param phone calls by chance
 * @param probeOut the probe taken out by chance
 * @param disk whether the computer could write at the last moment looked at
 */
record Distractions(List<Interruption> planned, List<Spell> spells, Calls phone, Calls probeOut, Disk disk) {
    /** The computer's disk. */
    enum Disk {
        WRITES,
        FULL
    }

    /** One planned interruption, and when it first begins. */
    record Spell(Interruption planned, Instant first) {
        /** When the one that is present now began; empty between them. */
        Optional<Instant> since(Instant now) {
            if (now.isBefore(first)) return Optional.empty();
            Duration passed = Duration.between(first, now);
            Duration begun = planned.every()
                    .map(every -> every.multipliedBy(passed.dividedBy(every)))
                    .orElse(Duration.ZERO);
            boolean over = passed.minus(begun).compareTo(planned.lasting()) >= 0;
            return over ? Optional.empty() : Optional.of(first.plus(begun));
        }
    }

    Distractions {
        planned = List.copyOf(planned);
        spells = List.copyOf(spells);
        Objects.requireNonNull(phone, "phone");
        Objects.requireNonNull(probeOut, "probeOut");
        Objects.requireNonNull(disk, "disk");
    }

    Distractions at(Instant now) {
        Calls phoneNow = phone.at(now);
        Calls probeNow = probeOut.at(now);
        Disk diskNow = during(What.DISK_FULL, now) ? Disk.FULL : Disk.WRITES;
        boolean same = phoneNow == phone && probeNow == probeOut && diskNow == disk;
        return same ? this : new Distractions(planned, spells, phoneNow, probeNow, diskNow);
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
            if (each.moment().equals(moment)) begun.add(new Spell(each, at.plus(each.after())));
            else left.add(each);
        }
        return new Distractions(left, begun, phone, probeOut, disk);
    }

    boolean handsAway(Instant now) {
        return phone.present(now) || during(What.PHONE, now);
    }

    boolean probeOut(Instant now) {
        return probeOut.present(now) || during(What.PROBE_OUT, now);
    }

    boolean during(What what, Instant now) {
        for (Spell each : spells) {
            if (each.planned().what() == what && each.since(now).isPresent()) return true;
        }
        return false;
    }

    Blower blower(Instant now) {
        if (spells.isEmpty()) return Blower.OFF;
        if (during(What.HEAT_GUN, now)) return Blower.HEAT_GUN;
        return during(What.HAIR_DRYER, now) ? Blower.HAIR_DRYER : Blower.OFF;
    }

    /** The probe as it really is, whether or not somebody knows. */
    ProbePlace unnoticed(Instant now) {
        if (spells.isEmpty()) return ProbePlace.IN_CHOCOLATE;
        if (during(What.PROBE_SLIPPED, now)) return ProbePlace.OUT;
        return during(What.PROBE_AT_WALL, now) ? ProbePlace.AT_WALL : ProbePlace.IN_CHOCOLATE;
    }

    /** The course with what is planned for the bowl begun, unless somebody has moved the bowl since that began. */
    Course visits(Course course, Instant now) {
        Course planned = course;
        for (Spell each : spells) {
            Optional<Spot> spot = each.planned().what().spot();
            Optional<Instant> since = spot.flatMap(s -> each.since(now));
            if (since.isEmpty()
                    || planned.movedAt().filter(at -> !at.isBefore(since.get())).isPresent()) continue;
            Duration left =
                    Duration.between(now, since.get().plus(each.planned().lasting()));
            planned = planned.visit(now, spot.get(), left);
        }
        return planned;
    }
}
