package fifthform.curves.situation;

import fifthform.curves.check.Require;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Why a step is due or an alarm stands, in figures: what a maker may ask and a journal keeps. A class and no record,
 * because reasons grow figure by figure at every look at every alarm: what is checked already is not checked again.
 */
public final class Reason {
    /** What a cue or an alarm was decided by. */
    public enum Rule {
        /** A hold in a range has lasted as long as the recipe wants. */
        HELD_LONG_ENOUGH,
        /** A hold in a range still lasts. */
        STILL_HOLDING,
        /** The middle of the turning point, lifted a reaction time from now, reaches the aim. */
        TURN_REACHES_AIM,
        /** The chocolate itself is past the range that was to be reached. */
        PAST_THE_RANGE,
        /** The band of the turning point is too wide for one lift, and its upper end has reached the range's. */
        UPPER_END_REACHES_RANGE,
        /** The dip has lasted as long as was asked for. */
        DIP_IS_OVER,
        /** Nothing is known yet of how this bowl answers this bath. */
        FIRST_DIP,
        /** What is missing, by what earlier dips of this bowl gave for a second. */
        SIZED_BY_EARLIER_DIPS,
        /** What is missing, by the rate at the last lift and the bowl's coast. */
        SIZED_BY_COAST,
        /** Dips gave less than they must. */
        DIPS_GIVE_TOO_LITTLE,
        /** Over the bath it hardly rises any more, and lies below the range. */
        STAY_GIVES_TOO_LITTLE,
        /** The bowl has left the water. */
        LEFT_THE_WATER,
        /** The temperature lies in the range and hardly moves. */
        SETTLED,
        /** The curve leaves the working range below. */
        LEAVES_THE_RANGE,
        /** In temper as it came; what is left of the way up. */
        KEPT_IN_TEMPER,
        /** The melt has not erased everything old. */
        NOT_ALL_MELTED,
        /** Seed was added, and it has cooled to where its lumps melt no more. */
        SEED_HAS_GIVEN,
        /** Where the warm box takes the chocolate in the end, by its drift of some minutes. */
        DRIFTS_IN_THE_BOX,
        /** The crystals have grown in a long hold, by the model. */
        GROWS_THICK,
        /** The planned hold has lasted as long as it was to. */
        HELD_AS_PLANNED,
        /** It has cooled past the temperature at which seed would melt. */
        SEED_KEEPS,
        /** The temperature is past a limit. */
        PAST_A_LIMIT,
        /** The forecast passes a limit. */
        FORECAST_PASSES_A_LIMIT,
        /** A cue to lift has stood for longer than hands and curve need, and the bowl is still being pushed. */
        LIFT_IS_OVERDUE,
        /** The adapter reports a fault of the probe or its wire, several times in a row. */
        FAULTS_IN_A_ROW,
        /** No good reading has come for longer than this probe's pace allows. */
        SILENT_FOR_TOO_LONG,
        /** The readings do what a tip in chocolate cannot do. */
        READINGS_IMPOSSIBLE,
        /** The probe was said to be out and not yet said to be back. */
        PROBE_SAID_OUT,
        /** The journal cannot be written. */
        JOURNAL_STUCK;

        /** The word in files. */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        /** The rule with this {@link #word()}, if there is one. */
        public static Optional<Rule> fromWord(String word) {
            for (Rule each : values()) if (each.word().equals(word)) return Optional.of(each);
            return Optional.empty();
        }
    }

    /** A number in a reason. Its unit stands at the end of its name in files. */
    public enum Figure {
        /** Where the chocolate is, °C. */
        CHOCOLATE_C,
        /** Its rate, K/min. */
        RATE_K_PER_MIN,
        /** Where it turns if the bowl leaves the water now, °C; on the table: where it will turn. */
        TURN_C,
        /** 5 % point of that, °C. */
        TURN_LOWER_C,
        /** 95 % point of that, °C. */
        TURN_UPPER_C,
        /** Where the turning point should land, or a dip should bring it, °C. */
        AIM_C,
        /** Lower end of the range in question, °C. */
        RANGE_LOW_C,
        /** Upper end of the range in question, °C. */
        RANGE_HIGH_C,
        /** From cue to act, s. */
        REACTION_S,
        /** Time left until the act, s. */
        LEFT_S,
        /** What is known of the bowl: kelvin of coast for a kelvin a second, s. */
        COAST_S,
        /** Standard deviation of the natural logarithm of that. */
        COAST_LOG_SPREAD,
        /** Lifts that taught it. */
        LIFTS_SEEN,
        /** The bath as planned or measured, °C. */
        BATH_C,
        /** Dips of this batch whose peaks were seen. */
        DIPS_SEEN,
        /** Rise for a second over the bath, its coast included, K/s. */
        DIP_K_PER_S,
        /** Standard deviation of the natural logarithm of that. */
        DIP_LOG_SPREAD,
        /** What the last dips moved the bowl by, K. */
        DIPS_MOVED_K,
        /** How long a dip is to be, s. */
        DIP_S,
        /** Where the chocolate was when the dip was asked for, °C. */
        ASKED_AT_C,
        /** What may still be under way then, without a dip, K. */
        TO_COME_K,
        /** What the room takes until the dip's peak, K. */
        LOST_K,
        /** What the water that comes along under the bowl is worth in seconds over the bath, s. */
        FILM_S,
        /** Time spent in the range so far, s. */
        HELD_S,
        /** Stable seed as the model's best guess has it, % of the fat. */
        SEED_PCT,
        /** Seed that is planned, g. */
        SEED_G,
        /** Drift of some minutes, K/min. */
        DRIFT_K_PER_MIN,
        /** Where it would settle in the box as it is, °C. */
        SETTLES_C,
        /** Share of the hold spent in the working range, %. */
        IN_RANGE_PCT,
        /** The limit in question, °C. */
        LIMIT_C,
        /** How far the number in question is past the limit, K. */
        PAST_LIMIT_K,
        /** How far it must come back before the condition is over, K. */
        DEADBAND_K,
        /** How far ahead the forecast in question looks, s. */
        AHEAD_S,
        /** What it says of that moment, °C. */
        AHEAD_C,
        /** Time until the last guard before melt-out, at the present rate, s. */
        GUARD_S,
        /** How long the cue to lift has stood, s. */
        CUE_STOOD_S,
        /** Fastest rise of late, K/min. */
        FASTEST_K_PER_MIN,
        /** Age of the last good reading, s. */
        READING_AGE_S,
        /** Longest age that is still in time for this probe, s. */
        READING_AGE_ALLOWED_S,
        /** Faults reported in a row. */
        FAULTS,
        /** Standard deviation of the readings around their curve, K. */
        NOISE_K;

        /** The key in files. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    private final Rule rule;

    /** Never changed once it is in here. */
    private final EnumMap<Figure, Double> figures;

    /**
     * A reason.
     *
     * @param rule what was decided by
     * @param figures the numbers it rests on, finite
     */
    public Reason(Rule rule, Map<Figure, Double> figures) {
        this.rule = Objects.requireNonNull(rule, "rule");
        this.figures = new EnumMap<>(Figure.class);
        this.figures.putAll(figures);
        this.figures.forEach((figure, value) -> Require.finite(value, figure.word()));
    }

    private Reason(EnumMap<Figure, Double> checked, Rule rule) {
        this.rule = rule;
        this.figures = checked;
    }

    /** A reason without figures yet. */
    public static Reason by(Rule rule) {
        return new Reason(new EnumMap<>(Figure.class), Objects.requireNonNull(rule, "rule"));
    }

    /** The same reason with one more figure, which must be finite. */
    public Reason with(Figure figure, double value) {
        EnumMap<Figure, Double> more = figures.clone();
        // The word is made only where it is told.
        if (!Double.isFinite(value)) Require.finite(value, figure.word());
        more.put(figure, value);
        return new Reason(more, rule);
    }

    /** What was decided by. */
    public Rule rule() {
        return rule;
    }

    /** The numbers it rests on, in the order of {@link Figure}. */
    public Map<Figure, Double> figures() {
        return Collections.unmodifiableMap(figures);
    }

    /** One of its figures. */
    public OptionalDouble figure(Figure figure) {
        Double value = figures.get(figure);
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Reason reason && rule == reason.rule && figures.equals(reason.figures);
    }

    @Override
    public int hashCode() {
        return Objects.hash(rule, figures);
    }

    @Override
    public String toString() {
        return "Reason[" + rule + ", " + figures + "]";
    }
}
