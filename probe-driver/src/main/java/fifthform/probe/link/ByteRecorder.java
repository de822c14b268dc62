package fifthform.probe.link;

import java.io.IOException;
import java.io.Writer;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.Instant;
import java.util.HexFormat;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Keeps every byte that a probe sends, as lines that {@link TapeSource} reads back. It outlives single links: after a
 * reconnection the same file goes on. The writer belongs to the caller, who closes it.
 */
public final class ByteRecorder {
    private final Writer writer;
    private final Instant start;
    private final Consumer<IOException> onTrouble;
    private boolean failed;

    /** @param onTrouble called once, from the reading thread, when the writer fails; reading goes on without recording */
    public ByteRecorder(Writer writer, Instant start, Consumer<IOException> onTrouble) {
        this.writer = Objects.requireNonNull(writer, "writer");
        this.start = Objects.requireNonNull(start, "start");
        this.onTrouble = Objects.requireNonNull(onTrouble, "onTrouble");
    }

    /** The same source, with all that arrives through it kept. */
    public LinkSource tap(LinkSource source) {
        return new LinkSource() {
            @Override
            public String place() {
                return source.place();
            }

            @Override
            public ByteLink open() throws LinkException {
                return tap(source.open());
            }
        };
    }

    private ByteLink tap(ByteLink link) {
        return new ByteLink() {
            @Override
            public Optional<Arrival> read() throws LinkException, InterruptedException {
                Optional<Arrival> arrival = link.read();
                arrival.filter(a -> !a.isSilence()).ifPresent(ByteRecorder.this::keep);
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

    private void keep(Arrival arrival) {
        if (failed) return;
        Duration after = Duration.between(start, arrival.at());
        BigDecimal seconds = BigDecimal.valueOf(after.isNegative() ? 0 : after.toNanos(), 9);
        String line = seconds.setScale(6, RoundingMode.FLOOR).toPlainString() + " "
                + HexFormat.of().formatHex(arrival.bytes()) + "\n";
        try {
            writer.write(line);
            writer.flush();
        } catch (IOException e) {
            failed = true;
            onTrouble.accept(e);
        }
    }
}
