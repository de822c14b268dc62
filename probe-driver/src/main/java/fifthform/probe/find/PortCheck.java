package fifthform.probe.find;

import fifthform.probe.find.FoundPort.State;
import fifthform.probe.link.ByteLink;
import fifthform.probe.link.LinkException;
import fifthform.probe.link.LinkSource;
import java.util.Optional;

/**
 * Opens a port and reads from it once, because being listed proves nothing: a built-in port is listed on every computer
 * whose board has the pins, used or not.
 */
record PortCheck(State state, Optional<String> reason, Optional<String> whatToDo) {
    private static final PortCheck READY = new PortCheck(State.READY, Optional.empty(), Optional.empty());

    static PortCheck of(LinkSource port, Optional<UsbIdentity> usb) throws InterruptedException {
        try (ByteLink link = port.open()) {
            return read(link, usb);
        } catch (LinkException e) {
            return new PortCheck(State.BLOCKED, Optional.of(e.getMessage()), Optional.of(e.whatToDo()));
        }
    }

    private static PortCheck read(ByteLink link, Optional<UsbIdentity> usb) throws InterruptedException {
        try {
            boolean speaks = link.read().filter(arrival -> !arrival.isSilence()).isPresent();
            return speaks || usb.isPresent()
                    ? READY
                    : noDevice("It opens, but nothing comes and no device names itself.");
        } catch (LinkException e) {
            return noDevice("It opens, but cannot be read: there is nothing behind it.");
        }
    }

    private static PortCheck noDevice(String what) {
        return new PortCheck(
                State.NO_DEVICE,
                Optional.of(what + " A built-in port is listed whether or not it is used; it is no probe."),
                Optional.of("Plug a USB adapter in; or, if the adapter is on this port, name it with --probe."));
    }
}
