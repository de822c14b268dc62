package fifthform.monitor.app;

import fifthform.probe.LineSettings;
import fifthform.probe.ProbeProtocol;
import fifthform.probe.find.Asking;
import fifthform.probe.find.Recognition;
import fifthform.probe.find.Recognizer;
import fifthform.probe.link.LinkException;
import fifthform.probe.link.SerialSource;
import java.time.InstantSource;
import java.util.List;
import java.util.Objects;

/** Listens to ports to find out how adapters talk. */
final class AdapterEar {
    /** Where the recogniser begins; it tries the others by itself. */
    private static final LineSettings FIRST_LINE = new LineSettings(9600);

    private final Asking asking;

    /** @param asking whether bytes may be sent to what is not known yet */
    AdapterEar(Asking asking) {
        this.asking = Objects.requireNonNull(asking, "asking");
    }

    /**
     * Listens with every protocol at every usual speed; takes up to some ten seconds.
     *
     * @throws LinkException the port cannot be opened or has gone
     */
    Recognition listen(String port) throws LinkException, InterruptedException {
        return new Recognizer(new SerialSource(port, FIRST_LINE, InstantSource.system()), onWires(), asking)
                .recognize();
    }

    /** Listens with one protocol only, to learn the channels' names. */
    Recognition listen(String port, ProbeProtocol protocol) throws LinkException, InterruptedException {
        return new Recognizer(
                        new SerialSource(port, FIRST_LINE, InstantSource.system()), List.of(protocol), Asking.ALLOWED)
                .recognize();
    }

    /** Sensors of the kernel are on no wire. */
    private static List<ProbeProtocol> onWires() {
        return Protocols.all().stream()
                .filter(protocol -> !protocol.id().equals(Protocols.KERNEL_FILES))
                .toList();
    }
}
