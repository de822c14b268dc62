package fifthform.probe.protocol;

import fifthform.curves.check.Parsed;
import fifthform.probe.ProbeProtocol;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;

/** What the maker wrote behind {@code modbus-rtu:}. */
final class ModbusSettings {
    private static final String REGISTER = "register";
    private static final String REGISTERS = "registers";
    private static final String COUNT = "count";
    private static final String JUNCTION = "junction-register";
    private static final String OPEN = "open";
    private static final List<String> KNOWN = List.of(
            REGISTER, REGISTERS, COUNT, "unit", "table", "format", "words", "scale", "offset", "in", OPEN, JUNCTION,
            "every", "timeout");

    /** Manuals number their registers by table; no device is known that has as many as to reach these numbers (our guess). */
    private static final int MANUALS_RANGE = 9999;

    /** No scale of a temperature is larger; it keeps every product finite. */
    private static final double LARGEST_SCALE = 1000;

    private static final double LARGEST_OFFSET = 10_000;

    private final SettingReader reader;

    ModbusSettings(Map<String, String> given) {
        this.reader = new SettingReader(ModbusRtu.ID, given, KNOWN);
    }

    Parsed<ProbeProtocol> read() {
        int unit = (int) reader.whole("unit", RegisterQuestion.LOWEST_UNIT, RegisterQuestion.HIGHEST_UNIT, 1);
        boolean holding =
                reader.word("table", List.of("input", "holding"), "input").equals("holding");
        RegisterTable table = holding ? RegisterTable.HOLDING : RegisterTable.INPUT;
        RegisterFormat format = RegisterFormat.ofWord(reader.word("format", RegisterFormat.words(), "int16"));
        boolean lowFirst = reader.word("words", List.of("high-first", "low-first"), "high-first")
                .equals("low-first");
        double scale = scale(format);
        double offset = reader.number("offset", 0, "from -10000 to 10000", value -> Math.abs(value) <= LARGEST_OFFSET);
        Unit in = reader.unit(Unit.CELSIUS);
        Set<Long> open = open(format);
        Duration every = reader.seconds("every", PollPace.SHORTEST_SECONDS, PollPace.LONGEST_SECONDS, 0.5);
        Duration timeout = reader.seconds("timeout", 0.1, PollPace.LONGEST_SECONDS, 0.5);
        List<Integer> channels = channels(format);
        OptionalInt junction = reader.has(JUNCTION) ? register(JUNCTION) : OptionalInt.empty();
        if (reader.problems().isEmpty()) checkReach(channels, junction, format);
        if (!reader.problems().isEmpty()) return Parsed.refused(reader.problems());
        RegisterMap map = new RegisterMap(channels, junction, format, lowFirst, scale, offset, in, open);
        return Parsed.accepted(new ModbusRtu(unit, table, map, every, timeout));
    }

    /** Tenths are what most transmitters send in whole numbers (common practice, no source). */
    private double scale(RegisterFormat format) {
        return reader.number(
                "scale",
                format == RegisterFormat.FLOAT32 ? 1 : 0.1,
                "from -1000 to 1000 and not 0",
                value -> value != 0 && Math.abs(value) <= LARGEST_SCALE);
    }

    private Set<Long> open(RegisterFormat format) {
        Set<Long> bits = new HashSet<>();
        if (!reader.has(OPEN)) return bits;
        if (format == RegisterFormat.FLOAT32) {
            bits.add(floatBits(reader.number(OPEN, 0, "a number that the device sends", Double::isFinite)));
            return bits;
        }
        long all = (1L << 16 * format.registers()) - 1;
        reader.wholes(OPEN, format.lowest(), format.highest()).forEach(value -> bits.add(value & all));
        return bits;
    }

    private static long floatBits(double value) {
        return Float.floatToRawIntBits((float) value) & 0xFFFF_FFFFL;
    }

    private List<Integer> channels(RegisterFormat format) {
        if (reader.has(REGISTERS)) return listed();
        if (!reader.has(REGISTER)) {
            reader.refuse(
                    REGISTER,
                    "Nobody but the adapter's manual knows which register holds the temperature.",
                    "Write for example modbus-rtu:register=8 (counted from 0; a manual's 30009 or 9 is 8).");
            return List.of();
        }
        int first = register(REGISTER).orElse(0);
        int count = (int) reader.whole(COUNT, 1, RegisterQuestion.MOST_REGISTERS / format.registers(), 1);
        List<Integer> channels = new ArrayList<>();
        for (int channel = 0; channel < count; channel++) channels.add(first + channel * format.registers());
        return channels;
    }

    private List<Integer> listed() {
        if (reader.has(REGISTER) || reader.has(COUNT))
            reader.refuse(
                    REGISTERS, "registers already names them all.", "Leave out register and count, or registers.");
        List<Integer> channels = new ArrayList<>();
        for (long register : reader.wholes(REGISTERS, 0, RegisterQuestion.HIGHEST_REGISTER)) {
            if (channels.contains((int) register))
                reader.refuse(REGISTERS, "It names " + register + " twice.", "Name it once.");
            channels.add((int) register);
        }
        refuseManualsNumbers(REGISTERS);
        return channels;
    }

    private OptionalInt register(String name) {
        refuseManualsNumbers(name);
        return OptionalInt.of((int) reader.whole(name, 0, RegisterQuestion.HIGHEST_REGISTER, 0));
    }

    /** 30001 and 40001 in a manual are the tables' first registers, which go over the wire as 0. */
    private void refuseManualsNumbers(String name) {
        for (String text : reader.text(name, "").split("/")) {
            if (!text.strip().matches("\\d{5,6}")) continue;
            int digits = text.strip().length();
            int number = Integer.parseInt(text.strip());
            for (RegisterTable table : RegisterTable.values()) {
                int first = digits == 5 ? table.firstInManuals() : (table.firstInManuals() - 1) * 10 + 1;
                int most = digits == 5 ? MANUALS_RANGE : RegisterQuestion.HIGHEST_REGISTER + 1;
                if (number < first || number >= first + most) continue;
                reader.refuse(
                        name,
                        name + " is " + number + ", which is how manuals number " + table.word()
                                + " registers; on the wire they count from 0.",
                        "Write table=" + table.word() + "," + name + "=" + (number - first)
                                + ". If the device really means " + number + " counted from 0, write it as 0x"
                                + Integer.toHexString(number).toUpperCase(Locale.ROOT) + ".");
            }
        }
    }

    /** One question must reach all of them: answers do not say what they are about, and one question cannot be mistaken. */
    private void checkReach(List<Integer> channels, OptionalInt junction, RegisterFormat format) {
        List<Integer> all = new ArrayList<>(channels);
        junction.ifPresent(all::add);
        int first = all.stream().mapToInt(i -> i).min().orElse(0);
        int last = all.stream().mapToInt(i -> i).max().orElse(0) + format.registers() - 1;
        String name = reader.has(REGISTERS) ? REGISTERS : REGISTER;
        if (last > RegisterQuestion.HIGHEST_REGISTER)
            reader.refuse(name, "It ends at " + last + ", but the last register is 65535.", "Change " + name + ".");
        else if (last - first + 1 > RegisterQuestion.MOST_REGISTERS)
            reader.refuse(
                    name,
                    "From " + first + " to " + last + " are " + (last - first + 1)
                            + " registers, but one question reads 125 at most.",
                    "Name registers that lie closer together.");
    }
}
