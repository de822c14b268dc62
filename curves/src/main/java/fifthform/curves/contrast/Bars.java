package fifthform.curves.contrast;

import fifthform.curves.learning.BarLook;
import fifthform.curves.learning.LeftOut;
import fifthform.curves.learning.Outcome;
import fifthform.curves.learning.Sign;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** How the bars of a batch stand, once: by the latest look that tells. */
public enum Bars {
    FINE,
    MARKED;

    /** Younger bars have shown nothing yet: bloom of lost temper begins within a day (Afoakwa et al. 2009). */
    public static final double FROM_HOURS = 24;

    /** Later marks are more often the store's or those of age. The last usual look is at four weeks. Own choice. */
    public static final double TO_HOURS = 35 * 24;

    /**
     * The latest look that says something of the temper, of bars between {@link #FROM_HOURS} and {@link #TO_HOURS} old, by a
     * maker who is sure; empty where there is none, and where looks contradict each other: marks do not go away, so one of
     * them is wrong, and which one only the maker can say. However often bars were looked at, they count once.
     */
    public static Optional<Bars> of(List<BarLook> looks) {
        if (Outcome.of(looks).leftOut().filter(LeftOut.CONTRADICTS::equals).isPresent()) return Optional.empty();
        return looks.stream()
                .filter(look -> look.ageHours() >= FROM_HOURS && look.ageHours() <= TO_HOURS)
                .filter(look -> look.sureness() == BarLook.Sureness.SURE)
                .filter(look -> look.sign() == Sign.CLEAN || look.sign() == Sign.LOST_TEMPER)
                .max(Comparator.comparingDouble(BarLook::ageHours))
                .map(look -> look.sign() == Sign.CLEAN ? FINE : MARKED);
    }

    /** The word in files. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
