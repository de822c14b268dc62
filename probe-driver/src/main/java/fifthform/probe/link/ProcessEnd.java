package fifthform.probe.link;

import com.fazecast.jSerialComm.SerialPort;

/**
 * Whether this process is about to end. On Ctrl-C the serial library closes every open port on its own, at the same moment at
 * which the session is asked to stop; a port that fails from then on has not been unplugged.
 */
final class ProcessEnd {
    private static volatile boolean near;

    static {
        // The library runs these to their end before it closes a port.
        SerialPort.addShutdownHook(new Thread(() -> near = true, "serial-end"));
    }

    private ProcessEnd() {}

    /** Begins to look out for the end; without effect after the first time. */
    static void watch() {}

    static boolean isNear() {
        return near;
    }
}
