package fifthform.simulator.device;

import fifthform.curves.check.Parsed;
import fifthform.probe.ProbeProtocol;
import fifthform.probe.Talk;
import java.util.List;
import java.util.Map;
import java.util.ServiceLoader;
import java.util.stream.Stream;

/** Every protocol that the service loader finds, in each form that its settings give it. */
final class Tongues {
    private static final Map<String, List<String>> FORMS = Map.of(
            "millivolts", List.of("", ":type=T,unit=uv", ":columns=cj-skip-emf,type=J"),
            "max31855", List.of("", ":form=binary", ":form=binary,sync=AA55,type=T"),
            "max6675", List.of("", ":form=binary,sync=AA55"),
            "max31856", List.of("", ":form=binary"),
            "mcp9600", List.of("", ":form=binary,sync=AA55"),
            "modbus-rtu",
                    List.of(
                            ":register=8",
                            ":register=8,table=holding,unit=17,format=float32,words=low-first,in=f",
                            ":registers=9/8,format=uint16,scale=0.01,offset=-100,junction-register=10",
                            ":register=0x10,count=2,format=int32,scale=0.001,in=k,every=0.25"),
            "scpi", List.of("", ":query=READ?,in=f,line-end=crlf", ":query=MEAS:TEMP?,channels=101/102,in=k"));

    private Tongues() {}

    static Stream<Talk> all() {
        return ServiceLoader.load(ProbeProtocol.class).stream()
                .map(provider -> provider.get().id())
                .flatMap(id -> FORMS.getOrDefault(id, List.of("")).stream().map(form -> id + form))
                .map(text -> accepted(Talk.parse(text)));
    }

    /** A protocol without an adapter of ours fails here. */
    static Language language(Talk talk) {
        return accepted(Language.of(talk));
    }

    /** Half a step of the numbers on this wire, K, rounding of the junction and of the binary numbers included. */
    static double halfStepKelvin(Talk talk) {
        return switch (talk.protocol()) {
            case "text-lines", "json-lines", "kernel-files", "scpi" -> 0.05 / 2 + 1e-6;
            case "millivolts" -> 0.001 / 0.039 / 2 + 0.005;
            // One step of the code is S / slope steps of the tip: near 30 °C more than it says for type T.
            case "max31855" -> 0.25 / 2 * (talk.settings().containsKey("type") ? 52.18 / 39.5 : 1) + 0.02;
            // Its one slope cannot be undone, since it keeps its junction to itself: 0.1 K more at 50 °C.
            case "max6675" -> 0.25 / 2 + 0.1;
            case "max31856" -> 1 / 128.0 / 2 + 1e-6;
            case "mcp9600" -> 1 / 16.0 / 2 + 1e-6;
            case "modbus-rtu" -> 0.1 / 2 + 1e-6;
            default -> throw new AssertionError("say how finely " + talk + " can tell");
        };
    }

    static <T> T accepted(Parsed<T> parsed) {
        return parsed.fold(value -> value, problems -> {
            throw new AssertionError(problems.toString());
        });
    }
}
