package fifthform.curves.signal;

import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/**
 * Whether the numbers are degrees Fahrenheit that nobody announced. Chocolate in a kitchen, 15 to 55 °C, then reads 59 to
 * 131: a session that begins there, or a reading that steps to just what the one before was in °F, is doubted until the
 * numbers are back where chocolate can be. An overheated bowl gets there on its way, reading by reading, and is believed.
 *
 * @param latest when the last reading came
 * @param celsius that reading as if it were °C
 * @param suspect since when the numbers are thought to be °F
 */
public record Scale(Instant latest, double celsius, Optional<Instant> suspect) {
    /** Nothing read yet. */
    public static final Scale UNSEEN = new Scale(Instant.MIN, 0, Optional.empty());

    /**
     * What a session may begin with, in °F as if it were °C: pieces or worked chocolate at 15 to 32 °C, melted chocolate at
     * 38 to 55. Own choice; water just boiled, which is neither, is no chocolate in °F either.
     */
    private static final double COOLEST_FAHRENHEIT = 59;

    private static final double WORKED_FAHRENHEIT = 90;
    private static final double MELTED_FAHRENHEIT = 101;
    private static final double HOTTEST_FAHRENHEIT = 131;

    /** After a pause of up to this the chocolate cannot have become that hot. */
    private static final double PAUSE_SECONDS = 120;

    /** Colder in °F than any chocolate that is worked. */
    private static final double CHOCOLATE_AGAIN_CELSIUS = 55;

    /** A step is compared with its neighbour only. */
    private static final double NEIGHBOUR_SECONDS = 10;

    /** Two roundings, and what the chocolate itself moves between two readings. */
    private static final double NEAR_KELVIN = 1.5;

    /** Below this the two scales meet too nearly to tell a switch from a spike. */
    private static final double LEAST_STEP_KELVIN = 15;

    public Scale {
        Objects.requireNonNull(latest, "latest");
        Objects.requireNonNull(suspect, "suspect");
    }

    Optional<Doubt> doubt() {
        return suspect.map(since -> Doubt.FAHRENHEIT);
    }

    Scale with(Instant at, double read, double stepKelvin) {
        boolean neighbours = Track.seconds(latest, at) <= NEIGHBOUR_SECONDS;
        double near = NEAR_KELVIN + stepKelvin;
        if (suspect.isPresent()) {
            boolean back =
                    neighbours && read < celsius - LEAST_STEP_KELVIN && isNear(inFahrenheit(read), celsius, near);
            boolean chocolate = read < CHOCOLATE_AGAIN_CELSIUS;
            return new Scale(at, read, back || chocolate ? Optional.empty() : suspect);
        }
        boolean begins = latest.equals(Instant.MIN) && chocolateInFahrenheit(read);
        boolean resumes = !neighbours
                && Track.seconds(latest, at) <= PAUSE_SECONDS
                && read > celsius + LEAST_STEP_KELVIN
                && chocolateInFahrenheit(read);
        boolean steps = neighbours && read > celsius + LEAST_STEP_KELVIN && isNear(read, inFahrenheit(celsius), near);
        return new Scale(at, read, begins || resumes || steps ? Optional.of(at) : Optional.empty());
    }

    private static boolean chocolateInFahrenheit(double read) {
        return read >= COOLEST_FAHRENHEIT && read <= WORKED_FAHRENHEIT
                || read >= MELTED_FAHRENHEIT && read <= HOTTEST_FAHRENHEIT;
    }

    private static double inFahrenheit(double asCelsius) {
        return 1.8 * asCelsius + 32;
    }

    private static boolean isNear(double a, double b, double kelvin) {
        return Math.abs(a - b) <= kelvin;
    }
}
