package fifthform.curves.thermocouple;

import fifthform.curves.thermocouple.Budget.Part;
import fifthform.curves.thermocouple.Budget.Source;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The thermocouple and its converter, as far as the maker or the protocol said.
 *
 * @param type its letter; empty where nobody said, or where it is no thermocouple
 * @param toleranceClass its class
 * @param converter what turns its EMF into numbers
 */
public record Sensor(Optional<ThermocoupleType> type, ToleranceClass toleranceClass, Converter converter) {
    /** Nothing is known: the most common cheap probe is assumed wherever a number is needed. */
    public static final Sensor UNKNOWN = new Sensor(Optional.empty(), ToleranceClass.UNKNOWN, Converter.UNKNOWN);

    /** Where a converter keeps its junction to itself: the temperatures that boards beside a stove have, °C. Own choice. */
    private static final double COOLEST_BOARD_CELSIUS = 15;

    private static final double WARMEST_BOARD_CELSIUS = 40;

    /** A limit as a standard uncertainty: standard deviation of a rectangle of that half-width (JCGM 100:2008, 4.3.7). */
    private static final double RECTANGLE = 1 / Math.sqrt(3);

    public Sensor {
        Objects.requireNonNull(type, "type");
        Objects.requireNonNull(toleranceClass, "toleranceClass");
        Objects.requireNonNull(converter, "converter");
    }

    /**
     * The tip's temperature, °C, with what is known of the converter's arithmetic undone. A converter with one slope S
     * reads {@code junction + E/S}; so {@code E = S · (read − junction)}, and the tip has {@code t(E + E(junction))}. Where
     * the line carries the EMF, the temperature is made from that. Nothing changes unless type, converter and the junction
     * with which it reckoned are all known.
     *
     * @param readCelsius the number on the line, °C
     * @param junctionCelsius the cold junction, °C, where told
     * @param emfMillivolts EMF at the terminals, mV, where told
     */
    public double tipCelsius(double readCelsius, OptionalDouble junctionCelsius, OptionalDouble emfMillivolts) {
        if (type.isEmpty() || junctionCelsius.isEmpty() || !converter.tellsItsJunction()) return readCelsius;
        double junction = junctionCelsius.getAsDouble();
        OptionalDouble slope = converter.slopeMillivoltsPerKelvin(type.get());
        OptionalDouble terminal = slope.isPresent()
                ? OptionalDouble.of(slope.getAsDouble() * (readCelsius - junction))
                : converter == Converter.MILLIVOLTS ? emfMillivolts : OptionalDouble.empty();
        if (terminal.isEmpty()) return readCelsius;
        return type.get().tipCelsius(terminal.getAsDouble(), junction).orElse(readCelsius);
    }

    /**
     * What is left to doubt of a probe that nobody checked: wire, converter and junction. All limits count as rectangles.
     *
     * @param tipCelsius the tip, °C, as {@link #tipCelsius} gives it
     * @param toldCelsius the cold junction, °C, where told; one that no thermocouple has counts as not told
     */
    public List<Part> parts(double tipCelsius, OptionalDouble toldCelsius) {
        ThermocoupleType wire = type.orElse(ThermocoupleType.K);
        boolean told = toldCelsius.isPresent() && wire.reaches(toldCelsius.getAsDouble());
        OptionalDouble junctionCelsius = told ? toldCelsius : OptionalDouble.empty();
        double tolerance = RECTANGLE * toleranceClass.limitKelvin(wire, tipCelsius);
        double tip = RECTANGLE * converter.tipLimitKelvin(tipCelsius);
        double junction =
                RECTANGLE * converter.junctionLimitKelvin() * junctionShare(wire, tipCelsius, junctionCelsius);
        double slope = RECTANGLE * slopeLimitKelvin(wire, tipCelsius, junctionCelsius);
        return List.of(
                new Part(Source.TOLERANCE, tolerance),
                new Part(Source.JUNCTION, Math.sqrt(tip * tip + junction * junction + slope * slope)));
    }

    /**
     * Kelvin at the tip for a kelvin at the junction: {@code S(junction)/S(tip)} where EMFs are added, as all but one-slope
     * converters do; those add the junction's temperature as it is, until {@link #tipCelsius} undoes it.
     */
    private double junctionShare(ThermocoupleType wire, double tipCelsius, OptionalDouble junctionCelsius) {
        if (junctionCelsius.isEmpty() || leavesOneSlope(wire, junctionCelsius)) return 1;
        return wire.slopeMillivoltsPerKelvin(junctionCelsius.getAsDouble()) / wire.slopeMillivoltsPerKelvin(tipCelsius);
    }

    /** What one slope may do to a reading that could not be corrected, ± K: the worst over the junctions of a kitchen. */
    private double slopeLimitKelvin(ThermocoupleType wire, double tipCelsius, OptionalDouble junctionCelsius) {
        if (!leavesOneSlope(wire, junctionCelsius)) return 0;
        return Math.max(
                Math.abs(oneSlopeKelvin(wire, tipCelsius, COOLEST_BOARD_CELSIUS)),
                Math.abs(oneSlopeKelvin(wire, tipCelsius, WARMEST_BOARD_CELSIUS)));
    }

    private boolean leavesOneSlope(ThermocoupleType wire, OptionalDouble junctionCelsius) {
        boolean undone = type.isPresent() && junctionCelsius.isPresent() && converter.tellsItsJunction();
        return !undone && converter.slopeMillivoltsPerKelvin(wire).isPresent();
    }

    private double oneSlopeKelvin(ThermocoupleType wire, double tipCelsius, double junctionCelsius) {
        double slope = converter.slopeMillivoltsPerKelvin(wire).orElseThrow();
        double terminal = wire.emfMillivolts(tipCelsius) - wire.emfMillivolts(junctionCelsius);
        return junctionCelsius + terminal / slope - tipCelsius;
    }
}
