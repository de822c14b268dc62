package fifthform.monitor.app;

import fifthform.curves.probecheck.Target;
import fifthform.curves.setup.Correction;
import fifthform.curves.thermocouple.Sensor;
import fifthform.monitor.adapters.KeptAdapter;
import fifthform.probe.Spoken;
import fifthform.probe.find.UsbIdentity;
import fifthform.probe.link.LinkSource;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;

/**
 * A probe that is to be checked.
 *
 * @param kind what stands behind it
 * @param place where it is, for people and files
 * @param usb who its adapter says it is
 * @param channel which of its channels; the first to speak where empty
 * @param sensor thermocouple and converter, as far as known
 * @param kept what is remembered of its adapter
 * @param before the correction that holds until now
 * @param dip called when the maker is asked to put the tip into ice or boiling water: a simulated one obeys at once
 * @param stir the same for the stirred bath
 */
record CheckSubject(
        Kind kind,
        String place,
        LinkSource source,
        Spoken spoken,
        Optional<UsbIdentity> usb,
        OptionalInt channel,
        Sensor sensor,
        Optional<KeptAdapter> kept,
        Correction before,
        Consumer<Target> dip,
        Runnable stir) {
    /** What stands behind a line. */
    enum Kind {
        REAL,
        /** Bytes of earlier: whose they were is not known. */
        RECORDED,
        PRACTICE
    }

    CheckSubject {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(spoken, "spoken");
        Objects.requireNonNull(usb, "usb");
        Objects.requireNonNull(channel, "channel");
        Objects.requireNonNull(sensor, "sensor");
        Objects.requireNonNull(kept, "kept");
        Objects.requireNonNull(before, "before");
        Objects.requireNonNull(dip, "dip");
        Objects.requireNonNull(stir, "stir");
    }
}
