package fifthform.curves.crystal;

import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/**
 * What is said about the seed: a word and whether the chocolate has thickened. It changes only once another one has held
 * for ten seconds.
 *
 * @param word the word; empty before the cool step
 * @param thick whether it is likely to have thickened
 * @param since when this was first said; empty before the cool step
 * @param coming what the model says meanwhile, where that is something else, and since when
 */
public record Spoken(Optional<SeedWord> word, boolean thick, Optional<Instant> since, Optional<Coming> coming) {
    private static final Duration HELD = Duration.ofSeconds(10);

    /** Nothing is said. */
    public static final Spoken NOTHING = new Spoken(Optional.empty(), false, Optional.empty(), Optional.empty());

    public Spoken {
        Objects.requireNonNull(word, "word");
        Objects.requireNonNull(since, "since");
        Objects.requireNonNull(coming, "coming");
    }

    /** Another word that has not held long enough. */
    public record Coming(SeedWord word, boolean thick, Instant since) {
        public Coming {
            Objects.requireNonNull(word, "word");
            Objects.requireNonNull(since, "since");
        }
    }

    /** After the model has said this at this time. */
    Spoken next(SeedWord says, boolean saysThick, Instant now) {
        if (word.isEmpty()) return new Spoken(Optional.of(says), saysThick, Optional.of(now), Optional.empty());
        if (says == word.get() && saysThick == thick) {
            return coming.isEmpty() ? this : new Spoken(word, thick, since, Optional.empty());
        }
        Instant from = coming.filter(c -> c.word() == says && c.thick() == saysThick)
                .map(Coming::since)
                .orElse(now);
        return Duration.between(from, now).compareTo(HELD) >= 0
                ? new Spoken(Optional.of(says), saysThick, Optional.of(now), Optional.empty())
                : new Spoken(word, thick, since, Optional.of(new Coming(says, saysThick, from)));
    }

    /** In data: {@code enough}, {@code enough thick}, {@code doubtful} … */
    public Optional<String> inData() {
        return word.map(w -> w.word() + (thick ? " thick" : ""));
    }
}
