package fifthform.simulator.bench;

import fifthform.probe.ProbeProtocol;
import fifthform.probe.link.Arrival;
import fifthform.probe.link.ByteLink;
import fifthform.probe.link.LinkException;
import fifthform.simulator.device.AdapterSettings;
import fifthform.simulator.device.RunningKitchen;
import java.util.ArrayList;
import java.util.List;

/** The bath's line, read only where it would not wait: the bench has one thread. */
final class BathLine implements AutoCloseable {
    private final RunningKitchen kitchen;
    private final ByteLink line;
    private final ProbeProtocol.Decoder decoder =
            AdapterSettings.USUAL_BATH.language().protocol().newDecoder();

    BathLine(RunningKitchen kitchen) {
        this.kitchen = kitchen;
        try {
            line = kitchen.bathSource().open();
        } catch (LinkException e) {
            throw new IllegalStateException("the bath's adapter has no faults, yet it cannot be opened", e);
        }
    }

    ProbeProtocol.Decoder decoder() {
        return decoder;
    }

    /** What has come since this was last asked. */
    List<Arrival> waiting() throws InterruptedException {
        List<Arrival> arrivals = new ArrayList<>();
        try {
            while (kitchen.bathHasLine()) line.read().ifPresent(arrivals::add);
        } catch (LinkException e) {
            throw new IllegalStateException("the bath's adapter has no faults, yet its line is gone", e);
        }
        return arrivals;
    }

    @Override
    public void close() {
        line.close();
    }
}
