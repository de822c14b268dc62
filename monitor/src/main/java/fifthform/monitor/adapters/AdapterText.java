package fifthform.monitor.adapters;

import fifthform.curves.probecheck.Point;
import fifthform.curves.probecheck.Target;
import fifthform.curves.setup.Correction;
import fifthform.curves.setup.Role;
import fifthform.curves.thermocouple.Converter;
import fifthform.curves.thermocouple.Sensor;
import fifthform.curves.thermocouple.ThermocoupleType;
import fifthform.curves.thermocouple.ToleranceClass;
import fifthform.monitor.json.JsonLine;
import fifthform.monitor.json.JsonObject;
import fifthform.monitor.json.UnreadableJson;
import fifthform.monitor.texts.FileText;
import fifthform.probe.Talk;
import fifthform.probe.find.KnownAdapter;
import fifthform.probe.find.KnownProbe;
import fifthform.probe.find.UsbIdentity;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The lines of an adapter's file: {@code adapter} (who it is, first line), {@code used} (where and how it talked),
 * {@code probe} (what is on a channel), {@code check}. Later lines of a kind overrule earlier ones; none is ever changed.
 */
final class AdapterText {
    static final int FORMAT = 1;

    private AdapterText() {}

    static String adapter(Optional<UsbIdentity> usb) {
        JsonLine line = new JsonLine().text("k", "adapter").whole("format", FORMAT);
        usb.ifPresent(u -> {
            line.text("vendor", String.format("%04x", u.vendor())).text("product", String.format("%04x", u.product()));
            u.serial().ifPresent(serial -> line.text("serial", serial));
        });
        return line.end();
    }

    static Optional<UsbIdentity> adapter(JsonObject json) throws UnreadableJson {
        if (!json.has("vendor")) return Optional.empty();
        try {
            return Optional.of(new UsbIdentity(
                    Integer.parseInt(json.text("vendor"), 16),
                    Integer.parseInt(json.text("product"), 16),
                    json.optionalText("serial")));
        } catch (IllegalArgumentException e) {
            throw new UnreadableJson(e.getMessage());
        }
    }

    static String used(KnownAdapter adapter) {
        return new JsonLine()
                .text("k", "used")
                .text("place", adapter.place())
                .text("talk", adapter.talk().toString())
                .end();
    }

    static Talk talk(JsonObject json) throws UnreadableJson {
        Optional<Talk> talk = Talk.parse(json.text("talk")).fold(Optional::of, problems -> Optional.empty());
        return talk.orElseThrow(() -> new UnreadableJson(FileText.TALK_IS_NO_WAY_OF_TALKING.say()));
    }

    static String probe(KnownProbe probe) {
        JsonLine line = new JsonLine()
                .text("k", "probe")
                .whole("channel", probe.channel())
                .text("role", probe.role().word());
        probe.sensor().type().ifPresent(type -> line.text("type", type.name()));
        return line.text("class", probe.sensor().toleranceClass().word())
                .text("converter", probe.sensor().converter().word())
                .number("lag_s", probe.lagSeconds())
                .end();
    }

    /** A probe as its own line tells it: unchecked, for checks stand in lines of their own. */
    static KnownProbe probe(JsonObject json) throws UnreadableJson {
        Optional<ThermocoupleType> type = json.has("type")
                ? Optional.of(json.choice("type", ThermocoupleType.values(), ThermocoupleType::name))
                : Optional.empty();
        Sensor sensor = new Sensor(
                type,
                json.choice("class", ToleranceClass.values(), ToleranceClass::word),
                json.choice("converter", Converter.values(), Converter::word));
        try {
            return new KnownProbe(
                    channel(json),
                    json.choice("role", Role.values(), Role::word),
                    sensor,
                    Correction.UNCHECKED,
                    json.optionalNumber("lag_s"));
        } catch (IllegalArgumentException e) {
            throw new UnreadableJson(e.getMessage());
        }
    }

    static String check(KeptCheck check) {
        JsonLine line = new JsonLine()
                .text("k", "check")
                .whole("channel", check.channel())
                .text("at", check.at().toString())
                .text("result", check.correction().isPresent() ? "corrects" : "corrects-nothing");
        check.correction()
                .ifPresent(c -> line.number("gain", c.gain())
                        .number("offset_k", c.offsetKelvin())
                        .number("sigma_k", c.sigmaKelvin()));
        return line.objects(
                        "points",
                        check.points().stream().map(AdapterText::point).toList())
                .text("words", check.words())
                .end();
    }

    static KeptCheck check(JsonObject json) throws UnreadableJson {
        try {
            Instant at = Instant.parse(json.text("at"));
            Optional<Correction> correction = json.has("gain")
                    ? Optional.of(new Correction(
                            json.number("gain"), json.number("offset_k"), json.number("sigma_k"), Optional.of(at)))
                    : Optional.empty();
            List<Point> points = new ArrayList<>();
            for (JsonObject point : json.objects("points")) points.add(point(point));
            return new KeptCheck(at, channel(json), points, correction, json.text("words"));
        } catch (DateTimeException | IllegalArgumentException e) {
            throw new UnreadableJson(e.getMessage());
        }
    }

    private static JsonLine point(Point point) {
        return new JsonLine()
                .text("at", point.at().toString())
                .text("point", point.target().kind().word())
                .number("true_c", point.target().trueCelsius())
                .number("true_sigma_k", point.target().sigmaKelvin())
                .number("read_c", point.readCelsius())
                .number("read_sigma_k", point.meanSigmaKelvin())
                .whole("readings", point.readings());
    }

    private static Point point(JsonObject json) throws UnreadableJson {
        Target target = new Target(
                json.choice("point", Target.Kind.values(), Target.Kind::word),
                json.number("true_c"),
                json.number("true_sigma_k"));
        return new Point(
                Instant.parse(json.text("at")),
                target,
                json.number("read_c"),
                json.number("read_sigma_k"),
                whole(json, "readings"));
    }

    private static int channel(JsonObject json) throws UnreadableJson {
        return whole(json, "channel");
    }

    private static int whole(JsonObject json, String key) throws UnreadableJson {
        long value = json.whole(key);
        if (value < 0 || value > Integer.MAX_VALUE) throw new UnreadableJson(FileText.IS_OUT_OF_RANGE.say(key));
        return (int) value;
    }
}
