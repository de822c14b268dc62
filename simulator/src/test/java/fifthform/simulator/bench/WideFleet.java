package fifthform.simulator.bench;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;

/** The home fleet with wider kitchens and makers who obey: from barely warm water to steam, 0.2 to 5 kg. All invented. */
final class WideFleet {
    private static final Map<String, String> WIDER = new LinkedHashMap<>();

    static {
        WIDER.put("amount", "log-normal 800 spread 0.9, within 200 to 5000 g");
        WIDER.put("film", "uniform 0.05 to 0.5 mm");
        WIDER.put("warm bath", "uniform 38 to 80 C");
        WIDER.put("hot contact", "uniform 100 to 700 W/m2K");
        WIDER.put("probe lag", "log-normal 4 spread 0.6, within 1 to 12 s");
        WIDER.put("maker", "always follows-cues");
        WIDER.put("reaction", "uniform 1 to 4 s");
        WIDER.put("pour", "always 60 min");
        WIDER.put("hold", "always 6 min");
    }

    private WideFleet() {}

    static Fleet fleet() {
        try (InputStream in = Fleet.class.getResourceAsStream("/fleets/home.txt")) {
            String home = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            String text = home.lines().map(WideFleet::wider).collect(Collectors.joining("\n"));
            return Fleet.parse("wide", text).fold(f -> f, problems -> {
                throw new IllegalStateException(problems.toString());
            });
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String wider(String line) {
        String key = line.contains("=") ? line.substring(0, line.indexOf('=')).strip() : "";
        String plain = key.contains(" if ") ? key.substring(0, key.indexOf(" if ")) : key;
        return WIDER.containsKey(plain) ? key + " = " + WIDER.get(plain) + "  # invented" : line;
    }
}
