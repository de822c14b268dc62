package fifthform.probe.find;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** On an invented /sys. */
class HidDevicesTest {
    @TempDir
    Path sys;

    @Test
    void aDeviceWithoutSerialPortIsNamedWithTheReason() throws Exception {
        device("hidraw0", "0003:00001234:0000ABCD", "Demo Thermo Stick", "A7", new byte[] {0x06, 0x00, (byte) 0xFF});
        FoundPort port = find().get(0);
        assertEquals("hidraw0", port.name());
        assertEquals("/dev/hidraw0", port.path());
        assertEquals("Demo Thermo Stick", port.description());
        assertEquals(FoundPort.Kind.HID, port.kind());
        assertEquals(FoundPort.State.BLOCKED, port.state());
        assertEquals(Optional.of(new UsbIdentity(0x1234, 0xabcd, Optional.of("A7"))), port.usb());
        assertTrue(port.reason().orElse("").contains("without a serial port"), port::toString);
        assertTrue(port.whatToDo().orElse("").contains("Use an adapter"), port::toString);
    }

    @Test
    void whatHandsUseIsLeftOut() throws Exception {
        byte[] own = {0x06, 0x00, (byte) 0xFF};
        device("hidraw0", "0003:00000001:00000001", "Demo Keyboard", "", own);
        device("hidraw1", "0003:00000001:00000002", "Demo Optical Mouse", "", own);
        device("hidraw2", "0003:00000001:00000003", "Demo Board", "", new byte[] {0x05, 0x01, 0x09, 0x06});
        device("hidraw3", "0003:00000001:00000004", "Demo Pad", "", own);
        Files.createDirectories(sys.resolve("class/hidraw/hidraw3/device/input/input7"));
        assertEquals(List.of(), find());
    }

    @Test
    void whatIsTornOrMissingIsPassedOver() throws Exception {
        assertEquals(List.of(), find(), "no such class");
        Files.createDirectories(sys.resolve("class/hidraw/hidraw0"));
        device("hidraw1", "nonsense", "Demo Stick", "", new byte[0]);
        device("hidraw2", "0005:00001234:0000ABCD", "Demo Radio Stick", "", new byte[0]);
        List<FoundPort> found = find();
        assertEquals(2, found.size());
        assertTrue(found.stream().allMatch(port -> port.usb().isEmpty()), found::toString);
    }

    @Test
    void serialPortsComeFirst() throws Exception {
        device("hidraw0", "0003:00001234:0000ABCD", "Demo Thermo Stick", "", new byte[0]);
        PortFinder sensors =
                () -> List.of(MatchesTest.port("temp1", FoundPort.Kind.KERNEL_SENSOR, Optional.empty(), ""));
        PortFinder serial = () -> List.of(
                MatchesTest.port("ttyS0", FoundPort.Kind.SERIAL, Optional.empty(), ""),
                MatchesTest.port(
                        "ttyUSB0", FoundPort.Kind.SERIAL, Optional.of(new UsbIdentity(1, 2, Optional.empty())), ""));
        assertEquals(
                List.of("ttyUSB0", "ttyS0", "temp1", "hidraw0"),
                Ports.from(List.of(new HidDevices(sys, Path.of("/dev")), sensors, serial)).stream()
                        .map(FoundPort::name)
                        .toList());
    }

    private List<FoundPort> find() {
        return new HidDevices(sys, Path.of("/dev")).find();
    }

    private void device(String node, String id, String name, String serial, byte[] descriptor) throws IOException {
        Path device = Files.createDirectories(sys.resolve("class/hidraw/" + node + "/device"));
        Files.writeString(
                device.resolve("uevent"),
                "DRIVER=hid-generic\nHID_ID=" + id + "\nHID_NAME=" + name + "\nHID_UNIQ=" + serial + "\n");
        Files.write(device.resolve("report_descriptor"), descriptor);
    }
}
