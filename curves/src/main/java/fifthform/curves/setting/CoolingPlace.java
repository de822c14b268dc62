package fifthform.curves.setting;

import fifthform.curves.recipe.CelsiusRange;
import java.time.Duration;
import java.util.Locale;

/** Where filled moulds set. */
public enum CoolingPlace {
    /** 18 to 20 °C: common practice, no source; computed to set 8 mm in an hour. */
    ROOM(new CelsiusRange(18, 20), Duration.ofMinutes(60), Duration.ofHours(4)),
    /** 14 to 16 °C, two hours or more for filled moulds, else dull spots: a supplier's technique page, read. */
    COOL(new CelsiusRange(12, 16), Duration.ofMinutes(30), Duration.ofHours(3)),
    /** 8 to 12 °C for 10 to 20 min, then the room; begun when the edges lose their gloss: common practice, no source. */
    FRIDGE(new CelsiusRange(8, 12), Duration.ofMinutes(10), Duration.ofMinutes(20));

    private final CelsiusRange range;
    private final Duration usual;
    private final Duration longest;

    CoolingPlace(CelsiusRange range, Duration usual, Duration longest) {
        this.range = range;
        this.usual = usual;
        this.longest = longest;
    }

    /** How warm it should be. */
    public CelsiusRange range() {
        return range;
    }

    /** When to look whether they pull away, where no thickness says more. */
    public Duration usual() {
        return usual;
    }

    /** Longer does no more good; in a fridge it brings water. */
    public Duration longest() {
        return longest;
    }

    /** The word in files and commands. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
