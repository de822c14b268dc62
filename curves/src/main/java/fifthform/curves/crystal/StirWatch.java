package fifthform.curves.crystal;

import fifthform.curves.check.Require;
import fifthform.curves.estimate.Estimate;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.input.MakerAction.StirringSaid.Stirring;
import fifthform.curves.phase.Contact;
import fifthform.curves.phase.Evidence;
import fifthform.curves.setup.Setup;
import fifthform.curves.signal.Window;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Whether the chocolate is being stirred, as far as the readings of one probe show it.
 *
 * <p>In water they do: left alone, a bowl takes up a tenth to a third of the heat that a stirred one does (film
 * coefficients of 60 to 200 W/m²K overall stirred, 15 to 30 at rest; textbook values). So the heat that arrives, by its
 * rate and the distance to the water, is an overall coefficient, and that is compared with the two. On the table nothing
 * moves, and a probe in one place reads the same whether a spoon goes round or not: there it is what the maker said, else
 * what was usual in the water, and said to be assumed.
 *
 * @param told what the maker said, until a next melt begins
 * @param now what the last 40 s show
 * @param stirredSeconds time in water for which it showed stirring, since the melt
 * @param stillSeconds the same at rest
 */
public record StirWatch(Optional<Stirring> told, Optional<Stirring> now, double stirredSeconds, double stillSeconds) {
    /** Nothing is known. */
    public static final StirWatch NONE = new StirWatch(Optional.empty(), Optional.empty(), 0, 0);

    private static final Duration LOOK_BACK = Duration.ofSeconds(40);

    /** After a move the wall must first be as warm as its new water makes it. Own choice. */
    private static final Duration ARRIVED = Duration.ofSeconds(55);

    /**
     * Overall coefficients between which nothing is said, W/m²K, for the area below. Lower than a textbook's, since hands
     * rest between two bouts and half of the wall is out of the water; looked at in a few batches of the home fleet. A thin
     * steel bowl that nobody ever stirs comes to 22 in cold water: at 18 it was taken for a stirred one.
     */
    private static final double STILL_BELOW = 11;

    private static final double STIRRED_ABOVE = 26;

    /** Less than a bowl left alone takes up: it hardly stands in that water at all, W/m²K. */
    private static final double IN_WATER_ABOVE = 3;

    /** Nearer to the water than this its own uncertainty is too large, K. */
    private static final double LEAST_DISTANCE_KELVIN = 5;

    /** Heat capacity of melted chocolate (Beckett ed. 2009), J/kgK. */
    private static final double JOULES_PER_KILOGRAM_KELVIN = 1630;

    /** Wetted wall of a bowl with 1 kg, m²: a spherical cap as deep as half its width; goes with mass to the 2/3. */
    private static final double SQUARE_METRES_FOR_A_KILOGRAM = 0.05;

    private static final double USUAL_GRAMS = 600;

    /** As the forecast takes it. */
    private static final double USUAL_COLD_WATER_CELSIUS = 16;

    /** Who was seen at rest for so much longer than stirring is taken for one who does not stir. */
    private static final double MOSTLY = 3;

    private static final double SEEN_SECONDS = 120;

    public StirWatch {
        Objects.requireNonNull(told, "told");
        Objects.requireNonNull(now, "now");
        Require.within(stirredSeconds, 0, 1e9, "stirredSeconds");
        Require.within(stillSeconds, 0, 1e9, "stillSeconds");
    }

    /** The maker has said it. */
    public StirWatch said(Stirring stirring) {
        return new StirWatch(Optional.of(stirring), now, stirredSeconds, stillSeconds);
    }

    /** After one more reading. */
    StirWatch followed(
            Setup setup,
            Contact contact,
            Estimate estimate,
            Window window,
            OptionalDouble bathCelsius,
            boolean melting,
            boolean meltBegins,
            Duration passed) {
        if (meltBegins) return NONE;
        // What melts takes up heat without getting warmer, stirred or not.
        if (melting) return this;
        Optional<Stirring> shows = shown(setup, contact, estimate, window, bathCelsius);
        double seconds = Math.min(5, passed.toMillis() / 1000.0);
        return new StirWatch(
                told,
                shows,
                stirredSeconds + (shows.filter(s -> s == Stirring.STIRRED).isPresent() ? seconds : 0),
                stillSeconds + (shows.filter(s -> s == Stirring.STILL).isPresent() ? seconds : 0));
    }

    /** Whether it is stirred: as said, as it shows, as usual, else as a maker does. */
    public Stirring stirring() {
        if (told.isPresent()) return told.get();
        if (now.isPresent()) return now.get();
        return rests() ? Stirring.STILL : Stirring.STIRRED;
    }

    /** Whether the water has shown it for long enough that {@link #stirring} may rest on that where nothing shows now. */
    public boolean isSeen() {
        boolean stirs = stirredSeconds >= SEEN_SECONDS && stirredSeconds >= stillSeconds;
        return stirs || rests();
    }

    private boolean rests() {
        return stillSeconds >= SEEN_SECONDS && stillSeconds > MOSTLY * stirredSeconds;
    }

    /** How that is known. */
    public Evidence evidence() {
        if (told.isPresent()) return Evidence.TOLD;
        return now.isPresent() ? Evidence.INFERRED : Evidence.ASSUMED;
    }

    /** Whether nobody said it, and the water has not shown it for long enough. */
    public boolean isAssumed() {
        return told.isEmpty() && !isSeen();
    }

    /** Shear rate for the model, 1/s. */
    public double shearPerSecond() {
        return stirring() == Stirring.STIRRED ? Circumstances.STIRRED_PER_SECOND : 0;
    }

    private static Optional<Stirring> shown(
            Setup setup, Contact contact, Estimate estimate, Window window, OptionalDouble bathCelsius) {
        Instant from = estimate.at().minus(LOOK_BACK);
        boolean inWater = contact.place() != Place.TABLE;
        boolean arrived = Duration.between(contact.since(), estimate.at()).compareTo(ARRIVED) >= 0;
        OptionalDouble then = window.celsiusAt(from);
        if (!inWater || !arrived || then.isEmpty()) return Optional.empty();
        double mean = (then.getAsDouble() + estimate.chocolateCelsius()) / 2;
        OptionalDouble water = waterCelsius(setup, contact, bathCelsius, mean);
        if (water.isEmpty()) return Optional.empty();
        double distance = water.getAsDouble() - mean;
        if (Math.abs(distance) < LEAST_DISTANCE_KELVIN) return Optional.empty();
        double perSecond = (estimate.chocolateCelsius() - then.getAsDouble()) / LOOK_BACK.toSeconds() / distance;
        double kilograms = setup.bowl().amountGrams().orElse(USUAL_GRAMS) / 1000;
        double area = SQUARE_METRES_FOR_A_KILOGRAM * StrictMath.pow(kilograms, 2.0 / 3);
        double coefficient = perSecond * kilograms * JOULES_PER_KILOGRAM_KELVIN / area;
        if (coefficient >= STIRRED_ABOVE) return Optional.of(Stirring.STIRRED);
        // What only the curve shows of the place rests on the same heat: a bowl on the table would be taken for one at
        // rest in water.
        boolean told = contact.evidence() == Evidence.TOLD;
        boolean still = told && coefficient <= STILL_BELOW && coefficient >= IN_WATER_ABOVE;
        return still ? Optional.of(Stirring.STILL) : Optional.empty();
    }

    /** Warm water may be anything from 38 to 58 °C; cold water comes from the tap, and a bath's probe may be elsewhere. */
    private static OptionalDouble waterCelsius(
            Setup setup, Contact contact, OptionalDouble bathCelsius, double chocolateCelsius) {
        if (contact.place() == Place.BATH) return bathCelsius.isPresent() ? bathCelsius : setup.bathCelsius();
        boolean cold = bathCelsius.isPresent() && bathCelsius.getAsDouble() < chocolateCelsius;
        return cold ? bathCelsius : OptionalDouble.of(USUAL_COLD_WATER_CELSIUS);
    }
}
