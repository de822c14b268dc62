package fifthform.simulator.device;

import java.util.EnumSet;
import java.util.HexFormat;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;

/** Frames of a converter chip as an adapter hands them on: a line of hexadecimal digits each, or the bytes themselves. */
final class ChipWire implements Wire {
    private final Frames frames;
    private final boolean binary;
    private final byte[] sync;
    private final double junctionCelsius;

    /** @param settings those of the talk: form, sync */
    ChipWire(Frames frames, Map<String, String> settings, double junctionCelsius) {
        this.frames = frames;
        this.binary = settings.getOrDefault("form", "hex").equalsIgnoreCase("binary");
        this.sync = HexFormat.of().parseHex(settings.getOrDefault("sync", ""));
        this.junctionCelsius = junctionCelsius;
    }

    @Override
    public Said measured(double tipCelsius) {
        long frame = frames.measured(tipCelsius, junctionCelsius);
        return Said.number(sent(frame), frames.celsius(frame));
    }

    @Override
    public Said openCircuit() {
        return Said.noNumber(sent(frames.openCircuit(junctionCelsius)));
    }

    @Override
    public Said shortCircuit() {
        return Said.noNumber(sent(frames.shortCircuit(junctionCelsius).orElseThrow()));
    }

    @Override
    public Said dead() {
        return Said.noNumber(sent(0));
    }

    private byte[] sent(long frame) {
        return binary ? marked(frame) : Said.line(digits(frame));
    }

    private byte[] marked(long frame) {
        byte[] data = HexFormat.of().parseHex(digits(frame).replace(" ", ""));
        byte[] whole = new byte[sync.length + data.length];
        System.arraycopy(sync, 0, whole, 0, sync.length);
        System.arraycopy(data, 0, whole, sync.length, data.length);
        return whole;
    }

    /** Most significant byte first, a blank between registers. */
    private String digits(long frame) {
        int[] bytes = frames.registerBytes();
        int left = 0;
        for (int count : bytes) left += count;
        StringBuilder digits = new StringBuilder();
        for (int count : bytes) {
            left -= count;
            if (!digits.isEmpty()) digits.append(' ');
            String register =
                    Long.toHexString(Frames.bits(frame >> 8 * left, 8 * count)).toUpperCase(Locale.ROOT);
            digits.append("0".repeat(2 * count - register.length())).append(register);
        }
        return digits.toString();
    }

    @Override
    public byte[] garbage(SplittableRandom random) {
        return binary ? Garbage.bytes(random) : Garbage.line(random);
    }

    @Override
    public Set<Trouble> troubles() {
        Set<Trouble> troubles = EnumSet.complementOf(EnumSet.of(Trouble.WRONG_CRC));
        if (frames.shortCircuit(junctionCelsius).isEmpty()) troubles.remove(Trouble.SHORT_CIRCUIT);
        return troubles;
    }
}
