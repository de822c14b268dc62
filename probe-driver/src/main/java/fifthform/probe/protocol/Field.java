package fifthform.probe.protocol;

import java.util.Optional;

/**
 * One number with what stands around it.
 *
 * @param number empty where the adapter wrote {@code nan} or {@code open} in its place
 * @param run how many runs of digits stand before the number's first in the line; −1 where nobody counted
 */
record Field(Label label, Optional<Written> number, Unit unit, int run) {
    /** A number whose place in the line does not matter. */
    Field(Label label, Optional<Written> number, Unit unit) {
        this(label, number, unit, -1);
    }

    /** How many runs of digits stand before {@code end}. */
    static int runsBefore(CharSequence text, int end) {
        int runs = 0;
        for (int i = 0; i < end; i++) if (isDigit(text, i) && (i == 0 || !isDigit(text, i - 1))) runs++;
        return runs;
    }

    private static boolean isDigit(CharSequence text, int at) {
        return text.charAt(at) >= '0' && text.charAt(at) <= '9';
    }

    /** The same with another value. */
    Field withNumber(Written value) {
        return new Field(label, Optional.of(value), unit, run);
    }

    /** The same under the word that a header has for it. */
    Field under(Label header) {
        return new Field(header, number, unit, run);
    }

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
