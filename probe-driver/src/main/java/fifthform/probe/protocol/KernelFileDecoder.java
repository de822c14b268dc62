package fifthform.probe.protocol;

import fifthform.probe.ProbeProtocol;
import fifthform.probe.Signal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.regex.Pattern;

/**
 * One round of kernel files to signals.
 *
 * <p>A line begins with {@code name=}, else it may have lost its front. All of it must be pairs whose names the kernel
 * knows; a value that begins with {@code !} is a file that could not be read, and gives nothing.
 */
final class KernelFileDecoder implements ProbeProtocol.Decoder, LineCutter.Lines {
    /** Zeros are believed where they were approached, for the reason that {@link ChipJudge} gives. */
    private static final double NEAR_KELVIN = 5;

    /** Noise must not fill the memory. */
    private static final int MOST_NAMES = 64;

    private static final Pattern BLANKS = Pattern.compile(" +");

    private final LineCutter cutter = new LineCutter(this);
    private final Map<Integer, String> names = new TreeMap<>();
    private final Map<Integer, Double> lastCelsius = new HashMap<>();
    /** What names of files mean: a directory has a dozen, told again and again. */
    private final Map<String, Optional<KernelChannel.Key>> keys = new HashMap<>();

    private boolean begun;

    @Override
    public void feed(byte[] bytes, Consumer<? super Signal> out) {
        cutter.feed(bytes, out);
    }

    @Override
    public void line(byte[] bytes, int from, int to, Consumer<? super Signal> out) {
        String text = new String(bytes, from, to - from, StandardCharsets.UTF_8).strip();
        boolean mayBeTorn = !begun && !text.startsWith("name=");
        begun = true;
        if (text.isEmpty()) return;
        List<Signal> signals = mayBeTorn ? List.of() : signals(text);
        if (signals.isEmpty()) out.accept(new Signal.Unreadable(to - from));
        signals.forEach(out);
    }

    @Override
    public void unreadable(int bytes, Consumer<? super Signal> out) {
        begun = true;
        if (bytes > 0) out.accept(new Signal.Unreadable(bytes));
    }

    @Override
    public Optional<String> channelName(int channel) {
        return Optional.ofNullable(names.get(channel));
    }

    private List<Signal> signals(String text) {
        Map<Integer, KernelChannel> channels = new TreeMap<>();
        for (String pair : BLANKS.split(text)) {
            int equals = pair.indexOf('=');
            if (equals < 0) return List.of();
            String name = pair.substring(0, equals);
            String value = pair.substring(equals + 1);
            if (name.equals("name") || name.equals("label")) continue;
            Optional<KernelChannel.Key> key = key(name);
            if (key.isEmpty()) return List.of();
            KernelChannel channel = channels.computeIfAbsent(key.get().channel(), number -> new KernelChannel());
            if (!channel.take(key.get(), value)) return List.of(); // told twice: two lines run together
        }
        KernelChannel shared = channels.getOrDefault(KernelChannel.SHARED, new KernelChannel());
        boolean alone = channels.keySet().stream().noneMatch(channel -> channel > KernelChannel.SHARED);
        List<Signal> signals = new ArrayList<>();
        for (Map.Entry<Integer, KernelChannel> entry : channels.entrySet()) {
            int number = entry.getKey() == KernelChannel.SHARED ? 0 : entry.getKey();
            if (entry.getKey() == KernelChannel.SHARED && !alone) continue;
            entry.getValue().label().ifPresent(label -> names.put(number, label));
            entry.getValue().signal(number, shared).filter(this::isNoDeadZero).ifPresent(signals::add);
        }
        return signals;
    }

    private Optional<KernelChannel.Key> key(String name) {
        if (keys.size() == MOST_NAMES) keys.clear();
        return keys.computeIfAbsent(name, KernelChannel.Key::of);
    }

    private boolean isNoDeadZero(Signal signal) {
        if (!(signal instanceof Signal.Measured m)) return true;
        boolean dead =
                m.tipCelsius() == 0 && Math.abs(lastCelsius.getOrDefault(m.channel(), Double.MAX_VALUE)) > NEAR_KELVIN;
        if (!dead) lastCelsius.put(m.channel(), m.tipCelsius());
        return !dead;
    }
}
