package fifthform.monitor.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PortNameTest {
    @ParameterizedTest
    @CsvSource({
        "/dev/ttyUSB0, /dev/ttyUSB0, ",
        "/dev/ttyUSB0@2, /dev/ttyUSB0, 2",
        "COM3@bath water, COM3, bath water",
        "/dev/serial/by-id/a@b@T2, /dev/serial/by-id/a@b, T2",
        "@2, @2, ",
        "COM3@, COM3@, "
    })
    void theChannelStandsBehindTheLastAt(String text, String port, String channel) {
        PortName name = PortName.parse(text);
        assertEquals(new PortName(port, Optional.ofNullable(channel)), name);
        assertEquals(text, name.toString());
    }
}
