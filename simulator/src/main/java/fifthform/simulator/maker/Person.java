package fifthform.simulator.maker;

import fifthform.curves.cue.CueId;
import fifthform.curves.engine.Event;
import fifthform.curves.engine.Event.CueGiven;
import fifthform.simulator.maker.Acts.Probe;
import fifthform.simulator.maker.Intention.Reason;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Somebody at one moment of a batch.
 *
 * @param traits what they are like
 * @param habits the numbers they go by
 * @param course stage and bowl
 * @param spoon stirring or resting
 * @param reaction for what is noticed next
 * @param distractions what keeps them from the batch
 * @param intentions noticed and not done yet, soonest first
 * @param spokenToAt when the program first said anything
 * @param wipeAt when the outside will be wiped
 * @param seedLeftGrams seed that waits to be thrown in
 * @param probe where the probe was when last looked at
 * @param luck for small choices
 */
record Person(
        Traits traits,
        Habits habits,
        Course course,
        Spoon spoon,
        Reaction reaction,
        Distractions distractions,
        List<Intention> intentions,
        Optional<Instant> spokenToAt,
        Optional<Instant> wipeAt,
        double seedLeftGrams,
        Probe probe,
        Luck luck)
        implements Maker {
    private static final Training TRAINING = new Training();

    Person {
        Objects.requireNonNull(traits, "traits");
        Objects.requireNonNull(habits, "habits");
        Objects.requireNonNull(course, "course");
        Objects.requireNonNull(spoon, "spoon");
        Objects.requireNonNull(reaction, "reaction");
        Objects.requireNonNull(distractions, "distractions");
        intentions = List.copyOf(intentions);
        Objects.requireNonNull(spokenToAt, "spokenToAt");
        Objects.requireNonNull(wipeAt, "wipeAt");
        Objects.requireNonNull(probe, "probe");
        Objects.requireNonNull(luck, "luck");
    }

    static Person beginning(Traits traits, Habits usual, Luck luck) {
        Habits habits = traits.pace().of(usual, luck.branch(0));
        Plan plan = habits.plan();
        return new Person(
                traits,
                habits,
                Course.BEFORE,
                Spoon.resting(traits.stirring(), plan.stirringShare(), luck.branch(1)),
                Reaction.of(habits, luck.branch(2)),
                new Distractions(
                        plan.interruptions(),
                        List.of(),
                        Calls.of(traits.phone(), luck.branch(3)),
                        Calls.of(traits.probeOut(), luck.branch(4)),
                        Distractions.Disk.WRITES),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                plan.seedGrams(),
                Probe.IN_THE_CHOCOLATE,
                luck.branch(5));
    }

    /** The phone rings for the deaf as well; all else is heard by those who listen. */
    @Override
    public Maker told(Event event) {
        Distractions now = event instanceof CueGiven given ? distractions.cued(event.at(), given.cue()) : distractions;
        if (traits.listening() == Listening.DEAF) return hearing(now, spokenToAt);
        boolean notWanted = event instanceof CueGiven given
                && given.cue() == CueId.TOUCH_OF_WARMTH
                && habits.plan().warmsInItsOwnWay();
        if (notWanted) return hearing(now, Optional.of(spokenToAt.orElse(event.at())));
        Person listening = hearing(now, Optional.of(spokenToAt.orElse(event.at())));
        return event.fold(TRAINING)
                .map(response -> listening.intending(event.at(), response, Reason.TOLD))
                .orElse(listening);
    }

    private Person hearing(Distractions now, Optional<Instant> spokenTo) {
        if (now == distractions && spokenTo.equals(spokenToAt)) return this;
        return new Person(
                traits, habits, course, spoon, reaction, now, intentions, spokenTo, wipeAt, seedLeftGrams, probe, luck);
    }

    /** Means to do this a reaction time later, or much later where it slips the mind. */
    Person intending(Instant at, Response response, Reason reason) {
        Slips slips = traits.slips();
        Duration delay = reaction.delay();
        if (luck.uniform() < slips.forgetsFraction()) {
            double seconds = luck.after().exponential(slips.noticesAgainSeconds());
            delay = delay.plusMillis(Math.round(1000 * seconds));
        }
        List<Intention> more = new ArrayList<>(intentions);
        more.add(new Intention(at.plus(delay), response, reason));
        more.sort(Comparator.comparing(Intention::due));
        return new Person(
                traits,
                habits,
                course,
                spoon,
                reaction.after(),
                distractions,
                more,
                spokenToAt,
                wipeAt,
                seedLeftGrams,
                probe,
                luck.after().after());
    }

    @Override
    public Next next(KitchenView view) {
        return new HandsAtWork(this, view).next();
    }

    @Override
    public boolean done() {
        return course.stage() == Stage.GONE;
    }
}
