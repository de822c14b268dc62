package fifthform.probe.link;

/** What can be wrong with a serial port, in three parts: what happened, what it means, what to do. */
final class PortTrouble {
    private static final String NO_READING = " No reading can be taken.";

    private PortTrouble() {}

    static LinkException missing(String port) {
        return new LinkException(
                port,
                "There is no port " + port + "." + NO_READING,
                "Plug the adapter in, or name another port with --probe; the command ports lists what is there.");
    }

    static LinkException notSerial(String port) {
        return new LinkException(
                port,
                port + " is not a serial port." + NO_READING,
                "Name a serial port with --probe, or a recording with --probe file:PATH.");
    }

    static LinkException forbidden(String port, String group) {
        return new LinkException(
                port,
                "You may not open the port " + port + "." + NO_READING,
                "On Linux: sudo usermod -aG " + group + " $USER, then log out and in again.");
    }

    /** @param holder for example {@code minicom, process 4711} */
    static LinkException held(String port, String holder) {
        return new LinkException(
                port,
                "The probe on " + port + " is held by another program (" + holder + ")." + NO_READING,
                "Close the other program or name another port with --probe.");
    }

    static LinkException heldByUs(String port) {
        return new LinkException(
                port,
                "The port " + port + " is already read by this program." + NO_READING,
                "Name a port of its own for each probe.");
    }

    /** The port refused and nobody could be found who holds it. */
    static LinkException refused(String port, int code) {
        return new LinkException(
                port,
                "The port " + port + " cannot be opened (error " + code
                        + "); perhaps another program holds it, perhaps nothing is behind it." + NO_READING,
                "Close other programs that may use the port, unplug the adapter and plug it in again, or name another "
                        + "port with --probe.");
    }

    static LinkException gone(String port) {
        return new LinkException(
                port,
                "The adapter on " + port + " has gone." + NO_READING,
                "Plug it in again; the session goes on and looks for it by itself.");
    }

    static LinkException closed(String place) {
        return new LinkException(place, place + " has been closed." + NO_READING, "Open it again.");
    }

    static LinkException released(String place) {
        return new LinkException(
                place,
                "The port " + place + " was released on request." + NO_READING,
                "Take it back when the other program is done; the session goes on meanwhile.");
    }
}
