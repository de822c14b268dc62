package fifthform.monitor.adapters;

import fifthform.curves.setup.Correction;
import fifthform.monitor.json.JsonObject;
import fifthform.monitor.json.UnreadableJson;
import fifthform.probe.Talk;
import fifthform.probe.find.KnownAdapter;
import fifthform.probe.find.KnownProbe;
import fifthform.probe.find.UsbIdentity;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** One adapter's file, read line by line; lines that cannot be read are left out and remembered. */
final class AdapterReading {
    private final Path file;
    private final List<String> good = new ArrayList<>();
    private final List<String> bad = new ArrayList<>();
    private final Map<Integer, KnownProbe> probes = new TreeMap<>();
    private final List<KeptCheck> checks = new ArrayList<>();
    private Optional<Optional<UsbIdentity>> usb = Optional.empty();
    private Optional<String> place = Optional.empty();
    private Optional<Talk> talk = Optional.empty();
    private boolean newer;

    private AdapterReading(Path file) {
        this.file = file;
    }

    static AdapterReading of(Path file, String text) {
        AdapterReading reading = new AdapterReading(file);
        text.lines().filter(line -> !line.isBlank()).forEach(reading::take);
        return reading;
    }

    private void take(String line) {
        try {
            JsonObject json = JsonObject.parse(line);
            switch (json.text("k")) {
                case "adapter" -> adapter(json);
                case "used" -> {
                    talk = Optional.of(AdapterText.talk(json));
                    place = Optional.of(json.text("place"));
                }
                case "probe" -> {
                    KnownProbe probe = AdapterText.probe(json);
                    probes.put(probe.channel(), probe);
                }
                case "check" -> checks.add(AdapterText.check(json));
                default -> {
                    // Of a later program; kept as it stands.
                }
            }
            good.add(line);
        } catch (UnreadableJson e) {
            bad.add(line);
        }
    }

    private void adapter(JsonObject json) throws UnreadableJson {
        newer = json.whole("format") > AdapterText.FORMAT;
        usb = Optional.of(AdapterText.adapter(json));
    }

    boolean isOfANewerProgram() {
        return newer;
    }

    boolean isDamaged() {
        return !bad.isEmpty();
    }

    /** The lines that can be read, each with its end. */
    String goodText() {
        return String.join("\n", good) + "\n";
    }

    /** The adapter; empty where not even who it is can be read. */
    Optional<KeptAdapter> adapter() {
        if (usb.isEmpty() || place.isEmpty() || talk.isEmpty()) return Optional.empty();
        List<KnownProbe> corrected =
                probes.values().stream().map(this::corrected).toList();
        KnownAdapter known = new KnownAdapter(usb.get(), place.get(), talk.get(), corrected);
        return Optional.of(new KeptAdapter(file, known, checks));
    }

    /** With the correction of its newest good check: the last line, for clocks are set back now and then. */
    private KnownProbe corrected(KnownProbe probe) {
        Correction newest = checks.stream()
                .filter(check -> check.channel() == probe.channel())
                .flatMap(check -> check.correction().stream())
                .reduce(Correction.UNCHECKED, (earlier, later) -> later);
        return new KnownProbe(probe.channel(), probe.role(), probe.sensor(), newest, probe.lagSeconds());
    }
}
