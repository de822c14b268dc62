package fifthform.simulator.device;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;

/**
 * How adapters of one kind put what they have measured, and what is wrong with it, into bytes. Written from data sheets and
 * standards, not from the driver's decoders, so that each checks the other.
 */
interface Wire {
    /** Troubles only some kinds of adapter can have. */
    Set<Trouble> SPECIAL = EnumSet.of(Trouble.SHORT_CIRCUIT, Trouble.WRONG_CRC);

    /** This temperature at the tip, rounded as the adapter rounds. */
    Said measured(double tipCelsius);

    /** The thermocouple's wire is broken. */
    Said openCircuit();

    /** Nothing answers behind the adapter: every bit it fetches is 0. */
    Said dead();

    /** The thermocouple touches ground or supply. Only where {@link #troubles()} has it. */
    default Said shortCircuit() {
        throw new IllegalStateException("this kind of adapter does not notice a short circuit");
    }

    /** Noise of the wire, of such bytes that no number can arise by chance. */
    byte[] garbage(SplittableRandom random);

    /** What can be wrong with such an adapter. */
    default Set<Trouble> troubles() {
        return EnumSet.complementOf(EnumSet.copyOf(SPECIAL));
    }

    /** A whole message as it goes out when nobody asked. */
    default byte[] unasked(Said said) {
        return said.bytes();
    }

    /** What hears the questions on one open line; empty for adapters that speak by themselves. */
    default Optional<Ear> newEar() {
        return Optional.empty();
    }
}
