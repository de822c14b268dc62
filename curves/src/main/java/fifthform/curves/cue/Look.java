package fifthform.curves.cue;

import fifthform.curves.cue.CueBoard.Due;
import fifthform.curves.estimate.Estimate;
import fifthform.curves.forecast.Aim;
import fifthform.curves.forecast.Coast;
import fifthform.curves.forecast.Forecast;
import fifthform.curves.forecast.Outlook;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.phase.Evidence;
import fifthform.curves.phase.Melted;
import fifthform.curves.phase.PhaseProgress;
import fifthform.curves.recipe.Phase;
import fifthform.curves.setup.Approach;
import fifthform.curves.setup.Holding.Warmth;
import fifthform.curves.signal.Window.Point;
import fifthform.curves.situation.Reason;
import fifthform.curves.situation.Reason.Figure;
import fifthform.curves.situation.Reason.Rule;
import fifthform.curves.situation.Situation;
import java.time.Duration;
import java.time.Instant;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One look at everything known, with what was due before it; what is due now is collected in it.
 *
 * <p>Whether the bowl stands over the warm bath has several answers, since keys are forgotten and a coast looks like a
 * bath. Each asks for what its use can bear. The first four take it that the bowl is thought to stand over the bath in
 * rewarm or work.
 *
 * <table>
 *   <caption>Over the bath: which question, and what makes it true</caption>
 *   <tr><th>question</th><th>a key said it</th><th>the curve alone, before any dip</th><th>the curve alone, after one</th><th>for</th></tr>
 *   <tr><td>{@link #isOverBath}</td><td>yes</td><td>yes</td><td>yes</td><td>what is shown</td></tr>
 *   <tr><td>{@link #isSurelyOverBath}</td><td>yes</td><td>yes</td><td>no</td><td>a cue to lift</td></tr>
 *   <tr><td>{@link #isToldOverBath}</td><td>yes</td><td>no</td><td>no</td><td>the end of counted seconds</td></tr>
 *   <tr><td>{@link #isLeftOverBath}</td><td colspan="3">the network agrees, for as long as a touch and its fast coast
 *     take; more sure and longer once it was lifted</td><td>a cue to lift, whatever the others say</td></tr>
 *   <tr><td>{@link #mayCoast}</td><td>no</td><td colspan="2">once lifted or while worked, until a cue to lift
 *     stands</td><td>keeps a cue to lift back</td></tr>
 *   <tr><td>{@link #wasToldToLift}</td><td colspan="3">a cue to lift has come and gone in this stay</td><td>keeps a
 *     second one back</td></tr>
 * </table>
 */
final class Look {
    /** A band wider than this at the cue makes one lift a gamble: it is one and a half working ranges. */
    static final double UNSURE_KELVIN = 1.5;

    /** A bowl is known once so many lifts agree so well. Own choice. */
    private static final int KNOWN_LIFTS = 3;

    private static final double KNOWN_LOG_SPREAD = 0.25;

    private static final int PACE_SECONDS = 20;

    /** Further below the range a stay until told is quicker than dips; as who wants one lift mends it. Own choice. */
    private static final double FAR_BELOW_KELVIN = 1.5;

    /** Coast of thick glass for a unit of pace, s. Tuned on training kitchens. */
    private static final double LATE_SECONDS = 90;

    /** Where a bowl has shown how late it is, it may be so much later another time. Tuned on training kitchens. */
    private static final double LATER = 1.7;

    /** A touch and the fast part of its coast are over by then. Tuned on training kitchens. */
    private static final Duration LEFT = Duration.ofSeconds(20);

    /** Touches by the dozen warm a bowl that is being worked much as a bath does. Tuned on the home fleet. */
    private static final Duration SURELY_LEFT = Duration.ofSeconds(40);

    private final Situation situation;
    private final Estimate estimate;
    private final CueBoard before;
    private final Map<CueId, Due> due = new EnumMap<>(CueId.class);

    Look(Situation situation, Estimate estimate, CueBoard before) {
        this.situation = situation;
        this.estimate = estimate;
        this.before = before;
    }

    Situation situation() {
        return situation;
    }

    CueBoard before() {
        return before;
    }

    Map<CueId, Due> due() {
        return due;
    }

    void due(CueId id, double figure, Reason reason) {
        due(id, OptionalDouble.of(figure), reason);
    }

    void due(CueId id, OptionalDouble figure, Reason reason) {
        due.put(id, new Due(figure, reason));
    }

    boolean wasOpen(CueId id) {
        return before.isOpen(id);
    }

    Instant readingAt() {
        return estimate.at();
    }

    double celsius() {
        return estimate.chocolateCelsius();
    }

    /** K/min. */
    double rate() {
        return estimate.rateKelvinPerMinute();
    }

    /** Rise of the last {@value #PACE_SECONDS} s, K/s: coarser than the filter's rate, and without its swings. */
    double pace() {
        return pace(PACE_SECONDS);
    }

    /** The same over other times: rests of the spoon hold a rise up for a quarter of a minute. */
    double pace(int seconds) {
        Instant from = estimate.at().minusSeconds(seconds);
        double then = situation.window().firstSince(from).map(Point::celsius).orElse(celsius());
        return (celsius() - then) / seconds;
    }

    /** What a thick wall may still have under way, K: at this pace it has a minute and a half in store. */
    double mostUnderWay() {
        return Math.max(0, Math.max(turnCelsius() - celsius(), lateSeconds() * pace()));
    }

    private double lateSeconds() {
        OptionalDouble known = before.dips().lateSeconds();
        return known.isPresent() ? LATER * known.getAsDouble() : LATE_SECONDS;
    }

    /** What this bowl is known to have still under way, K; nothing where that is not known. */
    double expectedUnderWay() {
        return Math.max(0, before.dips().lateSeconds().orElse(0) * pace());
    }

    Phase phase() {
        return situation.batch().phase();
    }

    Place place() {
        return situation.batch().place();
    }

    boolean isOverBath() {
        return place() == Place.BATH && (phase() == Phase.REWARM || phase() == Phase.WORK);
    }

    /** A strong coast after a dip looks like a bath from the curve alone; once there were dips only a key is believed. */
    boolean isSurelyOverBath() {
        return isOverBath()
                && (situation.batch().contact().evidence() == Evidence.TOLD
                        || before.dips().begunAt().isEmpty());
    }

    /**
     * Rules and network agree on it, whatever dips were asked for, and for longer than a touch and the fast part of its
     * coast take together. Before the first lift a maker who is never told pays more than one who is told in vain; but who
     * has dipped as asked lifts by the seconds, and the coasts of dips look like a bath.
     */
    boolean isLeftOverBath() {
        boolean dips = before.dips().response().isKnown() && !wantsOneLift();
        boolean first = phase() == Phase.REWARM && before.done().liftedAt().isEmpty() && !dips;
        return isOverBath()
                && (first
                        ? situation.odds().isLikelyOverBath() && stood(LEFT)
                        : situation.odds().isSurelyOverBath() && stood(SURELY_LEFT));
    }

    /**
     * Whether what looks like a bath may be the coast of a lift that was told or a touch that was not: once a bowl has been
     * lifted, or is being worked, hands that press no key have better reasons to warm it than to be told to lift.
     */
    boolean mayCoast() {
        boolean lifted = before.done().liftedAt().isPresent() || phase() == Phase.WORK;
        boolean told = situation.batch().contact().evidence() == Evidence.TOLD;
        return lifted && !told && !wasOpen(CueId.LIFT_NOW);
    }

    /** Whether a cue to lift has come and gone since the bowl was put where it is thought to stand. */
    boolean wasToldToLift() {
        Instant put = situation.batch().contact().since();
        return before.done().liftedAt().filter(put::isBefore).isPresent() && !wasOpen(CueId.LIFT_NOW);
    }

    /** Whether it has been where it is thought to stand for so long. */
    boolean stood(Duration time) {
        return !situation.batch().contact().since().plus(time).isAfter(situation.now());
    }

    /** Where nobody said when the bowl went over the bath, only who counts knows when its seconds are over. */
    boolean isToldOverBath() {
        return isOverBath() && situation.batch().contact().evidence() == Evidence.TOLD;
    }

    PhaseProgress progress() {
        return situation.batch().progress();
    }

    double reactionSeconds() {
        return situation.setup().reactionTime().toMillis() / 1000.0;
    }

    Optional<Outlook> turn() {
        return situation.forecast().map(Forecast::ifLifted);
    }

    double turnCelsius() {
        return turn().map(Outlook::celsius).orElse(celsius());
    }

    /** The upper end of the turning point's band. */
    double turnUpperCelsius() {
        return turn().map(Outlook::upperCelsius).orElse(celsius());
    }

    /** Where the turning point should land: by this the second to lift is chosen; empty without a forecast. */
    Optional<Double> aimCelsius() {
        return turn().map(turn -> Aim.celsius(situation.recipe(), situation.batch(), turn));
    }

    /** Seconds until the bowl must leave the water; negative where that has passed. */
    Optional<Double> secondsToLift() {
        return situation.forecast().flatMap(f -> f.secondsToLift(situation.now()));
    }

    /** The bath as a probe in it reads, else as planned. */
    OptionalDouble bathCelsius() {
        OptionalDouble read = readBathCelsius();
        return read.isPresent() ? read : situation.setup().bathCelsius();
    }

    /** The bath as a probe in it reads; nothing without one. A planned bath has cooled since it was poured. */
    OptionalDouble readBathCelsius() {
        return situation
                .bath()
                .filter(b -> b.isTrustedAt(situation.now()) && place() == Place.BATH)
                .map(track -> track.lastCelsius())
                .orElse(OptionalDouble.empty());
    }

    /** By earlier batches: lifts of this one teach of hotter and colder water, and some were none. */
    private boolean isBowlKnown() {
        return situation
                .setup()
                .bowl()
                .learned()
                .filter(l -> l.liftsSeen() >= KNOWN_LIFTS && l.logSpread() <= KNOWN_LOG_SPREAD)
                .isPresent();
    }

    /**
     * Whether the way up goes by dips from the start. How unsure a forecast will be at the cue shows only when the dip is
     * over, and a hot dip is over within seconds; so it is judged by what is known of the bowl.
     */
    boolean dipsWanted() {
        return situation.setup().approach() == Approach.TOUCHES_WHERE_UNSURE && !isBowlKnown() && !isFirstWarming();
    }

    /**
     * Whether chocolate that came in temper is on its first way up: bars melt for minutes, which no dip of seconds does, and
     * who has put them over the bath leaves them there until told.
     */
    boolean isFirstWarming() {
        boolean untouched =
                before.dips().begunAt().isEmpty() && before.done().liftedAt().isEmpty();
        double low = situation.recipe().work().range().lowCelsius();
        return isKept() && untouched && (place() == Place.BATH || celsius() < low - FAR_BELOW_KELVIN);
    }

    /** Whether it came in temper, and has not been made anew since. */
    boolean isKept() {
        return situation.batch().melted() == Melted.KEPT;
    }

    /** Whether the working range is to be held by warm air. */
    boolean holdsByAir() {
        return situation.setup().holding().filter(h -> h.warmth() == Warmth.AIR).isPresent();
    }

    /** Whether the maker wants to be told one lift, whatever is known: then no dip is ended by its seconds. */
    boolean wantsOneLift() {
        return situation.setup().approach() == Approach.ONE_LIFT;
    }

    /** Whether the forecast now is too unsure for one lift, where the maker lets the program choose. */
    boolean isUnsure() {
        boolean wide = turn().filter(t -> t.upperCelsius() - t.lowerCelsius() > UNSURE_KELVIN)
                .isPresent();
        return situation.setup().approach() == Approach.TOUCHES_WHERE_UNSURE && wide;
    }

    /** A reason with what is known at this moment. */
    Reason reason(Rule rule) {
        Coast coast = situation.coasting().coast();
        Reason reason = Reason.by(rule)
                .with(Figure.CHOCOLATE_C, celsius())
                .with(Figure.RATE_K_PER_MIN, rate())
                .with(Figure.REACTION_S, reactionSeconds())
                .with(Figure.COAST_S, coast.seconds())
                .with(Figure.COAST_LOG_SPREAD, coast.logSpread())
                .with(Figure.LIFTS_SEEN, coast.liftsSeen());
        if (turn().isPresent()) {
            Outlook turn = turn().get();
            reason = reason.with(Figure.TURN_C, turn.celsius())
                    .with(Figure.TURN_LOWER_C, turn.lowerCelsius())
                    .with(Figure.TURN_UPPER_C, turn.upperCelsius());
        }
        OptionalDouble bath = bathCelsius();
        return bath.isPresent() ? reason.with(Figure.BATH_C, bath.getAsDouble()) : reason;
    }
}
