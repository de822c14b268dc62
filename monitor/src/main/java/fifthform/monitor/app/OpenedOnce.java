package fifthform.monitor.app;

import fifthform.probe.link.ByteLink;
import fifthform.probe.link.LinkException;
import fifthform.probe.link.LinkSource;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicReference;

/** Hands out a line that has been opened already, then opens fresh ones: no byte is lost between trying and reading. */
final class OpenedOnce implements LinkSource {
    private final LinkSource source;
    private final AtomicReference<ByteLink> first;

    OpenedOnce(LinkSource source, ByteLink first) {
        this.source = Objects.requireNonNull(source, "source");
        this.first = new AtomicReference<>(Objects.requireNonNull(first, "first"));
    }

    @Override
    public String place() {
        return source.place();
    }

    @Override
    public ByteLink open() throws LinkException {
        ByteLink opened = first.getAndSet(null);
        return opened != null ? opened : source.open();
    }
}
