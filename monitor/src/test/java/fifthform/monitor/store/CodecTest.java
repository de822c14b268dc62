package fifthform.monitor.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.engine.Event;
import fifthform.curves.input.Input;
import fifthform.curves.input.MakerAction;
import fifthform.curves.input.Recorded;
import fifthform.curves.input.Sample;
import fifthform.curves.input.Tick;
import fifthform.curves.setup.Approach;
import fifthform.curves.setup.Beginning;
import fifthform.curves.setup.Correction;
import fifthform.curves.setup.ProbeSetup;
import fifthform.curves.setup.Setup;
import fifthform.monitor.json.JsonObject;
import fifthform.monitor.json.UnreadableJson;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class CodecTest {
    private static final InputCodec INPUTS = new InputCodec(Demo.START);
    private static final EventCodec EVENTS = new EventCodec(Demo.START);

    static Stream<Input> inputs() {
        return Demo.INPUTS.stream();
    }

    static Stream<Event> events() {
        return Demo.EVENTS.stream();
    }

    @ParameterizedTest
    @MethodSource("inputs")
    void anInputComesBackTheSame(Input input) throws UnreadableJson {
        Recorded recorded = new Recorded(7, input);
        assertEquals(recorded, read(INPUTS.write(recorded)));
        assertEquals(input, InputCodec.asStored(input));
    }

    @ParameterizedTest
    @MethodSource("events")
    void anEventComesBackTheSame(Event event) throws UnreadableJson {
        String line = EVENTS.write(7, event);
        assertEquals(event, EVENTS.read(line));
        assertEquals(line, EVENTS.write(7, EVENTS.read(line)));
    }

    /** So that a new kind cannot be forgotten here: the demo batch holds one of each. */
    @Test
    void theDemoHoldsEveryKind() {
        assertEquals(kinds(MakerAction.class), names(Demo.INPUTS.stream().filter(MakerAction.class::isInstance)));
        assertEquals(kinds(Event.class), names(Demo.EVENTS.stream()));
        assertEquals(kinds(Input.class), names(Demo.INPUTS.stream().filter(input -> !(input instanceof MakerAction))));
    }

    @Test
    void aSetupComesBackTheSame() throws UnreadableJson {
        String text = SetupCodec.write(Demo.SETUP).end();
        assertEquals(Demo.SETUP, SetupCodec.read(JsonObject.parse(text)));
        assertEquals(Demo.HEADER, SessionHeader.read(JsonObject.parse(Demo.HEADER.line())));
    }

    /** Before touches were asked for every session was of one lift, and no seed was planned. */
    @Test
    void aSetupOfBeforeTouchesIsOneOfOneLift() throws UnreadableJson {
        String text = SetupCodec.write(Demo.SETUP.withApproach(Approach.TOUCHES_WHERE_UNSURE))
                .end();
        String old = text.replace(",\"lift\":\"touches\"", "").replace(",\"seed_g\":60", "");
        assertNotEquals(text, old);
        Setup read = SetupCodec.read(JsonObject.parse(old));
        assertEquals(Approach.ONE_LIFT, read.approach());
        assertEquals(OptionalDouble.empty(), read.seedGrams());
    }

    @Test
    void timesComeBackToTheNanosecond() throws UnreadableJson {
        SplittableRandom random = new SplittableRandom(1);
        for (int i = 0; i < 10_000; i++) {
            Instant at = Demo.START.plusNanos(random.nextLong(-1_000_000_000_000L, 100_000_000_000_000L));
            Recorded tick = new Recorded(1, new Tick(at));
            assertEquals(tick, read(INPUTS.write(tick)));
        }
    }

    /** Whatever the numbers: what the engine is given is what a replay reads. */
    @Test
    void whatIsStoredIsWhatIsRead() throws UnreadableJson {
        SplittableRandom random = new SplittableRandom(2);
        for (int i = 0; i < 10_000; i++) {
            Input input = InputCodec.asStored(new Sample(
                    Demo.START,
                    Demo.BOWL,
                    random.nextDouble(-20, 150),
                    random.nextDouble(1e-12, 20),
                    OptionalDouble.of(random.nextDouble(-300, 300)),
                    OptionalDouble.of(random.nextDouble(-10, 10))));
            assertEquals(new Recorded(1, input), read(INPUTS.write(new Recorded(1, input))));
        }
        Setup odd = withCorrection(new Correction(1.0 + 1.0 / 300, 1.0 / 3, 2.0 / 3));
        Setup stored = SetupCodec.asStored(odd);
        assertEquals(0.333333, stored.bowlProbe().correction().offsetKelvin());
        assertEquals(
                stored,
                SetupCodec.read(JsonObject.parse(SetupCodec.write(stored).end())));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"k\":\"r\",\"s\":1,\"t\":0,\"p\":\"bowl\",\"c\":300,\"u\":0.1}",
                "{\"k\":\"r\",\"s\":1,\"t\":0,\"p\":\"Bowl 1\",\"c\":30,\"u\":0.1}",
                "{\"k\":\"r\",\"s\":0,\"t\":0,\"p\":\"bowl\",\"c\":30,\"u\":0.1}",
                "{\"k\":\"r\",\"s\":1,\"t\":1e30,\"p\":\"bowl\",\"c\":30,\"u\":0.1}",
                "{\"k\":\"r\",\"s\":1,\"t\":0.0000000001,\"p\":\"bowl\",\"c\":30,\"u\":0.1}",
                "{\"k\":\"r\",\"s\":1,\"t\":0,\"p\":\"bowl\",\"u\":0.1}",
                "{\"k\":\"a\",\"s\":1,\"t\":0,\"do\":\"danced\"}",
                "{\"k\":\"a\",\"s\":1,\"t\":0,\"do\":\"bowl-moved\",\"to\":\"moon\"}",
                "{\"k\":\"a\",\"s\":1,\"t\":0,\"do\":\"setup-changed\",\"setup\":{}}",
            })
    void anImpossibleLineIsRefusedAndNothingElseHappens(String line) {
        assertThrows(UnreadableJson.class, () -> read(line));
    }

    private static Recorded read(String line) throws UnreadableJson {
        JsonObject json = JsonObject.parse(line);
        return INPUTS.read(LineKind.of(json.text("k")).orElseThrow(), json);
    }

    private static Setup withCorrection(Correction correction) {
        Setup setup = Demo.SETUP;
        ProbeSetup probe = setup.bowlProbe();
        return new Setup(
                setup.recipe(),
                setup.bowl(),
                List.of(new ProbeSetup(
                        probe.id(), probe.role(), probe.talk(), probe.place(), correction, probe.lagSeconds())),
                setup.reactionTime(),
                setup.bathCelsius(),
                setup.roomCelsius(),
                setup.origin(),
                setup.approach(),
                setup.seedGrams(),
                Beginning.WHOLE,
                Optional.empty());
    }

    private static Set<String> kinds(Class<?> family) {
        assertTrue(family.isSealed());
        return Stream.of(family.getPermittedSubclasses())
                .filter(kind -> !kind.isInterface())
                .map(Class::getSimpleName)
                .collect(Collectors.toSet());
    }

    private static Set<String> names(Stream<?> values) {
        return values.map(value -> value.getClass().getSimpleName()).collect(Collectors.toSet());
    }
}
