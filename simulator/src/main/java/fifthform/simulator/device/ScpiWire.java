package fifthform.simulator.device;

import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * A bench instrument with a thermocouple's input. Sources: IEEE 488.2-1992, 8.7 and 10.14; SCPI-1999 volume 1, 7.2 (numbers
 * and 9.9E37), volume 2, 21.8 (the error queue); from memory. Its channels beyond the first are at the board's temperature.
 */
final class ScpiWire implements Wire {
    /** Stands for infinity: what an open input gives. */
    private static final String OVERLOAD = "+9.90000000E+37";

    private final int channels;
    private final Scale in;
    private final String lineEnd;
    private final double resolutionKelvin;
    private final double junctionCelsius;

    /** @param settings those of the talk: channels, in, line-end */
    ScpiWire(Map<String, String> settings, double resolutionKelvin, double junctionCelsius) {
        this.channels = settings.getOrDefault("channels", "1").split("/").length;
        this.in = Scale.ofWord(settings.getOrDefault("in", "c"));
        this.lineEnd = Map.of("lf", "\n", "cr", "\r", "crlf", "\r\n")
                .get(settings.getOrDefault("line-end", "lf").toLowerCase(Locale.ROOT));
        this.resolutionKelvin = resolutionKelvin;
        this.junctionCelsius = junctionCelsius;
    }

    @Override
    public Said measured(double tipCelsius) {
        double rounded = Steps.nearest(tipCelsius, resolutionKelvin).doubleValue();
        return Said.number(line(number(rounded)), rounded);
    }

    private String number(double celsius) {
        return String.format(Locale.ROOT, "%+.8E", in.of(celsius));
    }

    private byte[] line(String first) {
        return ended(first + ("," + number(junctionCelsius)).repeat(channels - 1));
    }

    private byte[] ended(String text) {
        return Said.ascii(text + lineEnd);
    }

    @Override
    public Said openCircuit() {
        return Said.noNumber(line(OVERLOAD));
    }

    @Override
    public Said dead() {
        return Said.noNumber(line(number(0)));
    }

    @Override
    public byte[] garbage(SplittableRandom random) {
        return Garbage.line(random);
    }

    @Override
    public Optional<Ear> newEar() {
        return Optional.of(new Instrument());
    }

    /** Understands the questions for a reading and for what the reading is; all else goes into its error queue. */
    private final class Instrument implements Ear {
        private static final int LONGEST_QUEUE = 20;
        private static final int LONGEST_LINE = 256;

        private final StringBuilder heard = new StringBuilder();
        private final Deque<String> errors = new ArrayDeque<>();

        @Override
        public List<byte[]> hears(byte[] written, Said said) {
            List<byte[]> answers = new ArrayList<>();
            for (char next : new String(written, StandardCharsets.ISO_8859_1).toCharArray()) {
                if (next != '\n' && next != '\r') {
                    if (heard.length() < LONGEST_LINE) heard.append(next);
                } else if (!heard.isEmpty()) {
                    answer(heard.toString().strip().toUpperCase(Locale.ROOT), said)
                            .ifPresent(answers::add);
                    heard.setLength(0);
                }
            }
            return answers;
        }

        private Optional<byte[]> answer(String question, Said said) {
            return switch (question.replaceFirst("^:", "").split(" ", 2)[0]) {
                case "*IDN?" -> Optional.of(ended("INVENTED,PRACTICE THERMOMETER,0,1.0"));
                case "UNIT:TEMP?" -> Optional.of(ended(in.name()));
                case "FUNC?" -> Optional.of(ended("\"TEMP\""));
                case "MEAS:TEMP?", "READ?", "FETC?" -> Optional.of(said.bytes());
                case "SYST:ERR?" -> Optional.of(ended(errors.isEmpty() ? "0,\"No error\"" : errors.poll()));
                default -> {
                    if (errors.size() < LONGEST_QUEUE) errors.add("-113,\"Undefined header\"");
                    yield Optional.empty();
                }
            };
        }
    }
}
