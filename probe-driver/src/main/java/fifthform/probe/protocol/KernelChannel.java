package fifthform.probe.protocol;

import fifthform.probe.Signal;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The files of one channel.
 *
 * <p>IIO: {@code (raw + offset) · scale}, or {@code input} ready-made, in thousandths of a degree Celsius; the files of a
 * channel without a number speak for those of all. The ambient channel of a thermocouple's converter is its cold junction.
 * Source: the kernel's Documentation/ABI/testing/sysfs-bus-iio, {@code in_temp_raw} and {@code in_temp_thermocouple_type}.
 *
 * <p>hwmon: {@code tempN_input}, N from 1, in thousandths of a degree Celsius; {@code tempN_fault} 1 "to notify open
 * diodes, unconnected fans etc.", and then the number is not to be trusted. Source: the kernel's
 * Documentation/hwmon/sysfs-interface.rst.
 */
final class KernelChannel {
    /** The IIO channel without a number. */
    static final int SHARED = -1;

    /** What a file is called. {@code part} is {@code raw}, {@code ambient_raw}, {@code fault} and so on. */
    record Key(int channel, String part) {
        private static final Pattern IIO = Pattern.compile(
                "in_temp(\\d{1,2})?_((?:ambient_|object_)?(?:raw|scale|offset|input|label)|thermocouple_type)");
        private static final Pattern HWMON = Pattern.compile("temp(\\d{1,2})_(input|label|fault)");

        static Optional<Key> of(String file) {
            Matcher iio = IIO.matcher(file);
            if (iio.matches())
                return Optional.of(
                        new Key(iio.group(1) == null ? SHARED : Integer.parseInt(iio.group(1)), iio.group(2)));
            Matcher hwmon = HWMON.matcher(file);
            return hwmon.matches() && !hwmon.group(1).matches("0+")
                    ? Optional.of(new Key(Integer.parseInt(hwmon.group(1)) - 1, hwmon.group(2)))
                    : Optional.empty();
        }
    }

    private static final Pattern NUMBER = Pattern.compile("[+-]?\\d{1,12}(?:\\.\\d{1,12})?");
    private static final Pattern ESCAPE = Pattern.compile("%([0-7][0-9A-F])");
    private static final double MILLI = 1e-3;

    private final Map<String, String> files = new TreeMap<>();

    /** Whether this file had not been told before. */
    boolean take(Key key, String value) {
        return files.put(key.part(), value) == null;
    }

    Optional<String> label() {
        return Optional.ofNullable(files.get("label"))
                .filter(text -> !text.isEmpty() && !text.startsWith("!"))
                .map(KernelChannel::decoded);
    }

    /** Blanks within a label came as {@code %20}, and other marks of the line alike. */
    private static String decoded(String text) {
        return ESCAPE.matcher(text)
                .replaceAll(escape ->
                        Matcher.quoteReplacement(String.valueOf((char) Integer.parseInt(escape.group(1), 16))));
    }

    /** Empty where the files tell no temperature. */
    Optional<Signal> signal(int channel, KernelChannel shared) {
        if (number("fault").orElse(0) != 0) return Optional.of(new Signal.OpenCircuit(channel));
        String which = files.containsKey("object_raw") || files.containsKey("object_input") ? "object_" : "";
        OptionalDouble tip = celsius(which, shared);
        if (tip.isEmpty()) return Optional.empty();
        OptionalDouble junction = which.isEmpty() ? celsius("ambient_", shared) : OptionalDouble.empty();
        if (tip.getAsDouble() == 0 && junction.isPresent() && junction.getAsDouble() == 0) return Optional.empty();
        double step = files.containsKey(which + "input") ? MILLI : Math.abs(scale(which, shared)) * MILLI;
        if (!(step > 0 && step <= Signal.Measured.COARSEST_KELVIN)) return Optional.empty();
        return Optional.of(Temperatures.tip(channel, tip.getAsDouble(), junction, OptionalDouble.empty(), step));
    }

    private OptionalDouble celsius(String which, KernelChannel shared) {
        OptionalDouble ready = number(which + "input");
        if (files.containsKey(which + "input")) return rounded(ready);
        OptionalDouble raw = number(which + "raw");
        if (raw.isEmpty() || isUnreadable(which + "scale", shared) || isUnreadable(which + "offset", shared))
            return OptionalDouble.empty();
        double offset = own(which + "offset", shared).orElse(0);
        return rounded(OptionalDouble.of((raw.getAsDouble() + offset) * scale(which, shared)));
    }

    /** Without a scale the number is ready-made. */
    private double scale(String which, KernelChannel shared) {
        return own(which + "scale", shared).orElse(1);
    }

    private OptionalDouble own(String part, KernelChannel shared) {
        return files.containsKey(part) ? number(part) : shared.number(part);
    }

    private boolean isUnreadable(String part, KernelChannel shared) {
        boolean there = files.containsKey(part) || shared.files.containsKey(part);
        return there && own(part, shared).isEmpty();
    }

    private static OptionalDouble rounded(OptionalDouble milliCelsius) {
        return milliCelsius.isEmpty()
                ? milliCelsius
                : OptionalDouble.of(Temperatures.rounded(milliCelsius.getAsDouble() * MILLI));
    }

    private OptionalDouble number(String part) {
        String text = files.getOrDefault(part, "");
        return NUMBER.matcher(text).matches() ? OptionalDouble.of(Double.parseDouble(text)) : OptionalDouble.empty();
    }
}
