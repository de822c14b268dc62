package fifthform.probe.protocol;

import java.util.Set;

/** The words that hobby adapters write beside numbers (common practice, no source). */
final class Vocabulary {
    static final Set<String> FAULT = Set.of("fault", "faults", "error", "err", "status");
    static final Set<String> JUNCTION = Set.of("internal", "cold", "ref", "reference", "ambient", "cj");
    static final Set<String> TIP = Set.of(
            "t",
            "temp",
            "temps",
            "temperature",
            "temperatures",
            "tc",
            "tip",
            "thermocouple",
            "probe",
            "hot",
            "external");

    /** Places of a kitchen in which somebody puts a probe; each is a channel by name. */
    static final Set<String> PLACE = Set.of(
            "bowl", "bath", "water", "chocolate", "choc", "pot", "pan", "kettle", "mould", "mold", "slab", "marble");

    /** Where the chocolate is: the first to be numbered, for many makers have one probe only. */
    static final Set<String> CHOCOLATE = Set.of("bowl", "chocolate", "choc");

    /** The room's temperature is a channel beside others, but alone it must never pass for the chocolate's. */
    static final Set<String> ROOM = Set.of("room", "air");

    static final Set<String> CHANNEL = Set.of("ch", "channel");

    /** Words that change nothing. */
    static final Set<String> NEUTRAL = Set.of(
            "type",
            "k",
            "deg",
            "current",
            "actual",
            "measured",
            "now",
            "value",
            "reading",
            "readings",
            "sensor",
            "sensors",
            "probes",
            "data",
            "junction");

    static final Set<String> NOT_MEASURED = Set.of(
            "set",
            "setpoint",
            "target",
            "goal",
            "max",
            "min",
            "avg",
            "average",
            "mean",
            "last",
            "old",
            "limit",
            "threshold",
            "alarm",
            "offset",
            "delta",
            "diff",
            "rate",
            "slope",
            "heater",
            "board",
            "cpu",
            "mcu",
            "core",
            "chip",
            "die",
            "dew",
            "point",
            "humidity",
            "rh",
            "pressure",
            "voltage",
            "volt",
            "volts",
            "battery",
            "power",
            "duty",
            "level",
            "adc",
            "raw");

    /** Words of columns that count or tell the time. */
    static final Set<String> CLOCK = Set.of(
            "time",
            "timestamp",
            "date",
            "ms",
            "millis",
            "milliseconds",
            "s",
            "sec",
            "secs",
            "seconds",
            "elapsed",
            "uptime",
            "n",
            "no",
            "nr",
            "index",
            "count",
            "sample",
            "id");

    private Vocabulary() {}

    static boolean isKnown(String word) {
        return isOfTheProbe(word) || PLACE.contains(word) || ROOM.contains(word) || isBesides(word);
    }

    private static boolean isBesides(String word) {
        return FAULT.contains(word) || NOT_MEASURED.contains(word) || CLOCK.contains(word);
    }

    /** Says what is measured or how, and is nobody's name. */
    static boolean isOfTheProbe(String word) {
        return TIP.contains(word)
                || JUNCTION.contains(word)
                || CHANNEL.contains(word)
                || NEUTRAL.contains(word)
                || Unit.ofTemperature(word).isPresent();
    }
}
