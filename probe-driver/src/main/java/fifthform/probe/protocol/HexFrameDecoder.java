package fifthform.probe.protocol;

import fifthform.probe.ProbeProtocol;
import fifthform.probe.Signal;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * One frame a line, as hexadecimal digits. The link's first line may have lost its front and with it digits or its
 * channel, so it is held until the second has the same label and a frame too.
 */
final class HexFrameDecoder implements ProbeProtocol.Decoder, LineCutter.Lines {
    /** @param length of the whole line, bytes */
    private record Held(String label, long frame, int length) {}

    private final Chip chip;
    private final HexFrame digits;
    private final LineCutter cutter = new LineCutter(this);
    private final Map<Integer, ChipJudge> judges = new LinkedHashMap<>();
    private boolean begun;
    private Optional<Held> maybeTorn = Optional.empty();
    private String label = "";
    private int channel;

    HexFrameDecoder(Chip chip) {
        this.chip = chip;
        this.digits = new HexFrame(chip.frameBytes());
    }

    @Override
    public void feed(byte[] bytes, Consumer<? super Signal> out) {
        cutter.feed(bytes, out);
    }

    @Override
    public void line(byte[] bytes, int from, int to, Consumer<? super Signal> out) {
        boolean first = !begun;
        begun = true;
        if (isBlank(bytes, from, to)) return;
        long frame = digits.read(bytes, from, to);
        if (frame == HexFrame.NONE) {
            unreadable(to - from, out);
            return;
        }
        learnLabel(bytes, from, digits.labelEnd());
        if (first) {
            maybeTorn = Optional.of(new Held(label, frame, to - from));
            return;
        }
        if (maybeTorn.isPresent()) {
            Held held = maybeTorn.get();
            maybeTorn = Optional.empty();
            if (held.label().equals(label)) tell(held.frame(), held.length(), out);
            else out.accept(new Signal.Unreadable(held.length()));
        }
        tell(frame, to - from, out);
    }

    @Override
    public void unreadable(int bytes, Consumer<? super Signal> out) {
        begun = true;
        maybeTorn.ifPresent(held -> out.accept(new Signal.Unreadable(held.length())));
        maybeTorn = Optional.empty();
        if (bytes > 0) out.accept(new Signal.Unreadable(bytes));
    }

    private void tell(long frame, int length, Consumer<? super Signal> out) {
        ChipJudge judge = judges.computeIfAbsent(channel, number -> new ChipJudge(chip));
        out.accept(judge.judge(channel, frame).orElseGet(() -> new Signal.Unreadable(length)));
    }

    private void learnLabel(byte[] bytes, int from, int to) {
        boolean same = label.length() == to - from;
        for (int i = 0; same && i < label.length(); i++) same = label.charAt(i) == (bytes[from + i] & 0xFF);
        if (same) return;
        label = new String(bytes, from, to - from, StandardCharsets.ISO_8859_1);
        channel = Label.of(withoutChip(label)).channel();
    }

    /** The digits of a chip's name are no channel. */
    private static String withoutChip(String label) {
        return label.replaceAll("(?i)\\b(max|mcp)\\d+[a-z]*", "");
    }

    private static boolean isBlank(byte[] bytes, int from, int to) {
        for (int i = from; i < to; i++) if (bytes[i] != ' ' && bytes[i] != '\t') return false;
        return true;
    }
}
