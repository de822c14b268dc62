package fifthform.curves.learning;

import fifthform.curves.check.Require;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What one look at the bars of a batch saw. What nobody said is empty; it is never taken for "all well".
 *
 * @param ageHours time since the batch ended, h, 0 to ten years
 * @param bloom what is on them; {@link Bloom#NONE} stands alone
 * @param places where that is
 * @param snap how a bar breaks
 * @param gloss how it shines
 * @param release how the bars left the mould
 * @param kept how they were kept
 * @param sureness whether the maker is sure of it
 */
public record BarLook(
        double ageHours,
        List<Bloom> bloom,
        List<BarPlace> places,
        Optional<Snap> snap,
        Optional<Gloss> gloss,
        Optional<Release> release,
        Optional<Kept> kept,
        Sureness sureness) {
    /** Ten years, h. */
    public static final double OLDEST_HOURS = 10 * 365.25 * 24;

    /** Whether the maker is sure of what was seen. */
    public enum Sureness {
        SURE,
        UNSURE
    }

    public BarLook {
        Require.within(ageHours, 0, OLDEST_HOURS, "ageHours");
        bloom = List.copyOf(bloom);
        places = List.copyOf(places);
        if (bloom.size() > 1 && bloom.contains(Bloom.NONE)) {
            throw new IllegalArgumentException("bloom must not be none and something, was " + bloom);
        }
        if (!places.isEmpty() && (bloom.isEmpty() || bloom.contains(Bloom.NONE))) {
            throw new IllegalArgumentException("places must be empty where there is no bloom, were " + places);
        }
        Objects.requireNonNull(snap, "snap");
        Objects.requireNonNull(gloss, "gloss");
        Objects.requireNonNull(release, "release");
        Objects.requireNonNull(kept, "kept");
        Objects.requireNonNull(sureness, "sureness");
    }

    /** Whether it says anything of the bars. */
    public boolean saysNothing() {
        return bloom.isEmpty() && snap.isEmpty() && gloss.isEmpty() && release.isEmpty();
    }

    /** What it says of the temper. */
    public Sign sign() {
        return Sign.of(this);
    }
}
