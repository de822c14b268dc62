package fifthform.probe.link;

import com.fazecast.jSerialComm.SerialPort;
import com.fazecast.jSerialComm.SerialPortInvalidPortException;
import fifthform.probe.LineSettings;
import java.time.InstantSource;
import java.util.Objects;
import java.util.Optional;

/**
 * A serial port, opened anew on each attempt.
 *
 * <p>Every attempt makes a new port object: the library resolves the path when the object is made, so an adapter that came
 * back under another number behind the same link would never be found by the old one.
 */
public final class SerialSource implements TunableSource {
    /** Short enough that a reader can be stopped, long enough that waiting costs nothing. */
    private static final int READ_TIMEOUT_MILLIS = 200;

    private final String port;
    private final LineSettings line;
    private final InstantSource clock;

    /**
     * @param port as the system names it: {@code ttyUSB0}, {@code /dev/ttyUSB0}, {@code COM3}
     * @param clock stamps what arrives
     */
    public SerialSource(String port, LineSettings line, InstantSource clock) {
        this.port = Objects.requireNonNull(port, "port");
        this.line = Objects.requireNonNull(line, "line");
        this.clock = Objects.requireNonNull(clock, "clock");
    }

    @Override
    public String place() {
        return port;
    }

    @Override
    public TunableLink open() throws LinkException {
        PortFile file = PortFile.of(port);
        Optional<LinkException> obstacle = file.obstacle();
        if (obstacle.isPresent()) throw obstacle.get();
        SerialPort opened = portObject();
        set(opened, line);
        opened.setComPortTimeouts(SerialPort.TIMEOUT_READ_SEMI_BLOCKING, READ_TIMEOUT_MILLIS, 0);
        // Only the result counts: a pseudo-terminal leaves error 25 behind although it is open.
        if (!opened.openPort()) throw file.refusal(opened.getLastErrorCode());
        return new SerialLink(port, opened, clock);
    }

    static void set(SerialPort port, LineSettings line) {
        int stopBits = line.stopBits() == 2 ? SerialPort.TWO_STOP_BITS : SerialPort.ONE_STOP_BIT;
        port.setComPortParameters(line.baud(), 8, stopBits, parity(line));
    }

    private static int parity(LineSettings line) {
        return switch (line.parity()) {
            case NONE -> SerialPort.NO_PARITY;
            case EVEN -> SerialPort.EVEN_PARITY;
            case ODD -> SerialPort.ODD_PARITY;
        };
    }

    private SerialPort portObject() throws LinkException {
        try {
            return SerialPort.getCommPort(port);
        } catch (SerialPortInvalidPortException e) {
            throw PortTrouble.missing(port);
        }
    }
}
