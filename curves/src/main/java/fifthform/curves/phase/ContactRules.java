package fifthform.curves.phase;

import fifthform.curves.estimate.Estimate;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.recipe.Phase;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.signal.Window;
import fifthform.curves.signal.Window.Point;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * Where the bowl must be standing, judged from its curve. The main nuisance is the spoon: left alone, a bowl takes up a
 * tenth of the heat, so a pause in stirring looks like a lift. Two things keep that in bounds: nobody lifts far from the
 * target, and a maker who presses keys is believed until the curve plainly says otherwise.
 *
 * <p>All thresholds are our own, set against the rates of a lumped bowl of 0.2 to 5 kg: cold water 1 to 10 K/min down,
 * table 0.1 to 1 K/min down, warm bath 0.4 to 6 K/min up.
 */
final class ContactRules {
    private static final Duration SUSTAINED = Duration.ofSeconds(6);
    private static final Duration LOOK_BACK = Duration.ofSeconds(30);

    /** So long, and so plainly, must the curve contradict a key. */
    private static final Duration PLAINLY = Duration.ofSeconds(30);

    private static final double PLAINLY_WARMING_KELVIN_PER_MINUTE = 0.8;
    private static final double PLAINLY_COOLING_KELVIN_PER_MINUTE = -2.0;

    /** A bowl that slowly goes the wrong way for so long does not stand where the key said. Own choice. */
    private static final Duration SLOWLY = Duration.ofSeconds(60);

    private static final double SLOWLY_KELVIN = 0.15;

    /** A bath that warms a bowl by less in that time cannot be told from none. Tuned on training kitchens. */
    private static final double HARDLY_KELVIN = 0.1;

    /** On the table, long after it came there, nothing but water moves it up by so much in a minute. Own choice. */
    private static final Duration COAST_OVER = Duration.ofMinutes(3);

    private static final double UNEXPLAINED_KELVIN = 0.35;

    /**
     * Crystals that form warm the chocolate by themselves, on the table and while nobody touches it: 0.3 to 0.5 K/min in
     * simulated kitchens. A slower rise than this is no sign of a bath while they may. Tuned on training kitchens.
     */
    private static final double CRYSTALS_WARM_KELVIN_PER_MINUTE = 0.8;

    /** Nearer to the working range a bath is the greater danger, and crystals form slowly. Own choice. */
    private static final double CRYSTALS_BELOW_RANGE_KELVIN = 1;

    private static final double WARMING_KELVIN_PER_MINUTE = 0.4;
    private static final double COLD_WATER_KELVIN_PER_MINUTE = -1.2;

    /** Makers lift near the target; a rate that fades further away than this is a pause in stirring. */
    private static final double NEAR_TARGET_KELVIN = 3.5;

    /**
     * A bath's own push fades over minutes: to 0.85 or so within {@link #LOOK_BACK}. A rate that has come down to this
     * share of it means that the push has gone.
     */
    private static final double FADED = 0.7;

    /** On the table a rate this close to the fastest of late is not fading: water holds the bowl. */
    private static final double STILL_PUSHED = 0.85;

    private static final double CLEAR_RATE_KELVIN_PER_MINUTE = 0.6;

    private final Recipe recipe;
    private final Contact contact;
    private final PhaseProgress progress;
    private final Phase phase;
    private final double celsius;
    private final double rate;
    private final double rateSigma;
    private final Window window;
    private final Instant now;

    private ContactRules(Recipe recipe, Batch batch, Estimate estimate, Window window, Instant now) {
        this.recipe = recipe;
        this.contact = batch.contact();
        this.progress = batch.progress();
        this.phase = batch.phase();
        this.celsius = estimate.chocolateCelsius();
        this.rate = estimate.rateKelvinPerMinute();
        this.rateSigma = estimate.rateSigmaKelvinPerMinute();
        this.window = window;
        this.now = now;
    }

    static Contact next(Recipe recipe, Batch batch, Estimate estimate, Window window, PlaceOdds odds, Instant now) {
        ContactRules rules = new ContactRules(recipe, batch, estimate, window, now);
        Contact contact = batch.contact();
        Place ruled = contact.evidence() == Evidence.TOLD ? rules.against() : rules.seen();
        // The network was taught nothing of the melt, where a full bath and a table look the same to it.
        boolean heard = !rules.isFreshWord() && batch.phase() != Phase.MELT;
        Place mostLikely = heard ? odds.with(contact, ruled) : ruled;
        Place seen = mostLikely == Place.BATH && rules.crystalsMayWarm() ? contact.place() : mostLikely;
        return contact.movedTo(seen, now, seen == contact.place() ? contact.evidence() : Evidence.INFERRED);
    }

    /** A key just pressed is believed by everybody. */
    private boolean isFreshWord() {
        return contact.evidence() == Evidence.TOLD
                && Duration.between(contact.since(), now).compareTo(PLAINLY) < 0;
    }

    /** The place that contradicts the key, or the key's own. */
    private Place against() {
        if (isFreshWord()) return contact.place();
        double slowest = window.lowestRateThroughout(now.minus(PLAINLY)).orElse(0);
        double fastest = window.highestRateThroughout(now.minus(PLAINLY)).orElse(0);
        boolean sinks = phase != Phase.MELT && movedIn(SLOWLY) < -SLOWLY_KELVIN;
        boolean climbs = movedIn(SLOWLY) > SLOWLY_KELVIN;
        return switch (contact.place()) {
            case BATH -> fastest < -WARMING_KELVIN_PER_MINUTE || sinks ? coldOrTable() : Place.BATH;
            case COLD_WATER -> slowest > -0.1 || climbs ? warmOrTable() : Place.COLD_WATER;
            case TABLE -> {
                if (slowest > PLAINLY_WARMING_KELVIN_PER_MINUTE && pushed() || unexplained()) yield Place.BATH;
                yield fastest < PLAINLY_COOLING_KELVIN_PER_MINUTE && pulled() ? Place.COLD_WATER : Place.TABLE;
            }
        };
    }

    private Place seen() {
        return switch (contact.place()) {
            case BATH -> fromBath();
            case COLD_WATER -> fromColdWater();
            case TABLE -> fromTable();
        };
    }

    private Place fromBath() {
        if (rate + rateSigma < -WARMING_KELVIN_PER_MINUTE) return coldOrTable();
        // While melting, lumps and stirring make the rate swing; there only a fall shows that the bowl has left.
        boolean liftable =
                phase != Phase.MELT && celsius > recipe.work().range().lowCelsius() - NEAR_TARGET_KELVIN;
        if (!liftable) return Place.BATH;
        // Over water that no longer warms it a bowl stands as on the table, and mostly it does stand there.
        if (movedWithin(SLOWLY) < HARDLY_KELVIN) return Place.TABLE;
        double fastest = rateOf(window.fastestRiseSince(later(contact.since(), now.minus(LOOK_BACK))));
        boolean faded = fastest > CLEAR_RATE_KELVIN_PER_MINUTE && rate + rateSigma < FADED * fastest;
        return faded ? Place.TABLE : Place.BATH;
    }

    private Place fromColdWater() {
        if (rate - rateSigma > WARMING_KELVIN_PER_MINUTE) return warmOrTable();
        boolean liftable = celsius < recipe.cool().range().highCelsius() + NEAR_TARGET_KELVIN;
        if (!liftable) return Place.COLD_WATER;
        double fastest = rateOf(window.fastestFallSince(later(contact.since(), now.minus(LOOK_BACK))));
        boolean faded = fastest < -CLEAR_RATE_KELVIN_PER_MINUTE && rate - rateSigma > FADED * fastest;
        return faded ? Place.TABLE : Place.COLD_WATER;
    }

    /** A coast after a lift moves on as well, but ever more slowly; water under the bowl does not let go. */
    private Place fromTable() {
        if (coldOrTable() == Place.COLD_WATER && pulled()) return Place.COLD_WATER;
        boolean warms = warmOrTable() == Place.BATH && (pushed() || phase == Phase.MELT);
        return warms ? Place.BATH : Place.TABLE;
    }

    /** It stands where it stood while crystals were to form, and rises no faster than their heat may raise it. */
    private boolean crystalsMayWarm() {
        boolean sinceTheHold =
                phase == Phase.SEED || phase == Phase.REWARM && contact.since().isBefore(progress.since());
        return contact.place() == Place.TABLE
                && sinceTheHold
                && celsius < recipe.work().range().lowCelsius() - CRYSTALS_BELOW_RANGE_KELVIN
                && rate < CRYSTALS_WARM_KELVIN_PER_MINUTE;
    }

    /** A rise for which there is no lift to coast from. While working a hair dryer warms the bowl as well. */
    private boolean unexplained() {
        if (phase == Phase.WORK) return false;
        boolean coasts = Duration.between(contact.since(), now).compareTo(COAST_OVER) < 0;
        return !coasts && movedIn(SLOWLY) > UNEXPLAINED_KELVIN && warmOrTable() == Place.BATH;
    }

    /** Kelvin since so long ago, where the whole time is known and the bowl has not been moved within it. */
    private double movedIn(Duration time) {
        Instant from = now.minus(time);
        if (contact.since().isAfter(from)) return 0;
        double then = window.celsiusAt(from).orElse(celsius);
        return celsius - then;
    }

    /** The same; without limit where that is not known. */
    private double movedWithin(Duration time) {
        Instant from = now.minus(time);
        boolean known = !contact.since().isAfter(from);
        return known ? celsius - window.celsiusAt(from).orElse(-99) : Double.POSITIVE_INFINITY;
    }

    private Place coldOrTable() {
        double fastest = window.highestRateThroughout(now.minus(SUSTAINED)).orElse(0);
        return fastest < COLD_WATER_KELVIN_PER_MINUTE ? Place.COLD_WATER : Place.TABLE;
    }

    private Place warmOrTable() {
        double slowest = window.lowestRateThroughout(now.minus(SUSTAINED)).orElse(0);
        return slowest > WARMING_KELVIN_PER_MINUTE ? Place.BATH : Place.TABLE;
    }

    private boolean pulled() {
        return rate < STILL_PUSHED * rateOf(window.fastestFallSince(now.minus(LOOK_BACK)));
    }

    private boolean pushed() {
        return rate > STILL_PUSHED * rateOf(window.fastestRiseSince(now.minus(LOOK_BACK)));
    }

    private static double rateOf(Optional<Point> point) {
        return point.map(Point::kelvinPerMinute).orElse(0.0);
    }

    private static Instant later(Instant a, Instant b) {
        return a.isAfter(b) ? a : b;
    }
}
