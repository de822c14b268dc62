package fifthform.curves.cue;

import fifthform.curves.check.Require;
import fifthform.curves.recipe.CelsiusRange;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/**
 * How a bowl drifts in a warm box, minutes at a time. Box and bowl are one slow body: at a drift of {@code d} K/min it
 * settles at {@code T + d·τ}, and a box that is warmer by {@code x} settles it {@code x} higher. Each change of the box
 * shows τ by how much the drift changed.
 *
 * @param markAt when the present span began; empty before the first reading
 * @param markCelsius temperature then, °C
 * @param driftKelvinPerMinute drift of the last whole span
 * @param spans whole spans since the box was last changed
 * @param tauMinutes how slow the bowl is in the box
 * @param asked the last change that was asked for
 */
public record BoxDrift(
        Optional<Instant> markAt,
        double markCelsius,
        double driftKelvinPerMinute,
        int spans,
        double tauMinutes,
        Optional<Asked> asked) {
    /**
     * A change of the box.
     *
     * @param at when it was asked for
     * @param kelvin by so much, K
     * @param driftKelvinPerMinute the drift before it
     */
    public record Asked(Instant at, double kelvin, double driftKelvinPerMinute) {
        public Asked {
            Objects.requireNonNull(at, "at");
            Require.within(kelvin, -MOST_KELVIN, MOST_KELVIN, "kelvin");
            Require.finite(driftKelvinPerMinute, "driftKelvinPerMinute");
        }
    }

    private static final Duration SPAN = Duration.ofMinutes(4);

    /** Box and bowl need so many spans before a change shows whole. Own choice. */
    private static final int SETTLES_SPANS = 2;

    /** 600 g in still warm air: 1.3 kJ/K over 0.6 W/K, a guess from the bowl's surface and 8 W/m²K. */
    private static final double USUAL_TAU_MINUTES = 40;

    private static final double LEAST_TAU_MINUTES = 15;
    private static final double MOST_TAU_MINUTES = 120;

    /** What a box is turned by, K; no knob is finer, and no change larger is asked for at once. */
    private static final double STEP_KELVIN = 0.5;

    private static final double MOST_KELVIN = 3;

    /** The upper part of the range: crystals grow slower there, and it pours better. */
    private static final double AIM_FRACTION = 0.6;

    /** How far ahead the drift is looked at, min. */
    private static final double AHEAD_MINUTES = 15;

    private static final double MARGIN_KELVIN = 0.15;

    static final BoxDrift NOT_YET = new BoxDrift(Optional.empty(), 0, 0, 0, USUAL_TAU_MINUTES, Optional.empty());

    public BoxDrift {
        Objects.requireNonNull(markAt, "markAt");
        Require.finite(markCelsius, "markCelsius");
        Require.finite(driftKelvinPerMinute, "driftKelvinPerMinute");
        Require.within(spans, 0, 1e6, "spans");
        Require.within(tauMinutes, LEAST_TAU_MINUTES, MOST_TAU_MINUTES, "tauMinutes");
        Objects.requireNonNull(asked, "asked");
    }

    /** After a reading; at the end of a span it is known how the bowl drifts. */
    BoxDrift seen(Look look) {
        if (markAt.isEmpty()) return marked(look, 0, 0, tauMinutes, asked);
        Duration passed = Duration.between(markAt.get(), look.readingAt());
        if (passed.compareTo(SPAN) < 0) return this;
        double drift = (look.celsius() - markCelsius) / (passed.toMillis() / 60_000.0);
        BoxDrift known = marked(look, drift, spans + 1, tauMinutes, asked).learned();
        double wanted = known.wantedKelvin(
                look.celsius(), look.situation().recipe().work().range());
        return wanted == 0 ? known : known.asking(look.readingAt(), wanted);
    }

    private BoxDrift marked(Look look, double drift, int count, double tau, Optional<Asked> by) {
        return new BoxDrift(Optional.of(look.readingAt()), look.celsius(), drift, count, tau, by);
    }

    private BoxDrift asking(Instant at, double kelvin) {
        Asked change = new Asked(at, kelvin, driftKelvinPerMinute);
        return new BoxDrift(markAt, markCelsius, driftKelvinPerMinute, 0, tauMinutes, Optional.of(change));
    }

    /** A change that has come through tells how slow the bowl is; half of the news is believed. */
    private BoxDrift learned() {
        if (asked.isEmpty() || spans != SETTLES_SPANS) return this;
        double changed = driftKelvinPerMinute - asked.get().driftKelvinPerMinute();
        double tau = asked.get().kelvin() / changed;
        boolean telling = changed * asked.get().kelvin() > 0 && Double.isFinite(tau);
        if (!telling) return this;
        double bounded = Math.max(LEAST_TAU_MINUTES, Math.min(MOST_TAU_MINUTES, tau));
        double mean = Math.sqrt(tauMinutes * bounded);
        return new BoxDrift(markAt, markCelsius, driftKelvinPerMinute, spans, mean, asked);
    }

    /** Where it settles if nothing is changed, °C. */
    double settlesCelsius(double celsius) {
        return celsius + driftKelvinPerMinute * tauMinutes;
    }

    /** By how much the box should be warmer, K; 0 where it may stay, or where the last change has not shown yet. */
    private double wantedKelvin(double celsius, CelsiusRange work) {
        boolean fresh = asked.isPresent() && spans < SETTLES_SPANS;
        double settles = settlesCelsius(celsius);
        double then = settles + (celsius - settles) * StrictMath.exp(-AHEAD_MINUTES / tauMinutes);
        boolean leaves = then < work.lowCelsius() + MARGIN_KELVIN || then > work.highCelsius() - MARGIN_KELVIN;
        if (fresh || !leaves) return 0;
        double aim = work.lowCelsius() + AIM_FRACTION * (work.highCelsius() - work.lowCelsius());
        double steps = Math.rint((aim - settles) / STEP_KELVIN);
        return Math.max(-MOST_KELVIN, Math.min(MOST_KELVIN, STEP_KELVIN * steps));
    }
}
