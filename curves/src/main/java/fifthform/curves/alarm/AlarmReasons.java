package fifthform.curves.alarm;

import fifthform.curves.estimate.Estimate;
import fifthform.curves.forecast.Forecast;
import fifthform.curves.forecast.Outlook;
import fifthform.curves.input.AlarmId;
import fifthform.curves.signal.Track;
import fifthform.curves.situation.Reason;
import fifthform.curves.situation.Reason.Figure;
import fifthform.curves.situation.Reason.Rule;
import fifthform.curves.situation.Situation;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;

/** Why an alarm's condition holds, in the figures it rests on. Asked only where it holds. */
final class AlarmReasons {
    private final Situation situation;

    AlarmReasons(Situation situation) {
        this.situation = situation;
    }

    /** The chocolate itself is past this limit; downwards where it lies above the chocolate. */
    Reason past(double limitCelsius, double deadbandKelvin) {
        return past(limitCelsius).with(Figure.DEADBAND_K, deadbandKelvin);
    }

    /** Past a limit at which no temperature ends the alarm again. */
    Reason past(double limitCelsius) {
        double celsius = situation.trusted().orElseThrow().chocolateCelsius();
        return chocolate(Rule.PAST_A_LIMIT)
                .with(Figure.LIMIT_C, limitCelsius)
                .with(Figure.PAST_LIMIT_K, Math.abs(celsius - limitCelsius));
    }

    /** What comes of a lift now passes this limit, or what comes before hands can lift. */
    Reason peakPasses(double limitCelsius, OptionalDouble beforeHandsAct) {
        Outlook turn = situation.forecast().map(Forecast::ifLifted).orElseThrow();
        Reason reason = chocolate(Rule.FORECAST_PASSES_A_LIMIT)
                .with(Figure.TURN_C, turn.celsius())
                .with(Figure.TURN_LOWER_C, turn.lowerCelsius())
                .with(Figure.TURN_UPPER_C, turn.upperCelsius())
                .with(Figure.LIMIT_C, limitCelsius);
        double meanwhile = beforeHandsAct.orElse(Double.NEGATIVE_INFINITY);
        // Once raised it may stand while its peak lies within the deadband again.
        if (meanwhile <= turn.celsius())
            return reason.with(Figure.PAST_LIMIT_K, Math.max(0, turn.celsius() - limitCelsius));
        return reason.with(Figure.PAST_LIMIT_K, Math.max(0, meanwhile - limitCelsius))
                .with(Figure.AHEAD_S, seconds(situation.reaction()))
                .with(Figure.AHEAD_C, meanwhile);
    }

    /** The chocolate will be past this limit at that moment. */
    Reason courseReaches(double limitCelsius, Duration ahead, double celsiusThen) {
        return chocolate(Rule.FORECAST_PASSES_A_LIMIT)
                .with(Figure.LIMIT_C, limitCelsius)
                .with(Figure.PAST_LIMIT_K, Math.abs(celsiusThen - limitCelsius))
                .with(Figure.AHEAD_S, seconds(ahead))
                .with(Figure.AHEAD_C, celsiusThen);
    }

    /** The cue to lift stands and the bowl is still being pushed. */
    Reason liftOverdue(double fastestKelvinPerMinute) {
        Instant since = situation.liftDueSince().orElseThrow();
        return chocolate(Rule.LIFT_IS_OVERDUE)
                .with(Figure.CUE_STOOD_S, seconds(Duration.between(since, situation.now())))
                .with(Figure.REACTION_S, seconds(situation.reaction()))
                .with(Figure.FASTEST_K_PER_MIN, fastestKelvinPerMinute);
    }

    Reason bathPast(double bathCelsius, double limitCelsius) {
        return Reason.by(Rule.PAST_A_LIMIT)
                .with(Figure.LIMIT_C, limitCelsius)
                .with(Figure.PAST_LIMIT_K, bathCelsius - limitCelsius)
                .with(Figure.BATH_C, bathCelsius);
    }

    /** What is not about a temperature. */
    Optional<Reason> ofInstrument(AlarmId id) {
        Track bowl = situation.bowl();
        return switch (id) {
            case PROBE_FAULT -> Optional.of(Reason.by(Rule.FAULTS_IN_A_ROW).with(Figure.FAULTS, bowl.faultsInARow()));
            case NO_READING ->
                Optional.of(Reason.by(Rule.SILENT_FOR_TOO_LONG)
                        .with(Figure.READING_AGE_S, seconds(bowl.age(situation.now()))));
            case READING_DOUBTFUL ->
                Optional.of(Reason.by(Rule.READINGS_IMPOSSIBLE).with(Figure.NOISE_K, bowl.noiseKelvin()));
            case PROBE_OUT -> Optional.of(Reason.by(Rule.PROBE_SAID_OUT));
            case NOT_RECORDING -> Optional.of(Reason.by(Rule.JOURNAL_STUCK));
            case HEADING_OVER,
                    OVER_RANGE,
                    NEAR_MELT_OUT,
                    MELT_OUT,
                    HEADING_UNDER,
                    TOO_COOL,
                    OVER_COOLED,
                    MELT_TOO_HOT,
                    BATH_HOT -> Optional.empty();
        };
    }

    private Reason chocolate(Rule rule) {
        Estimate estimate = situation.trusted().orElseThrow();
        return Reason.by(rule)
                .with(Figure.CHOCOLATE_C, estimate.chocolateCelsius())
                .with(Figure.RATE_K_PER_MIN, estimate.rateKelvinPerMinute());
    }

    private static double seconds(Duration duration) {
        return duration.toMillis() / 1000.0;
    }
}
