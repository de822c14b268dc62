package fifthform.curves.plan;

import java.util.Optional;

/**
 * What is assumed of the unknowns: all as expected, or one of them off.
 *
 * @param doubts how far each may be off
 * @param moved the one that is off
 * @param deviations by how many of its standard deviations
 */
record Guess(Doubts doubts, Optional<Unknown> moved, double deviations) {
    /** The factor of an unknown that is known by its logarithm. */
    double times(Unknown unknown) {
        return StrictMath.exp(plus(unknown));
    }

    /** What an unknown is off by, in its own unit. */
    double plus(Unknown unknown) {
        return moved.filter(unknown::equals).isPresent() ? deviations * doubts.of(unknown) : 0;
    }
}
