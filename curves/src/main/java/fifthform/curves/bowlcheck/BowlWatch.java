package fifthform.curves.bowlcheck;

import fifthform.curves.estimate.Estimate;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.phase.Contact;
import fifthform.curves.phase.Evidence;
import fifthform.curves.setup.BowlAnswers;
import fifthform.curves.signal.Window;
import fifthform.curves.signal.Window.Point;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Watches the bowl go from the melting bath into cold water, where it shows most plainly what it is: the heat in its
 * wall says how long it takes to turn, wall and amount how fast it falls for each kelvin. Only a move that somebody told
 * counts, since the first figure is a time from that very moment.
 *
 * @param plungedAt when it went from the melting bath into cold water
 * @param pulls fall per kelvin above the water, 1/min, every few seconds while it is in there
 * @param water how it is known how cold the water is
 * @param answer what it answered so far
 * @param doubt the other bowl that it seems to be
 * @param word what the maker said to that
 */
public record BowlWatch(
        Optional<Instant> plungedAt,
        List<Double> pulls,
        Water water,
        Answer answer,
        Optional<OtherBowl> doubt,
        Word word) {
    /** At the beginning of a batch. */
    public static final BowlWatch BEGINNING =
            new BowlWatch(Optional.empty(), List.of(), Water.USUAL, Answer.NONE, Optional.empty(), Word.NONE);

    /** Within this the wall has given its heat away, even of thick glass. */
    private static final Duration TURNS_WITHIN = Duration.ofSeconds(90);

    /** The share of its fastest fall that counts as turned. Own choice; higher ones wait for the spoon. */
    private static final double TURNED = 0.6;

    /** Points that may be missing within {@link #TURNS_WITHIN}, at one a second. */
    private static final int FEWEST_POINTS = 75;

    private static final Duration FALLS_FREELY = Duration.ofSeconds(30);
    private static final Duration SPACING = Duration.ofSeconds(5);
    private static final int MOST_PULLS = 240;
    private static final int FEWEST_PULLS = 8;

    /** The moments in which it is stirred well are much alike from day to day; those between are not. */
    private static final double STIRRED_SHARE = 0.9;

    /** Colder than this it does not come from the melting bath. */
    private static final double MELTED_CELSIUS = 38;

    /** Tap water, where no probe is in it, °C. Habit of makers; a guess, common practice, no source. */
    private static final double USUAL_COLD_WATER_CELSIUS = 16;

    private static final double LEAST_PUSH_KELVIN = 2;

    /** How it is known how cold the water is. */
    public enum Water {
        /** By a probe in it. */
        MEASURED,
        USUAL;

        static Water of(OptionalDouble celsius) {
            return celsius.isPresent() ? MEASURED : USUAL;
        }
    }

    /** What the maker said of the bowl. */
    public enum Word {
        NONE,
        /** It is the bowl it is said to be. */
        IT_IS
    }

    public BowlWatch {
        Objects.requireNonNull(plungedAt, "plungedAt");
        pulls = List.copyOf(pulls);
        Objects.requireNonNull(water, "water");
        Objects.requireNonNull(answer, "answer");
        Objects.requireNonNull(doubt, "doubt");
        Objects.requireNonNull(word, "word");
    }

    /**
     * The watch once the bowl has gone from {@code before} to {@code after} and stands at {@code estimate}.
     *
     * @param waterCelsius what a probe in the water reads
     */
    public BowlWatch followed(
            BowlAnswers usual,
            Contact before,
            Contact after,
            Estimate estimate,
            Window window,
            OptionalDouble waterCelsius,
            Instant now) {
        boolean plunges = before.place() == Place.BATH
                && after.place() == Place.COLD_WATER
                && after.evidence() == Evidence.TOLD
                && estimate.chocolateCelsius() > MELTED_CELSIUS;
        if (plunges) return plunged(after.since(), Water.of(waterCelsius));
        if (plungedAt.isEmpty()) return this;
        if (after.place() != Place.COLD_WATER) return left().judged(usual);
        Duration gone = Duration.between(plungedAt.get(), now);
        BowlWatch falling = gone.compareTo(FALLS_FREELY) > 0 ? falling(estimate, waterCelsius, gone) : this;
        return answer.turn().isEmpty() && gone.compareTo(TURNS_WITHIN) >= 0
                ? falling.turned(window).judged(usual)
                : falling;
    }

    /** The maker says that it is the bowl; it is not doubted again in this batch. */
    public BowlWatch confirmed() {
        return new BowlWatch(plungedAt, pulls, water, answer, Optional.empty(), Word.IT_IS);
    }

    /** What the next batch in this bowl is told, this one included. */
    public BowlAnswers after(BowlAnswers before) {
        return doubt.isPresent() ? before : answer.after(before);
    }

    private BowlWatch plunged(Instant at, Water known) {
        return new BowlWatch(Optional.of(at), List.of(), known, Answer.NONE, doubt, word);
    }

    private BowlWatch falling(Estimate estimate, OptionalDouble waterCelsius, Duration gone) {
        boolean due = gone.minus(FALLS_FREELY).compareTo(SPACING.multipliedBy(pulls.size() + 1L)) >= 0;
        // A probe in the water that came or went would mix two kinds of figures.
        if (!due || pulls.size() >= MOST_PULLS || Water.of(waterCelsius) != water) return this;
        double push = estimate.chocolateCelsius() - waterCelsius.orElse(USUAL_COLD_WATER_CELSIUS);
        List<Double> more = new ArrayList<>(pulls);
        more.add(-estimate.rateKelvinPerMinute() / Math.max(LEAST_PUSH_KELVIN, push));
        return new BowlWatch(plungedAt, more, water, answer, doubt, word);
    }

    private BowlWatch turned(Window window) {
        Instant from = plungedAt.orElseThrow();
        List<Point> points = window.points().stream()
                .filter(p -> !p.at().isBefore(from))
                .filter(p -> !p.at().isAfter(from.plus(TURNS_WITHIN)))
                .toList();
        double fastest =
                points.stream().mapToDouble(Point::kelvinPerMinute).min().orElse(0);
        if (points.size() < FEWEST_POINTS || fastest >= 0) return this;
        double seconds = points.stream()
                .filter(p -> p.kelvinPerMinute() < TURNED * fastest)
                .findFirst()
                .map(p -> Duration.between(from, p.at()).toMillis() / 1000.0)
                .orElseThrow();
        return with(new Answer(
                OptionalDouble.of(StrictMath.log(Math.max(2, seconds))), answer.pull(), answer.pullGuessed()));
    }

    private BowlWatch left() {
        BowlWatch over = new BowlWatch(Optional.empty(), List.of(), water, answer, doubt, word);
        if (pulls.size() < FEWEST_PULLS) return over;
        double pull = pulls.stream()
                .sorted()
                .skip((long) (STIRRED_SHARE * pulls.size()))
                .findFirst()
                .orElseThrow();
        if (pull <= 0) return over;
        OptionalDouble figure = OptionalDouble.of(StrictMath.log(pull));
        return over.with(new Answer(
                answer.turn(),
                water == Water.MEASURED ? figure : OptionalDouble.empty(),
                water == Water.USUAL ? figure : OptionalDouble.empty()));
    }

    private BowlWatch with(Answer other) {
        return new BowlWatch(plungedAt, pulls, water, other, doubt, word);
    }

    /** What both figures say together takes the place of what the first said alone. */
    private BowlWatch judged(BowlAnswers usual) {
        if (word == Word.IT_IS) return this;
        return new BowlWatch(plungedAt, pulls, water, answer, BowlCheck.judge(usual, answer), word);
    }
}
