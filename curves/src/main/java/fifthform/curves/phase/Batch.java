package fifthform.curves.phase;

import fifthform.curves.estimate.Estimate;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.recipe.CelsiusRange;
import fifthform.curves.recipe.Phase;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.Beginning;
import fifthform.curves.signal.Window;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/**
 * The batch as a procedure.
 *
 * @param progress its phase and how far that has come
 * @param contact where its bowl stands
 * @param melted whether there are crystals to lose
 * @param reaction how quickly the hands answer a cue
 */
public record Batch(PhaseProgress progress, Contact contact, Melted melted, Reaction reaction) {
    /** Time between two readings that still counts as time spent in a range. */
    private static final Duration LONGEST_STEP = Duration.ofSeconds(5);

    /** How far above the cool range crystals still form about as well. Own choice. */
    private static final double COOL_MARGIN_KELVIN = 0.5;

    public Batch {
        Objects.requireNonNull(progress, "progress");
        Objects.requireNonNull(contact, "contact");
        Objects.requireNonNull(melted, "melted");
        Objects.requireNonNull(reaction, "reaction");
    }

    /** A batch that has just begun: solid chocolate over the hot bath. */
    public static Batch atStart(Instant start) {
        return new Batch(
                PhaseProgress.begin(Phase.MELT, start, Evidence.ASSUMED),
                Contact.atStart(start),
                Melted.NOT_YET,
                Reaction.UNKNOWN);
    }

    /** A batch that has just begun with what the maker says. */
    public static Batch atStart(Beginning beginning, Instant start) {
        Batch usual = atStart(start);
        if (beginning.isInTemper()) {
            return new Batch(
                    PhaseProgress.begin(Phase.REWARM, start, Evidence.ASSUMED),
                    new Contact(Place.TABLE, start, Evidence.ASSUMED),
                    Melted.KEPT,
                    Reaction.UNKNOWN);
        }
        return beginning.again().isPresent()
                ? new Batch(usual.progress, usual.contact, Melted.OLD_CRYSTALS, Reaction.UNKNOWN)
                : usual;
    }

    public Phase phase() {
        return progress.phase();
    }

    public Place place() {
        return contact.place();
    }

    /** As below, by the rules alone. */
    public Batch followed(Recipe recipe, Estimate estimate, Window window, Instant now, Duration sinceLast) {
        return followed(recipe, estimate, window, PlaceOdds.SILENT, now, sinceLast);
    }

    /**
     * The batch once the curve has reached {@code estimate}.
     *
     * @param odds where another witness has the bowl
     * @param sinceLast time since the estimate before
     */
    public Batch followed(
            Recipe recipe, Estimate estimate, Window window, PlaceOdds odds, Instant now, Duration sinceLast) {
        Contact stands = ContactRules.next(recipe, this, estimate, window, odds, now);
        PhaseProgress going = progress.with(
                estimate.chocolateCelsius(), inRange(recipe, estimate, sinceLast), settled(recipe, estimate, now));
        Melted since = melted.next(recipe, stands, estimate, window, now);
        Phase next = PhaseRules.next(recipe, new Batch(going, stands, since, reaction), estimate, window, now);
        PhaseProgress gone = next == phase() ? going : PhaseProgress.begin(next, now, Evidence.INFERRED);
        return new Batch(gone, stands, PhaseRules.concluded(next, phase(), since), reaction);
    }

    /** The maker says which phase it is now; the bowl then stands where it usually does. */
    public Batch confirmed(Phase phase, Instant at) {
        PhaseProgress begun = phase == phase()
                ? new PhaseProgress(
                        phase,
                        progress.since(),
                        Evidence.TOLD,
                        progress.highestCelsius(),
                        progress.lowestCelsius(),
                        progress.dwell(),
                        progress.settledSince())
                : PhaseProgress.begin(phase, at, Evidence.TOLD);
        return new Batch(
                begun, contact.movedTo(Contact.usualPlace(phase), at, Evidence.TOLD), melted.told(phase), reaction);
    }

    /** The maker says where the bowl stands. */
    public Batch moved(Place to, Instant at) {
        return new Batch(progress, contact.movedTo(to, at, Evidence.TOLD), melted, reaction);
    }

    /**
     * The batch once the hands have answered a cue to take the bowl out of the water.
     *
     * @param cued since when the cue stood
     * @param left when the bowl left the water
     * @param prior what the set-up says of the hands
     */
    public Batch answered(Instant cued, Instant left, Duration prior) {
        Reaction after = reaction.answered(Duration.between(cued, left), contact.evidence(), prior);
        return new Batch(progress, contact, melted, after);
    }

    private Duration inRange(Recipe recipe, Estimate estimate, Duration sinceLast) {
        double celsius = estimate.chocolateCelsius();
        CelsiusRange cool = recipe.cool().range();
        boolean inside = switch (phase()) {
            case MELT -> celsius >= recipe.melt().range().lowCelsius();
            // Colder than the range, crystals form all the faster; that it is too cold is an alarm's business.
            case SEED -> celsius <= cool.highCelsius() + COOL_MARGIN_KELVIN;
            case REWARM, WORK -> recipe.work().range().contains(celsius);
            case COOL, REST -> false;
        };
        return inside && sinceLast.compareTo(LONGEST_STEP) <= 0 ? sinceLast : Duration.ZERO;
    }

    private Optional<Instant> settled(Recipe recipe, Estimate estimate, Instant now) {
        if (!PhaseRules.hardlyMoves(recipe, estimate)) return Optional.empty();
        return Optional.of(progress.settledSince().orElse(now));
    }
}
