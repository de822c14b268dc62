package fifthform.curves.engine;

import fifthform.curves.alarm.Priority;
import fifthform.curves.bowlcheck.OtherBowl;
import fifthform.curves.crystal.SeedRange;
import fifthform.curves.crystal.SeedWord;
import fifthform.curves.cue.CueId;
import fifthform.curves.input.AlarmId;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.input.ProbeFault.Cause;
import fifthform.curves.recipe.Phase;
import fifthform.curves.setup.ProbeId;
import fifthform.curves.signal.Doubt;
import fifthform.curves.situation.Reason;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/** Something the maker, the journal or a test may want to know; never a command. */
public sealed interface Event {
    /** The time of the input that led to it. */
    Instant at();

    /** Calls the method for this kind; a new kind does not compile until every caller handles it. */
    <R> R fold(Cases<R> cases);

    /** One answer for each kind of event. */
    interface Cases<R> {
        R phaseChanged(PhaseChanged event);

        R bowlSeen(BowlSeen event);

        R alarmRaised(AlarmRaised event);

        R alarmCleared(AlarmCleared event);

        R alarmSeen(AlarmSeen event);

        R cueGiven(CueGiven event);

        R cueEnded(CueEnded event);

        R turned(Turned event);

        R probeLost(ProbeLost event);

        R probeBack(ProbeBack event);

        R readingDoubted(ReadingDoubted event);

        R lagMeasured(LagMeasured event);

        R otherCompared(OtherCompared event);

        R bowlDoubted(BowlDoubted event);

        R seedJudged(SeedJudged event);

        R seedLost(SeedLost event);
    }

    /** The batch entered another phase. */
    record PhaseChanged(Instant at, Phase from, Phase to) implements Event {
        public PhaseChanged {
            Objects.requireNonNull(at, "at");
            Objects.requireNonNull(from, "from");
            Objects.requireNonNull(to, "to");
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.phaseChanged(this);
        }
    }

    /** The bowl stands somewhere else now, by key or as the curve shows. */
    record BowlSeen(Instant at, Place place, Evidence evidence) implements Event {
        /** How it is known. */
        public enum Evidence {
            TOLD,
            INFERRED
        }

        public BowlSeen {
            Objects.requireNonNull(at, "at");
            Objects.requireNonNull(place, "place");
            Objects.requireNonNull(evidence, "evidence");
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.bowlSeen(this);
        }
    }

    /**
     * An alarm needs a response now: it is new, new again, or has risen in priority.
     *
     * @param figureCelsius the temperature it is about, where it is about one
     * @param reason why, in figures; empty in sessions of before reasons were kept
     */
    record AlarmRaised(
            Instant at, AlarmId alarm, Priority priority, OptionalDouble figureCelsius, Optional<Reason> reason)
            implements Event {
        /** An alarm of which no reason was kept. */
        public AlarmRaised(Instant at, AlarmId alarm, Priority priority, OptionalDouble figureCelsius) {
            this(at, alarm, priority, figureCelsius, Optional.empty());
        }

        public AlarmRaised {
            Objects.requireNonNull(at, "at");
            Objects.requireNonNull(alarm, "alarm");
            Objects.requireNonNull(priority, "priority");
            Objects.requireNonNull(figureCelsius, "figureCelsius");
            Objects.requireNonNull(reason, "reason");
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.alarmRaised(this);
        }
    }

    /** The alarm's condition is over, or its phase is; never makes a sound. */
    record AlarmCleared(Instant at, AlarmId alarm) implements Event {
        public AlarmCleared {
            Objects.requireNonNull(at, "at");
            Objects.requireNonNull(alarm, "alarm");
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.alarmCleared(this);
        }
    }

    /** The maker has seen the alarm. */
    record AlarmSeen(Instant at, AlarmId alarm) implements Event {
        public AlarmSeen {
            Objects.requireNonNull(at, "at");
            Objects.requireNonNull(alarm, "alarm");
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.alarmSeen(this);
        }
    }

    /**
     * A step is due.
     *
     * @param figure the number in its words, with the unit that {@link fifthform.curves.cue.OpenCue} states; empty where
     *     it has none
     * @param reason why, in figures; empty in sessions of before reasons were kept
     */
    record CueGiven(Instant at, CueId cue, OptionalDouble figure, Optional<Reason> reason) implements Event {
        /** A step of which no reason was kept. */
        public CueGiven(Instant at, CueId cue, OptionalDouble figure) {
            this(at, cue, figure, Optional.empty());
        }

        public CueGiven {
            Objects.requireNonNull(at, "at");
            Objects.requireNonNull(cue, "cue");
            Objects.requireNonNull(figure, "figure");
            Objects.requireNonNull(reason, "reason");
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.cueGiven(this);
        }
    }

    /** A step is no longer due: done, or passed. */
    record CueEnded(Instant at, CueId cue) implements Event {
        public CueEnded {
            Objects.requireNonNull(at, "at");
            Objects.requireNonNull(cue, "cue");
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.cueEnded(this);
        }
    }

    /**
     * After a lift the temperature has turned: what this bowl did is known.
     *
     * @param celsius where it turned, °C
     * @param coastKelvin from the lift to the turn; positive after heat, negative after cold
     */
    record Turned(Instant at, double celsius, double coastKelvin) implements Event {
        public Turned {
            Objects.requireNonNull(at, "at");
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.turned(this);
        }
    }

    /** A probe gives no temperature any more. */
    record ProbeLost(Instant at, ProbeId probe, Cause cause) implements Event {
        public ProbeLost {
            Objects.requireNonNull(at, "at");
            Objects.requireNonNull(probe, "probe");
            Objects.requireNonNull(cause, "cause");
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.probeLost(this);
        }
    }

    /**
     * A probe gives temperatures again.
     *
     * @param goneSeconds how long it gave none
     */
    record ProbeBack(Instant at, ProbeId probe, double goneSeconds) implements Event {
        public ProbeBack {
            Objects.requireNonNull(at, "at");
            Objects.requireNonNull(probe, "probe");
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.probeBack(this);
        }
    }

    /** Why the readings of a probe are in doubt; told with the alarm about it, and again when it turns out otherwise. */
    record ReadingDoubted(Instant at, ProbeId probe, Doubt doubt) implements Event {
        public ReadingDoubted {
            Objects.requireNonNull(at, "at");
            Objects.requireNonNull(probe, "probe");
            Objects.requireNonNull(doubt, "doubt");
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.readingDoubted(this);
        }
    }

    /**
     * A dip has shown the lag of a tip; it is used from now on.
     *
     * @param seconds its time constant, s
     * @param sigmaSeconds standard uncertainty of that, s
     */
    record LagMeasured(Instant at, ProbeId probe, double seconds, double sigmaSeconds) implements Event {
        public LagMeasured {
            Objects.requireNonNull(at, "at");
            Objects.requireNonNull(probe, "probe");
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.lagMeasured(this);
        }
    }

    /** The bowl behaves like another one than it is said to be. */
    record BowlDoubted(Instant at, OtherBowl like) implements Event {
        public BowlDoubted {
            Objects.requireNonNull(at, "at");
            Objects.requireNonNull(like, "like");
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.bowlDoubted(this);
        }
    }

    /**
     * What another thermometer said has been compared.
     *
     * @param celsius what it said, °C
     * @param aboveKelvin how much more that is than the estimate then; empty where there was none to trust
     * @param withinKelvin expanded uncertainty of that estimate, K
     */
    record OtherCompared(Instant at, double celsius, OptionalDouble aboveKelvin, double withinKelvin) implements Event {
        public OtherCompared {
            Objects.requireNonNull(at, "at");
            Objects.requireNonNull(aboveKelvin, "aboveKelvin");
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.otherCompared(this);
        }
    }

    /**
     * Another word about the stable seed than before: an estimate from temperature, no measurement.
     *
     * @param thick whether the chocolate is likely to have thickened
     * @param seed what the word rests on
     */
    record SeedJudged(Instant at, SeedWord word, boolean thick, SeedRange seed) implements Event {
        public SeedJudged {
            Objects.requireNonNull(at, "at");
            Objects.requireNonNull(word, "word");
            Objects.requireNonNull(seed, "seed");
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.seedJudged(this);
        }
    }

    /**
     * Heat has cost the temper its seed: the best guess fell below what a temper needs.
     *
     * @param highestCelsius hottest reading of the overshoot so far, °C
     * @param aboveSeconds how long it had been above the warning temperature, s
     * @param before the seed when the overshoot began
     * @param left what is left of it
     */
    record SeedLost(Instant at, double highestCelsius, double aboveSeconds, SeedRange before, SeedRange left)
            implements Event {
        public SeedLost {
            Objects.requireNonNull(at, "at");
            Objects.requireNonNull(before, "before");
            Objects.requireNonNull(left, "left");
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.seedLost(this);
        }
    }
}
