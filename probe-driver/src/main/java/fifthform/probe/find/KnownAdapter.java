package fifthform.probe.find;

import fifthform.probe.Talk;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * An adapter that was used before.
 *
 * @param usb what it said of itself, if it was plugged into USB
 * @param place the port it was on when last used
 * @param talk how it talks
 * @param probes what is on its channels, in the order of the channels
 */
public record KnownAdapter(Optional<UsbIdentity> usb, String place, Talk talk, List<KnownProbe> probes) {
    public KnownAdapter {
        Objects.requireNonNull(usb, "usb");
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(talk, "talk");
        probes = List.copyOf(probes);
    }

    /**
     * Whether an adapter that shows itself like this is this one. A serial number settles it wherever it is plugged in;
     * without one another of its kind would look the same, so the place decides.
     */
    public boolean isAt(String itsPlace, Optional<UsbIdentity> itsUsb) {
        boolean hasSerial = usb.flatMap(UsbIdentity::serial).isPresent();
        return usb.equals(itsUsb) && (hasSerial || place.equals(itsPlace));
    }
}
