package fifthform.monitor.app;

import fifthform.probe.reader.ProbeReader;
import java.util.List;

/** Lets go of all ports of a session and takes them back. */
final class PortGrip implements KeyDesk.Grip {
    private final List<ProbeReader> readers;

    PortGrip(List<ProbeReader> readers) {
        this.readers = List.copyOf(readers);
    }

    @Override
    public boolean isReleased() {
        return readers.stream().anyMatch(ProbeReader::isReleased);
    }

    /** A port is free once its thread has left it; the screen does not wait for that. */
    @Override
    public void letGo() {
        Thread waiting = new Thread(this::release, "let-go");
        waiting.setDaemon(true);
        waiting.start();
    }

    private void release() {
        try {
            for (ProbeReader reader : readers) reader.release();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public void takeBack() {
        readers.forEach(ProbeReader::takeBack);
    }
}
