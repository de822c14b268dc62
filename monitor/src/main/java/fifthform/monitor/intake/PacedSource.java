package fifthform.monitor.intake;

import fifthform.probe.link.Arrival;
import fifthform.probe.link.ByteLink;
import fifthform.probe.link.LinkException;
import fifthform.probe.link.LinkSource;
import java.util.Objects;
import java.util.Optional;

/** Lets bytes that carry their own time arrive at that time of the session's clock, and no sooner. */
public final class PacedSource implements LinkSource {
    private final LinkSource source;
    private final SessionClock clock;

    public PacedSource(LinkSource source, SessionClock clock) {
        this.source = Objects.requireNonNull(source, "source");
        this.clock = Objects.requireNonNull(clock, "clock");
    }

    @Override
    public String place() {
        return source.place();
    }

    @Override
    public ByteLink open() throws LinkException {
        ByteLink link = source.open();
        return new ByteLink() {
            @Override
            public Optional<Arrival> read() throws LinkException, InterruptedException {
                Optional<Arrival> arrival = link.read();
                if (arrival.isPresent()) clock.waitUntil(arrival.get().at());
                return arrival;
            }

            @Override
            public void write(byte[] bytes) throws LinkException {
                link.write(bytes);
            }

            @Override
            public void close() {
                link.close();
            }
        };
    }
}
