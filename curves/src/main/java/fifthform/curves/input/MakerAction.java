package fifthform.curves.input;

import fifthform.curves.check.Require;
import fifthform.curves.recipe.Phase;
import fifthform.curves.setup.Setup;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.Objects;

/** Something the maker did or said, by key, by pointer or in a file. */
public sealed interface MakerAction extends Input {
    @Override
    default <R> R fold(Input.Cases<R> cases) {
        return cases.action(this);
    }

    /** Calls the method for this kind of action. */
    <R> R act(Acts<R> acts);

    /** One answer for each kind of action. */
    interface Acts<R> {
        R bowlMoved(BowlMoved action);

        R stirringSaid(StirringSaid action);

        R seedAdded(SeedAdded action);

        R phaseConfirmed(PhaseConfirmed action);

        R alarmAcknowledged(AlarmAcknowledged action);

        R alarmShelved(AlarmShelved action);

        R sampleProved(SampleProved action);

        R noted(Noted action);

        R probeTakenOut(ProbeTakenOut action);

        R probePutBack(ProbePutBack action);

        R otherThermometer(OtherThermometer action);

        R bowlConfirmed(BowlConfirmed action);

        R setupChanged(SetupChanged action);

        R undone(Undone action);
    }

    /** Where the bowl stands. */
    enum Place {
        /** Over the hot or warm bath. */
        BATH,
        /** On the table, on a cloth: neither heated nor cooled by water. */
        TABLE,
        /** In cold water. */
        COLD_WATER;

        /** The word in files: {@code bath}, {@code table}, {@code cold-water}. */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /** The bowl was put somewhere else. */
    record BowlMoved(Instant at, Place to) implements MakerAction {
        public BowlMoved {
            Objects.requireNonNull(at, "at");
            Objects.requireNonNull(to, "to");
        }

        @Override
        public <R> R act(Acts<R> acts) {
            return acts.bowlMoved(this);
        }
    }

    /** Stirring began or stopped. */
    record StirringSaid(Instant at, Stirring stirring) implements MakerAction {
        /** Stirred or left alone. */
        public enum Stirring {
            STIRRED,
            STILL;

            /** The word in files: {@code stirred} or {@code still}. */
            public String word() {
                return name().toLowerCase(Locale.ROOT);
            }
        }

        public StirringSaid {
            Objects.requireNonNull(at, "at");
            Objects.requireNonNull(stirring, "stirring");
        }

        @Override
        public <R> R act(Acts<R> acts) {
            return acts.stirringSaid(this);
        }
    }

    /** Seed went in; 0 g where the maker did not weigh it. */
    record SeedAdded(Instant at, double grams) implements MakerAction {
        public SeedAdded {
            Objects.requireNonNull(at, "at");
            Require.within(grams, 0, 20_000, "grams");
        }

        @Override
        public <R> R act(Acts<R> acts) {
            return acts.seedAdded(this);
        }
    }

    /** The maker says which phase the batch is in now. */
    record PhaseConfirmed(Instant at, Phase phase) implements MakerAction {
        public PhaseConfirmed {
            Objects.requireNonNull(at, "at");
            Objects.requireNonNull(phase, "phase");
        }

        @Override
        public <R> R act(Acts<R> acts) {
            return acts.phaseConfirmed(this);
        }
    }

    /** The maker has seen this alarm. */
    record AlarmAcknowledged(Instant at, AlarmId alarm) implements MakerAction {
        public AlarmAcknowledged {
            Objects.requireNonNull(at, "at");
            Objects.requireNonNull(alarm, "alarm");
        }

        @Override
        public <R> R act(Acts<R> acts) {
            return acts.alarmAcknowledged(this);
        }
    }

    /** The maker sets this alarm aside for a while; zero ends it. */
    record AlarmShelved(Instant at, AlarmId alarm, Duration duration) implements MakerAction {
        public AlarmShelved {
            Objects.requireNonNull(at, "at");
            Objects.requireNonNull(alarm, "alarm");
            Require.notNegative(duration, "duration");
        }

        @Override
        public <R> R act(Acts<R> acts) {
            return acts.alarmShelved(this);
        }
    }

    /** A sample was tried. */
    record SampleProved(Instant at, Verdict verdict) implements MakerAction {
        /** How the sample turned out. */
        public enum Verdict {
            IN_TEMPER,
            NOT_IN_TEMPER,
            UNCLEAR;

            /** The word in files: {@code in-temper}, … */
            public String word() {
                return name().toLowerCase(Locale.ROOT).replace('_', '-');
            }
        }

        public SampleProved {
            Objects.requireNonNull(at, "at");
            Objects.requireNonNull(verdict, "verdict");
        }

        @Override
        public <R> R act(Acts<R> acts) {
            return acts.sampleProved(this);
        }
    }

    /** A remark, or a bare mark where the text is empty. */
    record Noted(Instant at, String text) implements MakerAction {
        public Noted {
            Objects.requireNonNull(at, "at");
            Objects.requireNonNull(text, "text");
        }

        @Override
        public <R> R act(Acts<R> acts) {
            return acts.noted(this);
        }
    }

    /** The probe is out of the chocolate on purpose. */
    record ProbeTakenOut(Instant at) implements MakerAction {
        public ProbeTakenOut {
            Objects.requireNonNull(at, "at");
        }

        @Override
        public <R> R act(Acts<R> acts) {
            return acts.probeTakenOut(this);
        }
    }

    /** The probe is in the chocolate again. */
    record ProbePutBack(Instant at) implements MakerAction {
        public ProbePutBack {
            Objects.requireNonNull(at, "at");
        }

        @Override
        public <R> R act(Acts<R> acts) {
            return acts.probePutBack(this);
        }
    }

    /** What another thermometer says, °C. */
    record OtherThermometer(Instant at, double celsius) implements MakerAction {
        public OtherThermometer {
            Objects.requireNonNull(at, "at");
            Require.within(celsius, Sample.LOWEST_CELSIUS, Sample.HIGHEST_CELSIUS, "celsius");
        }

        @Override
        public <R> R act(Acts<R> acts) {
            return acts.otherThermometer(this);
        }
    }

    /** It is the bowl it is said to be, whatever the curve looks like. */
    record BowlConfirmed(Instant at) implements MakerAction {
        public BowlConfirmed {
            Objects.requireNonNull(at, "at");
        }

        @Override
        public <R> R act(Acts<R> acts) {
            return acts.bowlConfirmed(this);
        }
    }

    /** The set-up from now on, for example with another chocolate. */
    record SetupChanged(Instant at, Setup setup) implements MakerAction {
        public SetupChanged {
            Objects.requireNonNull(at, "at");
            Objects.requireNonNull(setup, "setup");
        }

        @Override
        public <R> R act(Acts<R> acts) {
            return acts.setupChanged(this);
        }
    }

    /** The action with this sequence number is taken back. */
    record Undone(Instant at, long sequence) implements MakerAction {
        public Undone {
            Objects.requireNonNull(at, "at");
            Require.within(sequence, 0, Long.MAX_VALUE, "sequence");
        }

        @Override
        public <R> R act(Acts<R> acts) {
            return acts.undone(this);
        }
    }
}
