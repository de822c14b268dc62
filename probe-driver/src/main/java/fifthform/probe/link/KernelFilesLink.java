package fifthform.probe.link;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/** Reads the files of one directory again and again. A file that cannot be read once is no end; a vanished directory is. */
final class KernelFilesLink implements ByteLink {
    /** As the serial port's read timeout. */
    private static final long SILENCE_NANOS = 200_000_000;

    private final Path directory;
    private final KernelFileSet files;
    private final List<String> names;
    private final long intervalNanos;
    private final InstantSource clock;
    private final CountDownLatch closed = new CountDownLatch(1);
    private long dueNanos = System.nanoTime();

    KernelFilesLink(Path directory, KernelFileSet files, List<String> names, Duration interval, InstantSource clock) {
        this.directory = directory;
        this.files = files;
        this.names = names;
        this.intervalNanos = interval.toNanos();
        this.clock = clock;
    }

    @Override
    public Optional<Arrival> read() throws LinkException, InterruptedException {
        long wait = dueNanos - System.nanoTime();
        if (closed.await(Math.min(wait, SILENCE_NANOS), TimeUnit.NANOSECONDS))
            throw PortTrouble.closed(directory.toString());
        if (dueNanos - System.nanoTime() > 0) return Optional.of(Arrival.silence(clock.instant()));
        dueNanos = System.nanoTime() + intervalNanos;
        byte[] line = round();
        return Optional.of(new Arrival(clock.instant(), line));
    }

    private byte[] round() throws LinkException {
        StringBuilder line = new StringBuilder("name=").append(files.deviceName());
        int gone = 0;
        for (String name : names) {
            String content = files.content(name);
            if (content.equals("!gone")) gone++;
            line.append(' ').append(name).append('=').append(content);
        }
        if (gone == names.size() || !Files.isDirectory(directory)) throw KernelFilesSource.gone(directory.toString());
        return line.append('\n').toString().getBytes(StandardCharsets.UTF_8);
    }

    /** These files cannot be told anything; nothing is sent. */
    @Override
    public void write(byte[] bytes) throws LinkException {
        if (closed.getCount() == 0) throw PortTrouble.closed(directory.toString());
    }

    @Override
    public void close() {
        closed.countDown();
    }
}
