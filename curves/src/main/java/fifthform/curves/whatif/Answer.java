package fifthform.curves.whatif;

import fifthform.curves.check.Require;
import fifthform.curves.crystal.SeedWord;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/** What came of a what-if: a simulated curve, or why there is none. */
public sealed interface Answer {
    /** The question. */
    Change change();

    /** Calls the method for this kind of answer. */
    <R> R fold(Cases<R> cases);

    /** One answer for each kind. */
    interface Cases<R> {
        R simulated(Simulated answer);

        R refused(Refused answer);
    }

    /**
     * A moment of the simulated curve.
     *
     * @param at when
     * @param celsius the chocolate, °C, on the scale of this batch's readings
     * @param lowerCelsius 5 % point, °C
     * @param upperCelsius 95 % point, °C
     */
    record Moment(Instant at, double celsius, double lowerCelsius, double upperCelsius) {
        public Moment {
            Objects.requireNonNull(at, "at");
            Require.finite(celsius, "celsius");
            Require.within(lowerCelsius, -1e6, celsius, "lowerCelsius");
            Require.within(upperCelsius, celsius, 1e6, "upperCelsius");
        }
    }

    /** Where a simulated curve ends. */
    enum End {
        /** The maker's next act with the bowl: it would hardly have come the same way. */
        NEXT_ACT,
        /** Ten minutes after the changed act. */
        TEN_MINUTES,
        /** The recording ends there, or its readings do. */
        RECORDING_ENDS
    }

    /** Whether the working range would have been kept, with 90 % certainty. */
    enum Range {
        /** The turning point lies in it. */
        KEPT,
        /** It would have been passed. */
        PASSED,
        /** It would not have been reached. */
        NOT_REACHED,
        /** The band holds more than one of these. */
        UNSURE,
        /** Not asked: the batch was not on its way to it. */
        NOT_MEANT
    }

    /**
     * How well the fitted kitchen follows the readings.
     *
     * @param residualKelvin root mean square of what it leaves over, K
     * @param bathCelsius the water by hindsight when the bowl came into it, °C, on the scale of the chocolate's probe
     * @param coastSeconds how far the bowl coasts by hindsight: kelvin for each kelvin per second, s
     */
    record Fit(double residualKelvin, double bathCelsius, double coastSeconds) {
        public Fit {
            Require.finite(residualKelvin, "residualKelvin");
            Require.finite(bathCelsius, "bathCelsius");
            Require.finite(coastSeconds, "coastSeconds");
        }
    }

    /**
     * A simulated curve. Nothing of it was measured.
     *
     * @param change the question
     * @param lift the lift it is about, as it was
     * @param curve once a second from the point of change on, oldest first; at least two moments
     * @param end why it ends where it does
     * @param turn the turning point after the changed act: the hottest after warm water, the coldest after cold. Its band
     *     is that of the furthest point, which lies at its own time in each of the curves that the band holds
     * @param measuredTurnCelsius the turning point as it was measured in the same span, °C
     * @param range whether the working range would have been kept
     * @param seed the word about the crystals at the end of the curve; empty where the model has none
     * @param measuredSeed the word as it was at the same time after the real act
     * @param fit how good the fitted kitchen is
     */
    record Simulated(
            Change change,
            PastLift lift,
            List<Moment> curve,
            End end,
            Moment turn,
            OptionalDouble measuredTurnCelsius,
            Range range,
            Optional<SeedWord> seed,
            Optional<SeedWord> measuredSeed,
            Fit fit)
            implements Answer {
        public Simulated {
            Objects.requireNonNull(change, "change");
            Objects.requireNonNull(lift, "lift");
            curve = List.copyOf(curve);
            if (curve.size() < 2)
                throw new IllegalArgumentException("curve must have two moments, had " + curve.size());
            Objects.requireNonNull(end, "end");
            Objects.requireNonNull(turn, "turn");
            Objects.requireNonNull(measuredTurnCelsius, "measuredTurnCelsius");
            Objects.requireNonNull(range, "range");
            Objects.requireNonNull(seed, "seed");
            Objects.requireNonNull(measuredSeed, "measuredSeed");
            Objects.requireNonNull(fit, "fit");
        }

        /** When the curve leaves what was. */
        public Instant from() {
            return curve.get(0).at();
        }

        /** When it ends. */
        public Instant until() {
            return curve.get(curve.size() - 1).at();
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.simulated(this);
        }
    }

    /** Why there is no answer. */
    enum Why {
        /** No lift was seen or told. */
        NO_LIFT,
        /** There are lifts, and none has this number. */
        NO_SUCH_LIFT,
        /** The lift cannot be moved so far: before it came into the water, or past the maker's next act. */
        TOO_FAR,
        /** The probe was out of the chocolate, or faulty, or its readings were in doubt. */
        PROBE_NOT_IN_CHOCOLATE,
        /** Too few readings before or after the lift. */
        TOO_FEW_READINGS,
        /** No fitted kitchen follows the readings well enough. */
        NO_GOOD_FIT
    }

    /**
     * No answer.
     *
     * @param why the reason
     * @param figure the number that goes with it: number of lifts for {@link Why#NO_SUCH_LIFT}, the most seconds for {@link
     *     Why#TOO_FAR}, seconds without for {@link Why#PROBE_NOT_IN_CHOCOLATE}, root mean square of the residuals, K, for
     *     {@link Why#NO_GOOD_FIT}
     */
    record Refused(Change change, Why why, OptionalDouble figure) implements Answer {
        public Refused {
            Objects.requireNonNull(change, "change");
            Objects.requireNonNull(why, "why");
            Objects.requireNonNull(figure, "figure");
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.refused(this);
        }
    }
}
