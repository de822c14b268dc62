package fifthform.monitor.bowls;

import fifthform.curves.setup.Bowl;
import fifthform.curves.setup.BowlAnswers;
import fifthform.curves.setup.BowlMaterial;
import fifthform.curves.setup.LearnedCoast;
import fifthform.monitor.json.Decimal;
import java.text.Normalizer;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A bowl that is remembered.
 *
 * @param id its file's name: lower-case letters, digits, hyphens
 * @param name the maker's name for it
 * @param material of its wall
 * @param taught what it taught, by amount
 */
public record KeptBowl(String id, String name, BowlMaterial material, List<Taught> taught) {
    private static final int LONGEST_NAME = 60;

    /**
     * Four times the chocolate made the coast time 1.26 times as long (simulator/README.md, what moves the coast, and the
     * rate that goes with it): an exponent of 1/6. That is one bowl of steel, so the spread grows as well.
     */
    private static final double AMOUNT_EXPONENT = 1.0 / 6;

    private static final double AMOUNT_SPREAD = 0.2;

    /** Where this batch's amount, or that of all earlier ones, was not said. Own choice. */
    private static final double UNSAID_SPREAD = 0.2;

    private static final double MOST_SPREAD = 2;

    public KeptBowl {
        if (!isId(id)) throw new IllegalArgumentException("id must be lower-case letters, digits, hyphens, was " + id);
        if (name.isBlank() || name.length() > LONGEST_NAME) {
            throw new IllegalArgumentException("name must have 1 to " + LONGEST_NAME + " characters, was " + name);
        }
        Objects.requireNonNull(material, "material");
        taught = List.copyOf(taught);
    }

    /** A bowl of which nothing is known but what it is. */
    public static KeptBowl named(String name, BowlMaterial material) {
        return new KeptBowl(idOf(name), name, material, List.of());
    }

    /** The id that belongs to a name: {@code Steel, 1 kg} has {@code steel-1-kg}; empty where no letter is left. */
    public static String idOf(String name) {
        return Normalizer.normalize(name, Normalizer.Form.NFD)
                .toLowerCase(Locale.ROOT)
                .replaceAll("\\p{M}+", "")
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-|-$", "");
    }

    public static boolean isId(String id) {
        return id.matches("[a-z0-9][a-z0-9-]{0,59}");
    }

    /** What it taught with this very amount. */
    public Optional<Taught> taughtWith(OptionalDouble grams) {
        return taught.stream()
                .filter(t -> t.isOf(grams))
                .min(Comparator.comparingDouble(t -> grams.isPresent() ? t.farFrom(grams.getAsDouble()) : 0));
    }

    /** The bowl as a batch with this amount begins with it. */
    public Bowl with(OptionalDouble grams) {
        Optional<Taught> same = taughtWith(grams);
        Optional<LearnedCoast> coast = same.flatMap(Taught::coast).or(() -> nearest(grams));
        return new Bowl(name, material, grams, coast, same.map(Taught::answers).orElse(BowlAnswers.NONE));
    }

    /** From another amount, less sure: the nearest, or where nothing is said to be near, the latest. */
    private Optional<LearnedCoast> nearest(OptionalDouble grams) {
        List<Taught> coasts = taught.stream().filter(t -> t.coast().isPresent()).toList();
        Optional<Taught> near = grams.isEmpty()
                ? Optional.empty()
                : coasts.stream()
                        .filter(t -> t.amountGrams().isPresent())
                        .min(Comparator.comparingDouble(t -> t.farFrom(grams.getAsDouble())));
        if (near.isPresent()) {
            double ratio = grams.getAsDouble() / near.get().amountGrams().getAsDouble();
            double more = AMOUNT_SPREAD * Math.abs(StrictMath.log(ratio));
            return near.get().coast().map(c -> other(c, StrictMath.pow(ratio, AMOUNT_EXPONENT), more));
        }
        return coasts.stream()
                .max(Comparator.comparing(Taught::at))
                .flatMap(Taught::coast)
                .map(c -> other(c, 1, UNSAID_SPREAD));
    }

    /** Rounded as files hold it, so that a session's header says the same again. */
    private static LearnedCoast other(LearnedCoast coast, double times, double moreSpread) {
        double seconds = Math.min(600, Math.max(1, coast.coastSeconds() * times));
        double spread = Math.min(MOST_SPREAD, Math.hypot(coast.logSpread(), moreSpread));
        return new LearnedCoast(Decimal.rounded(seconds), Decimal.rounded(spread), coast.liftsSeen());
    }

    /** What {@link #taught(Taught)} with this amount would take the place of. */
    public List<Taught> inPlaceOf(OptionalDouble grams) {
        return taught.stream().filter(t -> t.isOf(grams)).toList();
    }

    /** With this in place of what it taught with the same amount. */
    public KeptBowl taught(Taught other) {
        List<Taught> all = new ArrayList<>(taught);
        all.removeIf(t -> t.isOf(other.amountGrams()));
        all.add(other);
        all.sort(Comparator.comparingDouble(t -> t.amountGrams().orElse(0)));
        return new KeptBowl(id, name, material, all);
    }

    /** The same bowl under another name, or of another material. */
    public KeptBowl as(String otherName, BowlMaterial otherMaterial) {
        return new KeptBowl(id, otherName, otherMaterial, taught);
    }

    /** The same bowl, nothing learned. */
    public KeptBowl untaught() {
        return new KeptBowl(id, name, material, List.of());
    }

    /** When it last taught anything. */
    public Optional<Instant> lastAt() {
        return taught.stream().map(Taught::at).max(Comparator.naturalOrder());
    }
}
