package fifthform.simulator.device;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Which registers such a transmitter has, as the talk describes them.
 *
 * @param unit its address
 * @param function 3 for holding registers, 4 for input registers
 * @param tip first register of the probe's number, counted from 0
 * @param others first registers of all other numbers
 * @param format how a number lies in registers
 * @param lowWordFirst whether the register with the lower bits comes first
 * @param scale what one step is worth
 * @param offset what 0 is worth, in {@code in}
 * @param in the unit of the number
 * @param openBits what stands for a broken wire
 */
record ModbusPlan(
        int unit,
        int function,
        int tip,
        List<Integer> others,
        Format format,
        boolean lowWordFirst,
        double scale,
        double offset,
        Scale in,
        long openBits) {
    /** How a number lies in registers of 16 bits, high byte first. */
    enum Format {
        INT16(1, 0x7FFF),
        UINT16(1, 0xFFFF),
        INT32(2, 0x7FFF_FFFFL),
        UINT32(2, 0xFFFF_FFFFL),
        /** IEEE 754 binary32; its usual word for a broken wire is not-a-number. */
        FLOAT32(2, 0x7FC0_0000L);

        private final int registers;
        private final long usuallyOpen;

        Format(int registers, long usuallyOpen) {
            this.registers = registers;
            this.usuallyOpen = usuallyOpen;
        }
    }

    ModbusPlan {
        others = List.copyOf(others);
    }

    static ModbusPlan of(Map<String, String> settings) {
        Format format = Format.valueOf(settings.getOrDefault("format", "int16").toUpperCase(Locale.ROOT));
        List<Integer> channels = channels(settings, format);
        List<Integer> others = new ArrayList<>(channels.subList(1, channels.size()));
        if (settings.containsKey("junction-register")) others.add(whole(settings, "junction-register", "0"));
        String open = settings.getOrDefault("open", "");
        double scale = Double.parseDouble(settings.getOrDefault("scale", format == Format.FLOAT32 ? "1" : "0.1"));
        return new ModbusPlan(
                whole(settings, "unit", "1"),
                settings.getOrDefault("table", "input").equalsIgnoreCase("holding") ? 3 : 4,
                channels.get(0),
                others,
                format,
                settings.getOrDefault("words", "high-first").equalsIgnoreCase("low-first"),
                scale,
                Double.parseDouble(settings.getOrDefault("offset", "0")),
                Scale.ofWord(settings.getOrDefault("in", "c")),
                open.isEmpty() ? format.usuallyOpen : openBits(open.split("/")[0].strip(), format));
    }

    private static List<Integer> channels(Map<String, String> settings, Format format) {
        if (settings.containsKey("registers")) {
            return Stream.of(settings.get("registers").split("/"))
                    .map(text -> Integer.decode(text.strip()))
                    .toList();
        }
        int first = whole(settings, "register", "0");
        List<Integer> channels = new ArrayList<>();
        for (int i = 0; i < whole(settings, "count", "1"); i++) channels.add(first + i * format.registers);
        return channels;
    }

    private static int whole(Map<String, String> settings, String name, String usual) {
        return Integer.decode(settings.getOrDefault(name, usual).strip());
    }

    private static long openBits(String text, Format format) {
        if (format == Format.FLOAT32) return Float.floatToRawIntBits(Float.parseFloat(text)) & 0xFFFF_FFFFL;
        return Frames.bits(Long.decode(text), 16 * format.registers);
    }

    /** The lowest register of all. */
    int first() {
        return Math.min(tip, others.stream().mapToInt(i -> i).min().orElse(tip));
    }

    /** From the lowest to the highest. */
    int count() {
        int highest = Math.max(tip, others.stream().mapToInt(i -> i).max().orElse(tip));
        return highest + format.registers - first();
    }

    /** How many steps this temperature is. */
    long number(double celsius) {
        return Math.round(exact(celsius));
    }

    private double exact(double celsius) {
        return (in.of(celsius) - offset) / scale;
    }

    /** The bits of the number that stands for this temperature. */
    long bits(long number, double celsius) {
        if (format == Format.FLOAT32) return Float.floatToRawIntBits((float) exact(celsius)) & 0xFFFF_FFFFL;
        return Frames.bits(number, 16 * format.registers);
    }

    /** What a display beside it shows, °C. */
    double celsius(long number, double celsius) {
        return format == Format.FLOAT32 ? celsius : celsius + (number - exact(celsius)) * scale / in.perKelvin();
    }

    /** Writes a number into a block that begins with the lowest register. */
    void put(byte[] block, int register, long bits) {
        for (int word = 0; word < format.registers; word++) {
            boolean high = format.registers == 2 && (word == 0) != lowWordFirst;
            long value = high ? bits >> 16 : bits;
            int at = 2 * (register - first() + word);
            block[at] = (byte) (value >> 8);
            block[at + 1] = (byte) value;
        }
    }
}
