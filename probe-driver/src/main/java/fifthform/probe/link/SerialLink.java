package fifthform.probe.link;

import com.fazecast.jSerialComm.SerialPort;
import java.time.InstantSource;
import java.util.Arrays;
import java.util.Optional;

/**
 * One opened serial port.
 *
 * <p>The library says −1 at once and for ever when the device has gone, while {@code isOpen()} stays true; −1 also answers
 * a read during our own {@link #close()}. No disconnect listener is used: it is called without pause once the device has
 * gone.
 */
final class SerialLink implements ByteLink {
    private final String place;
    private final SerialPort port;
    private final InstantSource clock;
    private final byte[] buffer = new byte[4096];
    private volatile boolean closed;

    SerialLink(String place, SerialPort port, InstantSource clock) {
        this.place = place;
        this.port = port;
        this.clock = clock;
    }

    @Override
    public Optional<Arrival> read() throws LinkException {
        int count = closed ? -1 : port.readBytes(buffer, buffer.length);
        if (count < 0) throw gone();
        return Optional.of(new Arrival(clock.instant(), Arrays.copyOf(buffer, count)));
    }

    @Override
    public void write(byte[] bytes) throws LinkException {
        if (closed || port.writeBytes(bytes, bytes.length) < 0) throw gone();
    }

    private LinkException gone() {
        if (closed) return PortTrouble.closed(place);
        close();
        return PortTrouble.gone(place);
    }

    @Override
    public void close() {
        closed = true;
        port.closePort();
    }
}
