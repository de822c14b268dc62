package fifthform.simulator.device;

import fifthform.curves.thermocouple.ThermocoupleType;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * The codes of one converter chip: how many bits, and which of them say what. Sources: the chips' data sheets as condensed
 * in {@code converter_frames.csv}, most of them from memory.
 */
interface Frames {
    /** Bytes of each register, in the order in which they are fetched. */
    int[] registerBytes();

    /** The frame for this tip and this cold junction. */
    long measured(double tipCelsius, double junctionCelsius);

    /** The number that this frame shows, °C. */
    double celsius(long frame);

    /** The frame of a chip whose thermocouple is broken. */
    long openCircuit(double junctionCelsius);

    /** The frame of a chip that notices that its thermocouple touches something; empty for one that does not. */
    default OptionalLong shortCircuit(double junctionCelsius) {
        return OptionalLong.empty();
    }

    /** The frames of this protocol's chip, if it is a chip's. */
    static Optional<Frames> of(String protocol, ThermocoupleType type) {
        return Optional.ofNullable(Map.<String, Frames>of(
                        "max31855", new Max31855Frames(type),
                        "max6675", new Max6675Frames(),
                        "max31856", new Max31856Frames(),
                        "mcp9600", new Mcp9600Frames())
                .get(protocol));
    }

    /** The lowest {@code count} bits of a number in two's complement. */
    static long bits(long number, int count) {
        return number & (1L << count) - 1;
    }

    /** What those bits stand for. */
    static long signed(long bits, int count) {
        return bits << 64 - count >> 64 - count;
    }
}
