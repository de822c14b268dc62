package fifthform.probe.protocol;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.check.Problem;
import fifthform.probe.ProbeProtocol;
import fifthform.probe.Signal;
import fifthform.probe.Talk;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Dialogues with imagined instruments; each look is 200 ms after the last, an answer is there at the next. */
class ScpiTest {
    private static final Instant START = Instant.parse("2026-03-01T10:00:00Z");

    private final List<Signal> signals = new ArrayList<>();
    private final List<String> asked = new ArrayList<>();
    private ProbeProtocol.Decoder decoder = new Scpi().newDecoder();

    @Test
    void itIsAskedWhoItIsThenItsUnitThenReadings() {
        talk(20, question -> switch (question) {
            case "*IDN?" -> "Demo Instruments,DT-2,0001,1.0\r\n";
            case "UNIT:TEMP?" -> "FAR\r\n";
            default -> "+8.870E+01\r\n";
        });
        assertEquals(List.of("*IDN?", "UNIT:TEMP?", "MEAS:TEMP?", "MEAS:TEMP?"), asked.subList(0, 4));
        assertEquals(List.of(31.5, 31.5), tips().subList(0, 2));
        assertEquals(Optional.of("DT-2"), decoder.channelName(0));
    }

    @Test
    void aUnitThatIsChangedAtTheInstrumentIsNoticed() {
        int[] readings = {0};
        talk(80, question -> switch (question) {
            case "*IDN?" -> "Demo Instruments,DT-2,0001,1.0\n";
            case "UNIT:TEMP?" -> readings[0] < 10 ? "C\n" : "F\n";
            default -> readings[0]++ < 10 ? "31.50\n" : "88.70\n";
        });
        assertTrue(tips().size() > 15 && tips().stream().allMatch(tip -> tip == 31.5), () -> tips().toString());
    }

    @Test
    void aUnitSpoiledOnTheWayIsAskedForAgain() {
        int[] units = {0};
        talk(40, question -> switch (question) {
            case "*IDN?" -> "Demo Instruments,DT-2,0001,1.0\n";
            case "UNIT:TEMP?" -> units[0]++ == 0 ? "\u00ff\u0081\n" : "F\n";
            default -> "88.70\n";
        });
        assertTrue(tips().size() > 2 && tips().stream().allMatch(tip -> tip == 31.5), () -> tips().toString());
    }

    @Test
    void aNumberBeforeTheUnitIsToldIsNoReading() {
        talk(4, question -> question.equals("*IDN?") ? "Demo,DT-2,0001,1.0\n" : "88.70\n");
        assertEquals(List.of("*IDN?", "UNIT:TEMP?"), asked);
        assertEquals(List.of(), tips());
    }

    @Test
    void aQuestionThatIsNotKnownGivesWayToTheNextAndTheErrorIsToldOnce() {
        List<String> queue = new ArrayList<>();
        talk(60, question -> {
            if (question.equals("READ?")) return "31.50\r";
            if (question.equals("SYST:ERR?")) return queue.isEmpty() ? "0,\"No error\"\r" : queue.remove(0) + "\r";
            queue.add("-113,\"Undefined header\"");
            return "";
        });
        assertTrue(tips().size() > 3, asked::toString);
        assertEquals(1, asked.stream().filter("MEAS:TEMP?"::equals).count(), asked::toString);
        assertEquals(Optional.empty(), decoder.complaint());
    }

    @Test
    void anInstrumentThatOnlyComplainsIsQuoted() {
        boolean[] known = {false};
        talk(80, question -> {
            if (!question.equals("SYST:ERR?")) return "";
            known[0] = !known[0];
            return !known[0] ? "0,\"No error\"\n" : "-221,\"Settings conflict\"\n";
        });
        String complaint = decoder.complaint().map(Problem::toString).orElse("none");
        assertTrue(complaint.contains("error -221, \"Settings conflict\""), complaint);
        assertEquals(List.of(), tips());
    }

    @Test
    void nobodyThereIsToldAsThat() {
        talk(80, question -> "");
        String complaint = decoder.complaint().map(Problem::toString).orElse("none");
        assertTrue(complaint.contains("has not answered"), complaint);
    }

    @Test
    void aMeterSetToVoltsIsNotRead() {
        decoder = set("query=READ?,in=c").newDecoder();
        talk(40, question -> switch (question) {
            case "FUNC?" -> "\"VOLT:DC 1,0.1\"\n";
            case "READ?" -> "1.5\n";
            default -> "";
        });
        assertEquals(List.of(), tips());
        assertTrue(asked.stream().noneMatch("READ?"::equals), asked::toString);
        assertTrue(decoder.complaint().orElseThrow().what().contains("VOLT:DC"));
        feed("1.5\n");
        assertEquals(List.of(), tips(), "nor is what it says unasked");
    }

    @Test
    void halfALineAndALongPauseNeverBecomeANumberTogether() {
        decoder = set("in=c,timeout=0.3").newDecoder();
        feed("31.50\n"); // the rear half of who knows what
        assertEquals(List.of(new Signal.Unreadable(5)), signals);
        feed("1");
        for (int i = 0; i < 5; i++) decoder.ask(START.plusMillis(200L * i), signals::add);
        feed("9.25\n");
        feed("31.75\n");
        assertEquals(List.of(31.75), tips());
        assertEquals(new Signal.Unreadable(5), signals.get(1));
    }

    @Test
    void overloadIsNoTemperature() {
        decoder = set("channels=101/102/103,in=c").newDecoder();
        feed("\n\r\nC\n+9.9E37,+9.91E37,-9.9E37\n");
        assertEquals(new Signal.OpenCircuit(0), signals.get(1));
        assertEquals(new Signal.OpenCircuit(1), signals.get(2));
        assertTrue(signals.get(3) instanceof Signal.OutOfRange r && r.channel() == 2, signals::toString);
        assertEquals(Optional.of("channel 102"), decoder.channelName(1));
    }

    @Test
    void aUnitBesideTheNumberWins() {
        decoder = set("in=c").newDecoder();
        feed("C\n88.70 F\n304.65 K\n31.50\n");
        assertEquals(List.of(31.5, 31.5, 31.5), tips());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "query=*RST|query is *RST, but must be one of: MEAS:TEMP?, READ?, FETC?",
                "query=FETCH?|Did you mean FETC??",
                "channels=101/101|must name each channel once",
                "channels=x|channels is x",
                "chanels=101|Did you mean channels?",
                "line-end=nl|must be one of: lf, cr, crlf",
                "every=5|every is 5, but must be 0.25 to 1.5 seconds",
                "in=celsius|in is celsius",
            })
    void whatCannotBeUsedIsRefused(String settings, String told) {
        List<Problem> problems = new Scpi().with(settings(settings)).fold(p -> List.of(), p -> p);
        assertTrue(problems.toString().contains(told), problems::toString);
    }

    @Test
    void scrapsOfAnswersNeverMakeItThrow() {
        String[] scraps = {
            "31.5",
            "9.91E37",
            "-",
            "+",
            "E",
            ",",
            "\"",
            "C",
            "F",
            "\n",
            "\r",
            "-113,\"x\"",
            "*IDN?",
            "a,b,c,d",
            "TEMP",
            "nan",
            "open",
            "\u00b0",
            "1e999",
            " ",
            "99999999999999999999",
            "READ?"
        };
        SplittableRandom random = new SplittableRandom(11);
        Instant now = START;
        for (int i = 0; i < 100_000; i++) {
            if (i % 1000 == 0) decoder = new Scpi().newDecoder();
            StringBuilder text = new StringBuilder();
            for (int n = random.nextInt(5); n > 0; n--) text.append(scraps[random.nextInt(scraps.length)]);
            decoder.feed(text.toString().getBytes(StandardCharsets.ISO_8859_1), ScpiTest::check);
            now = now.plusMillis(random.nextInt(300));
            decoder.ask(now, ScpiTest::check);
        }
    }

    private static void check(Signal signal) {
        if (signal instanceof Signal.Measured m)
            assertTrue(m.tipCelsius() >= -20 && m.tipCelsius() <= 150, m::toString);
        if (signal instanceof Signal.Unreadable u) assertTrue(u.bytes() > 0 && u.bytes() <= 1024, u::toString);
    }

    private void talk(int looks, Function<String, String> instrument) {
        String answer = "";
        for (int i = 0; i < looks; i++) {
            feed(answer);
            Optional<byte[]> question = decoder.ask(START.plusMillis(200L * i), signals::add);
            answer = question.map(bytes -> new String(bytes, StandardCharsets.US_ASCII).strip())
                    .map(words -> {
                        asked.add(words);
                        return instrument.apply(words);
                    })
                    .orElse("");
        }
    }

    private void feed(String text) {
        decoder.feed(text.getBytes(StandardCharsets.ISO_8859_1), signals::add);
    }

    private List<Double> tips() {
        return signals.stream()
                .filter(Signal.Measured.class::isInstance)
                .map(signal -> ((Signal.Measured) signal).tipCelsius())
                .toList();
    }

    private static ProbeProtocol set(String settings) {
        return new Scpi().with(settings(settings)).fold(p -> p, problems -> {
            throw new AssertionError(problems.toString());
        });
    }

    private static Map<String, String> settings(String settings) {
        return Talk.parse("scpi:" + settings).fold(Talk::settings, problems -> {
            throw new AssertionError(problems.toString());
        });
    }
}
