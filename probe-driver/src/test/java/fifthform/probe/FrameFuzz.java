package fifthform.probe;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/** What a bad wire, a wrong speed or another device can make of a protocol's frames. */
final class FrameFuzz {
    /** Pieces that make random text look like an adapter's often enough to reach every corner of a decoder. */
    private static final String[] SCRAPS = {
        "31.25",
        "-0.5",
        "12345",
        "nan",
        "open",
        "T",
        "temp",
        "F",
        "C",
        "°",
        ":",
        "=",
        ",",
        ";",
        " ",
        "\t",
        "\r",
        "\n",
        "\n",
        "{",
        "}",
        "\"tc\":",
        "[",
        "e",
        ".",
        "1e999",
        "99999999999999999999",
        "short",
        "fault",
        "\u0000",
        "ÿ",
        "/",
        "%"
    };

    private FrameFuzz() {}

    /** A frame as it is or spoiled, two in one, noise, or text. */
    static byte[] piece(List<byte[]> frames, SplittableRandom random) {
        byte[] frame = frames.get(random.nextInt(frames.size()));
        return switch (random.nextInt(8)) {
            case 0 -> frame;
            case 1 -> noise(random);
            case 2 -> scraps(random);
            case 3 ->
                FrameTape.joined(List.of(
                        Arrays.copyOf(frame, random.nextInt(frame.length + 1)),
                        frames.get(random.nextInt(frames.size()))));
            default -> spoiled(frame, random);
        };
    }

    private static byte[] spoiled(byte[] frame, SplittableRandom random) {
        byte[] bytes = frame;
        for (int times = random.nextInt(1, 4); times > 0 && bytes.length > 0; times--)
            bytes = spoiledOnce(bytes, random.nextInt(bytes.length), random);
        return bytes;
    }

    private static byte[] spoiledOnce(byte[] bytes, int at, SplittableRandom random) {
        byte[] front = Arrays.copyOf(bytes, at);
        byte[] rear = Arrays.copyOfRange(bytes, at + 1, bytes.length);
        byte one = bytes[at];
        byte[] instead = switch (random.nextInt(6)) {
            case 0 -> new byte[0];
            case 1 -> new byte[] {one, one};
            case 2 -> new byte[] {(byte) (one ^ 1 << random.nextInt(8))};
            case 3 -> new byte[] {(byte) random.nextInt(256)};
            case 4 -> new byte[] {(byte) ('0' + random.nextInt(10))};
            default -> new byte[] {one, (byte) " .,:-+eE\n0F".charAt(random.nextInt(11))};
        };
        return FrameTape.joined(List.of(front, instead, rear));
    }

    /** Bytes that are no white space, no digit and no mark of any text, so that they cannot turn one number into another. */
    static byte[] noise(SplittableRandom random) {
        byte[] bytes = new byte[random.nextInt(1, 60)];
        for (int i = 0; i < bytes.length; i++)
            bytes[i] = (byte) (random.nextInt(3) == 0 ? random.nextInt('A', 'z' + 1) : random.nextInt(0x80, 0x100));
        bytes[random.nextInt(bytes.length)] = (byte) 0xFF; // no letter of any wire: not to be mistaken for a word
        return bytes;
    }

    private static byte[] scraps(SplittableRandom random) {
        StringBuilder text = new StringBuilder();
        for (int i = random.nextInt(1, 12); i > 0; i--) text.append(SCRAPS[random.nextInt(SCRAPS.length)]);
        return text.toString().getBytes(random.nextInt(2) == 0 ? StandardCharsets.UTF_8 : StandardCharsets.ISO_8859_1);
    }
}
