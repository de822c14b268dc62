package fifthform.simulator.device;

import fifthform.curves.thermocouple.ThermocoupleType;
import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * EMF at the terminals and temperature of the cold junction beside them, as an amplifier with a thermometer gives them:
 * {@code emf=1.243 mV cj=24.50 C}. By the law of intermediate temperatures the terminals have {@code E(tip) − E(junction)}.
 */
final class EmfWire implements Wire {
    /** One microvolt is what an amplifier for hobbyists resolves; a guess. */
    private static final double STEP_MICROVOLTS = 1;
    /** As the thermometers in such converters; a guess. */
    private static final double JUNCTION_STEP_KELVIN = 0.01;

    private final ThermocoupleType type;
    private final boolean micro;
    private final String columns;
    private final double junctionCelsius;

    /** @param settings those of the talk: type, unit, columns */
    EmfWire(Map<String, String> settings, double junctionCelsius) {
        this.type = ThermocoupleType.valueOf(settings.getOrDefault("type", "K").toUpperCase(Locale.ROOT));
        this.micro = settings.getOrDefault("unit", "mv").equalsIgnoreCase("uv");
        this.columns = settings.getOrDefault("columns", "").toLowerCase(Locale.ROOT);
        this.junctionCelsius = junctionCelsius;
    }

    @Override
    public Said measured(double tipCelsius) {
        double microvolts = 1000 * (type.emfMillivolts(tipCelsius) - type.emfMillivolts(junctionCelsius));
        BigDecimal whole = Steps.nearest(microvolts, STEP_MICROVOLTS);
        return Said.number(told(number(whole), junction(junctionCelsius)), tipCelsius);
    }

    private String number(BigDecimal microvolts) {
        return micro ? microvolts.toPlainString() : microvolts.movePointLeft(3).toPlainString();
    }

    private static String junction(double celsius) {
        return Steps.nearest(celsius, JUNCTION_STEP_KELVIN).toPlainString();
    }

    private byte[] told(String emf, String junction) {
        if (columns.isEmpty()) return Said.line("emf=" + emf + (micro ? " uV" : " mV") + " cj=" + junction + " C");
        return Said.line(Stream.of(columns.split("-"))
                .map(column -> column.equals("emf") ? emf : column.equals("cj") ? junction : "7")
                .collect(Collectors.joining(" ")));
    }

    @Override
    public Said openCircuit() {
        return Said.noNumber(told("nan", junction(junctionCelsius)));
    }

    @Override
    public Said shortCircuit() {
        return Said.noNumber(Said.line("short circuit"));
    }

    @Override
    public Said dead() {
        return Said.noNumber(told(number(Steps.nearest(0, STEP_MICROVOLTS)), junction(0)));
    }

    @Override
    public byte[] garbage(SplittableRandom random) {
        return Garbage.line(random);
    }

    @Override
    public Set<Trouble> troubles() {
        return EnumSet.complementOf(EnumSet.of(Trouble.WRONG_CRC));
    }
}
