package fifthform.probe.protocol;

import java.util.Optional;

/**
 * One number with what stands around it.
 *
 * @param number empty where the adapter wrote {@code nan} or {@code open} in its place
 */
record Field(Label label, Optional<Written> number, Unit unit) {
    /** The unit that label and suffix agree on; empty if they contradict each other. */
    Optional<Unit> agreedUnit() {
        Optional<Unit> labelled = label.unit();
        if (!unit.isTemperature()) return Optional.of(labelled.orElse(unit));
        return labelled.isPresent() && labelled.get() != unit ? Optional.empty() : Optional.of(unit);
    }

    /** Nothing but a number: a column. */
    boolean isBare() {
        return label.meaning() == Label.Meaning.NONE && unit == Unit.UNSAID;
    }
}
