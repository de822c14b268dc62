package fifthform.probe.find;

import fifthform.probe.LineSettings;
import fifthform.probe.link.ByteLink;
import fifthform.probe.link.LinkException;
import fifthform.probe.link.LinkSource;
import fifthform.probe.link.SerialSource;
import java.time.InstantSource;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * An adapter rather than a port: at each opening it is looked for by what it says of itself, so it is found under whatever
 * name its port has got when it was plugged in again.
 *
 * <p>Two adapters of one kind without serial numbers cannot be told from each other but by their sockets. Where that does
 * not help either, neither is opened: the bath's readings under the bowl's name would be worse than none.
 */
public final class AdapterSource implements LinkSource {
    private final ListedPort first;
    private final Supplier<List<ListedPort>> lister;
    private final Function<String, LinkSource> opener;
    private volatile String path;
    /** Once two of a kind were seen, one of them may be unplugged and the other still there. */
    private boolean hasTwin;

    /**
     * @param port as it was found
     * @param lister what is plugged in now
     * @param opener makes a source for the path of a port
     */
    AdapterSource(ListedPort port, Supplier<List<ListedPort>> lister, Function<String, LinkSource> opener) {
        this.first = Objects.requireNonNull(port, "port");
        this.lister = Objects.requireNonNull(lister, "lister");
        this.opener = Objects.requireNonNull(opener, "opener");
        this.path = port.path();
    }

    /**
     * The adapter on a port that was named; a port that is no USB adapter is opened by its name alone.
     *
     * @param port as {@code --probe} names it
     */
    public static LinkSource on(String port, LineSettings line, InstantSource clock) {
        Function<String, LinkSource> opener = path -> new SerialSource(path, line, clock);
        return ListedPort.named(port)
                .filter(listed -> listed.usb().isPresent())
                .<LinkSource>map(listed -> new AdapterSource(listed, ListedPort::all, opener))
                .orElseGet(() -> opener.apply(port));
    }

    /** The path at which it was last found. */
    @Override
    public String place() {
        return path;
    }

    @Override
    public ByteLink open() throws LinkException {
        path = whereabouts();
        return opener.apply(path).open();
    }

    private String whereabouts() throws LinkException {
        if (first.usb().isEmpty()) return first.path();
        UsbIdentity identity = first.usb().get();
        List<ListedPort> kin = lister.get().stream()
                .filter(port -> port.usb().equals(first.usb()))
                .toList();
        if (kin.size() > 1) hasTwin = true;
        if (kin.isEmpty()) throw missing(identity);
        Optional<ListedPort> sameSocket =
                kin.stream().filter(port -> isKnownToBeIn(first.socket(), port)).findFirst();
        if (sameSocket.isPresent()) return sameSocket.get().path();
        if (kin.size() == 1 && !hasTwin) return kin.get(0).path();
        if (kin.size() == 1 && identity.serial().isPresent()) return kin.get(0).path();
        return kin.stream()
                .filter(port -> first.socket().isEmpty() && port.path().equals(first.path()))
                .findFirst()
                .orElseThrow(() -> twins(identity, kin.get(0)))
                .path();
    }

    private static boolean isKnownToBeIn(Optional<String> socket, ListedPort port) {
        return socket.isPresent() && port.socket().equals(socket);
    }

    private LinkException missing(UsbIdentity identity) {
        return new LinkException(
                path,
                "The adapter " + identity + ", last on " + path + ", is not plugged in. No reading can be taken.",
                "Plug it in again, into any socket; the session goes on and looks for it by itself.");
    }

    private LinkException twins(UsbIdentity identity, ListedPort other) {
        return new LinkException(
                path,
                "An adapter " + identity + " is on " + other.path()
                        + ", but there is another of that kind and nothing tells which of them it is. No reading is"
                        + " taken, so that none comes from the wrong probe.",
                "Plug it into the socket where it was when the session began"
                        + first.socket().map(where -> " (" + where + ")").orElse("") + ", or start the session again.");
    }
}
