package fifthform.probe.find;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.probe.LineSettings;
import fifthform.probe.LineSettings.Parity;
import fifthform.probe.ProbeProtocol;
import fifthform.probe.ProbeProtocol.Manner;
import fifthform.probe.Signal;
import fifthform.probe.find.SimulatedWire.AfterBadStop;
import fifthform.probe.link.Arrival;
import fifthform.probe.link.TunableLink;
import fifthform.probe.link.TunableSource;
import fifthform.probe.protocol.TextLines;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

class RecognizerTest {
    private static final LineSettings USUAL = new LineSettings(9600);
    private static final ProbeProtocol TEXT = new TextLines();

    @Test
    void aDecisionNamesProtocolLineAndChannels() throws Exception {
        LineSettings fast = new LineSettings(57_600);
        Recognition heard = hear(says("T1:31.25 T2:41.00\r\n", fast), Asking.NEVER, TEXT);
        Decision decision = heard.decision().orElseThrow();
        assertEquals("text-lines:baud=57600", decision.spoken().talk().toString());
        assertEquals(fast, decision.spoken().line());
        assertEquals(
                List.of(new ChannelHeard(1, Optional.empty(), 31.25), new ChannelHeard(2, Optional.empty(), 41.0)),
                decision.channels());
        assertTrue(decision.confidence() > 0.8 && decision.confidence() <= 1, decision::toString);
        assertTrue(heard.candidates().get(0).rejection().isEmpty(), "the one that was taken comes first");
        assertTrue(
                heard.candidates().stream().skip(1).allMatch(c -> c.rejection().isPresent()));
    }

    @Test
    void twoMeaningsAreLeftUndecidedAndBothAreTold() throws Exception {
        ProbeProtocol quarters = FakeProtocol.hexWords("quarters", 0.125);
        ProbeProtocol sixteenths = FakeProtocol.hexWords("sixteenths", 0.0625);
        Recognition heard = hear(says("01F0\n", USUAL), Asking.NEVER, TEXT, quarters, sixteenths);
        assertTrue(heard.decision().isEmpty());
        String why = heard.reason();
        assertTrue(why.contains("quarters reads 62.00 °C") && why.contains("sixteenths reads 31.00 °C"), why);
        assertTrue(heard.candidates().stream().allMatch(c -> c.rejection().isPresent()));
    }

    /** It has not made up its mind when the first would already do, and then reads something else. */
    @Test
    void aRivalThatHesitatesIsWaitedFor() throws Exception {
        ProbeProtocol hasty = FakeProtocol.hexWords("hasty", 0.125);
        ProbeProtocol slow = new Hesitating(FakeProtocol.hexWords("slow", 0.0625));
        assertTrue(hear(says("01F0\n", USUAL), Asking.NEVER, hasty, slow)
                .decision()
                .isEmpty());
    }

    @Test
    void ofTwoThatAgreeTheOneThatIsHarderToPleaseWins() throws Exception {
        ProbeProtocol strict = FakeProtocol.speaks(
                "strict",
                line -> line.equals("T: 31.25 C") ? Optional.of(FakeProtocol.reading(31.25, 0.01)) : Optional.empty());
        Recognition heard = hear(says("T: 31.25 C\n", USUAL), Asking.NEVER, TEXT, strict);
        assertEquals(
                "strict", heard.decision().orElseThrow().spoken().protocol().id());
        assertEquals("input 0", heard.decision().get().channels().get(0).title());
        Candidate text = heard.candidates().stream()
                .filter(c -> c.protocol() == TEXT && c.evidence().readings() > 0)
                .findFirst()
                .orElseThrow();
        assertTrue(text.rejection().orElse("").contains("reads the same as strict"), text::toString);
    }

    @Test
    void readingsThatLeapConvinceNobody() throws Exception {
        int[] next = {0};
        SimulatedWire wire = wire(() -> (next[0]++ % 2 == 0 ? "20.00\n" : "90.00\n").getBytes(), USUAL);
        Recognition heard = hear(wire, Asking.NEVER, TEXT);
        assertTrue(heard.decision().isEmpty());
        assertTrue(heard.reason().contains("jump"), heard::reason);
    }

    @Test
    void faultsAloneAskForTheThermocouple() throws Exception {
        Recognition heard = hear(says("fault open\n", USUAL), Asking.NEVER, TEXT);
        assertTrue(heard.decision().isEmpty());
        assertTrue(heard.reason().contains("no thermocouple is plugged in. No reading"), heard::reason);
    }

    /** A room probe that speaks every ten seconds is understood; there is only too little of it. */
    @Test
    void whatSpeaksTooSeldomIsNotSaidToBeUnreadable() throws Exception {
        byte[] line = "21.5\n".getBytes(StandardCharsets.US_ASCII);
        SimulatedWire wire = new SimulatedWire(() -> line, 10, USUAL, 0, AfterBadStop.WAITS, new SplittableRandom(1));
        Recognition heard = hear(wire, Asking.NEVER, TEXT);
        assertTrue(heard.decision().isEmpty());
        assertTrue(heard.reason().contains("too seldom") && heard.reason().contains("--talk"), heard::reason);
        assertFalse(heard.reason().contains("no protocol"), heard::reason);
    }

    /** A line held low is full of zeros, and zeros are a temperature to who wants to read them so. */
    @Test
    void aLineThatSaysOneByteForEverIsNoReading() throws Exception {
        ProbeProtocol zeros = new ProbeProtocol() {
            @Override
            public String id() {
                return "zeros";
            }

            @Override
            public String description() {
                return id();
            }

            @Override
            public List<LineSettings> lines() {
                return List.of(USUAL);
            }

            @Override
            public Decoder newDecoder() {
                return (bytes, out) -> {
                    for (byte b : bytes) out.accept(FakeProtocol.reading(b, 1));
                };
            }
        };
        Recognition heard = hear(says("\0\0\0\0", USUAL), Asking.NEVER, zeros);
        assertTrue(heard.decision().isEmpty(), heard::reason);
    }

    @Test
    void parityOnTheLineDoesNotHideTheReading() throws Exception {
        LineSettings even = new LineSettings(9600, Parity.EVEN, 1);
        Recognition heard = hear(says("31.25\r\n", even), Asking.NEVER, TEXT);
        assertEquals(
                "text-lines", heard.decision().orElseThrow().spoken().protocol().id());
    }

    /** Many boards restart when their port is opened. */
    @Test
    void thePortIsOpenedOnce() throws Exception {
        SimulatedWire wire = says("31.25\r\n", new LineSettings(2400));
        assertTrue(hear(wire, Asking.NEVER, TEXT).decision().isPresent());
        assertEquals(1, wire.opened);
    }

    @Test
    void whatIsSilentIsAskedOnlyWhereThatIsAllowed() throws Exception {
        LineSettings line = new LineSettings(19_200, Parity.EVEN, 1);
        ProbeProtocol other = asked("other", USUAL, "OTHER?\n");
        ProbeProtocol right = asked("right", line, "TEMP?\n");
        Answering never = new Answering(line, "TEMP?\n");
        Recognition heard = new Recognizer(never, List.of(TEXT, other, right), Asking.NEVER).recognize();
        assertTrue(heard.decision().isEmpty());
        assertTrue(heard.reason().contains("asking must be allowed"), heard::reason);
        assertEquals(List.of(), never.questions);

        Answering allowed = new Answering(line, "TEMP?\n");
        heard = new Recognizer(allowed, List.of(TEXT, other, right), Asking.ALLOWED).recognize();
        assertEquals("right", heard.decision().orElseThrow().spoken().protocol().id());
        assertTrue(heard.took().compareTo(Duration.ofMillis(5000 + 6 * 400)) < 0, heard::toString);
    }

    @Test
    void whatSpeaksIsNeverAsked() throws Exception {
        Answering wire = new Answering(USUAL, "TEMP?\n");
        wire.chatter = "?!#\n";
        Recognition heard =
                new Recognizer(wire, List.of(TEXT, asked("right", USUAL, "TEMP?\n")), Asking.ALLOWED).recognize();
        assertTrue(heard.decision().isEmpty());
        assertEquals(List.of(), wire.questions);
    }

    private static ProbeProtocol asked(String id, LineSettings line, String question) {
        return new FakeProtocol(
                id,
                List.of(line),
                Manner.ANSWERS,
                text -> text.matches("\\d+\\.\\d+")
                        ? Optional.of(FakeProtocol.reading(Double.parseDouble(text), 0.01))
                        : Optional.empty(),
                question);
    }

    private static Recognition hear(SimulatedWire wire, Asking asking, ProbeProtocol... protocols) throws Exception {
        return new Recognizer(wire, List.of(protocols), asking).recognize();
    }

    private static SimulatedWire says(String frame, LineSettings line) {
        return wire(() -> frame.getBytes(StandardCharsets.ISO_8859_1), line);
    }

    private static SimulatedWire wire(Supplier<byte[]> frames, LineSettings line) {
        return new SimulatedWire(frames, 0.25, line, 0, AfterBadStop.WAITS, new SplittableRandom(1));
    }

    /** Answers one question, heard at one setting of the line only, after 100 ms. */
    private static final class Answering implements TunableSource, TunableLink {
        private final LineSettings own;
        private final String expected;
        private final List<String> questions = new ArrayList<>();
        private String chatter = "";
        private LineSettings line = USUAL;
        private Instant now = Instant.EPOCH;
        private boolean answers;

        Answering(LineSettings own, String expected) {
            this.own = own;
            this.expected = expected;
        }

        @Override
        public String place() {
            return "instrument";
        }

        @Override
        public TunableLink open() {
            return this;
        }

        @Override
        public void tune(LineSettings settings) {
            line = settings;
        }

        @Override
        public Optional<Arrival> read() {
            now = now.plusMillis(answers ? 100 : 200);
            String said = answers ? "31.25\n" : chatter;
            answers = false;
            return Optional.of(new Arrival(now, said.getBytes(StandardCharsets.US_ASCII)));
        }

        @Override
        public void write(byte[] bytes) {
            String question = new String(bytes, StandardCharsets.US_ASCII);
            questions.add(question);
            answers = line.equals(own) && question.equals(expected);
        }

        @Override
        public void close() {}
    }

    /** Says nothing until four signals have come, as protocols do that have to find out what a column means. */
    private record Hesitating(ProbeProtocol inner) implements ProbeProtocol {
        @Override
        public String id() {
            return inner.id();
        }

        @Override
        public String description() {
            return inner.description();
        }

        @Override
        public List<LineSettings> lines() {
            return inner.lines();
        }

        @Override
        public Decoder newDecoder() {
            Decoder decoder = inner.newDecoder();
            List<Signal> held = new ArrayList<>();
            boolean[] released = {false};
            return (bytes, out) -> {
                decoder.feed(bytes, held::add);
                if (held.size() < 4 && !released[0]) return;
                held.forEach(out::accept);
                held.clear();
                released[0] = true;
            };
        }
    }
}
