package fifthform.probe.protocol;

import fifthform.curves.check.Parsed;
import fifthform.probe.LineSettings;
import fifthform.probe.LineSettings.Parity;
import fifthform.probe.ProbeProtocol;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.Set;

/**
 * A device with Modbus registers on a serial line, asked as its master: functions 03 and 04 only, which change nothing in
 * it.
 *
 * <p>Sources: MODBUS Application Protocol Specification V1.1b3 and MODBUS over Serial Line Specification and Implementation
 * Guide V1.02 (from memory).
 */
public final class ModbusRtu implements ProbeProtocol {
    static final String ID = "modbus-rtu";

    private final RegisterQuestion question;
    private final RegisterMap map;
    private final Duration every;
    private final Duration timeout;

    /** Unset: reads input register 0 of unit 1. Good to find out whether somebody answers, not to trust a number. */
    public ModbusRtu() {
        this(
                1,
                RegisterTable.INPUT,
                new RegisterMap(
                        List.of(0), OptionalInt.empty(), RegisterFormat.INT16, false, 0.1, 0, Unit.CELSIUS, Set.of()),
                Duration.ofMillis(500),
                Duration.ofMillis(500));
    }

    ModbusRtu(int unit, RegisterTable table, RegisterMap map, Duration every, Duration timeout) {
        this.question = new RegisterQuestion(unit, table, map.first(), map.count());
        this.map = map;
        this.every = Objects.requireNonNull(every, "every");
        this.timeout = Objects.requireNonNull(timeout, "timeout");
    }

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String description() {
        return "Modbus RTU: registers of a transmitter or controller, asked for over RS-485 or RS-232";
    }

    /** The first is the default of the specification (Serial Line V1.02, 2.5.1 and 3.3), the others common practice. */
    @Override
    public List<LineSettings> lines() {
        return List.of(
                new LineSettings(19_200, Parity.EVEN, 1),
                new LineSettings(9600),
                new LineSettings(9600, Parity.EVEN, 1),
                new LineSettings(19_200),
                new LineSettings(38_400),
                new LineSettings(115_200),
                new LineSettings(4800));
    }

    @Override
    public Manner manner() {
        return Manner.ANSWERS;
    }

    /**
     * Settings: {@code register} with {@code count}, or {@code registers=8/9/10}, counted from 0, one of them required;
     * {@code unit}, {@code table}, {@code format}, {@code words}, {@code scale}, {@code offset}, {@code in}, {@code open},
     * {@code junction-register}, {@code every}, {@code timeout}.
     */
    @Override
    public Parsed<ProbeProtocol> with(Map<String, String> settings) {
        return new ModbusSettings(settings).read();
    }

    @Override
    public Decoder newDecoder() {
        return new RegisterDecoder(question, map, every, timeout);
    }
}
