package fifthform.curves.contrast;

import java.util.Objects;

/** A batch whose bars tell, and what is known of it. */
public record LookedBatch(BatchTraits traits, Bars bars) {
    public LookedBatch {
        Objects.requireNonNull(traits, "traits");
        Objects.requireNonNull(bars, "bars");
    }
}
