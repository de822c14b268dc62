package fifthform.simulator.device;

import fifthform.probe.link.ByteLink;
import fifthform.probe.link.LinkException;
import fifthform.probe.link.LinkSource;

/** A socket of the pretend kitchen: opening fails while the adapter is out of it. */
final class KitchenSource implements LinkSource {
    private final RunningKitchen kitchen;
    private final Adapter adapter;
    private final KitchenLink.Reading reading;
    private final Runnable vainOpening;

    KitchenSource(RunningKitchen kitchen, Adapter adapter, KitchenLink.Reading reading, Runnable vainOpening) {
        this.kitchen = kitchen;
        this.adapter = adapter;
        this.reading = reading;
        this.vainOpening = vainOpening;
    }

    @Override
    public String place() {
        return adapter.place();
    }

    @Override
    public ByteLink open() throws LinkException {
        synchronized (kitchen) {
            if (adapter.unplugged()) {
                vainOpening.run();
                throw KitchenLink.unplugged(adapter);
            }
            adapter.listen();
            return new KitchenLink(kitchen, adapter, reading);
        }
    }
}
