package fifthform.probe.find;

import fifthform.probe.ProbeProtocol;
import fifthform.probe.Signal;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.function.Supplier;

/** An adapter that speaks a protocol: frames of that protocol's tape over and over, each of which is a plausible temperature. */
record Speaker(String name, ProbeProtocol protocol, List<byte[]> frames) {
    private static final int REPEATS = 12;
    private static final double LARGEST_STEP_KELVIN = 3;

    /** One that says the same temperature again and again for each frame, and one that walks up and down through them. */
    static List<Speaker> of(ProbeProtocol protocol) {
        List<Speaker> speakers = new ArrayList<>();
        List<byte[]> walk = new ArrayList<>();
        double last = Double.NaN;
        for (byte[] frame : sorted(protocol, tape(protocol))) {
            double celsius = celsius(protocol, frame);
            speakers.add(new Speaker(protocol.id() + " " + celsius, protocol, List.of(frame)));
            if (celsius < 15 || celsius > 70) continue;
            boolean far = Math.abs(celsius - last) > LARGEST_STEP_KELVIN;
            if (!far) walk.add(frame);
            if (walk.isEmpty() || !far) last = celsius;
            if (walk.isEmpty()) walk.add(frame);
        }
        List<byte[]> back = new ArrayList<>(walk);
        Collections.reverse(back);
        walk.addAll(back);
        Speaker walking = new Speaker(protocol.id() + " walk", protocol, walk);
        if (walk.size() > 2 && walking.isClear()) speakers.add(walking);
        return speakers;
    }

    private boolean isClear() {
        Ear ear = ear(protocol, 40);
        Evidence evidence = ear.evidence();
        return evidence.isConvincing() && evidence.explainedFraction() > 0.99 && evidence.jumps() == 0;
    }

    private static List<byte[]> sorted(ProbeProtocol protocol, List<byte[]> frames) {
        return frames.stream()
                .filter(frame -> !Double.isNaN(celsius(protocol, frame)))
                .sorted(Comparator.comparingDouble(frame -> celsius(protocol, frame)))
                .toList();
    }

    /** What a frame says again and again; not a number unless it is one temperature and nothing else. */
    private static double celsius(ProbeProtocol protocol, byte[] frame) {
        List<Signal> signals = new ArrayList<>();
        ProbeProtocol.Decoder decoder = protocol.newDecoder();
        for (int i = 0; i < REPEATS; i++) decoder.feed(frame, signals::add);
        List<Double> celsius = signals.stream()
                .filter(Signal.Measured.class::isInstance)
                .map(Signal.Measured.class::cast)
                .filter(m -> m.channel()
                        == signals.stream()
                                .filter(Signal.Measured.class::isInstance)
                                .mapToInt(s -> ((Signal.Measured) s).channel())
                                .min()
                                .orElse(0))
                .map(Signal.Measured::tipCelsius)
                .distinct()
                .toList();
        boolean measuredOnly = signals.stream().allMatch(Signal.Measured.class::isInstance);
        return measuredOnly && celsius.size() == 1 && signals.size() >= REPEATS / 2 ? celsius.get(0) : Double.NaN;
    }

    private static List<byte[]> tape(ProbeProtocol protocol) {
        try (InputStream in = Speaker.class.getResourceAsStream("/tapes/" + protocol.id() + ".bytes")) {
            if (in == null) return List.of();
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#") && !line.isBlank())
                    .map(line -> HexFormat.of().parseHex(line.split(" ")[1]))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Supplier<byte[]> from(int first) {
        int[] next = {first};
        return () -> frames.get(next[0]++ % frames.size());
    }

    /** A protocol that has heard this speaker on a perfect line. */
    Ear ear(ProbeProtocol listening, int count) {
        Ear ear = new Ear(listening, protocol.lines().get(0));
        Supplier<byte[]> supplier = from(0);
        for (int i = 0; i < count; i++) ear.hear(supplier.get(), Instant.EPOCH.plusSeconds(i));
        return ear;
    }

    /** Whether another protocol understands the very same bytes as other temperatures, so that nobody can tell. */
    boolean isAmbiguous(List<ProbeProtocol> all) {
        Ear own = ear(protocol, 30);
        return all.stream()
                .filter(p -> p.manner() == ProbeProtocol.Manner.SPEAKS)
                .map(p -> ear(p, 30))
                .anyMatch(ear -> ear.isConvincing() && !ear.agreesWith(own));
    }

    /** Whether a decision reads what was said. */
    boolean isReadRightBy(Decision decision) {
        Ear taken = ear(decision.spoken().protocol(), 30);
        return taken.isConvincing() && taken.agreesWith(ear(protocol, 30));
    }
}
