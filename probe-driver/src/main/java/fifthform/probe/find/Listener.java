package fifthform.probe.find;

import fifthform.probe.LineSettings;
import fifthform.probe.ProbeProtocol;
import fifthform.probe.Signal;
import fifthform.probe.link.Arrival;
import fifthform.probe.link.ByteLink;
import fifthform.probe.link.LinkException;
import fifthform.probe.link.LinkSource;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/** Finds out how an adapter talks by listening to it with every protocol at its usual line settings. */
public final class Listener {
    private final Function<LineSettings, LinkSource> port;
    private final List<ProbeProtocol> protocols;

    /** @param port makes the source of the port in question for given line settings */
    public Listener(Function<LineSettings, LinkSource> port, List<ProbeProtocol> protocols) {
        this.port = Objects.requireNonNull(port, "port");
        this.protocols = List.copyOf(protocols);
    }

    /**
     * Listens at each line setting until a protocol is convincing or {@code perSetting} of the link's time has passed.
     *
     * @return one entry a protocol, the best first
     * @throws LinkException the port cannot be opened or has gone
     */
    public List<Heard> listen(Duration perSetting) throws LinkException, InterruptedException {
        List<Heard> heard = new ArrayList<>();
        for (Map.Entry<LineSettings, List<Ear>> setting : earsBySetting().entrySet()) {
            listen(port.apply(setting.getKey()), setting.getValue(), perSetting);
            setting.getValue().forEach(ear -> heard.add(ear.heard()));
        }
        heard.sort(Comparator.comparingInt(Heard::goodSignals).reversed().thenComparingInt(Heard::unreadableBytes));
        return List.copyOf(heard);
    }

    private Map<LineSettings, List<Ear>> earsBySetting() {
        Map<LineSettings, List<Ear>> ears = new LinkedHashMap<>();
        for (ProbeProtocol protocol : protocols)
            ears.computeIfAbsent(protocol.lines().get(0), line -> new ArrayList<>())
                    .add(new Ear(protocol));
        return ears;
    }

    private static void listen(LinkSource source, List<Ear> ears, Duration limit)
            throws LinkException, InterruptedException {
        try (ByteLink link = source.open()) {
            Optional<Arrival> arrival = link.read();
            Instant start = arrival.map(Arrival::at).orElse(Instant.MIN);
            while (arrival.isPresent()) {
                byte[] bytes = arrival.get().bytes();
                ears.forEach(ear -> ear.hear(bytes));
                boolean convinced = ears.stream().anyMatch(ear -> ear.heard().isConvincing());
                boolean late = Duration.between(start, arrival.get().at()).compareTo(limit) >= 0;
                if (convinced || late) return;
                arrival = link.read();
            }
        }
    }

    /** One protocol listening. */
    private static final class Ear {
        private final ProbeProtocol protocol;
        private final ProbeProtocol.Decoder decoder;
        private int good;
        private int unreadable;

        Ear(ProbeProtocol protocol) {
            this.protocol = protocol;
            this.decoder = protocol.newDecoder();
        }

        void hear(byte[] bytes) {
            decoder.feed(bytes, this::count);
        }

        private void count(Signal signal) {
            if (signal instanceof Signal.Unreadable noise) unreadable += noise.bytes();
            else if (!(signal instanceof Signal.Aside)) good++;
        }

        Heard heard() {
            return new Heard(protocol, good, unreadable);
        }
    }
}
