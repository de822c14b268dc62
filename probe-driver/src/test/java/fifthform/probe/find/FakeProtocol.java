package fifthform.probe.find;

import fifthform.probe.LineSettings;
import fifthform.probe.ProbeProtocol;
import fifthform.probe.Signal;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.function.Function;

/** A protocol of lines, each of which is given its meaning by a function; empty means unreadable. */
record FakeProtocol(
        String id, List<LineSettings> lines, Manner manner, Function<String, Optional<Signal>> meaning, String question)
        implements ProbeProtocol {
    static FakeProtocol speaks(String id, Function<String, Optional<Signal>> meaning) {
        return new FakeProtocol(id, List.of(new LineSettings(9600)), Manner.SPEAKS, meaning, "");
    }

    /** Hexadecimal words of four digits in steps of {@code kelvin}. */
    static FakeProtocol hexWords(String id, double kelvin) {
        return speaks(
                id,
                line -> line.matches("[0-9A-F]{4}")
                        ? Optional.of(reading(Integer.parseInt(line, 16) * kelvin, kelvin))
                        : Optional.empty());
    }

    static Signal reading(double celsius, double step) {
        return new Signal.Measured(0, celsius, OptionalDouble.empty(), OptionalDouble.empty(), step);
    }

    @Override
    public String description() {
        return id;
    }

    @Override
    public Decoder newDecoder() {
        return new Decoder() {
            private final StringBuilder line = new StringBuilder();
            private Optional<Instant> asked = Optional.empty();

            @Override
            public void feed(byte[] bytes, Consumer<? super Signal> out) {
                for (byte b : bytes) {
                    if (b == '\n') end(out);
                    else line.append((char) (b & 0xFF));
                }
            }

            private void end(Consumer<? super Signal> out) {
                String text = line.toString().strip();
                int length = line.length();
                line.setLength(0);
                out.accept(meaning.apply(text).orElse(new Signal.Unreadable(Math.max(1, length))));
            }

            @Override
            public Optional<byte[]> ask(Instant now, Consumer<? super Signal> out) {
                boolean due =
                        asked.filter(last -> last.plusMillis(400).isAfter(now)).isEmpty();
                if (question.isEmpty() || !due) return Optional.empty();
                asked = Optional.of(now);
                return Optional.of(question.getBytes(StandardCharsets.US_ASCII));
            }

            @Override
            public Optional<String> channelName(int channel) {
                return Optional.of("input " + channel);
            }
        };
    }
}
