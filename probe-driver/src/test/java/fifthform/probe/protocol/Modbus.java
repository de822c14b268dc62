package fifthform.probe.protocol;

import fifthform.curves.check.Problem;
import fifthform.probe.ProbeProtocol;
import fifthform.probe.Signal;
import fifthform.probe.Talk;
import java.util.List;
import java.util.OptionalDouble;

/** Set protocols and frames for tests. */
final class Modbus {
    private Modbus() {}

    static ProbeProtocol set(String settings) {
        return new ModbusRtu().with(settings(settings)).fold(protocol -> protocol, problems -> {
            throw new AssertionError(problems.toString());
        });
    }

    static List<Problem> problems(String settings) {
        return new ModbusRtu().with(settings(settings)).fold(protocol -> List.of(), problems -> problems);
    }

    private static java.util.Map<String, String> settings(String settings) {
        return Talk.parse("modbus-rtu:" + settings).fold(Talk::settings, problems -> {
            throw new AssertionError(problems.toString());
        });
    }

    /** An answer or any other message: these bytes with their CRC behind them. */
    static byte[] frame(int... bytes) {
        byte[] frame = new byte[bytes.length + 2];
        for (int i = 0; i < bytes.length; i++) frame[i] = (byte) bytes[i];
        int crc = Crc16.of(frame, 0, bytes.length);
        frame[bytes.length] = (byte) crc;
        frame[bytes.length + 1] = (byte) (crc >> 8);
        return frame;
    }

    static Signal measured(int channel, double celsius, double step) {
        return new Signal.Measured(channel, celsius, OptionalDouble.empty(), OptionalDouble.empty(), step);
    }
}
