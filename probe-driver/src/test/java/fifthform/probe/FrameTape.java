package fifthform.probe;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/** {@code tapes/<id>.bytes}, one frame a line, with {@code tapes/<id>.expected}, what each frame means. */
record FrameTape(List<byte[]> frames, List<List<Signal>> meanings) {
    static FrameTape of(ProbeProtocol protocol) {
        List<byte[]> frames = new ArrayList<>();
        List<List<Signal>> meanings = new ArrayList<>();
        for (String[] words : lines(protocol.id() + ".bytes")) {
            frames.add(HexFormat.of().parseHex(words[1]));
            meanings.add(new ArrayList<>());
        }
        for (String[] words : lines(protocol.id() + ".expected"))
            meanings.get(Integer.parseInt(words[0])).add(signal(words));
        return new FrameTape(frames, meanings);
    }

    private static List<String[]> lines(String name) {
        try (InputStream in = FrameTape.class.getResourceAsStream("/tapes/" + name)) {
            Objects.requireNonNull(in, () -> "a protocol needs the golden file src/test/resources/tapes/" + name);
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(line -> line.split(" "))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Signal signal(String[] words) {
        int number = Integer.parseInt(words[2]);
        return switch (words[1]) {
            case "measured" ->
                new Signal.Measured(
                        number,
                        Double.parseDouble(words[3]),
                        told(words, 4),
                        told(words, 6),
                        Double.parseDouble(words[5]));
            case "open" -> new Signal.OpenCircuit(number);
            case "short" -> new Signal.Shorted(number);
            case "range" -> new Signal.OutOfRange(number, Double.parseDouble(words[3]));
            case "aside" -> new Signal.Aside(number);
            case "unreadable" -> new Signal.Unreadable(number);
            default -> throw new IllegalArgumentException("no such kind of signal: " + words[1]);
        };
    }

    /** A column that may be {@code -}, or missing at the end: the sixth is the EMF in mV. */
    private static OptionalDouble told(String[] words, int column) {
        boolean absent = words.length <= column || words[column].equals("-");
        return absent ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(words[column]));
    }

    List<Signal> meaning() {
        return meanings.stream().flatMap(List::stream).toList();
    }

    byte[] bytes() {
        return joined(frames);
    }

    static byte[] joined(List<byte[]> pieces) {
        byte[] all = new byte[pieces.stream().mapToInt(piece -> piece.length).sum()];
        int end = 0;
        for (byte[] piece : pieces) {
            System.arraycopy(piece, 0, all, end, piece.length);
            end += piece.length;
        }
        return all;
    }
}
